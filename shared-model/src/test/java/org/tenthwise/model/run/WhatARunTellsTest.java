package org.tenthwise.model.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepBuilder;
import org.tenthwise.model.quantity.Degrees;

/** What a run says of itself: what it is, in whose hands, who measured, how warm it was, what was done last. */
class WhatARunTellsTest {

    private static final Step STEP = new StepBuilder(1, 10, "Bore", new AskedCheck.Confirm("bored")).build();

    private final Happened happened = new Happened();

    @Test
    void aRunIsKnownByItsBeginning() {
        assertEquals("r", happened.run().id());
        assertEquals(Happened.BEGUN, happened.run().begun());
    }

    @Test
    void entriesWithoutABeginningAreNoRun() {
        Entry reading = happened.read(1, "30.010");
        assertThrows(IllegalArgumentException.class, () -> new Run(List.of()));
        assertThrows(IllegalArgumentException.class, () -> new Run(List.of(reading)));
    }

    @Test
    void whoBeganARunHasItInHandUntilItIsHandedOver() {
        happened.did("Setter 2", new StepEvent.NoteMade(0, "looked at it"));
        assertEquals("Setter 1", happened.run().by());
        happened.did(new Event.HandedOver("Setter 2"));
        assertEquals("Setter 2", happened.run().by());
        happened.did("Setter 2", new Event.HandedOver("Setter 3"));
        happened.did("Setter 2", new StepEvent.NoteMade(0, "went home"));
        assertEquals("Setter 3", happened.run().by());
    }

    static List<Event> whatIsDoneAtAStep() {
        return List.of(
                new StepEvent.GaugeSet(2, Setting.direct(new Gauge("M-2", GaugeKind.MICROMETER, Optional.empty()))),
                new StepEvent.GaugeChosen(2, "M-3", Optional.empty()),
                new StepEvent.ReadingTaken(2, "1.1", Happened.mm("30.020")),
                new StepEvent.TemperatureTaken(2, MeasuredBody.PART, Degrees.of("21", CELSIUS)),
                new StepEvent.Answered(2, Question.GO_ENTERS, Answer.YES),
                new StepEvent.CutOnThese(2, "cannot be reached"),
                new StepEvent.PassBegun(2, StepEvent.PassBegun.Why.CUT),
                new StepEvent.DispositionSigned(2, Disposition.REWORK, "burr", "Inspector 1"));
    }

    @ParameterizedTest
    @MethodSource("whatIsDoneAtAStep")
    void whatIsDoneAtAnotherStepChangesNoPassOfThisOne(Event elsewhere) {
        happened.did(
                new StepEvent.GaugeSet(1, Setting.direct(new Gauge("M-1", GaugeKind.MICROMETER, Optional.empty()))));
        happened.read(1, "30.010");
        happened.did(new StepEvent.CutOnThese(1, "the other end is behind the centre"));
        List<Pass> before = happened.run().passes(STEP);
        happened.did(elsewhere);
        assertEquals(before, happened.run().passes(STEP));
        happened.read(1, "30.011");
        assertEquals(
                Optional.of("M-1"),
                happened.run().pass(STEP).readings().get(1).setting().map(setting -> setting.gauge()
                        .id()));
    }

    static List<Event> whatMeasures() {
        return List.of(
                new StepEvent.ReadingTaken(1, "1.1", Happened.mm("30.010")),
                new StepEvent.TemperatureTaken(1, MeasuredBody.PART, Degrees.of("21", CELSIUS)),
                new StepEvent.Answered(1, Question.GO_ENTERS, Answer.YES));
    }

    @ParameterizedTest
    @MethodSource("whatMeasures")
    void whoTookAnythingOfThePartHasMeasuredIt(Event measuring) {
        happened.did("Setter 2", measuring);
        assertTrue(happened.run().wasReadBy("setter 2"));
        assertFalse(happened.run().wasReadBy("Setter 1"), "beginning a run is no measuring");
    }

    static List<Event> whatMeasuresNothing() {
        return List.of(
                new StepEvent.NoteMade(1, "looks well"),
                new StepEvent.DoubtFlagged(1, "a score?"),
                new Event.StruckOut(2, "slipped"),
                new StepEvent.GaugeSet(1, Setting.direct(new Gauge("M-1", GaugeKind.MICROMETER, Optional.empty()))),
                new Event.Signed("Inspector 1", SignedAs.MEASURED_AGAIN),
                new Event.HandedOver("Inspector 1"));
    }

    @ParameterizedTest
    @MethodSource("whatMeasuresNothing")
    void whoReadNothingMayMeasureAgainAsASecondPerson(Event other) {
        happened.read(1, "30.010");
        happened.did("Inspector 1", other);
        assertFalse(happened.run().wasReadBy("Inspector 1"));
    }

