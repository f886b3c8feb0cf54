package org.tenthwise.app.ui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.bench.Bench;
import org.tenthwise.app.bench.BenchKind;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.bench.BenchFormState.FieldShown;
import org.tenthwise.model.run.StepEvent;

class SumViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private SumViewModel alone(BenchKind kind) {
        BenchViewModel model =
                BenchViewModel.alone(new Bench(Handbook.sums(), workshop.words), workshop.words, workshop);
        model.choose(kind);
        return model.inHandProperty().get().orElseThrow();
    }

    private static void type(SumViewModel sum, String figure) {
        figure.chars().mapToObj(Character::toString).forEach(sum::character);
    }

    /** Fills in the figures one after another, an Enter after each. */
    private static SumViewModel enter(SumViewModel sum, String... figures) {
        for (String figure : figures) {
            type(sum, figure);
            sum.enter();
        }
        return sum;
    }

    private static void put(SumViewModel sum, String id, String figure) {
        sum.goTo(id);
        type(sum, figure);
    }

    private static FieldShown field(SumViewModel sum, String id) {
        return sum.shownProperty().get().fields().stream()
                .filter(field -> field.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static String onPad(SumViewModel sum) {
        return ((BenchFormState.Hand.Pad) sum.shownProperty().get().hand()).figure();
    }

    @Test
    void aKeyTakesTheFigureAwayThatStandsAndNoOther() {
        SumViewModel sum = enter(alone(BenchKind.TEMPERATURE), "500.035", "23.7");
        sum.goTo("reading");
        sum.clear();
        assertEquals("", onPad(sum));
        assertTrue(field(sum, "reading").empty());
        assertEquals("23.7 °C", field(sum, "part_temp").value());
        type(sum, "500.040");
        assertEquals("500.040 mm", field(sum, "reading").value());
    }

    @Test
    void theAnswerComesAsItIsTyped() {
        SumViewModel sum = enter(alone(BenchKind.TEMPERATURE), "500.035", "23.7", "11.7", "20");
        assertEquals(
                "Needed: Gauge expansion.", sum.shownProperty().get().found().sentence());
        type(sum, "1");
        assertEquals(
                "size at 20 °C", sum.shownProperty().get().found().rows().get(0).name());
        assertTrue(sum.shownProperty().get().picture().isPresent());
        assertTrue(
                sum.shownProperty().get().found().basis().startsWith("Source: ISO 1"),
                sum.shownProperty().get().found()::basis);
    }

    @Test
    void aRefusedFieldKeepsWhatWasTypedAndSoDoAllOthers() {
        SumViewModel sum = enter(alone(BenchKind.TEMPERATURE), "500.035", "23.7", "11.7", "20", "11.5");
        sum.goTo("u_temp");
        type(sum, "-0.5");
        assertTrue(field(sum, "u_temp").refused());
        assertEquals("−0.5 °C", field(sum, "u_temp").value());
        assertEquals(
                "Uncertainty of temperature is -0.5: it must not be less than zero.",
                field(sum, "u_temp").remark());
        assertEquals("-0.5", sum.filled().text("u_temp"));
        assertEquals("500.035 mm", field(sum, "reading").value());
        assertEquals("", field(sum, "reading").remark());
        assertTrue(sum.shownProperty().get().found().refused());
        assertEquals(
                List.of(
                        "reading",
                        "part_temp",
                        "part_material",
                        "part_alpha",
                        "gauge_temp",
                        "gauge_material",
                        "gauge_alpha",
                        "u_temp"),
                sum.shownProperty().get().found().typed().stream()
                        .map(FieldShown::id)
                        .toList(),
                "all that was typed, the one refused too, stays in sight");
        assertEquals(
                field(sum, "u_temp").remark(),
                ((BenchFormState.Hand.Pad) sum.shownProperty().get().hand()).line());
        sum.sign();
        assertFalse(field(sum, "u_temp").refused());
        assertTrue(sum.shownProperty().get().found().sentence().isEmpty());
    }

    /** Callister and Rethwisch, Table B.6: steel 4340 expands by 12.3e-6 per °C. */
    @Test
    void aMaterialFillsItsExpansionInAndAFigureTypedIsOfNoMaterial() {
        SumViewModel sum = alone(BenchKind.TEMPERATURE);
        sum.goTo("part_material");
        sum.choose("steel 4340");
        assertEquals("12.3", sum.filled().text("part_alpha"));
        sum.goTo("part_alpha");
        type(sum, "12");
        assertEquals("typed", sum.filled().text("part_material"));
        assertEquals("12", sum.filled().text("part_alpha"));
    }

    @Test
    void aFieldGoneBackToBeginsAnewWithTheFirstFigureAndIsMendedByTakingBack() {
        SumViewModel sum = enter(alone(BenchKind.TEMPERATURE), "500.035");
        sum.goTo("reading");
        sum.takeBack();
        assertEquals("500.03", sum.filled().text("reading"));
        sum.goTo("reading");
        type(sum, "4");
        assertEquals("4", sum.filled().text("reading"));
    }

    @Test
    void severalReadingsFollowOneAnotherAndAreTakenBackOneByOne() {
        SumViewModel sum = alone(BenchKind.RUN_OUT);
        sum.goTo("places");
        sum.choose("4");
        sum.goTo("readings");
        enter(sum, "0.004", "0.001");
        assertEquals(
                "Readings at 180°, 3 of 4",
                ((BenchFormState.Hand.Pad) sum.shownProperty().get().hand()).asked());
        type(sum, "9");
        sum.takeBack();
        sum.takeBack();
        sum.takeBack();
        assertEquals("0.004 0.00", sum.filled().text("readings"));
        type(sum, "2");
        enter(sum, "", "0.006", "0.009");
        assertEquals("0.004 0.002 0.006 0.009", sum.filled().text("readings"));
        assertEquals("run-out", sum.shownProperty().get().found().rows().get(0).name());
        assertEquals("0.007 mm", sum.shownProperty().get().found().rows().get(0).value());
    }

    private static List<String> values(SumViewModel sum) {
        return sum.shownProperty().get().found().rows().stream()
                .map(row -> row.name() + " " + row.value())
                .toList();
    }

    /**
     * The size worked by hand is 500.0133… (500.035 (1 − 11.7e-6 · 3.7)): first to a tenth of a micrometre, marked as
     * rounded, then in full and no more marked.
     */
    @Test
    void aFigureNotShownInFullSaysSoAndAKeyShowsAllOfIt() {
        SumViewModel sum = enter(alone(BenchKind.TEMPERATURE), "500.035", "23.7", "11.7", "20", "11.5");
        assertEquals("size at 20 °C ≈500.0134 mm", values(sum).get(0));
        assertTrue(sum.shownProperty().get().decimals().ready());
        sum.changeDecimals();
        assertEquals("size at 20 °C 500.013354 mm", values(sum).get(0));
        assertTrue(values(sum).stream().noneMatch(row -> row.contains("≈")), values(sum)::toString);
        sum.changeDecimals();
        assertEquals("size at 20 °C ≈500.0134 mm", values(sum).get(0));
    }

    @Test
    void whereNothingIsRoundedThereIsNothingMoreToShow() {
        SumViewModel sum = enter(alone(BenchKind.FIT), "30.015", "30.011", "29.993", "29.991");
        assertFalse(sum.shownProperty().get().decimals().ready());
        assertTrue(values(sum).contains("min. clearance +0.018 mm"), values(sum)::toString);
    }

    @Test
    void withoutARunTheNoteCannotBePressedAndSaysWhy() {
        SumViewModel sum = enter(alone(BenchKind.TEMPERATURE), "500.035", "23.7", "11.7", "20", "11.5");
        assertFalse(sum.shownProperty().get().note().ready());
        assertEquals("no run in hand", sum.shownProperty().get().note().line());
    }

    @Test
    void theNoteHasTheSumItsFiguresItsAnswerAndItsSourceAndIsTakenOnce() {
        RunSession session = workshop.atTheBore("014", "0.013");
        BenchViewModel model = BenchViewModel.beside(
                session,
                session.state(),
                new Bench(Handbook.sums(), workshop.words),
                workshop.words,
                workshop,
                workshop.tasks);
        model.choose(BenchKind.TEMPERATURE);
        SumViewModel sum = model.inHandProperty().get().orElseThrow();
        assertEquals("30.013 mm", field(sum, "reading").value());
        put(sum, "part_temp", "23.7");
        put(sum, "part_alpha", "11.7");
        put(sum, "gauge_temp", "20");
        sum.note();
        sum.note();
        List<String> notes = session.state().sheet().run().entries().stream()
                .map(entry -> entry.event())
                .filter(StepEvent.NoteMade.class::isInstance)
                .map(event -> ((StepEvent.NoteMade) event).words())
                .toList();
        assertEquals(1, notes.size());
        String note = notes.get(0);
        assertTrue(
                note.startsWith("Bench sum, Temperature: reading 30.013 mm, part temperature 23.7 °C, part expansion "
                        + "11.7 µm/m °C, "
                        + "gauge temperature 20 °C"),
                note);
        assertTrue(note.contains("Result: size at 20 °C 30.011701 mm"), note);
        assertTrue(note.contains("Source: ISO 1"), note);
        assertEquals("noted at 13", sum.shownProperty().get().note().line());
        assertFalse(sum.shownProperty().get().note().ready());
        sum.goTo("part_temp");
        type(sum, "24");
        assertTrue(sum.shownProperty().get().note().ready());
    }

    @Test
    void whatWasTypedIsThereWhenTheSumIsChosenAgain() {
        BenchViewModel model =
                BenchViewModel.alone(new Bench(Handbook.sums(), workshop.words), workshop.words, workshop);
        model.choose(BenchKind.ZONE);
        type(model.inHandProperty().get().orElseThrow(), "30");
        model.back();
        assertTrue(model.inHandProperty().get().isEmpty());
        model.choose(BenchKind.ZONE);
        assertEquals("30", model.inHandProperty().get().orElseThrow().filled().text("diameter"));
        model.back();
        model.back();
        assertEquals(List.of("back"), workshop.asked);
    }

    @Test
    void besideARunBackFromTheSumOfItsStepLeadsToTheRun() {
        RunSession session = workshop.atTheBore("014", "0.013");
        BenchViewModel model = BenchViewModel.beside(
                session,
                session.state(),
                new Bench(Handbook.sums(), workshop.words),
                workshop.words,
                workshop,
                workshop.tasks);
        assertEquals(
                BenchKind.NEXT_CUT, model.inHandProperty().get().orElseThrow().kind());
        model.back();
        assertEquals(List.of("back"), workshop.asked);
    }
}
