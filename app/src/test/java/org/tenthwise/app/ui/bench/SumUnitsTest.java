package org.tenthwise.app.ui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.bench.Bench;
import org.tenthwise.app.bench.BenchKind;
import org.tenthwise.app.bench.FormValues;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.ui.bench.BenchFormState.FieldShown;
import org.tenthwise.app.ui.bench.BenchFormState.Hand;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/** What the key for the unit does to what was typed. 1 in is 25.4 mm exactly. */
class SumUnitsTest {

    private static final Bench BENCH = new Bench(Handbook.sums(), Words.ENGLISH);

    private static SumViewModel sum(BenchKind kind, Unit unit) {
        return new SumViewModel(kind.form(), FormValues.nothing(unit), BENCH, Words.ENGLISH, Optional.empty());
    }

    private static SumViewModel put(SumViewModel sum, String id, String... figures) {
        sum.goTo(id);
        for (String figure : figures) {
            figure.chars().mapToObj(Character::toString).forEach(sum::character);
            sum.next();
        }
        sum.goTo(id);
        return sum;
    }

    private static FieldShown field(SumViewModel sum, String id) {
        return sum.shownProperty().get().fields().stream()
                .filter(field -> field.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static String row(SumViewModel sum, String name) {
        return sum.shownProperty().get().found().rows().stream()
                .filter(row -> row.name().equals(name))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static Hand.Pad pad(SumViewModel sum) {
        return (Hand.Pad) sum.shownProperty().get().hand();
    }

    @Test
    void inchesAreMillimetresExactlyAndStayWhatWasTyped() {
        SumViewModel sum = put(sum(BenchKind.TEMPERATURE, Unit.INCH), "reading", "1.1815");
        sum.changeUnit();
        assertEquals("30.0101 mm", field(sum, "reading").value());
        assertEquals("1.1815 in typed", field(sum, "reading").remark());
        sum.changeUnit();
        assertEquals("1.1815 in", field(sum, "reading").value());
        assertEquals("", field(sum, "reading").remark());
    }

    @Test
    void millimetresThatNoInchComesOutToAreMarked() {
        SumViewModel sum = put(sum(BenchKind.TEMPERATURE, Unit.MILLIMETRE), "reading", "30.015");
        sum.changeUnit();
        assertEquals("≈1.181693 in", field(sum, "reading").value());
        assertEquals("30.015 mm typed", field(sum, "reading").remark());
        put(sum, "reading", "12.7");
        sum.changeUnit();
        assertEquals("322.580 mm", field(sum, "reading").value());
    }

    /** What stands on the pad is what was typed, with its unit; the next figure is in the unit shown. */
    @Test
    void aFigureOnThePadKeepsItsUnitAndTheNextHasTheOther() {
        SumViewModel sum = put(sum(BenchKind.TEMPERATURE, Unit.MILLIMETRE), "reading", "30.015");
        sum.changeUnit();
        assertEquals(new Hand.Pad("Reading", "30.015", "mm", "≈1.181693 in"), pad(sum));
        sum.takeBack();
        assertEquals(
                Length.of("30.01", Unit.MILLIMETRE),
                sum.filled().length("reading").orElseThrow());
        sum.goTo("reading");
        sum.character("1");
        assertEquals(new Hand.Pad("Reading", "1", "in", ""), pad(sum));
        assertEquals(Length.of("1", Unit.INCH), sum.filled().length("reading").orElseThrow());
    }

    @Test
    void readingsOfBothUnitsStandBesideOneAnother() {
        SumViewModel sum = put(sum(BenchKind.NEXT_CUT, Unit.MILLIMETRE), "sizes", "30.050", "30.046");
        sum.changeUnit();
        put(sum, "sizes", "1.183");
        assertEquals(
                List.of(
                        new FormValues.Figure("30.050", Unit.MILLIMETRE),
                        new FormValues.Figure("30.046", Unit.MILLIMETRE),
                        new FormValues.Figure("1.183", Unit.INCH)),
                sum.filled().figures("sizes"));
        for (int i = 0; i < "1.183".length() + 2; i++) {
            sum.takeBack();
        }
        sum.character("7");
        sum.changeUnit();
        assertEquals("30.050 30.047 mm", field(sum, "sizes").value());
    }

    /** 30.000 is on 30, however either is shown: in size, and neither cut nor past size for a rounded inch. */
    @Test
    void aSizeOnItsLimitStaysOnItInTheOtherUnit() {
        SumViewModel sum = sum(BenchKind.NEXT_CUT, Unit.MILLIMETRE);
        put(put(put(sum, "upper", "30"), "lower", "29.9"), "sizes", "30.000");
        put(sum, "offset_step", "0.001");
        assertEquals("In size", row(sum, "state"));
        sum.changeUnit();
        assertEquals("In size", row(sum, "state"));
    }

    /** ISO 2904 lists Tr 40 × 7; 7 mm is no round inch, and the thread is the same thread. */
    @Test
    void aDesignationIsWhatItIsInAnyUnit() {
        SumViewModel sum = sum(BenchKind.THREAD_LIMITS, Unit.MILLIMETRE);
        sum.goTo("form");
        sum.choose("trapezoidal");
        put(put(sum, "diameter", "40"), "pitch", "7");
        assertEquals("from the table", row(sum, "standing"));
        sum.changeUnit();
        assertEquals("from the table", row(sum, "standing"));
        assertEquals("7 mm", field(sum, "pitch").value());
        assertEquals("", field(sum, "pitch").remark());
        assertTrue(row(sum, "pitch dia. max.").endsWith(" in"), row(sum, "pitch dia. max."));
    }

    @Test
    void aRefusalNamesTheUnitOfAFigureOfTheOther() {
        SumViewModel sum = sum(BenchKind.NEXT_CUT, Unit.MILLIMETRE);
        put(put(put(sum, "upper", "29.979"), "lower", "30.000"), "sizes", "30.050");
        sum.changeUnit();
        assertEquals(
                "Upper limit is 29.979 mm: it is below lower limit, which is 30.000 mm.",
                field(sum, "upper").remark());
    }

    /** Tolerance classes are in millimetres: what was typed in inches before them is not taken for millimetres. */
    @Test
    void figuresOutOfSightGoAlong() {
        SumViewModel sum = put(sum(BenchKind.FIT, Unit.INCH), "bore_greatest", "1.1815");
        sum.goTo("fit_by");
        sum.choose("zones");
        sum.choose("sizes");
        assertEquals("30.0101 mm", field(sum, "bore_greatest").value());
        assertEquals(
                Length.of("1.1815", Unit.INCH),
                sum.filled().length("bore_greatest").orElseThrow());
    }

    /** By a hand that does anything: the key pressed twice changes nothing, and once not what anything is. */
    @ParameterizedTest
    @EnumSource(BenchKind.class)
    void theKeyNeverChangesWhatWasTyped(BenchKind kind) {
        Random random = new Random(254);
        for (int run = 0; run < 25; run++) {
            SumViewModel sum = sum(kind, random.nextBoolean() ? Unit.INCH : Unit.MILLIMETRE);
            for (int deed = 0; deed < 60; deed++) {
                anything(random, sum);
                FormValues was = sum.filled();
                sum.changeUnit();
                assertEquals(lengths(was), lengths(sum.filled()));
                sum.changeUnit();
                assertEquals(was.texts(), sum.filled().texts());
                assertEquals(lengths(was), lengths(sum.filled()));
            }
        }
    }

    private static TreeMap<String, List<FormValues.Figure>> lengths(FormValues filled) {
        TreeMap<String, List<FormValues.Figure>> lengths = new TreeMap<>();
        filled.texts().keySet().forEach(id -> lengths.put(id, filled.figures(id)));
        return lengths;
    }

    private static void anything(Random random, SumViewModel sum) {
        List<FieldShown> fields = sum.shownProperty().get().fields();
        switch (random.nextInt(8)) {
            case 0 -> sum.goTo(fields.get(random.nextInt(fields.size())).id());
            case 1 -> sum.takeBack();
            case 2 -> sum.next();
            case 3 -> sum.sign();
            case 4 -> sum.changeUnit();
            case 5 -> {
                if (sum.shownProperty().get().hand() instanceof Hand.Choose choose) {
                    sum.choose(choose.options()
                            .get(random.nextInt(choose.options().size()))
                            .choice());
                }
            }
            default ->
                List.of("1", "0", ".", "5", "25.4", "0.001")
                        .get(random.nextInt(6))
                        .chars()
                        .mapToObj(Character::toString)
                        .forEach(sum::character);
        }
    }
}
