package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.roughness.AcceptanceRule;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.ScaleCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/** Invented figures of hardness, torque, weight and leak, judged by hand; roughness by the steps of ISO 4288:1996. */
class ScaleFindingTest {

    private static final GaugeKind INSTRUMENT =
            GaugeKind.ofKey("other-instrument").orElseThrow();
    private static final Unit MICROMETRE = Unit.named("µm");

    private static Optional<Written> limit(String figure, Unit unit) {
        return Optional.of(figure).filter(some -> !some.isBlank()).map(some -> new Written(some, unit));
    }

    private static Bench bench(
            Limits limits, int places, int each, Combine combine, String guardBand, Optional<AcceptanceRule> rule) {
        return new Bench()
                .in(Bench.BRONZE)
                .step(new ScaleCheck(
                        limits,
                        Bench.places(places),
                        each,
                        combine,
                        new Written(guardBand, limits.unit()),
                        Bench.with(INSTRUMENT),
                        rule))
                .did(new StepEvent.GaugeSet(1, Setting.direct(new Gauge("SI-1", INSTRUMENT, Optional.empty()))));
    }

    private static Bench sixteen(String... read) {
        return read(
                bench(
                        Limits.atMost(new Written("1.6", MICROMETRE)),
                        1,
                        12,
                        Combine.SIXTEEN_PERCENT,
                        "0",
                        Optional.of(AcceptanceRule.SIXTEEN_PERCENT)),
                MICROMETRE,
                1,
                read);
    }

    private static Bench read(Bench bench, Unit unit, int from, String... typed) {
        for (int i = 0; i < typed.length; i++) {
            bench.did(new StepEvent.ReadingTaken(1, "1." + (from + i), new Written(typed[i], unit)));
        }
        return bench;
    }

    @ParameterizedTest
    @CsvSource({
        "HRC,38,44,38.0,0,PASS",
        "HRC,38,44,37.9,0,FAIL",
        "HRC,38,44,44,0,PASS",
        "HRC,38,44,44.1,0,FAIL",
        "HRC,38,44,38.5,1.0,UNPROVEN",
        "HRC,38,44,39.0,1.0,PASS",
        "N·m,24,,24.0,0,PASS",
        "N·m,24,,23.9,0,FAIL",
        "kg,,12.50,12.501,0,FAIL",
        "ml/min,,0.5,0.00,0,PASS",
        "ml/min,,0.5,0.51,0,FAIL",
        "g·mm,-5,5,-5.0,0,PASS",
        "g·mm,-5,5,-5.1,0,FAIL"
    })
    void aFigureOnALimitIsInAndTheLeastBeyondItIsOut(
            Unit unit, String lower, String upper, String read, String guardBand, VerdictKind verdict) {
        Limits limits = new Limits(limit(lower == null ? "" : lower, unit), limit(upper == null ? "" : upper, unit));
        Finding finding = read(bench(limits, 1, 1, Combine.EACH, guardBand, Optional.empty()), unit, 1, read)
                .finding(1);
        assertEquals(verdict, finding.verdict().standing());
        assertEquals(Optional.of(Length.of(read, unit)), finding.value());
        assertEquals(Optional.empty(), finding.proposal());
        assertEquals(Optional.empty(), finding.warmth());
        assertFalse(finding.showsSizes());
    }

    @Test
    void hardnessMayBeTheMeanOfItsReadings() {
        Unit hrc = Unit.named("HRC");
        Limits limits = Limits.between(new Written("38", hrc), new Written("44", hrc));
        Bench three = bench(limits, 1, 3, Combine.MEAN, "0", Optional.empty());
        assertEquals(
                VerdictKind.OPEN,
                read(three, hrc, 1, "37", "39").finding(1).verdict().standing());
        Finding finding = read(three, hrc, 3, "41").finding(1);
        assertEquals(VerdictKind.PASS, finding.verdict().standing());
        assertEquals(Optional.of(Length.of("39", hrc)), finding.value());
    }

    /** A missing point, a figure of another scale, a leak that runs backwards, a torque read off the other scale. */
    @ParameterizedTest
    @CsvSource({
        "HRC,38,44,410,true",
        "HRC,38,44,30.75,false",
        "HRC,38,44,30.7,true",
        "ml/min,,0.5,-0.1,true",
        "ml/min,,0.5,2.5,false",
        "ml/min,,0.5,2.51,true",
        "N·m,24,,11.9,true",
        "N·m,24,,48,false",
        "N·m,24,,49,true",
        "g·mm,-5,5,-10,false",
        "g·mm,-5,5,11,true",
        "°C,,-40,900,false"
    })
    void whatCannotWellBeIsFarOff(Unit unit, String lower, String upper, String read, boolean farOff) {
        Limits limits = new Limits(limit(lower == null ? "" : lower, unit), limit(upper == null ? "" : upper, unit));
        Finding finding = read(bench(limits, 1, 1, Combine.EACH, "0", Optional.empty()), unit, 1, read)
                .finding(1);
        assertEquals(farOff, !finding.farOff().isEmpty());
        assertTrue(!farOff || finding.verdict().standing() != VerdictKind.PASS);
    }

