package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.runOut;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.roundness.Refusal;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.verdict.Standing;

/** Full indicator movement by points and over a turn. Figures by hand. */
class RunOutFindingTest {

    @Test
    void onePointAloneShowsNothing() {
        Finding found = new Bench().step(runOut("0.020", 0, "0")).read(1, "0.005").finding(1);
        assertEquals(0, found.missing());
        assertEquals(Standing.UNPROVEN, found.verdict().standing());
    }

    @Test
    void aMovementOverTheLimitFailsBeforeTheLastReading() {
        assertEquals(Standing.FAIL, allRound("0", "0.021").verdict().standing());
    }

    @Test
    void oneWithinItIsOpenUntilTheLastReading() {
        assertEquals(Standing.OPEN, allRound("0").verdict().standing());
        RunOutFinding three = allRound("0", "0.010", "0.020");
        assertEquals(Standing.OPEN, three.verdict().standing());
        assertEquals(1, three.missing());
        assertEquals(Standing.PASS, allRound("0", "0.010", "0.020", "0.010").verdict().standing());
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
        # off centre towards 90° nothing is seen at 0° and 180°; the other gaps hide a side as well
        0 180,             FEWER_THAN_THREE_ANGLES
        0 10,              FEWER_THAN_THREE_ANGLES
        0 90,              FEWER_THAN_THREE_ANGLES
        0 10 20,           GAP_OF_HALF_A_TURN
        0 30 60 90,        GAP_OF_HALF_A_TURN
        0 90 180,          GAP_OF_HALF_A_TURN
        """)
    void pointsThatDoNotGoAllRoundNeverPass(String angles, Refusal why) {
        RunOutFinding found = found(4, angles.split(" "), "0", "0", "0", "0");
        assertEquals(Standing.UNPROVEN, found.verdict().standing());
        assertEquals(Optional.of(why), found.refusal());
        assertTrue(found.jawMoves().isEmpty());
    }

    @Test
    void pointsThatDoNotGoAllRoundCanStillFail() {
        assertEquals(Standing.FAIL, found(4, new String[] {"0", "180"}, "0", "0.021").verdict().standing());
    }

    @Test
    void highestAndLowestOverATurnPassWhateverTheAnglesOfThePlan() {
        Bench bench = new Bench().step(runOut("0.020", 4, "0", "180"))
                .did(new Event.ReadingTaken(1, Check.RunOut.HIGHEST, mm("0.014")));
        assertEquals(Standing.OPEN, bench.finding(1).verdict().standing());
        bench.did(new Event.ReadingTaken(1, Check.RunOut.LOWEST, mm("-0.006")));
        assertEquals(Standing.PASS, bench.finding(1).verdict().standing());
    }

    @Test
    void highestAndLowestOverATurnAreEnoughForTheVerdict() {
        RunOutFinding found = (RunOutFinding) new Bench().step(runOut("0.020", 4, "0", "90", "180", "270"))
                .did(new Event.ReadingTaken(1, Check.RunOut.LOWEST, mm("-0.008")))
                .did(new Event.ReadingTaken(1, Check.RunOut.HIGHEST, mm("0.014"))).finding(1);
        assertTrue(found.swept());
        assertEquals(Optional.of(length("0.022")), found.movement());
        assertEquals(Standing.FAIL, found.verdict().standing());
    }

    @Test
    void onlyWorkThatStandsInJawsIsMoved() {
        String[] quarters = {"0", "90", "180", "270"};
        assertTrue(found(0, quarters, "0", "0.030", "0", "-0.030").jawMoves().isEmpty());
        assertEquals(4, found(4, quarters, "0", "0.030", "0", "-0.030").jawMoves().size());
        assertTrue(found(4, quarters, "0", "0.030", "0").jawMoves().isEmpty(), "a reading is missing");
    }

    private static RunOutFinding allRound(String... read) {
        return found(4, new String[] {"0", "90", "180", "270"}, read);
    }

    /** Readings for as many of the angles as there are. */
    private static RunOutFinding found(int jaws, String[] angles, String... read) {
        String[] used = Arrays.copyOf(read, Math.min(read.length, angles.length));
        return (RunOutFinding) new Bench().step(runOut("0.020", jaws, angles)).read(1, used).finding(1);
    }
}
