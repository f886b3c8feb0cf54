package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.size;
import static org.tenthwise.model.record.Bench.with;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.expression.Expression;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.CalculatedCheck;
import org.tenthwise.model.plan.CalculatedCheck.By;
import org.tenthwise.model.plan.CalculatedCheck.Use;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/** A wall is worked out of an outside, a bore and a run-out; nothing is taken at it. */
class CalculatedFindingTest {

    private static final int OUTSIDE = 1;
    private static final int BORE = 2;
    private static final int RUN_OUT = 3;
    private static final int WALL = 4;

    private static CalculatedCheck calculated(String of, String lower, String upper, Use... uses) {
        return new CalculatedCheck(
                Expression.of(of),
                List.of(uses),
                Stream.of(uses).map(Use::step).distinct().toList(),
                Limits.between(mm(lower), mm(upper)));
    }

    /** Outside 49.95 to 50.05 at two places, bore 40.00 to 40.05 at two, run-out at most 0.10. */
    private static Bench wall(String lower, String upper) {
        return new Bench()
                .step(size(Feature.DIAMETER, "49.95", "50.05", Combine.EACH, 2))
                .step(size(Feature.BORE, "40.00", "40.05", Combine.EACH, 2))
                .step(Bench.runOut("0.10", 3, "0", "90", "180", "270"))
                .step(calculated(
                        "(od - id) / 2 + e",
                        lower,
                        upper,
                        new Use("od", OUTSIDE, By.EACH),
                        new Use("id", BORE, By.EACH),
                        new Use("e", RUN_OUT, By.ECCENTRICITY)));
    }

    private static Bench turned(Bench bench) {
        String[] keys = bench.finding(RUN_OUT).asTurn().orElseThrow().check().bySection().get(0).sweep().stream()
                .map(slot -> slot.key())
                .toArray(String[]::new);
        return bench.did(new StepEvent.ReadingTaken(RUN_OUT, keys[0], mm("0.04")))
                .did(new StepEvent.ReadingTaken(RUN_OUT, keys[1], mm("-0.02")));
    }

    private static CalculatedFinding found(Bench bench, int step) {
        return (CalculatedFinding) bench.finding(step);
    }

    @Test
    void theWallHasItsThinnestAndItsThickestInTheWorstCase() {
        // by hand: run-out 0.06, so 0.03 to either side; (50.00 − 40.02)/2 − 0.03 and (50.02 − 40.01)/2 + 0.03
        Bench bench =
                turned(wall("4.95", "5.04").read(OUTSIDE, "50.00", "50.02").read(BORE, "40.02", "40.01"));
        CalculatedFinding wall = found(bench, WALL);
        assertEquals(length("4.960"), wall.least().orElseThrow());
        assertEquals(length("5.035"), wall.greatest().orElseThrow());
        assertEquals(length("5.035"), wall.value().orElseThrow(), "the one nearer to its limit");
        assertEquals(VerdictKind.PASS, wall.verdict().standing());
        assertEquals(length("0.005"), wall.verdict().margin().orElseThrow().distance());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # 4.960 to 5.035, as above: on both limits it is in, past either it is out
        4.960, 5.035, PASS
        4.961, 5.035, FAIL
        4.960, 5.034, FAIL
        4.970, 5.020, FAIL
        """)
    void bothEndsMustLieInside(String lower, String upper, VerdictKind standing) {
        Bench bench = turned(wall(lower, upper).read(OUTSIDE, "50.00", "50.02").read(BORE, "40.02", "40.01"));
        assertEquals(standing, found(bench, WALL).verdict().standing());
    }

    /** Constructed: OD 50.00, ID 40.02, run-out 0.06: 4.96 and 5.02. */
    @Test
    void oneSizeEachGivesTheWallOfTheFormula() {
        Bench bench = turned(wall("4.9", "5.1").read(OUTSIDE, "50.00", "50.00").read(BORE, "40.02", "40.02"));
        assertEquals(length("4.96"), found(bench, WALL).least().orElseThrow());
        assertEquals(length("5.02"), found(bench, WALL).greatest().orElseThrow());
    }

    /**
     * An outside of 50.20 is still to be turned to 50.00, so the wall of 5.12 that is there now is none of the drawing:
     * neither is it out, nor may one that happens to be in pass. An outside past size is what it is.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        50.20, 4.95, 5.04, OPEN
        50.20, 4.95, 5.20, OPEN
        50.02, 4.95, 5.04, PASS
        49.90, 4.85, 5.04, PASS
        49.90, 4.95, 5.04, FAIL
        """)
    void itIsOpenWhileOneOfItsChecksIsStillToBeCut(String outside, String lower, String upper, VerdictKind standing) {
        Bench bench = turned(wall(lower, upper).read(OUTSIDE, outside, outside).read(BORE, "40.02", "40.02"));
        assertEquals(standing, found(bench, WALL).verdict().standing());
        assertEquals(standing == VerdictKind.OPEN, found(bench, WALL).awaitsAnother());
        if (standing == VerdictKind.OPEN) {
            assertEquals(OUTSIDE, found(bench, WALL).driver());
        }
    }

