package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.runOut;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.roundness.Eccentricity;
import org.tenthwise.model.compute.roundness.Move;
import org.tenthwise.model.compute.roundness.ShiftAndTilt;
import org.tenthwise.model.compute.roundness.TruingUp;
import org.tenthwise.model.compute.roundness.UnfitAngles;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.Section;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.verdict.VerdictKind;

/** Full indicator movement by points and over a turn. Figures by hand. */
class RunOutFindingTest {

    @Test
    void onePointAloneShowsNothing() {
        Finding found =
                new Bench().step(runOut("0.020", 0, "0")).read(1, "0.005").finding(1);
        assertEquals(0, found.missing());
        assertEquals(VerdictKind.UNPROVEN, found.verdict().standing());
    }

    @Test
    void aMovementOverTheLimitFailsBeforeTheLastReading() {
        assertEquals(VerdictKind.FAIL, allRound("0", "0.021").verdict().standing());
    }

    @Test
    void oneWithinItIsOpenUntilTheLastReading() {
        assertEquals(VerdictKind.OPEN, allRound("0").verdict().standing());
        RunOutFinding three = allRound("0", "0.010", "0.020");
        assertEquals(VerdictKind.OPEN, three.verdict().standing());
        assertEquals(1, three.missing());
        assertEquals(
                VerdictKind.PASS,
                allRound("0", "0.010", "0.020", "0.010").verdict().standing());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # off centre towards 90° nothing is seen at 0° and 180°; the other gaps hide a side as well
        0 180,             FEWER_THAN_THREE_ANGLES
        0 10,              FEWER_THAN_THREE_ANGLES
        0 90,              FEWER_THAN_THREE_ANGLES
        0 10 20,           GAP_OF_HALF_A_TURN
        0 30 60 90,        GAP_OF_HALF_A_TURN
        0 90 180,          GAP_OF_HALF_A_TURN
        """)
    void pointsThatDoNotGoAllRoundNeverPass(String angles, UnfitAngles why) {
        RunOutFinding found = found(4, angles.split(" "), "0", "0", "0", "0");
        assertEquals(VerdictKind.UNPROVEN, found.verdict().standing());
        assertEquals(Optional.of(why), found.near().refusal());
        assertEquals(Optional.empty(), found.near().fit());
    }

    @Test
    void pointsThatDoNotGoAllRoundCanStillFail() {
        assertEquals(
                VerdictKind.FAIL,
                found(4, new String[] {"0", "180"}, "0", "0.021").verdict().standing());
    }

    @Test
    void highestAndLowestOverATurnPassWhateverTheAnglesOfThePlan() {
        Bench bench = new Bench()
                .step(runOut("0.020", 4, "0", "180"))
                .did(new StepEvent.ReadingTaken(1, RunOutCheck.HIGHEST, mm("0.014")));
        assertEquals(VerdictKind.OPEN, bench.finding(1).verdict().standing());
        bench.did(new StepEvent.ReadingTaken(1, RunOutCheck.LOWEST, mm("-0.006")));
        assertEquals(VerdictKind.PASS, bench.finding(1).verdict().standing());
    }

    @Test
    void highestAndLowestOverATurnAreEnoughForTheVerdict() {
        RunOutFinding found = (RunOutFinding) new Bench()
                .step(runOut("0.020", 4, "0", "90", "180", "270"))
                .did(new StepEvent.ReadingTaken(1, RunOutCheck.LOWEST, mm("-0.008")))
                .did(new StepEvent.ReadingTaken(1, RunOutCheck.HIGHEST, mm("0.014")))
                .finding(1);
        assertTrue(found.swept());
        assertEquals(Optional.of(length("0.022")), found.movement());
        assertEquals(VerdictKind.FAIL, found.verdict().standing());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # Limit 0.0005, in inches. Highest less lowest 0.00048. By hand, sixty degrees apart: parts 2/6 Σ r cos t =
        # 0.00016 and
        # 2/6 Σ r sin t = 0.000277128, eccentricity 0.00032, twice 0.00064; four, a quarter apart: parts 0.00024 and
        # 0.00024,
        # eccentricity 0.000339411, twice 0.00067882
        0 60 120 180 240 300, 0.00024 0.00024 0 -0.00024 -0.00024 0,   UNPROVEN
        0 90 180 270,         0.00024 0.00024 -0.00024 -0.00024,       UNPROVEN
        # 0.0002 cos t: twice the eccentricity is 0.0004, and nothing is left
        0 60 120 180 240 300, 0.0002 0.0001 -0.0001 -0.0002 -0.0001 0.0001, PASS
        # the same, 0.0001 more at one of six: 2e + residual is past the limit, the movement read and 2e alone are not
        0 60 120 180 240 300, 0.0003 0.0001 -0.0001 -0.0002 -0.0001 0.0001, UNPROVEN
        """)
    void pointsPassOnlyWhereTwiceTheEccentricityAndWhatItLeavesAreInside(
            String angles, String read, VerdictKind standing) {
        RunOutCheck check = new RunOutCheck(
                inch("0.0005"),
                figures(angles),
                Holding.FOUR_JAW,
                BigDecimal.ZERO,
                List.of(),
                Bench.with(GaugeKind.LEVER_INDICATOR));
        Bench bench = new Bench().step(check);
        String[] typed = read.split(" ");
        for (int i = 0; i < typed.length; i++) {
            bench.did(new StepEvent.ReadingTaken(1, check.slots().get(i).key(), inch(typed[i])));
        }
        assertEquals(standing, bench.finding(1).verdict().standing());
        assertFalse(((RunOutFinding) bench.finding(1))
                .movement()
                .orElseThrow()
                .isAbove(check.limit().length()));
        // a full turn settles it
        sweep(bench, "", "0.010", "0");
        assertEquals(VerdictKind.PASS, bench.finding(1).verdict().standing());
    }

