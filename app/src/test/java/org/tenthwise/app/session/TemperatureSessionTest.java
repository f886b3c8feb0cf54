package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;

import java.time.Clock;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * Two bores of an invented bronze bush in a shop of 18 to 25 °C; a third one too wide in its limits to feel it. Sums by
 * hand.
 */
class TemperatureSessionTest extends RunBegun {

    private static final Plan PLAN = plan();

    TemperatureSessionTest() {
        super(PLAN);
    }

    private static Plan plan() {
        StringBuilder text = new StringBuilder(
                """
                [temperature]
                part_expansion = 16.2
                shop_least = 18
                shop_greatest = 25
                """);
        for (String upper : new String[] {"30.021", "30.021", "30.500"}) {
            text.append(
                    """

                    [[step]]
                    number = %d
                    operation = 10
                    kind = "bore"
                    name = "Bore"
                    method = "Two ways."
                    lower = 30.000
                    upper = %s
                    places = ["0°", "90°"]
                    cut_again = "too small"
                    gauge_kind = "inside-micrometer"
                    gauge = "IM-1"
                    """
                            .formatted(text.toString().split("\\[\\[step").length, upper));
        }
        return InventedPlans.inMillimetres(text.toString());
    }

    private SizeFinding bore() {
        return (SizeFinding) finding();
    }

    @Test
    void partThenGaugeThenTheReadingsEachJudgedAtTwentyDegrees() throws Exception {
        assertEquals(
                new Prompt.Temperature(MeasuredBody.PART, Optional.empty()),
                session.state().asked());
        enter("25");
        assertEquals(
                new Prompt.Temperature(MeasuredBody.GAUGE, Optional.empty()),
                session.state().asked());
        enter("20.0");
        assertInstanceOf(Prompt.Reading.class, session.state().asked());
        enter("30.0215", "30.0205");
        assertInstanceOf(Prompt.Nothing.class, session.state().asked());
        assertEquals(VerdictKind.PASS, standing());
        // 30.0215/(1 + 16.2e-6·5)
        assertEquals(Optional.of(Length.of("30.019068", Unit.MILLIMETRE)), bore().value());
    }

    /**
     * 30.018/(1 + 81e-6) = 30.015569 would pass; 29.990/(1 + 81e-6) = 29.987571 settles the check before the second
     * reading.
     */
    @Test
    void aReadingThatIsOutAtTwentyDegreesSettlesTheCheckAtOnce() throws Exception {
        enter("25", "20", "29.990");
        assertEquals(VerdictKind.CUT_AGAIN, standing());
    }

    /** Metal taken between two checks is not always entered, and a part cools. */
    @Test
    void theNextCheckSuggestsWhatWasReadLastOfTheGaugeAndNothingOfThePart() throws Exception {
        enter("24.5", "20.0", "30.010", "30.010");
        session.goTo(2);
        assertEquals(
                new Prompt.Temperature(MeasuredBody.PART, Optional.empty()),
                session.state().asked());
        assertEquals(
                Objection.Kind.NOT_A_NUMBER,
                session.enter("").objection().orElseThrow().kind());
        enter("23.5");
        assertEquals(
                new Prompt.Temperature(MeasuredBody.GAUGE, Optional.of(Degrees.of("20.0", CELSIUS))),
                session.state().asked());
        assertEquals(Optional.empty(), bore().warmth().orElseThrow().gauge());
        enter("");
        assertEquals(
                Optional.of(Degrees.of("23.5", CELSIUS)),
                bore().warmth().orElseThrow().part());
        assertEquals(
                Optional.of(Degrees.of("20.0", CELSIUS)),
                bore().warmth().orElseThrow().gauge());
    }

    @Test
    void whatWasReadOfThePartAtAnotherCheckInBetweenIsNotSuggested() throws Exception {
        enter("24.5", "20.0", "29.9");
        session.goTo(2);
        enter("23.5");
        session.goTo(1);
        session.again(StepEvent.PassBegun.Why.MEASURED_AGAIN);
        assertEquals(
                new Prompt.Temperature(MeasuredBody.PART, Optional.of(Degrees.of("24.5", CELSIUS))),
                session.state().asked());
    }

    @Test
    void whatWasReadOfThePartTwoRoundsBeforeIsNotSuggested() throws Exception {
        enter("24", "21", "29.9");
        session.again(StepEvent.PassBegun.Why.MEASURED_AGAIN);
        session.readingsFirst(true);
        enter("29.9", "29.9");
        session.again(StepEvent.PassBegun.Why.MEASURED_AGAIN);
        assertEquals(
                new Prompt.Temperature(MeasuredBody.PART, Optional.empty()),
                session.state().asked());
    }

