package org.tenthwise.app.bench;

import static java.util.stream.Collectors.toCollection;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.text.MadeUpLanguage;
import org.tenthwise.checklists.materials.Materials;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/** What the bench asks, against the sums it asks. */
class BenchTest {

    private final Words words = Words.of(Locale.ENGLISH);
    private final Bench bench = new Bench(Handbook.sums(), words);

    /** Guards against drift: whatever is chosen, nothing is given that the sum does not know. */
    @ParameterizedTest
    @EnumSource(BenchKind.class)
    void everyKeyGivenIsAKeyOfTheSum(BenchKind kind) {
        BenchForm sum = kind.form();
        Set<String> given = new TreeSet<>();
        everyWay(sum).forEach(filled -> given.addAll(sum.given(filled).values().keySet()));
        assertTrue(given.size() >= 2, given::toString);
        given.removeAll(asked(sum).keys());
        assertEquals(Set.of(), given);
    }

    @ParameterizedTest
    @EnumSource(BenchKind.class)
    void everythingAskedAndChosenHasAName(BenchKind kind) {
        BenchForm sum = kind.form();
        BenchNote noted = new BenchNote(bench, words);
        everyWay(sum).forEach(filled -> sum.fields(filled).forEach(ask -> {
            assertTrue(!bench.name(ask).isBlank());
            ask.choices()
                    .forEach(choice -> assertTrue(!noted.chosen(ask, choice).isBlank()));
            assertTrue(!words.say(words.key("bench.formula", kind) + "." + sum.formula(filled))
                    .isBlank());
        }));
    }

    /**
     * Whatever is typed, nothing is said in English where the words are of another language: results, notes, refusals.
     */
    @ParameterizedTest
    @EnumSource(BenchKind.class)
    void nothingIsSaidInEnglishInAnotherLanguage(BenchKind kind) {
        Words madeUp = MadeUpLanguage.words();
        Bench other = new Bench(Handbook.sums(), madeUp);
        String materials = Materials.known().all().toString();
        Set<String> said = new TreeSet<>();
        everyWay(kind.form()).stream()
                .flatMap(oddly(kind.form()))
                .forEach(filled -> said.addAll(said(other, kind.form(), filled, madeUp)));
        assertTrue(said.size() > 10, said::toString);
        assertEquals(
                Set.of(),
                said.stream()
                        .filter(text ->
                                !MadeUpLanguage.plainEnglish(text, materials).isEmpty())
                        .collect(toCollection(TreeSet::new)));
    }

    /** As it is filled, and with each figure in turn as nobody should type it. */
    private static Function<FormValues, Stream<FormValues>> oddly(BenchForm sum) {
        return filled -> Stream.concat(
                Stream.of(filled),
                sum.fields(filled).stream().filter(ask -> !ask.isChoice()).flatMap(ask -> Stream.of(
                                "0", "-1", "0.001", "20", "99999", "1 1", "3 2 1 4")
                        .map(figure -> filled.with(ask.id(), figure))));
    }

    private static List<String> said(Bench bench, BenchForm sum, FormValues filled, Words words) {
        Bench.FormOutcome outcome = bench.work(sum, filled);
        if (outcome instanceof Bench.FormOutcome.InputRefused refused) {
            return List.of(refused.sentence());
        }
        if (outcome instanceof Bench.FormOutcome.Done done) {
            return List.of(new BenchNote(bench, words).of(sum, filled, done.answer()));
        }
        return List.of();
    }