    @Test
    void threePointsShowNothingOfTheForm() {
        // a part with three lobes reads alike at all of them
        assertEquals(
                VerdictKind.UNPROVEN,
                found(3, new String[] {"0", "120", "240"}, "0", "0", "0")
                        .verdict()
                        .standing());
    }

    @Test
    void aSweepInsideAndPointsOverFail() {
        Bench bench = sweep(new Bench().step(runOut("0.020", 4, "0", "90", "180", "270")), "", "0.010", "0")
                .read(1, "0", "0.021");
        RunOutFinding found = (RunOutFinding) bench.finding(1);
        assertEquals(VerdictKind.FAIL, found.verdict().standing());
        assertEquals(Optional.of(length("0.021")), found.movement());
        assertEquals(Optional.of(length("0.010")), found.near().sweptMovement());
    }

    @Test
    void theGreaterMovementOfTurnAndPointsCounts() {
        Bench bench = sweep(new Bench().step(runOut("0.020", 4, "0", "90", "180", "270")), "", "0.031", "-0.031")
                .read(1, "0", "0.030", "0", "-0.030");
        assertEquals(Optional.of(length("0.062")), ((RunOutFinding) bench.finding(1)).movement());
    }

    @Test
    void readingsByAngleBesideASweepAreNotWaitedFor() {
        Bench bench = sweep(new Bench().step(runOut("0.020", 4, "0", "90", "180", "270")), "", "0.010", "0")
                .read(1, "0", "0.010");
        assertEquals(VerdictKind.PASS, bench.finding(1).verdict().standing());
        assertEquals(0, bench.finding(1).missing());
    }

    @Test
    void aHalfDoneSweepIsOpenWhateverThePointsShow() {
        Bench bench =
                new Bench().step(runOut("0.020", 4, "0", "90", "180", "270")).read(1, "0", "0", "0", "0");
        assertEquals(VerdictKind.PASS, bench.finding(1).verdict().standing());
        bench.did(new StepEvent.ReadingTaken(1, RunOutCheck.HIGHEST, mm("0.001")));
        assertEquals(VerdictKind.OPEN, bench.finding(1).verdict().standing());
        assertEquals(1, bench.finding(1).missing());
    }

    // two sections

    @Test
    void bothSectionsMustBeProven() {
        Bench bench = sweep(atTwoSections(), "", "0.010", "0");
        assertEquals(VerdictKind.OPEN, bench.finding(1).verdict().standing());
        assertEquals(2, bench.finding(1).missing());
        sweep(bench, "far:", "0.020", "0");
        assertEquals(VerdictKind.PASS, bench.finding(1).verdict().standing());
        assertEquals(Optional.of(length("0.020")), ((RunOutFinding) bench.finding(1)).movement());
    }

    @Test
    void oneSectionOverFailsBeforeTheOtherIsRead() {
        RunOutFinding far =
                (RunOutFinding) sweep(atTwoSections(), "far:", "0.021", "0").finding(1);
        assertEquals(VerdictKind.FAIL, far.verdict().standing());
        assertEquals(Optional.of(length("0.021")), far.sections().get(1).movement());
        assertEquals(Optional.empty(), far.near().movement());
        assertEquals(
                VerdictKind.FAIL,
                sweep(atTwoSections(), "", "0.021", "0").finding(1).verdict().standing());
    }

    @Test
    void aSectionSweptAndOneProvenByPointsPass() {
        Bench bench = sweep(atTwoSections(), "", "0.010", "0");
        for (String slot : List.of("far:1.1", "far:2.1", "far:3.1", "far:4.1")) {
            assertEquals(VerdictKind.OPEN, bench.finding(1).verdict().standing());
            bench.did(new StepEvent.ReadingTaken(1, slot, mm("0.001")));
        }
        assertEquals(VerdictKind.PASS, bench.finding(1).verdict().standing());
    }

    @Test
    void figuresOfTwoSectionsAreNeverSetAgainstEachOther() {
        Bench bench = sweep(sweep(atTwoSections(), "", "0.010", "0"), "far:", "0.110", "0.100");
        assertEquals(VerdictKind.PASS, bench.finding(1).verdict().standing());
    }