    @Test
    void withNothingToSuggestAnEmptyEntryIsNoTemperature() throws Exception {
        assertEquals(
                Objection.Kind.NOT_A_NUMBER,
                session.enter("").objection().orElseThrow().kind());
    }

    @Test
    void aPassReadAgainSuggestsTheLastTemperatureAndOneAfterACutNone() throws Exception {
        enter("24", "21", "29.9");
        session.again(StepEvent.PassBegun.Why.MEASURED_AGAIN);
        assertEquals(
                new Prompt.Temperature(MeasuredBody.PART, Optional.of(Degrees.of("24", CELSIUS))),
                session.state().asked());
        enter("", "", "29.9", "29.9");
        session.again(StepEvent.PassBegun.Why.CUT);
        assertEquals(
                new Prompt.Temperature(MeasuredBody.PART, Optional.empty()),
                session.state().asked());
        session.goTo(2);
        assertEquals(
                new Prompt.Temperature(MeasuredBody.PART, Optional.empty()),
                session.state().asked());
    }

    @Test
    void noTemperatureFromBeforeReworkIsSuggested() throws Exception {
        enter("24", "21", "30.100");
        assertEquals(
                Optional.empty(),
                session.dispose(Disposition.REWORK, "Honed to the next size", "Inspector 1", "")
                        .objection());
        assertEquals(
                new Prompt.Temperature(MeasuredBody.PART, Optional.empty()),
                session.state().asked());
    }

    /** Degrees Fahrenheit, frost, a figure of another gauge, much colder than the shop. */
    @ParameterizedTest
    @ValueSource(strings = {"72.5", "-1", "30.013", "7.9", "60.1"})
    void whatIsHardlyATemperatureHereIsTakenOnPurposeAlone(String text) throws Exception {
        Objection slip = session.enter(text).objection().orElseThrow();
        assertEquals(Objection.Kind.FAR_OFF, slip.kind());
        assertEquals(slip, session.enter(text).objection().orElseThrow());
        assertEquals(Optional.empty(), session.keep(text).objection());
        assertEquals(
                new Prompt.Temperature(MeasuredBody.GAUGE, Optional.empty()),
                session.state().asked());
    }

    @ParameterizedTest
    @CsvSource({"hot, NOT_A_NUMBER", "-274, NO_SUM", "1001, NO_SUM"})
    void whatIsNoTemperatureAtAllIsRefusedHoweverOften(String text, Objection.Kind kind) throws Exception {
        session.enter(text);
        assertEquals(kind, session.keep(text).objection().orElseThrow().kind());
        assertTrue(session.state().pass().isEmpty());
    }

    @Test
    void oneStruckOutIsAskedForAgainAndTheCheckIsOpenUntilThen() throws Exception {
        enter("25", "20", "30.0215", "30.0205");
        long part = session.state().pass().temperatures().get(0).entry().seq();
        session.strikeOut(part, "Thermometer lay on the chuck");
        assertEquals(VerdictKind.OPEN, standing());
        assertEquals(
                new Prompt.Temperature(MeasuredBody.PART, Optional.empty()),
                session.state().asked());
        enter("22");
        // 30.0215/(1 + 16.2e-6·2) = 30.020527
        assertEquals(VerdictKind.PASS, standing());
    }

    @Test
    void whoHasNoThermometerAtHandReadsFirstAndTheVerdictWaits() throws Exception {
        session.readingsFirst(true);
        assertInstanceOf(Prompt.Reading.class, session.state().asked());
        enter("30.010", "30.010");
        assertEquals(VerdictKind.OPEN, standing());
        assertEquals(
                new Prompt.Temperature(MeasuredBody.PART, Optional.empty()),
                session.state().asked());
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                session.readingsFirst(false).objection().orElseThrow().kind());
        enter("25", "20");
        assertEquals(VerdictKind.PASS, standing());
    }

    @Test
    void whereItDoesNotMatterNoneIsAskedForAndNoneIsTaken() throws Exception {
        session.goTo(3);
        assertInstanceOf(Prompt.Reading.class, session.state().asked());
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                session.temperatures()
                        .take(MeasuredBody.PART, "21")
                        .objection()
                        .orElseThrow()
                        .kind());
        enter("30.2", "30.2");
        assertEquals(VerdictKind.PASS, standing());
    }

    @Test
    void whatWasTakenIsThereWhenTheRunIsOpenedAgain() throws Exception {
        enter("25", "20.50");
        String id = session.id();
        session = new Runs(ledger, Clock.systemUTC()).open(id);
        assertEquals(
                Optional.of(Degrees.of("20.50", CELSIUS)),
                session.state().pass().temperature(MeasuredBody.GAUGE));
        assertEquals(1, session.state().inHand().number());
        assertInstanceOf(Prompt.Reading.class, session.state().asked());
    }
}
