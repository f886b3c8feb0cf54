package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.AngleCheck;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/** 30° ±0°30′, by hand. */
class AngleFindingTest {

    private static Written angle(String text) {
        return Written.typed(text, Unit.MINUTE_OF_ARC).orElseThrow();
    }

    private static Bench bench(String guardBand, int places) {
        return bench(Limits.between(angle("29°30'"), angle("30°30'")), guardBand, places);
    }

    private static Bench bench(Limits limits, String guardBand, int places) {
        return new Bench()
                .in(Bench.BRONZE)
                .step(new AngleCheck(
                        limits,
                        Bench.places(places),
                        1,
                        Combine.EACH,
                        angle(guardBand),
                        Bench.with(GaugeKind.BEVEL_PROTRACTOR),
                        Optional.empty()))
                .did(new StepEvent.GaugeSet(
                        1, Setting.direct(new Gauge("BP-1", GaugeKind.BEVEL_PROTRACTOR, Optional.empty()))));
    }

    private static Bench read(Bench bench, String... typed) {
        for (int i = 0; i < typed.length; i++) {
            bench.did(new StepEvent.ReadingTaken(1, (i + 1) + ".1", angle(typed[i])));
        }
        return bench;
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            textBlock =
                    """
            # read,         verdict,   guard band 0°05′
            29°30',         PASS,      UNPROVEN
            29.5°,          PASS,      UNPROVEN
            29°29'59.999",  FAIL,      UNPROVEN
            29°24'59.999",  FAIL,      FAIL
            29°35',         PASS,      PASS
            30°30',         PASS,      UNPROVEN
            30°30'00.001",  FAIL,      UNPROVEN
            30.333333°,     PASS,      PASS
            30.5000001°,    FAIL,      UNPROVEN
            """)
    void anAngleOnALimitIsInAndTheLeastBeyondItIsOut(String read, VerdictKind verdict, VerdictKind guarded) {
        assertEquals(verdict, read(bench("0°0'", 1), read).finding(1).verdict().standing());
        assertEquals(guarded, read(bench("0°5'", 1), read).finding(1).verdict().standing());
    }

    @Test
    void theOneFurthestOutDecidesAndNothingIsToBeCutOrWarmedFor() {
        Finding finding = read(bench("0°0'", 2), "30°10'", "30°35'").finding(1);
        assertEquals(VerdictKind.FAIL, finding.verdict().standing());
        assertEquals(Optional.of(angle("30°35'").length()), finding.value());
        assertEquals(
                Length.of("5", Unit.MINUTE_OF_ARC),
                finding.verdict().margin().orElseThrow().distance());
        assertEquals(Optional.empty(), finding.proposal());
        assertEquals(Optional.empty(), finding.warmth());
        assertEquals(0, finding.missing());
        assertEquals(Optional.empty(), finding.step().check().asSize());
        assertTrue(!finding.showsSizes());
    }

    @Test
    void itIsOpenUntilEveryPlaceIsRead() {
        Finding finding = read(bench("0°0'", 2), "30°10'").finding(1);
        assertEquals(VerdictKind.OPEN, finding.verdict().standing());
        assertEquals(1, finding.missing());
    }

    /** The complement of an angle, or one in decimals typed as minutes, is a slip: nothing is shown by it. */
    @ParameterizedTest
    @CsvSource({"60°0',true", "22°29',true", "22°30',false", "37°30',false", "37°31',true", "0°30',true", "150°,true"})
    void moreThanAQuarterOfTheNominalAwayIsFarOff(String read, boolean farOff) {
        assertEquals(farOff, !read(bench("0°0'", 1), read).finding(1).farOff().isEmpty());
    }

    /** Read from the other side of the protractor: 90° − 50° = 40° and 180° − 95° = 85°, each within the tolerance. */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            textBlock =
                    """
            # lower, upper,  read,   far off
            49°30',  50°30', 40°,    true
            49°30',  50°30', 40°30', true
            49°30',  50°30', 40°31', false
            49°30',  50°30', 49°29', false
            94°,     96°,    85°30', true
            94°,     96°,    87°,    false
            # what cannot be told from an angle that is a little out is no slip; 46° is 1° out, and 90° less 44°
            44°30',  45°30', 44°29', false
            44°,     45°,    46°,    false
            88°,     89°,    91°30', true
            # whatever a limit leaves open, no angle is over 180°
            170°,    ||,     180°,   false
            170°,    ||,     190°,   true
            """)
    void theAngleOfTheOtherSideIsFarOffWhereItIsAnotherOne(String lower, String upper, String read, boolean farOff) {
        Limits limits = new Limits(
                Optional.of(angle(lower)),
                Optional.of(upper).filter(text -> !text.isEmpty()).map(AngleFindingTest::angle));
        Finding finding = read(bench(limits, "0°0'", 1), read).finding(1);
        assertEquals(farOff, !finding.farOff().isEmpty());
        assertTrue(!farOff || finding.verdict().standing() != VerdictKind.PASS);
    }

    /** An upper limit alone says nothing against the smaller angle: 40° is less than 50°, from whichever side. */
    @Test
    void oneLimitAloneLeavesTheOtherSideOpen() {
        Finding finding = read(bench(new Limits(Optional.empty(), Optional.of(angle("50°"))), "0°0'", 1), "40°")
                .finding(1);
        assertEquals(VerdictKind.PASS, finding.verdict().standing());
    }
}
