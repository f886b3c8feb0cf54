package org.tenthwise.model.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.quantity.Degrees;

/** What hangs on a setting that may have been wrong: what was read under it, no more and no less. */
class ReadUnderASettingTest {

    private static final int BORE = 2;
    private static final int OTHER = 3;
    private static final Setting FIRST = Setting.direct(new Gauge("M-1", GaugeKind.MICROMETER, Optional.empty()));
    private static final Setting SECOND = Setting.direct(new Gauge("M-2", GaugeKind.MICROMETER, Optional.empty()));

    private final Happened happened = new Happened();

    @Test
    void whatWasReadBeforeTheSettingOrAtAnotherStepDoesNotHangOnIt() {
        happened.read(BORE, "20.001");
        Entry set = happened.did(new StepEvent.GaugeSet(BORE, FIRST));
        Entry first = happened.read(BORE, "20.002");
        happened.read(OTHER, "35.000");
        happened.did(new StepEvent.PassBegun(BORE, StepEvent.PassBegun.Why.CUT));
        Entry second = happened.read(BORE, "20.003");
        assertEquals(List.of(first, second), happened.run().gauges().under(set));
    }

    @Test
    void whatALimitGaugeSaidHangsOnItAndAFeelATemperatureAndANoteDoNot() {
        Entry set = happened.did(new StepEvent.GaugeSet(BORE, FIRST));
        Entry go = happened.did(new StepEvent.Answered(BORE, Question.GO_ENTERS, Answer.YES));
        happened.did(new StepEvent.Answered(OTHER, Question.GO_ENTERS, Answer.YES));
        happened.did(new StepEvent.Answered(BORE, Question.PLUG_FEELS, Answer.FREELY));
        happened.did(new StepEvent.TemperatureTaken(BORE, MeasuredBody.PART, Degrees.of("21", CELSIUS)));
        happened.did(new StepEvent.NoteMade(BORE, "looks well"));
        assertEquals(List.of(go), happened.run().gauges().under(set));
    }

    @Test
    void theNextSettingOfThatStepEndsItAndOneOfAnotherStepDoesNot() {
        Entry set = happened.did(new StepEvent.GaugeSet(BORE, FIRST));
        Entry first = happened.read(BORE, "20.002");
        Entry elsewhere = happened.did(new StepEvent.GaugeSet(OTHER, FIRST));
        Entry second = happened.read(BORE, "20.003");
        Entry next = happened.did(new StepEvent.GaugeSet(BORE, SECOND));
        Entry third = happened.read(BORE, "20.004");
        assertEquals(List.of(first, second), happened.run().gauges().under(set));
        assertEquals(List.of(third), happened.run().gauges().under(next));
        assertEquals(List.of(), happened.run().gauges().under(elsewhere));
    }

    @Test
    void aGaugeThatIsTakenEndsItBeforeItIsSet() {
        Entry set = happened.did(new StepEvent.GaugeSet(BORE, FIRST));
        Entry first = happened.read(BORE, "20.002");
        happened.did(new StepEvent.GaugeChosen(OTHER, "M-2", Optional.empty()));
        Entry second = happened.read(BORE, "20.003");
        happened.did(new StepEvent.GaugeChosen(BORE, "M-2", Optional.empty()));
        happened.read(BORE, "20.004");
        assertEquals(List.of(first, second), happened.run().gauges().under(set));
    }

    @Test
    void whatWasStruckOutForItselfHungOnItAndCountsNoMore() {
        Entry set = happened.did(new StepEvent.GaugeSet(BORE, FIRST));
        Entry slipped = happened.read(BORE, "20.200");
        Entry sound = happened.read(BORE, "20.002");
        happened.struckOut(slipped, "slipped");
        assertEquals(List.of(slipped, sound), happened.run().gauges().under(set));
        assertEquals(List.of(sound), happened.run().gauges().countingUnder(set));
    }

    @Test
    void settingsThatCountAndThoseStruckOutAreToldApartInTheirOrder() {
        Entry first = happened.did(new StepEvent.GaugeSet(BORE, FIRST));
        Entry reading = happened.read(BORE, "20.002");
        Entry elsewhere = happened.did(new StepEvent.GaugeSet(OTHER, FIRST));
        Entry second = happened.did(new StepEvent.GaugeSet(BORE, SECOND));
        assertEquals(List.of(first, elsewhere, second), happened.run().gauges().settings());
        assertEquals(Map.of(), happened.run().gauges().settingsStruck());

        happened.struckOut(reading, "slipped");
        Entry later = happened.struckOut(second, "anvil chipped");
        Entry out = happened.struckOut(first, "zero was off");
        assertEquals(List.of(elsewhere), happened.run().gauges().settings());
        Map<Entry, Pass.Struck> struck = happened.run().gauges().settingsStruck();
        assertEquals(List.of(first, second), List.copyOf(struck.keySet()));
        assertEquals(
                List.of(new Pass.Struck(out, "zero was off"), new Pass.Struck(later, "anvil chipped")),
                List.copyOf(struck.values()));
    }

    @Test
    void anEntryStruckOutTwiceKeepsTheFirstReason() {
        Entry set = happened.did(new StepEvent.GaugeSet(BORE, FIRST));
        Entry out = happened.struckOut(set, "anvil chipped");
        happened.struckOut(set, "once more");
        assertEquals(
                Map.of(set, new Pass.Struck(out, "anvil chipped")),
                happened.run().gauges().settingsStruck());
    }
}