    /** Used as it is, 50.20 is the last size of the outside: (50.20 − 40.02)/2 and 0.03 to either side. */
    @Test
    void whatIsUsedAsItIsIsNotCutAnyMore() {
        Bench bench =
                turned(wall("4.95", "5.04").read(OUTSIDE, "50.20", "50.20").read(BORE, "40.02", "40.02"));
        Sheet before = bench.sheet();
        bench.did(new StepEvent.DispositionSigned(OUTSIDE, Disposition.USE_AS_IS, "Agreed", "Design office"));
        assertEquals(VerdictKind.FAIL, found(bench, WALL).verdict().standing());
        assertEquals(length("5.12"), found(bench, WALL).greatest().orElseThrow());
        assertEquals(
                bench.sheet().lines(),
                before.with(bench.sheet()
                                .run()
                                .entries()
                                .get(bench.sheet().run().entries().size() - 1))
                        .lines());
        bench.did(new StepEvent.PassBegun(OUTSIDE, Why.MEASURED_AGAIN)).read(OUTSIDE, "50.20", "50.20");
        assertEquals(VerdictKind.OPEN, found(bench, WALL).verdict().standing());
    }

    @Test
    void itIsOpenWhileOneOfItsChecksIsAndNamesThatOne() {
        Bench bench = wall("4.9", "5.1");
        assertOpen(bench, OUTSIDE);
        bench.read(OUTSIDE, "50.00", "50.00");
        assertOpen(bench, BORE);
        bench.read(BORE, "40.02");
        assertOpen(bench, BORE);
        bench.read(BORE, "40.02", "40.02");
        assertOpen(bench, RUN_OUT);
        turned(bench);
        assertEquals(VerdictKind.PASS, found(bench, WALL).verdict().standing());
    }

    private static void assertOpen(Bench bench, int waitsFor) {
        CalculatedFinding wall = found(bench, WALL);
        assertEquals(VerdictKind.OPEN, wall.verdict().standing());
        assertEquals(Optional.of(waitsFor), wall.settledFirst());
        assertTrue(wall.awaitsAnother());
        assertTrue(wall.value().isEmpty());
    }

    @Test
    void aCutAStrikeOrARoundAnewOpensItAgain() {
        Bench cut = passed();
        assertOpen(cut.did(new StepEvent.PassBegun(OUTSIDE, Why.CUT)), OUTSIDE);
        Bench struck = passed();
        assertOpen(struck.did(new Event.StruckOut(4, "chip")), BORE);
        Bench again = passed();
        assertOpen(again.did(new StepEvent.PassBegun(RUN_OUT, Why.MEASURED_AGAIN)), RUN_OUT);
    }

    private static Bench passed() {
        Bench bench = turned(wall("4.9", "5.1").read(OUTSIDE, "50.00", "50.00").read(BORE, "40.02", "40.02"));
        assertEquals(VerdictKind.PASS, found(bench, WALL).verdict().standing());
        return bench;
    }

    @Test
    void aFigureFarOffProvesNothingEitherWay() {
        Bench in = turned(wall("0", "50").read(OUTSIDE, "50.00", "80.00").read(BORE, "40.02", "40.02"));
        assertEquals(VerdictKind.UNPROVEN, found(in, WALL).verdict().standing());
        assertEquals(Optional.of(OUTSIDE), found(in, WALL).settledFirst());
        Bench out = turned(wall("4.9", "5.1").read(OUTSIDE, "50.00", "80.00").read(BORE, "40.02", "40.02"));
        assertEquals(VerdictKind.UNPROVEN, found(out, WALL).verdict().standing());
    }

    @Test
    void whatIsUnprovenItselfProvesNothing() {
        SizeCheck guarded = new SizeCheck(
                Feature.BORE,
                Limits.between(mm("40.00"), mm("40.05")),
                places(1),
                1,
                Combine.EACH,
                false,
                mm("0.005"),
                with(GaugeKind.MICROMETER));
        Bench bench = new Bench()
                .step(size(Feature.DIAMETER, "49.95", "50.05", Combine.EACH, 1))
                .step(guarded)
                .step(calculated("od - id", "9.9", "10.1", new Use("od", 1, By.EACH), new Use("id", 2, By.EACH)))
                .read(1, "50.00")
                .read(2, "40.002");
        assertEquals(VerdictKind.UNPROVEN, bench.finding(2).verdict().standing());
        assertEquals(VerdictKind.UNPROVEN, bench.finding(3).verdict().standing());
        assertEquals(Optional.of(2), bench.finding(3).settledFirst());
    }

