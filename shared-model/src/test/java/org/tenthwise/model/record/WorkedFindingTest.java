package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.WorkedCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.worked.BetweenCentres;
import org.tenthwise.model.worked.KeywayDepth;
import org.tenthwise.model.worked.RollersOnTaper;
import org.tenthwise.model.worked.WorkedBy;

/**
 * A taper of 6° ±0°05′ over rollers on blocks 40 high: on the plate 52.314, on the blocks 56.508, by hand 6°00′07″. A
 * thousandth on either reading is 5.1 seconds.
 */
class WorkedFindingTest {

    private static Written mm(String text) {
        return new Written(text, Unit.MILLIMETRE);
    }

    private static Written minutes(String text) {
        return Written.typed(text, Unit.MINUTE_OF_ARC).orElseThrow();
    }

    private static WorkedCheck check(WorkedBy by, Limits limits, Written guardBand, int places) {
        return new WorkedCheck(
                by,
                limits,
                Bench.places(places),
                Combine.EACH,
                guardBand,
                Bench.with(GaugeKind.MICROMETER),
                Optional.of(new Uncertainty("micrometer", mm("0.004"), new BigDecimal("2"))),
                Optional.empty());
    }

    private static Bench taper(String guardBand, int places) {
        return set(new Bench()
                .step(check(
                        new RollersOnTaper(mm("40"), true),
                        Limits.between(minutes("5°55'"), minutes("6°05'")),
                        minutes(guardBand),
                        places)));
    }

    private static Bench set(Bench bench) {
        return bench.did(
                new StepEvent.GaugeSet(1, Setting.direct(new Gauge("M-1", GaugeKind.MICROMETER, Optional.empty()))));
    }

    /** Each as {@code slot=figure}. */
    private static Bench read(Bench bench, String... readings) {
        for (String one : readings) {
            String[] parts = one.split("=");
            bench.did(new StepEvent.ReadingTaken(1, parts[0], mm(parts[1])));
        }
        return bench;
    }

    private static WorkedFinding found(Bench bench) {
        return (WorkedFinding) bench.finding(1);
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            textBlock =
                    """
            # over the rollers on the plate and on the blocks; 56.565 is 6°05′00.2″ by hand, 56.448 5°54′58″
            1.1=52.314 1.2=56.508,                       PASS,     0
            1.1=52.314 1.2=56.564,                       PASS,     0
            1.1=52.314 1.2=56.566,                       FAIL,     0
            1.1=52.314 1.2=56.450,                       PASS,     0
            1.1=52.314 1.2=56.447,                       FAIL,     0
            # half read, nothing read
            1.1=52.314,                                  OPEN,     1
            1.2=56.508,                                  OPEN,     1
            # the other end down, and alike: no such taper
            1.1=56.508 1.2=52.314,                       UNPROVEN, 0
            1.1=52.314 1.2=52.314,                       UNPROVEN, 0
            # a slip that makes another taper of it
            1.1=5.2314 1.2=56.508,                       FAIL,     0
            """)
    void thePairOfReadingsIsJudgedAndNoneOfThemAlone(String readings, VerdictKind verdict, int missing) {
        WorkedFinding finding = found(read(taper("0°00'", 1), readings.split(" ")));
        assertEquals(verdict, finding.verdict().standing());
        assertEquals(missing, finding.missing());
    }

    @Test
    void anAngleIsWorkedOutOfLengths() {
        WorkedFinding finding = found(read(taper("0°00'", 1), "1.1=52.314", "1.2=56.508"));
        assertEquals(Length.of("21607.085", Unit.SECOND_OF_ARC), finding.value().orElseThrow());
        assertEquals(2, finding.measured().size());
        assertEquals(mm("52.314").length(), finding.measured().get(0).raw());
        assertEquals(finding.value().orElseThrow(), finding.measured().get(0).value());
    }

    /** One place out settles it before the other is read; one in leaves it open. */
    @ParameterizedTest
    @CsvSource({"1.1=52.314 1.2=56.508, OPEN, 2", "1.1=52.314 1.2=56.567, FAIL, 2"})
    void everyPlaceHasToBeIn(String readings, VerdictKind verdict, int missing) {
        WorkedFinding finding = found(read(taper("0°00'", 2), readings.split(" ")));
        assertEquals(verdict, finding.verdict().standing());
        assertEquals(missing, finding.missing());
    }

