package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.runOut;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.roundness.Move;
import org.tenthwise.model.compute.roundness.TruingUp;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.Section;
import org.tenthwise.model.run.StepEvent;

/**
 * What is advised, and of which section, by what is read: limit 0.020, four jaws. Half the difference of opposite
 * readings, by hand.
 */
class TruingUpAssessmentTest {

    private static final String[] QUARTERS = {"0", "90", "180", "270"};
    private static final List<Move> SECOND_JAW_BY_0_030 = List.of(new Move.Jaw(4, 2, length("0.030")));

    @Test
    void jawsAreMovedByAllReadingsOrNotAtAll() {
        Bench bench = oneSection().read(1, "0", "0.030", "0");
        assertEquals(Optional.empty(), advice(bench));
        assertEquals(SECOND_JAW_BY_0_030, near(bench.did(new StepEvent.ReadingTaken(1, "4.1", mm("-0.030")))));
    }

    @Test
    void onlyJawsThatMoveAloneAreMoved() {
        assertTrue(near(new Bench().step(runOut("0.020", 0, QUARTERS)).read(1, "0", "0.030", "0", "-0.030")).stream()
                .noneMatch(Move.Jaw.class::isInstance));
    }

    @Test
    void jawsAreMovedByThePointsBesideASweep() {
        assertEquals(
                SECOND_JAW_BY_0_030,
                near(sweep(oneSection(), "", "0.031", "-0.031").read(1, "0", "0.030", "0", "-0.030")));
    }

    @Test
    void nothingIsAdvisedWhereNothingIsOver() {
        assertEquals(Optional.empty(), advice(oneSection().read(1, "0.005", "0.010", "0.005", "0")));
        assertEquals(
                Optional.empty(),
                advice(oneSection().read(1, "0.010", "0.010", "-0.009", "-0.009")),
                "unproven: a full turn is asked");
    }