    @Test
    void everyTemperatureIsToldWhateverTheStepAndWhetherItStillCounts() {
        Entry part = happened.did(new StepEvent.TemperatureTaken(1, MeasuredBody.PART, Degrees.of("23.5", CELSIUS)));
        happened.read(1, "30.010");
        Entry gauge = happened.did(new StepEvent.TemperatureTaken(2, MeasuredBody.GAUGE, Degrees.of("20.5", CELSIUS)));
        assertEquals(
                List.of(part, gauge),
                happened.run().temperatures().map(Pass.Temperature::entry).toList());

        Entry out = happened.struckOut(part, "thermometer lay on the chips");
        List<Pass.Temperature> temperatures = happened.run().temperatures().toList();
        assertEquals(
                new Pass.Temperature(
                        part,
                        MeasuredBody.PART,
                        Degrees.of("23.5", CELSIUS),
                        Optional.of(new Pass.Struck(out, "thermometer lay on the chips"))),
                temperatures.get(0));
        assertEquals(
                new Pass.Temperature(gauge, MeasuredBody.GAUGE, Degrees.of("20.5", CELSIUS), Optional.empty()),
                temperatures.get(1));
    }

    @Test
    void theTemperatureThatCountsIsTheLatestOfThatBodyAndNoneOnceThatIsStruckOut() {
        happened.did(new StepEvent.TemperatureTaken(1, MeasuredBody.PART, Degrees.of("23.5", CELSIUS)));
        happened.did(new StepEvent.TemperatureTaken(1, MeasuredBody.GAUGE, Degrees.of("20.5", CELSIUS)));
        Entry later = happened.did(new StepEvent.TemperatureTaken(1, MeasuredBody.PART, Degrees.of("24.0", CELSIUS)));
        assertEquals(
                Optional.of(Degrees.of("24.0", CELSIUS)),
                happened.run().pass(STEP).temperature(MeasuredBody.PART));
        happened.struckOut(later, "read too soon");
        assertEquals(Optional.empty(), happened.run().pass(STEP).temperature(MeasuredBody.PART));
        assertEquals(
                Optional.of(Degrees.of("20.5", CELSIUS)),
                happened.run().pass(STEP).temperature(MeasuredBody.GAUGE));
    }

    @Test
    void thatAStoreWasTakenOverIsNothingDoneInTheRun() {
        Entry reading = happened.read(1, "30.010");
        happened.did(new Event.TakenOver());
        assertEquals(reading, happened.run().last());
        Entry note = happened.did(new StepEvent.NoteMade(0, "put away"));
        assertEquals(note, happened.run().last());
    }

    @Test
    void thatAStationSealedItIsNothingDoneInTheRun() {
        Entry reading = happened.read(1, "30.010");
        happened.did(new Event.Sealed(2, "0f", "a1", "key", "signature"));
        assertEquals(reading, happened.run().last());
    }

    @Test
    void entriesOfANewerReleaseAreToldApart() {
        happened.read(1, "30.010");
        assertEquals(List.of(), happened.run().unknown());
        Entry unknown = happened.did(new Event.Unknown("recut", "{}"));
        happened.read(1, "30.011");
        assertEquals(List.of(unknown), happened.run().unknown());
    }

    @Test
    void aRunIsClosedFromItsClosingOn() {
        happened.read(1, "30.010");
        assertEquals(Optional.empty(), happened.run().closed());
        Entry closing = happened.did(new Event.Closed("Setter 1", SignedAs.MACHINED_AND_MEASURED));
        happened.did(new StepEvent.NoteMade(0, "put away"));
        assertEquals(Optional.of(closing.event()), happened.run().closed());
        assertEquals(Optional.empty(), happened.run().before(closing).closed());
    }

    @Test
    void aDispositionIsInForceUntilWhatItWasSignedForChanges() {
        happened.did(new StepEvent.Answered(1, Question.CONFIRMED, Answer.NO));
        assertEquals(Optional.empty(), inForce());
        StepEvent.DispositionSigned carryOn =
                new StepEvent.DispositionSigned(1, Disposition.CARRY_ON, "tip held", "Foreman");
        happened.did(carryOn);
        assertEquals(Optional.of(carryOn), inForce());
        happened.did(new StepEvent.Answered(1, Question.CONFIRMED, Answer.NO));
        assertEquals(Optional.empty(), inForce());
        assertEquals(1, happened.run().dispositions(STEP).size(), "what lapsed is told all the same");
    }

    private Optional<StepEvent.DispositionSigned> inForce() {
        return happened.run().dispositions(STEP).stream()
                .filter(Disposing::inForce)
                .map(Disposing::disposed)
                .findFirst();
    }

    @ParameterizedTest
    @EnumSource(names = {"RESTED_ON_CHANGED", "REWORKED", "REPAIRED"})
    void aPassThatBeginsByItselfIsNoEntry(StepEvent.PassBegun.Why byItself) {
        assertThrows(IllegalArgumentException.class, () -> new StepEvent.PassBegun(1, byItself));
    }

    @Test
    void passesAreNumberedFromOne() {
        happened.read(1, "30.010");
        happened.did(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT));
        happened.read(1, "30.020");
        happened.did(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.MEASURED_AGAIN));
        assertEquals(
                List.of(1, 2, 3),
                happened.run().passes(STEP).stream().map(Pass::number).toList());
        assertEquals(3, happened.run().pass(STEP).number());
    }
}