    /** The steps of ISO 4288:1996, studylib.net, document 18091676: verdict, still to measure, value that decides. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            1.12                                            | PASS | 0 | 1.12
            1.13                                            | OPEN | 2 | 1.13
            1.5 1.6 1.4                                     | PASS | 0 | 1.6
            1.5 1.7 1.4                                     | OPEN | 3 | 1.7
            1.5 1.7 1.4 1.5 1.6 1.2                         | PASS | 0 | 1.6
            1.7 1.7 1.7                                     | FAIL | 0 | 1.7
            1.5 1.7 1.4 1.8 1.6 1.2 1.5 1.4 1.5 1.5 1.3     | OPEN | 1 | 1.8
            1.5 1.7 1.4 1.8 1.6 1.2 1.5 1.4 1.5 1.5 1.3 1.1 | PASS | 0 | 1.6
            1.5 1.7 1.4 1.8 1.6 1.2 1.5 1.4 1.5 1.5 1.3 1.61 | FAIL | 0 | 1.61
            """)
    void roughnessGoesByTheSteps(String read, VerdictKind verdict, int missing, String value) {
        Finding finding = sixteen(read.split(" ")).finding(1);
        assertEquals(verdict, finding.verdict().standing());
        assertEquals(missing, finding.missing());
        assertEquals(finding.measured().size() + missing, finding.readingsInAll());
        assertEquals(Optional.of(Length.of(value, MICROMETRE)), finding.value());
        finding.verdict().margin().ifPresent(margin -> assertEquals(verdict == VerdictKind.PASS, margin.inside()));
    }

    @Test
    void nothingIsFoundBeforeTheFirstValue() {
        Finding finding = sixteen().finding(1);
        assertEquals(VerdictKind.OPEN, finding.verdict().standing());
        assertEquals(1, finding.missing());
        assertEquals(1, finding.readingsInAll());
    }

    /** Struck out, a value is measured again before what is left passes: 0.9 is below 70 % of 1.6. */
    @Test
    void noValueIsStruckOutToPassWithWhatIsLeft() {
        Bench bench = sixteen("1.5", "0.9");
        assertEquals(1, bench.finding(1).missing());
        Finding struck =
                bench.did(new Event.StruckOut(bench.last() - 1, "Misread")).finding(1);
        assertEquals(VerdictKind.OPEN, struck.verdict().standing());
        assertEquals(1, struck.missing());
        Finding again = read(bench, MICROMETRE, 1, "1.0").finding(1);
        assertEquals(VerdictKind.PASS, again.verdict().standing());
    }

    /** A value read again inside leaves those behind it: one of four is over, so that it takes six. */
    @Test
    void aValueThatWasMeasuredCounts() {
        Bench bench = sixteen("1.5", "1.5", "1.7", "1.7");
        assertEquals(8, bench.finding(1).missing());
        bench.did(new Event.StruckOut(bench.last() - 1, "Misread"));
        Finding again = read(bench, MICROMETRE, 3, "1.5").finding(1);
        assertEquals(VerdictKind.OPEN, again.verdict().standing());
        assertEquals(2, again.missing());
    }

    /** No surface is that smooth where 1.6 is asked for, nor that rough: µin typed for µm, or a point left out. */
    @ParameterizedTest
    @CsvSource({"0.07,true", "0.08,false", "8,false", "63,true", "16,true", "0,true"})
    void aRoughnessOfAnotherScaleIsFarOff(String read, boolean farOff) {
        Finding finding = sixteen(read).finding(1);
        assertEquals(farOff, !finding.farOff().isEmpty());
        assertTrue(!farOff || finding.verdict().standing() != VerdictKind.PASS);
    }

    @Test
    void byTheMaximumRuleEveryValueIsInside() {
        Bench bench = bench(
                Limits.atMost(new Written("1.6", MICROMETRE)),
                1,
                3,
                Combine.EACH,
                "0",
                Optional.of(AcceptanceRule.MAX));
        assertEquals(Optional.of("max"), bench.finding(1).check().judgedBy());
        assertEquals(
                VerdictKind.OPEN,
                read(bench, MICROMETRE, 1, "0.5", "1.6").finding(1).verdict().standing());
        assertEquals(
                VerdictKind.FAIL,
                read(bench, MICROMETRE, 3, "1.61").finding(1).verdict().standing());
    }
}