    @Test
    void oneRestsOnAnotherAndLapsesWithWhatThatRestsOn() {
        Bench bench = new Bench()
                .step(size(Feature.DIAMETER, "49.95", "50.05", Combine.EACH, 1))
                .step(size(Feature.BORE, "40.00", "40.05", Combine.EACH, 1))
                .step(calculated("(od - id) / 2", "4.9", "5.1", new Use("od", 1, By.EACH), new Use("id", 2, By.EACH)))
                .step(new CalculatedCheck(
                        Expression.of("id + 2 * wall"),
                        List.of(new Use("id", 2, By.EACH), new Use("wall", 3, By.EACH)),
                        List.of(2, 3, 1),
                        Limits.between(mm("49.9"), mm("50.1"))))
                .read(1, "50.00")
                .read(2, "40.02");
        assertEquals(VerdictKind.PASS, bench.finding(4).verdict().standing());
        assertEquals(length("50.00"), bench.finding(4).value().orElseThrow());
        bench.did(new StepEvent.PassBegun(1, Why.CUT));
        assertEquals(VerdictKind.OPEN, bench.finding(4).verdict().standing());
        assertEquals(Optional.of(3), bench.finding(4).settledFirst());
    }

    @Test
    void aConcessionLapsesWhenOneOfItsChecksIsReadAnew() {
        Bench bench = turned(wall("4.98", "5.0").read(OUTSIDE, "50.00", "50.00").read(BORE, "40.02", "40.02"));
        assertEquals(VerdictKind.FAIL, found(bench, WALL).verdict().standing());
        bench.did(new StepEvent.DispositionSigned(WALL, Disposition.USE_AS_IS, "agreed", "Inspector 1"));
        assertTrue(bench.sheet().line(WALL).conceded());
        bench.did(new StepEvent.PassBegun(BORE, Why.MEASURED_AGAIN)).read(BORE, "40.02", "40.02");
        assertTrue(bench.sheet().line(WALL).lapsed().isPresent());
        assertEquals(Set.of(), new LinkedHashSet<>(bench.sheet().line(WALL).earlier()));
    }

    @Test
    void withoutAnAnswerNothingIsProvenAndItSaysWhy() {
        Bench bench = new Bench()
                .step(size(Feature.DIAMETER, "9.9", "10.1", Combine.EACH, 2))
                .step(size(Feature.BORE, "9.9", "10.1", Combine.EACH, 1))
                .step(calculated("sqrt(a*a - b*b)", "0", "10", new Use("a", 1, By.EACH), new Use("b", 2, By.EACH)))
                .read(1, "9.95", "10.05")
                .read(2, "10.00");
        CalculatedFinding found = found(bench, 3);
        assertEquals(VerdictKind.UNPROVEN, found.verdict().standing());
        assertTrue(found.noAnswer().orElseThrow().toString().contains("can be less than zero"));
        assertTrue(found.value().isEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        LEAST,    49.99, 49.99
        GREATEST, 50.03, 50.03
        MEAN,     50.01, 50.01
        EACH,     49.99, 50.03
        """)
    void aNameCanCountByOneOfItsPlaces(By by, String least, String greatest) {
        Bench bench = new Bench()
                .step(size(Feature.DIAMETER, "49.95", "50.05", Combine.EACH, 2))
                .step(calculated("a", "49", "51", new Use("a", 1, by)))
                .read(1, "49.99", "50.03");
        assertEquals(length(least), found(bench, 2).least().orElseThrow());
        assertEquals(length(greatest), found(bench, 2).greatest().orElseThrow());
    }

    private static Check measured(Feature feature, String lower, String upper, String way, String expanded) {
        return new SizeCheck(
                feature,
                Limits.between(mm(lower), mm(upper)),
                places(1),
                1,
                Combine.EACH,
                false,
                mm("0"),
                new Check.Means(
                        GaugeKind.MICROMETER,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Uncertainty(way, mm(expanded), BigDecimal.valueOf(2)))));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # by hand: half of each; of two ways √(0.002² + 0.0015²), of one way 0.002 + 0.0015
        micrometer, bore gauge, 0.0025
        caliper,    caliper,    0.0035
        """)
    void whatIsMeasuredInOneWayAddsUpInFull(String one, String other, String expanded) {
        Bench bench = new Bench()
                .step(measured(Feature.DIAMETER, "49.95", "50.05", one, "0.004"))
                .step(measured(Feature.BORE, "40.00", "40.05", other, "0.003"))
                .step(calculated("(od - id) / 2", "4.9", "5.1", new Use("od", 1, By.EACH), new Use("id", 2, By.EACH)))
                .read(1, "50.00")
                .read(2, "40.02");
        assertEquals(length(expanded), found(bench, 3).expanded().orElseThrow());
    }

    @Test
    void withoutAnUncertaintyOfEachThereIsNone() {
        assertTrue(found(passed(), WALL).expanded().isEmpty());
    }
}