    /** 0.030 off towards 0° near the jaws, 0.050 towards 90° far out: twice 0.050. */
    @Test
    void theAxisOfTheWorkLiesByTheCirclesAtBothSections() {
        Bench bench = atTwoSections().read(1, "0.030", "0", "-0.030", "0");
        assertEquals(Optional.empty(), ((RunOutFinding) bench.finding(1)).shiftAndTilt());
        Map.of("far:1.1", "0", "far:2.1", "0.050", "far:3.1", "0", "far:4.1", "-0.050")
                .forEach((slot, read) -> bench.did(new StepEvent.ReadingTaken(1, slot, mm(read))));
        ShiftAndTilt axis = ((RunOutFinding) bench.finding(1)).shiftAndTilt().orElseThrow();
        assertEquals(new Eccentricity(length("-0.030"), length("0.050")), axis.lean());
        assertEquals(length("0.100"), axis.coaxialError());
        assertEquals(List.of(length("30"), length("140")), List.of(axis.nearAt(), axis.farAt()));
    }

    @Test
    void oneSectionHasNoLean() {
        assertEquals(Optional.empty(), allRound("0.030", "0", "-0.030", "0").shiftAndTilt());
    }

    @Test
    void itIsSweptOnceAFullTurnIsBegunAtAnySection() {
        Bench bench = atTwoSections().read(1, "0.030", "0", "-0.030", "0");
        assertFalse(((RunOutFinding) bench.finding(1)).swept());
        assertTrue(((RunOutFinding) bench.did(new StepEvent.ReadingTaken(1, "far:" + RunOutCheck.HIGHEST, mm("0.010")))
                        .finding(1))
                .swept());
    }

    // another gauge

    @Test
    void aHighestAndALowestOfTwoGaugesAreNoMovement() {
        Bench bench = gauge(new Bench().step(runOut("0.020", 4, "0", "90", "180", "270")), "IN-1")
                .did(new StepEvent.ReadingTaken(1, RunOutCheck.HIGHEST, mm("0.500")));
        gauge(bench, "IN-2").did(new StepEvent.ReadingTaken(1, RunOutCheck.LOWEST, mm("0.490")));
        RunOutFinding found = (RunOutFinding) bench.finding(1);
        assertEquals(VerdictKind.OPEN, found.verdict().standing());
        assertEquals(1, found.missing());
        assertEquals(
                List.of(mm("0.490")),
                found.measured().stream().map(read -> read.reading().typed()).toList());
        bench.did(new StepEvent.ReadingTaken(1, RunOutCheck.HIGHEST, mm("0.515")));
        assertEquals(VerdictKind.FAIL, bench.finding(1).verdict().standing());
    }

    @Test
    void aSweepOfOneGaugeAndPointsOfAnotherStandBesideEachOther() {
        Bench bench = gauge(new Bench().step(runOut("0.020", 4, "0", "90", "180", "270")), "IN-1");
        gauge(sweep(bench, "", "0.030", "0"), "IN-2").read(1, "0.115", "0.100", "0.085", "0.100");
        RunOutFinding found = (RunOutFinding) bench.finding(1);
        assertEquals(VerdictKind.FAIL, found.verdict().standing());
        assertEquals(length("0.030"), found.movement().orElseThrow());
        assertEquals(
                Optional.of(List.of(new Move.Jaw(3, 1, length("0.015")))),
                found.truingUp().map(TruingUp::near));
    }

    private static Bench gauge(Bench bench, String mark) {
        return bench.did(
                new StepEvent.GaugeSet(1, Setting.direct(new Gauge(mark, GaugeKind.DIAL_INDICATOR, Optional.empty()))));
    }

    private static Bench atTwoSections() {
        return new Bench()
                .step(new RunOutCheck(
                        mm("0.020"),
                        figures("0 90 180 270"),
                        Holding.FOUR_JAW,
                        BigDecimal.ZERO,
                        List.of(new Section("near the jaws", mm("30")), new Section("far out", mm("140"))),
                        Bench.with(GaugeKind.DIAL_INDICATOR)));
    }

    /** @param at what stands before the slots of the section */
    private static Bench sweep(Bench bench, String at, String highest, String lowest) {
        return bench.did(new StepEvent.ReadingTaken(1, at + RunOutCheck.HIGHEST, mm(highest)))
                .did(new StepEvent.ReadingTaken(1, at + RunOutCheck.LOWEST, mm(lowest)));
    }

    private static List<BigDecimal> figures(String angles) {
        return Arrays.stream(angles.split(" ")).map(BigDecimal::new).toList();
    }

    private static Written inch(String figure) {
        return new Written(figure, Unit.INCH);
    }

    private static RunOutFinding allRound(String... read) {
        return found(4, new String[] {"0", "90", "180", "270"}, read);
    }

    /** Readings for as many of the angles as there are. */
    private static RunOutFinding found(int jaws, String[] angles, String... read) {
        String[] used = Arrays.copyOf(read, Math.min(read.length, angles.length));
        return (RunOutFinding)
                new Bench().step(runOut("0.020", jaws, angles)).read(1, used).finding(1);
    }
}
