package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.quantity.TemperatureScale.FAHRENHEIT;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.text.Heat;
import org.tenthwise.app.text.Remarks;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * The bore of an invented bronze bush in inches, 9.0 in 1e-6 per °F, in a shop of 64 to 78 °F. The same in °C is 16.2
 * and 25 °C for 77 °F: 1.1820/(1 + 9.0e-6 · 9) = 1.18190427, by 0.00009573 less than read.
 */
class FahrenheitSessionTest extends RunBegun {

    private static final Words ENGLISH = Words.of(Locale.ENGLISH);
    private static final Plan PLAN = InventedPlans.inInches(
            """
            [temperature]
            degrees = "F"
            part_expansion = 9.0
            shop_least = 64
            shop_greatest = 78

            [[step]]
            number = 1
            operation = 10
            kind = "bore"
            name = "Bore"
            method = "Two ways."
            lower = 1.1811
            upper = 1.18192
            places = ["front"]
            cut_again = "too small"
            gauge_kind = "inside-micrometer"
            gauge = "IM-1"
            """);

    FahrenheitSessionTest() {
        super(PLAN);
    }

    private SizeFinding bore() {
        return (SizeFinding) finding();
    }

    @Test
    void theSizeIsBroughtToSixtyEightDegrees() throws Exception {
        enter("77.0", "68", "1.1820");
        assertEquals(VerdictKind.PASS, standing());
        Length value = bore().value().orElseThrow();
        assertTrue(
                value.minus(Length.of("1.18190427", Unit.INCH)).abs().isBelow(Length.of("0.0000001", Unit.INCH)),
                value.toString());
    }

    /** Steel is 11.5e-6 per °C: 11.5 / 1.8 = 6.3889. */
    @Test
    void whatItWasBroughtByIsSaidInTheDegreesAndTheExpansionsOfThePlan() throws Exception {
        enter("77.0", "68", "1.1820");
        assertEquals(
                "Part 77.0 °F, gauge 68 °F. Corrected to 68 °F: \u22120.000096 in.",
                new Remarks(ENGLISH).of(bore()).get(0));
        assertEquals(
                "Part 9 ± 10 % in 1e-6 per °F, from the plan",
                new Heat(ENGLISH).figures(bore()).get(0));
        assertEquals(
                "Gauge 6.3889 ± 10 % in 1e-6 per °F, from steel, as the plan gives no other",
                new Heat(ENGLISH).figures(bore()).get(1));
    }

    /** 22 is a shop in °C; in °F it is a frost. */
    @Test
    void aFigureInTheOtherDegreesIsFarOffAndNamesWhatIsExpected() throws Exception {
        Objection objection = session.enter("22").objection().orElseThrow();
        assertEquals(Objection.Kind.FAR_OFF, objection.kind());
        assertEquals("64\u201378", objection.expected());
    }

    /** Nothing is colder than −459.67 °F. */
    @Test
    void whatIsColderThanAnythingIsNotEvenKept() throws Exception {
        assertEquals(Objection.Kind.NO_SUM, refused(session.keep("-460")));
    }

    @Test
    void whatWasReadLastIsSuggestedAsItWasTyped() throws Exception {
        enter("77.0", "70.5", "1.1800");
        taken(session.again(Why.MEASURED_AGAIN));
        assertEquals(
                new Prompt.Temperature(MeasuredBody.PART, Optional.of(Degrees.of("77.0", FAHRENHEIT))),
                session.state().asked());
    }

    @Test
    void theLedgerGivesItBackInTheDegreesItWasReadIn() throws Exception {
        enter("77.0", "68.0");
        assertEquals(
                Optional.of(Degrees.of("68.0", FAHRENHEIT)),
                Runs.sheet(ledger, session.id()).run().pass(PLAN.step(1)).temperature(MeasuredBody.GAUGE));
    }
}