    @Test
    void aGuardBandIsOfTheAngle() {
        assertEquals(
                VerdictKind.UNPROVEN,
                found(read(taper("0°01'", 1), "1.1=52.314", "1.2=56.565"))
                        .verdict()
                        .standing());
    }

    /** No pass beside readings that fit no taper: nobody knows what was read there. */
    @Test
    void aPlaceThatComesToNothingLeavesNothingProven() {
        WorkedFinding finding = found(read(taper("0°00'", 2), "1.1=52.314", "1.2=56.508", "2.1=56.508", "2.2=52.314"));
        assertEquals(VerdictKind.UNPROVEN, finding.verdict().standing());
        assertTrue(finding.refused().isPresent());
        assertEquals(2, finding.farOff().size());
    }

    @Test
    void aReadingStruckOutLeavesItsPlaceOpen() {
        Bench bench = read(taper("0°00'", 1), "1.1=52.314", "1.2=56.508");
        bench.did(new Event.StruckOut(3, "Burr under a roller"));
        WorkedFinding finding = found(bench);
        assertEquals(VerdictKind.OPEN, finding.verdict().standing());
        assertEquals(Optional.empty(), finding.value());
        assertEquals(List.of(), finding.measured());
    }

    /** Each reading ±0.004 is ±0°00′20″ of angle, both together 29 seconds. */
    @Test
    void theUncertaintyOfEachReadingGoesThroughItsSensitivity() {
        WorkedFinding finding = found(read(taper("0°00'", 1), "1.1=52.314", "1.2=56.508"));
        double seconds = finding.expanded().orElseThrow().in(Unit.SECOND_OF_ARC).doubleValue();
        assertEquals(29.1, seconds, 0.1);
    }

    /** Depth from the crest, by hand 30.012 − 26.060. */
    @Test
    void aKeywayIsJudgedByTheShaftAsItWasMeasured() {
        Bench bench = set(new Bench()
                .step(check(
                        new KeywayDepth(KeywayDepth.From.CREST, mm("8"), Optional.empty()),
                        Limits.between(mm("3.900"), mm("3.950")),
                        mm("0"),
                        1)));
        WorkedFinding finding = found(read(bench, "1.1=30.012", "1.2=26.060"));
        assertEquals(mm("3.952").length(), finding.value().orElseThrow());
        assertEquals(VerdictKind.FAIL, finding.verdict().standing());
    }

    /** Bronze at 30 and steel at 20 °C, by hand: 78.8 · (1 − 16.2e-6 · 10) = 78.787 236. */
    @Test
    void aSizeIsBroughtToTwentyDegreesAndAnAngleIsNot() {
        Bench bench = set(new Bench()
                        .in(Bench.BRONZE)
                        .step(check(
                                new BetweenCentres(BetweenCentres.Read.OVER, mm("20.01"), mm("15")),
                                Limits.between(mm("78.785"), mm("78.795")),
                                mm("0"),
                                1)))
                .at(1, "30", "20");
        WorkedFinding finding = found(read(bench, "1.1=96.305"));
        assertEquals(VerdictKind.PASS, finding.verdict().standing());
        assertEquals(78.787236, finding.value().orElseThrow().millimetres().doubleValue(), 0.000005);
        assertFalse(found(read(taper("0°00'", 1).in(Bench.BRONZE), "1.1=52.314", "1.2=56.508"))
                .warmth()
                .isPresent());
    }

    @Test
    void withoutTemperaturesNothingIsProven() {
        Bench bench = set(new Bench()
                .in(Bench.BRONZE)
                .step(check(
                        new BetweenCentres(BetweenCentres.Read.OVER, mm("20.01"), mm("15")),
                        Limits.between(mm("78.785"), mm("78.805")),
                        mm("0"),
                        1)));
        WorkedFinding finding = found(read(bench, "1.1=96.305"));
        assertEquals(VerdictKind.OPEN, finding.verdict().standing());
        assertEquals(2, finding.missing());
    }
}
