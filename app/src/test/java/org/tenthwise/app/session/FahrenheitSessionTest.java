package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.quantity.TemperatureScale.FAHRENHEIT;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.store.sqlite.SqliteLedger;
import org.tenthwise.app.text.Heat;
import org.tenthwise.app.text.Words;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.plan.Body;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.run.Event.PassBegun.Why;
import org.tenthwise.model.verdict.Standing;

/**
 * The bore of an invented bronze bush in inches, 9.0 in 1e-6 per °F, in a shop of 64 to 78 °F. The same in °C is 16.2 and 25 °C for
 * 77 °F: 1.1820/(1 + 9.0e-6 · 9) = 1.18190427, by 0.00009573 less than read.
 */
class FahrenheitSessionTest {

    private static final Words ENGLISH = Words.of(Locale.ENGLISH);
    private static final Plan PLAN = ((PlanReading.Good) new PlanReader().read("""
            format = 1
            part = "T-8"
            revision = "A"
            issue = "1"
            name = "Test bush, invented"
            material = "bronze"
            drawing = "T-8"
            unit = "in"

            [temperature]
            degrees = "F"
            part_expansion = 9.0
            shop_least = 64
            shop_greatest = 78

            [[operation]]
            number = 10
            name = "Bore"

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
            """)).plan();

    @TempDir
    private Path dir;
    private SqliteLedger ledger;
    private RunSession session;

    @BeforeEach
    void beginARun() throws Exception {
        ledger = SqliteLedger.open(dir.resolve("s.db"));
        Clock clock = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));
        session = new Shop(ledger, clock).begin(new Beginning(PLAN, "1", "", "", "Setter 2"));
    }

    @AfterEach
    void letGo() {
        ledger.close();
    }

    private SizeFinding bore() {
        return (SizeFinding) session.state().line().finding();
    }

    @Test
    void theSizeIsBroughtToSixtyEightDegreesAndSaysSo() throws Exception {
        session.enter("77.0");
        session.enter("68");
        session.enter("1.1820");
        assertEquals(Standing.PASS, bore().verdict().standing());
        Length value = bore().value().orElseThrow();
        assertTrue(value.minus(Length.of("1.18190427", Unit.INCH)).abs().isBelow(Length.of("0.0000001", Unit.INCH)), value.toString());
        assertEquals(Optional.of(Degrees.of("77.0", FAHRENHEIT)), bore().warmth().orElseThrow().part());
        assertEquals("Part 77.0 °F, gauge 68 °F. Brought to 68 °F by \u22120.000096 in.", new Heat(ENGLISH).of(bore()));
        assertEquals("Part 9 ± 10 % in 1e-6 per °F, from the plan", new Heat(ENGLISH).figures(bore()).get(0));
        assertEquals("Gauge 6.3889 ± 10 % in 1e-6 per °F, from steel, as the plan says nothing else", new Heat(ENGLISH).figures(bore()).get(1));
    }

    /** 22 is a shop in °C; in °F it is a frost. */
    @Test
    void aFigureInTheOtherDegreesIsFarOffAndNamesWhatIsExpected() throws Exception {
        Objection objection = session.enter("22").objection().orElseThrow();
        assertEquals(Objection.Kind.FAR_OFF, objection.kind());
        assertEquals("64\u201378", objection.expected());
        assertEquals(Objection.Kind.NO_SUM, session.keep("-460").objection().orElseThrow().kind());
    }

    @Test
    void whatWasReadLastIsSuggestedAsItWasTyped() throws Exception {
        session.enter("77.0");
        session.enter("70.5");
        session.enter("1.1800");
        session.again(Why.MEASURED_AGAIN);
        assertEquals(new Asked.Temperature(Body.PART, Optional.of(Degrees.of("77.0", FAHRENHEIT))), session.state().asked());
    }

    @Test
    void theLedgerGivesItBackInTheDegreesItWasReadIn() throws Exception {
        session.enter("77.0");
        session.enter("68.0");
        assertEquals(Optional.of(Degrees.of("68.0", FAHRENHEIT)),
                Shop.sheet(ledger, session.id()).run().pass(PLAN.step(1)).temperature(Body.GAUGE));
    }
}