    private static SumDescription asked(BenchForm sum) {
        return Handbook.sums().descriptions().stream()
                .filter(other -> other.name().equals(sum.sum()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No sum " + sum.sum()));
    }

    /** The usual choice everywhere but at one place or two, there each other choice in turn, and every figure typed. */
    private static List<FormValues> everyWay(BenchForm sum) {
        List<FormValues> ways = new ArrayList<>();
        for (Unit unit : Unit.of(QuantityKind.LENGTH)) {
            FormValues usual = sum.settled(FormValues.nothing(unit));
            for (FormValues one : turned(sum, usual)) {
                turned(sum, one).forEach(way -> ways.add(typed(sum, way)));
            }
        }
        return ways;
    }

    private static List<FormValues> turned(BenchForm sum, FormValues from) {
        List<FormValues> ways = new ArrayList<>();
        ways.add(from);
        sum.fields(from).forEach(ask -> ask.choices().stream()
                .limit(9)
                .forEach(choice -> ways.add(sum.settled(from.with(ask.id(), choice)))));
        return ways;
    }

    private static FormValues typed(BenchForm sum, FormValues filled) {
        FormValues now = filled;
        for (FormField ask : sum.fields(filled)) {
            now = ask.isChoice() ? now : now.with(ask.id(), typed(ask));
        }
        return now;
    }

    private static String typed(FormField ask) {
        return ask.several() ? "1 2 3" : ask.quantity() == Quantity.COUNT ? "6" : "1";
    }

    @Test
    void whatIsStillToTypeIsNamedBeforeAnythingIsAsked() {
        BenchForm sum = BenchKind.TEMPERATURE.form();
        Bench.FormOutcome outcome = bench.work(
                sum,
                sum.settled(FormValues.nothing(Unit.MILLIMETRE))
                        .with("reading", "500.035")
                        .with("part_temp", "-"));
        assertEquals(
                List.of("part_temp", "part_alpha", "gauge_temp", "gauge_alpha"),
                assertInstanceOf(Bench.FormOutcome.Missing.class, outcome).fields().stream()
                        .map(FormField::id)
                        .toList());
    }

    @Test
    void aRefusalIsAtItsFieldAndInItsName() {
        BenchForm sum = BenchKind.TEMPERATURE.form();
        FormValues filled = FormValues.nothing(Unit.MILLIMETRE)
                .with("reading", "500.035")
                .with("part_temp", "23.7")
                .with("part_alpha", "11.7")
                .with("gauge_temp", "20")
                .with("gauge_alpha", "11.5")
                .with("u_temp", "-1");
        Bench.FormOutcome.InputRefused refused =
                assertInstanceOf(Bench.FormOutcome.InputRefused.class, bench.work(sum, filled));
        assertEquals("u_temp", refused.at().orElseThrow().id());
        assertEquals("Uncertainty of temperature is -1: it must not be less than zero.", refused.sentence());
    }

    /**
     * NPL, frequently asked questions on temperature: 500.035 mm read at 23.7 °C with 11.7e-6 is 500.013 mm at 20 °C.
     */
    @Test
    void thePublishedSizeAtTwentyDegreesIsRead() {
        BenchForm sum = BenchKind.TEMPERATURE.form();
        FormValues filled = FormValues.nothing(Unit.MILLIMETRE)
                .with("reading", "500.035")
                .with("part_temp", "23.7")
                .with("part_alpha", "11.7")
                .with("gauge_temp", "20")
                .with("gauge_alpha", "11.5");
        Bench.FormOutcome.Done done = assertInstanceOf(Bench.FormOutcome.Done.class, bench.work(sum, filled));
        String size = new ResultRows(sum, words)
                .of(done.answer(), filled, false)
                .get(0)
                .value();
        assertTrue(size.startsWith("≈500.013"), size);
        assertTrue(size.endsWith(" mm"), size);
    }

    /** By hand: needs 0.146 at the mouth, has 0.031 at the floor. */
    @Test
    void aWallNoEvenCutBringsInIsToldWithWhatMayComeOff() {
        BenchForm sum = BenchKind.NEXT_CUT.form();
        FormValues filled = sum.settled(FormValues.nothing(Unit.MILLIMETRE)
                .with("side", "inside")
                .with("lower", "30.000")
                .with("upper", "30.021")
                .with("sizes", "29.854 29.990")
                .with("register", "radius"));
        Bench.FormOutcome.Done done = assertInstanceOf(Bench.FormOutcome.Done.class, bench.work(sum, filled));
        ResultRows read = new ResultRows(sum, words);
        assertEquals(
                List.of("safe cut, on diameter 0.031 mm", "state Uneven", "reason Uneven"),
                read.of(done.answer(), filled, false).stream()
                        .map(row -> row.name() + " " + row.value())
                        .toList());
        assertEquals(
                "Uneven by 0.136: no even cut brings every size in. At most 0.031 may come off without a size "
                        + "passing its limit.",
                read.notes(done.answer()).get(0));
    }

    @Test
    void aCutIsOneFigureAsTheRegisterCountsIt() {
        BenchForm sum = BenchKind.NEXT_CUT.form();
        FormValues filled = sum.settled(FormValues.nothing(Unit.MILLIMETRE)
                .with("side", "inside")
                .with("lower", "30.000")
                .with("upper", "30.021")
                .with("sizes", "29.900 29.910")
                .with("register", "radius")
                .with("aim_by", "third")
                .with("offset_step", "0.001"));
        Bench.FormOutcome.Done done = assertInstanceOf(Bench.FormOutcome.Done.class, bench.work(sum, filled));
        assertEquals(
                List.of("change of the offset +0.051 mm", "state Cut again"),
                new ResultRows(sum, words)
                        .of(done.answer(), filled, false).stream()
                                .map(row -> row.name() + " " + row.value())
                                .toList());
    }

    @Test
    void aClassNamedByTheDrawingStaysThoughItIsNotOftenNamed() {
        BenchForm sum = BenchKind.THREAD_LIMITS.form();
        FormValues named = sum.settled(
                FormValues.nothing(Unit.MILLIMETRE).with("form", "metric").with("class", "5g6g"));
        assertEquals("5g6g", named.text("class"));
        assertEquals("6H", sum.settled(named.with("side", "internal")).text("class"));
    }

    @Test
    void readingsEvenlyRoundTheWorkHaveTheirAngles() {
        BenchForm sum = BenchKind.RUN_OUT.form();
        FormValues filled = sum.settled(FormValues.nothing(Unit.MILLIMETRE).with("places", "4"));
        FormField readings = sum.fields(filled).stream()
                .filter(ask -> ask.id().equals("readings"))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("0°", "90°", "180°", "270°"), sum.places(readings, filled));
    }

    /** Machinery's Handbook, 31st ed., p. 711 example 3(a): 6 holes on 10 in about 7.5, 6, hole 1 at 30°. */
    @Test
    void everyHoleOfABoltCircleIsNamedWithItsXAndItsYAndTheirUnit() {
        BenchForm sum = BenchKind.BOLT_CIRCLE.form();
        FormValues filled = sum.settled(FormValues.nothing(Unit.INCH)
                .with("diameter", "10")
                .with("holes", "6")
                .with("start", "30")
                .with("centre_x", "7.5")
                .with("centre_y", "6"));
        Bench.FormOutcome.Done done = assertInstanceOf(Bench.FormOutcome.Done.class, bench.work(sum, filled));
        List<String> rows = new ResultRows(sum, words)
                .of(done.answer(), filled, false).stream()
                        .map(row -> row.name() + ": " + row.value())
                        .toList();
        assertEquals("Hole 1: X ≈11.83013 in and Y 8.5000 in", rows.get(1));
        assertEquals("Hole 2: X 7.5000 in and Y 11.0000 in", rows.get(2));
        assertEquals(7, rows.size());
    }
}
