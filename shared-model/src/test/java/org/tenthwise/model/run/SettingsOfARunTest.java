package org.tenthwise.model.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepBuilder;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/** What a run says of its gauges: which is set, which lies ready, and what counts of what was read with them. */
class SettingsOfARunTest {

    private static final int BORE = 2;
    private static final Step STEP = new StepBuilder(BORE, 10, "Bore", new AskedCheck.Confirm("bored")).build();
    private static final Setting WITH_FIRST = Setting.onMaster(
            new Gauge("BG-1", GaugeKind.BORE_GAUGE, Optional.of(ReadingDirection.FALLS_WITH_SIZE)),
            "R-20",
            mm("20.001"),
            mm("0.000"));
    private static final Setting WITH_SECOND = Setting.onMaster(
            new Gauge("BG-2", GaugeKind.BORE_GAUGE, Optional.of(ReadingDirection.RISES_WITH_SIZE)),
            "R-20",
            mm("20.001"),
            mm("0.030"));
    private static final Setting LIMIT_GAUGE =
            Setting.direct(new Gauge("LG-3", GaugeKind.LIMIT_GAUGE, Optional.empty()));

    private final List<Entry> entries = new ArrayList<>();

    SettingsOfARunTest() {
        did(new Event.Begun(new PartId("X-1", "A"), "1", "", "", new PlanSource("", "")));
    }

    @Test
    void aGaugeTakenAndNotYetSetLeavesTheStepWithoutASetting() {
        did(new StepEvent.GaugeSet(BORE, WITH_FIRST));
        did(new StepEvent.GaugeChosen(BORE, "BG-2", Optional.empty()));
        assertEquals(Optional.empty(), run().gauges().setting(BORE));
        assertEquals("BG-2", run().gauges().chosen(BORE).orElseThrow().mark());
        did(new StepEvent.GaugeSet(BORE, WITH_SECOND));
        assertEquals(Optional.of(WITH_SECOND), run().gauges().setting(BORE));
        assertEquals(Optional.empty(), run().gauges().chosen(BORE));
    }

    @Test
    void theGaugeToReadWithIsTheOneTakenOrOfThePlanOrTheLastOfItsKind() {
        assertEquals(Optional.empty(), run().gauges().mark(thread(Optional.empty())));
        did(new StepEvent.GaugeSet(BORE, LIMIT_GAUGE));
        did(new StepEvent.GaugeSet(BORE + 1, WITH_FIRST));
        assertEquals(Optional.of("LG-3"), run().gauges().mark(thread(Optional.empty())));
        assertEquals(Optional.of("LG-9"), run().gauges().mark(thread(Optional.of("LG-9"))));
        did(new StepEvent.GaugeChosen(BORE + 2, "LG-4", Optional.empty()));
        assertEquals(Optional.of("LG-4"), run().gauges().mark(thread(Optional.of("LG-9"))));
    }

    private static Step thread(Optional<String> gauge) {
        return new StepBuilder(BORE + 2, 10, "Thread", new AskedCheck.GoNotGo("goes in", "does not", gauge)).build();
    }

    @Test
    void aGaugeTakenForOneStepSaysNothingOfAnother() {
        did(new StepEvent.GaugeSet(BORE, WITH_FIRST));
        did(new StepEvent.GaugeChosen(BORE + 1, "BG-2", Optional.empty()));
        assertEquals(Optional.of(WITH_FIRST), run().gauges().setting(BORE));
    }

    @Test
    void aReadingThatFollowsAGaugeNotSetIsNoReadingOfTheGaugeBefore() {
        did(new StepEvent.GaugeSet(BORE, WITH_FIRST));
        did(new StepEvent.GaugeChosen(BORE, "BG-2", Optional.empty()));
        read("0.010");
        assertEquals(
                Optional.empty(), run().passes(STEP).get(0).readings().get(0).setting());
    }

    @Test
    void aSettingStruckOutTakesEveryReadingMadeUnderItAlongAndNoOther() {
        long wrong = did(new StepEvent.GaugeSet(BORE, WITH_FIRST));
        read("0.010");
        did(new StepEvent.PassBegun(BORE, StepEvent.PassBegun.Why.CUT));
        read("0.011");
        did(new StepEvent.GaugeSet(BORE, WITH_SECOND));
        read("0.012");
        long out = did(new Event.StruckOut(wrong, "set on the wrong master"));
        read("0.013");

        List<Pass> passes = run().passes(STEP);
        assertEquals(List.of(Optional.of("set on the wrong master")), reasons(passes.get(0)));
        assertEquals(
                List.of(Optional.of("set on the wrong master"), Optional.empty(), Optional.empty()),
                reasons(passes.get(1)));
        assertEquals(
                out,
                passes.get(0).readings().get(0).struck().orElseThrow().entry().seq());
        assertEquals(Optional.of(WITH_FIRST), passes.get(0).readings().get(0).setting());
        assertEquals(Optional.of(WITH_SECOND), run().gauges().setting(BORE));
    }

    @Test
    void aReadingStruckOutBeforeItsSettingKeepsTheReasonOfItsOwn() {
        long wrong = did(new StepEvent.GaugeSet(BORE, WITH_FIRST));
        long reading = read("0.010");
        did(new Event.StruckOut(reading, "chip under the gauge"));
        did(new Event.StruckOut(wrong, "wrong zero"));
        assertEquals(
                List.of(Optional.of("chip under the gauge")),
                reasons(run().passes(STEP).get(0)));
    }

    @Test
    void aSettingStruckOutIsAskedForAgainWithTheSameGauge() {
        long wrong = did(new StepEvent.GaugeSet(BORE, WITH_SECOND));
        did(new Event.StruckOut(wrong, "wrong zero"));
        assertEquals(Optional.empty(), run().gauges().setting(BORE));
        assertEquals(
                new StepEvent.GaugeChosen(BORE, "BG-2", Optional.empty()),
                run().gauges().chosen(BORE).orElseThrow());
        assertTrue(run().gauges().settings().isEmpty());
    }

    @Test
    void whatALimitGaugeSaidGoesWithItAndAFeelDoesNot() {
        long wrong = did(new StepEvent.GaugeSet(BORE, LIMIT_GAUGE));
        did(new StepEvent.Answered(BORE, Question.GO_ENTERS, Answer.YES));
        did(new StepEvent.Answered(BORE, Question.PLUG_FEELS, Answer.WITH_DRAG));
        did(new Event.StruckOut(wrong, "found worn"));
        Pass pass = run().passes(STEP).get(0);
        assertFalse(pass.answer(Question.GO_ENTERS).isPresent());
        assertEquals(Optional.of(Answer.WITH_DRAG), pass.answer(Question.PLUG_FEELS));
    }

    private static List<Optional<String>> reasons(Pass pass) {
        return pass.readings().stream()
                .map(reading -> reading.struck().map(Pass.Struck::reason))
                .toList();
    }

    private long read(String typed) {
        return did(new StepEvent.ReadingTaken(BORE, "1", mm(typed)));
    }

    private long did(Event event) {
        long seq = entries.size() + 1;
        entries.add(new Entry(seq, "r", OffsetDateTime.parse("2026-11-25T07:31:00+01:00"), "Setter 1", event));
        return seq;
    }

    private Run run() {
        return new Run(entries);
    }

    private static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }
}