    @Test
    void nothingIsAdvisedBesideAFigureFarOff() {
        assertEquals(Optional.empty(), advice(oneSection().read(1, "0", "0.030", "0", "-30.0")));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # points swing 0.022 and the turn less: by up to the last place of both, 0.001 each, they may
        0.020,  MOVE
        0.0199, CONTRADICTION
        """)
    void pointsMaySwingFurtherThanTheTurnByTheLastPlaceOfBoth(String highest, TruingUp.Case state) {
        Bench bench = sweep(oneSection(), "", "0.020", "0").read(1, "0.022", "0.011", "0", "0.011");
        bench.did(new StepEvent.ReadingTaken(1, RunOutCheck.HIGHEST, mm(highest)));
        assertEquals(state, advice(bench).orElseThrow().state());
    }

    /**
     * An axis that is 0.004 off is worth moving with an indicator of 0.001, zeros left away or not, and one that is
     * 0.005 off not with one of 0.01.
     */
    @ParameterizedTest
    @CsvSource({"0.032 0.020 0 0.012, 2", "0.032 0.02 0 0.012, 2", "0.03 0.02 0 0.01, 1"})
    void whatIsUnderTheLastPlaceThatWasTypedIsLeft(String readings, int moves) {
        assertEquals(moves, near(oneSection().read(1, readings.split(" "))).size());
    }

    @Test
    void aTurnOfBareZerosDoesNotHideThatItContradictsThePoints() {
        assertEquals(
                TruingUp.Case.CONTRADICTION,
                advice(sweep(oneSection(), "", "0", "0").read(1, "0.040", "0.020", "0", "0.020"))
                        .orElseThrow()
                        .state());
    }

    // two sections

    @Test
    void jawsAreMovedByTheSectionNearestToThem() {
        Bench bench = sweep(sweep(twoSections(), "", "0.060", "0"), "far:", "0.040", "0");
        byAngle(bench, "far:", "0.030", "0", "0", "0");
        assertEquals(Optional.empty(), advice(bench));
        assertEquals(SECOND_JAW_BY_0_030, near(byAngle(bench, "", "0", "0.030", "0", "-0.030")));
    }

    /** A jaw moved in between would leave readings of before and of after beside each other. */
    @Test
    void nothingIsMovedWhileTheFarSectionIsStillToBeRead() {
        Bench bench = byAngle(
                sweep(sweep(twoSections(), "", "0.060", "0"), "far:", "0.060", "0"), "", "0", "0.030", "0", "-0.030");
        assertEquals(Optional.empty(), advice(bench));
        byAngle(bench, "far:", "0", "0.030", "0");
        assertEquals(Optional.empty(), advice(bench));
        byAngle(bench, "far:", "0", "0.030", "0", "-0.030");
        assertEquals(SECOND_JAW_BY_0_030, near(bench));
    }

    @Test
    void thatNothingIsToBeMovedIsToldAtOnce() {
        Bench bench = sweep(sweep(twoSections(), "", "0.060", "0"), "far:", "0.040", "0");
        TruingUp oval =
                advice(byAngle(bench, "", "0.030", "-0.030", "0.030", "-0.030")).orElseThrow();
        assertEquals(TruingUp.Case.FORM, oval.state());
        assertEquals(List.of(), oval.near());
    }

    @Test
    void nothingIsMovedWhileATurnThatWasBegunIsStillToBeSwept() {
        Bench bench = byAngle(twoSections(), "", "0", "0.030", "0", "-0.030");
        byAngle(bench, "far:", "0", "0.030", "0", "-0.030");
        assertEquals(SECOND_JAW_BY_0_030, near(bench));
        sweep(bench, "", "0.060", "0");
        assertEquals(Optional.empty(), advice(bench));
        assertEquals(SECOND_JAW_BY_0_030, near(sweep(bench, "far:", "0.060", "0")));
    }

    /**
     * 0.006 off near the jaws is inside and stays: what is over is the far section, and nobody has read there to which
     * side.
     */
    @Test
    void whereOnlyTheFarSectionIsOverTheNearOneIsNotMovedForIt() {
        Bench bench = byAngle(
                sweep(sweep(twoSections(), "", "0.012", "0"), "far:", "0.040", "0"),
                "",
                "0.012",
                "0.006",
                "0",
                "0.006");
        assertEquals(Optional.empty(), advice(bench));
    }

    /**
     * Far out 0.020 off towards 0° and near the jaws not at all: the whole of it is lean. Bare zeros are no indicator
     * that reads whole millimetres.
     */
    @Test
    void whereOnlyTheFarSectionIsOverItsLeanIsTakenAwayOnceItIsReadByAngle() {
        Bench bench = sweep(sweep(twoSections(), "", "0.001", "0"), "far:", "0.040", "0");
        byAngle(byAngle(bench, "", "0", "0", "0", "0"), "far:", "0.040", "0.020", "0", "0.020");
        TruingUp advice = advice(bench).orElseThrow();
        assertEquals(List.of(), advice.near());
        assertTrue(
                advice.far().get(0) instanceof Move.Tap tap
                        && tap.from().amount().equals(length("0.020")),
                advice.far()::toString);
    }

    @Test
    void nothingIsAdvisedWhereBothSectionsPassByTheirPoints() {
        assertEquals(
                Optional.empty(),
                advice(byAngle(
                        byAngle(twoSections(), "", "0.012", "0.006", "0", "0.006"),
                        "far:",
                        "0.006",
                        "0.012",
                        "0.006",
                        "0")));
    }

    @Test
    void aSectionIsOverBeyondTheLimitAndNotOnIt() {
        assertFalse(isOver("0.020"));
        assertTrue(isOver("0.021"));
        RunOutFinding unread = (RunOutFinding) oneSection().finding(1);
        assertFalse(unread.isOver(unread.near()));
    }

    private static boolean isOver(String highest) {
        RunOutFinding found =
                (RunOutFinding) sweep(oneSection(), "", highest, "0").finding(1);
        return found.isOver(found.near());
    }

    private static Bench oneSection() {
        return new Bench().step(runOut("0.020", 4, QUARTERS));
    }

    private static Bench twoSections() {
        return new Bench()
                .step(new RunOutCheck(
                        mm("0.020"),
                        Stream.of(QUARTERS).map(BigDecimal::new).toList(),
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

    private static Bench byAngle(Bench bench, String at, String... read) {
        for (int place = 1; place <= read.length; place++) {
            bench.did(new StepEvent.ReadingTaken(1, at + place + ".1", mm(read[place - 1])));
        }
        return bench;
    }

    private static Optional<TruingUp> advice(Bench bench) {
        return ((RunOutFinding) bench.finding(1)).truingUp();
    }

    private static List<Move> near(Bench bench) {
        return advice(bench).orElseThrow().near();
    }
}
