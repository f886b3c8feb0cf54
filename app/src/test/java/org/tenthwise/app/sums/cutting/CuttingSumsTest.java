package org.tenthwise.app.sums.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.sums.Asking.at;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Answer;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.model.quantity.Unit;

/** What is asked and how it is answered; the figures of the sources are run with the published cases. */
class CuttingSumsTest {

    private final Asking sums = new Asking(CuttingSums.all());

    @ParameterizedTest
    @CsvSource(textBlock = """
        # limits 24.980 and 24.993, aim the middle, 24.9865; aim less measured by hand
        outside, diameter, 25.312, -0.325500, 0.325500, cut-again
        outside, radius,   25.312, -0.162750, 0.325500, cut-again
        outside, radius,   24.993, -0.003250, 0.006500, in-size
        outside, diameter, 24.979, 0.007500,  0.000000, past-size
        inside,  diameter, 24.979, 0.007500,  0.007500, cut-again
        inside,  diameter, 24.980, 0.006500,  0.006500, in-size
        inside,  radius,   25.000, -0.006750, 0.000000, past-size
        """)
    void theNextCutGoesIntoTheRegisterAsItCounts(String side, String register, String measured, String change, String stock, String state) {
        Answer answer = sums.answer(Unit.MILLIMETRE, "next-cut",
                "side=%s; register=%s; lower=24.980; upper=24.993; measured=%s".formatted(side, register, measured));
        assertEquals(change, at(answer, "offset_change"));
        assertEquals(stock, at(answer, "stock_left"));
        assertEquals(state, at(answer, "state"));
    }

    @Test
    void anAimThatLeavesMetalForLaterIsTakenAndSaid() {
        Answer answer = sums.answer(Unit.INCH, "next-cut",
                "side=outside; register=diameter; lower=0.9990; upper=1.0000; aim=1.0120; measured=1.0500");
        assertEquals("-0.03800000", at(answer, "offset_change"));
        assertTrue(answer.notes().stream().anyMatch(note -> note.startsWith("The aim leaves metal on")));
    }

    /** By hand: stages of 100 from 30, 20 of flute outside. */
    @Test
    void stagesSayHowLongEachDrillMustBe() {
        Answer answer = sums.answer(Unit.MILLIMETRE, "drill-set", "depth=250; start=30; per_drill=100; chip_clearance=20");
        assertEquals("3", at(answer, "drills"));
        assertEquals("30.000000", at(answer, "steps.0.from"));
        assertEquals("130.000000", at(answer, "steps.0.to"));
        assertEquals("150.000000", at(answer, "steps.0.least_reach"));
        assertEquals("250.000000", at(answer, "steps.2.to"));
        assertTrue(answer.notes().stream().anyMatch(note -> note.startsWith("The last stage is short")));
        assertTrue(answer.notes().stream().anyMatch(note -> note.startsWith("Clear the chips")));
        assertTrue(answer.notes().stream().anyMatch(note -> note.startsWith("A long drill brought up to speed outside the hole")));
    }

    @Test
    void usableReachesAreTakenAsTheyAre() {
        Answer answer = sums.answer(Unit.MILLIMETRE, "drill-set", "depth=100; start=0; reaches=40 75 120 300");
        assertEquals("3", at(answer, "drills"));
        assertEquals("75.000000", at(answer, "steps.2.from"));
        assertEquals("100.000000", at(answer, "steps.2.least_reach"));
        assertTrue(answer.notes().contains("Not every drill at hand is needed: 1 can stay in the rack."));
    }

    /** By hand, in inches: 0.0100 too small, half for each wall. */
    @Test
    void theWearValueIsGivenAsAChangeAndAsItWillStand() {
        Answer answer = sums.answer(Unit.INCH, "cutter-wear", "feature=pocket; target=1.0; measured=0.99; wear=0.02");
        assertEquals("-0.00500000", at(answer, "wear_change"));
        assertEquals("0.01500000", at(answer, "wear_after"));
        assertTrue(sums.answer(Unit.INCH, "cutter-wear", "feature=boss; target=1.0; measured=0.99").at("wear_after").isEmpty());
    }

    /** By hand: 0.36 left on diameter, half of it now; a radius register takes half again. */
    @Test
    void halfWayTakesHalfInEitherRegister() {
        assertEquals("-0.180000", at(sums.answer(Unit.MILLIMETRE, "half-way", "side=outside; aim=30; measured=30.36; register=diameter"), "offset_change"));
        Answer radius = sums.answer(Unit.MILLIMETRE, "half-way", "side=outside; aim=30; measured=30.36; register=radius");
        assertEquals("-0.090000", at(radius, "offset_change"));
        assertEquals("30.180000", at(radius, "expected_size"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        next-cut | side=outside; lower=2; upper=1; measured=1; register=radius | upper | upper is 1: it is below lower, which is 2
        next-cut | side=outside; lower=1; upper=2; aim=0.9; measured=3; register=radius | aim | aim is 0.9
        next-cut | side=inside; lower=1; upper=2; aim=2.1; measured=3; register=radius | aim | aim is 2.1
        next-cut | side=top; lower=1; upper=2; measured=3; register=radius | side | side is "top"
        next-cut | side=inside; lower=1; upper=2; measured=3 | register | register is missing
        half-way | side=outside; aim=30; measured=30; register=radius | measured | measured is 30
        wear-aim | side=outside; lower=1; upper=1.01; sd=0.002; expanded_uncertainty=0 | sd | sd is 0.002
        wear-aim | side=outside; lower=1; upper=1.01; sd=-1; expanded_uncertainty=0 | sd | sd is -1
        drill-set | depth=700; start=0; reaches=90 200 400 600; chip_clearance=18 | reaches | ends at 582 and cannot reach depth, which is 700
        drill-set | depth=100; start=100; per_drill=10; chip_clearance=5 | start | start is 100
        drill-set | depth=100; start=0; per_drill=0.1; chip_clearance=5 | per_drill | per_drill is 0.1
        drill-set | depth=100; start=0; per_drill=10 | chip_clearance | chip_clearance is missing
        drill-set | depth=100; start=0; chip_clearance=10 | per_drill | per_drill is missing
        drill-set | depth=100; start=0; per_drill=10; chip_clearance=1; reaches=40 120 | per_drill | one of them is enough
        drill-set | depth=100; start=0; reaches=0 120 | reaches | reaches has 0
        drill-point | diameter=8; point_angle=200 | point_angle | point_angle is 200
        pecks | depth=100; first=10; step=0.01 | step | step is 0.01
        pecks | depth=100; first=10; step=5; shrink=0.5 | least_step | least_step is missing
        pecks | depth=100; first=10; step=5; shrink=2; least_step=1 | shrink | shrink is 2
        cutter-wear | feature=slot; target=1; measured=1 | feature | feature is "slot"
        """)
    void whatMakesNoSenseIsRefusedByItsKey(String sum, String given, String key, String words) {
        Problem problem = sums.problem(Unit.MILLIMETRE, sum, given);
        assertEquals(key, problem.key().orElseThrow(), problem.words());
        assertTrue(problem.words().contains(words), problem.words());
    }
}
