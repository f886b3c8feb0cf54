package org.tenthwise.app.sums.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.sums.Asking.at;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.quantity.Unit;

/** What is asked and how it is answered; the figures of the sources are run with the published cases. */
class CuttingSumsTest {

    private final Asking sums = new Asking();

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # limits 24.980 and 24.993, aim the middle, 24.9865; aim less measured by hand
        outside, diameter, 25.312, -0.325500, 0.325500, cut-again
        outside, radius,   25.312, -0.162750, 0.325500, cut-again
        outside, radius,   24.993, -0.003250, 0.006500, in-size
        outside, diameter, 24.979, 0.007500,  0.000000, past-size
        inside,  diameter, 24.979, 0.007500,  0.007500, cut-again
        inside,  diameter, 24.980, 0.006500,  0.006500, in-size
        inside,  radius,   25.000, -0.006750, 0.000000, past-size
        """)
    void theNextCutGoesIntoTheRegisterAsItCounts(
            String side, String register, String measured, String change, String stock, String state) {
        SumResult answer = sums.answer(
                Unit.MILLIMETRE,
                "next-cut",
                "side=%s; register=%s; lower=24.980; upper=24.993; measured=%s".formatted(side, register, measured));
        assertEquals(change, at(answer, "offset_change"));
        assertEquals(stock, at(answer, "stock_left"));
        assertEquals(state, at(answer, "state"));
    }

    @Test
    void anAimThatLeavesMetalForLaterIsTakenAndSaid() {
        SumResult answer = sums.answer(
                Unit.INCH,
                "next-cut",
                "side=outside; register=diameter; lower=0.9990; upper=1.0000; aim=1.0120; measured=1.0500");
        assertEquals("-0.03800000", at(answer, "offset_change"));
        assertTrue(answer.notes().stream().anyMatch(note -> note.toString().startsWith("The aim leaves metal")));
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            delimiter = '|',
            textBlock =
                    """
        # an even cut, by hand: side, register, limits, sizes and the rest | change, state, safe cut, reason
        side=inside; register=diameter; lower=30.000; upper=30.021; sizes=29.900 29.910                          | 0.105500  | cut-again | -        | -
        side=inside; register=radius; lower=30.000; upper=30.021; sizes=29.900 29.910                            | 0.052750  | cut-again | -        | -
        side=inside; register=diameter; lower=30.000; upper=30.021; sizes=29.854 29.990                          | -         | uneven    | 0.031000 | uneven
        # the safe cut is on diameter, whatever the register counts
        side=inside; register=radius; lower=30.000; upper=30.021; sizes=29.900 29.950; aim=third                 | -         | uneven    | 0.071000 | uneven
        side=outside; register=diameter; lower=47.980; upper=48.000; guard_band=0.003; sizes=48.004 47.986       | -         | uneven    | 0.003000 | uneven
        # a third in from the metal side: 30.007, and 47.993 in 47.979 to 48.000
        side=inside; register=diameter; lower=30.000; upper=30.021; measured=29.900; aim=third                   | 0.107000  | cut-again | -        | -
        side=outside; register=diameter; lower=47.979; upper=48.000; measured=48.100; aim=third                  | -0.107000 | cut-again | -        | -
        side=inside; register=diameter; lower=30.000; upper=30.021; sizes=29.900 29.904; aim=30.005              | 0.103000  | cut-again | -        | -
        # 0.1565 on diameter, 0.07825 on radius: rounded with metal left, in the steps of the register
        side=inside; register=diameter; lower=30.000; upper=30.021; measured=29.854; offset_step=0.001           | 0.156000  | cut-again | -        | -
        side=inside; register=radius; lower=30.000; upper=30.021; measured=29.854; offset_step=0.001             | 0.078000  | cut-again | -        | -
        side=outside; register=diameter; lower=47.980; upper=48.000; measured=48.0045; offset_step=0.001         | -0.014000 | cut-again | -        | -
        # the mean of five times 15.000 and 15.060 is 15.010, the middle 14.996
        side=outside; register=diameter; lower=14.990; upper=15.002; sizes=15.000 15.000 15.000 15.000 15.000 15.060; combine=mean | -0.014000 | cut-again | - | -
        side=outside; register=diameter; lower=14.990; upper=15.002; sizes=15.000 15.000 15.000 15.000 15.000 15.060; combine=each | - | uneven | 0.010000 | uneven
        side=inside; register=diameter; lower=10.000; upper=10.020; sizes=9.900 9.950; combine=largest           | 0.060000  | cut-again | -        | -
        side=inside; register=diameter; lower=10.000; upper=10.020; sizes=9.900 9.950; combine=smallest          | 0.110000  | cut-again | -        | -
        # 0.0115 on diameter is 0.00575 deep; it may go to 0.022
        side=inside; register=diameter; lower=30.000; upper=30.021; measured=29.999; least_cut=0.01              | -         | cut-again | 0.022000 | below-least-cut
        side=inside; register=diameter; lower=30.000; upper=30.021; measured=29.999; least_cut=0.005             | 0.011500  | cut-again | -        | -
        side=inside; register=diameter; lower=30.000; upper=30.021; sizes=29.999 30.022                          | -         | past-size | 0.000000 | past-size
        # inside already: towards the aim, or nothing
        side=inside; register=diameter; lower=30.000; upper=30.021; sizes=30.001 30.003; guard_band=0.003        | 0.008500  | in-size   | -        | -
        side=inside; register=diameter; lower=30.000; upper=30.021; sizes=30.011 30.012                          | -         | in-size   | 0.009000 | below-least-cut
        side=inside; register=diameter; lower=30.000; upper=30.021; measured=30.009; least_cut=0.01; offset_step=1 | -         | in-size   | 0.000000 | below-least-cut
        side=inside; register=diameter; lower=30.000; upper=30.021; sizes=30.001 30.020; guard_band=0.003        | -         | in-size   | 0.000000 | uneven
        """)
    void oneEvenCutForEverySizeOrTheSafeCutAndWhy(
            String given, String change, String state, String safe, String reason) {
        SumResult answer = sums.answer(Unit.MILLIMETRE, "next-cut", given);
        assertEquals(change, word(answer, "offset_change"));
        assertEquals(state, word(answer, "state"));
        assertEquals(safe, word(answer, "safe_cut"));
        assertEquals(reason, word(answer, "reason"));
        assertEquals(change == null, safe != null && reason != null, "a change, or else the safe cut with the reason");
        assertTrue(answer.find(NextCutSum.STOCK_LEFT).isEmpty());
    }

    private static String word(SumResult answer, String key) {
        return answer.written().values().containsKey(key) ? at(answer, key) : null;
    }

    /**
     * By hand, in inches: a third of 0.0010 in from 1.0000 is 0.99966…; a step of 0.0001 on radius is 0.0002 on
     * diameter.
     */
    @Test
    void anEvenCutInInches() {
        SumResult answer = sums.answer(
                Unit.INCH,
                "next-cut",
                "side=outside; register=radius; lower=0.9990; upper=1.0000; aim=third; sizes=1.0120 1.0122; "
                        + "offset_step=0.0001");
        assertEquals("-0.00620000", at(answer, "offset_change"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        sizes=29.900 29.910 | Same edge, about the same depth of cut.
        sizes=29.900 29.910 | No offset_step was given
        sizes=29.900 29.950 | Uneven by 0.05: no even cut brings every size in. At most 0.071 may come off without
        sizes=29.900 29.990; least_cut=0.02 | Uneven by 0.09: no even cut brings every size in. At most 0.031 may come off without a size passing its limit: too little for this tool to cut.
        sizes=29.900 29.990; least_cut=0.0155 | Uneven by 0.09: no even cut brings every size in. At most 0.031 may come off without a size passing its limit.
        sizes=30.001 30.020; guard_band=0.003 | Uneven by 0.019: no even cut brings every size in. Nothing more may come off.
        sizes=29.900 29.918; aim=third | The middle of the sizes comes to 30.009, not to the aim, 30.007
        measured=29.900; guard_band=0 | One size was given
        sizes=29.900 29.910; combine=mean | The limits apply to the mean of the sizes, 29.905
        sizes=30.001 30.002; guard_band=0.003 | In size, but within the guard band: take a light cut, or measure with a better gauge.
        sizes=30.001 30.002 | In size: the cut is not needed.
        # a spring pass takes less than 0.020 on diameter, or less than 0.024, and there are 0.022
        sizes=29.999 29.999; least_cut=0.01 | Below the minimum cut: take a spring pass at the same offset, put in a sharper insert and touch it off first
        sizes=29.999 29.999; least_cut=0.012 | Below the minimum cut, and too little for a spring pass: put in a sharper insert and touch it off first
        """)
    void notesSayWhatIsTakenForGranted(String given, String note) {
        SumResult answer = sums.answer(
                Unit.MILLIMETRE, "next-cut", "side=inside; register=diameter; lower=30.000; upper=30.021; " + given);
        assertTrue(
                answer.notes().stream().anyMatch(said -> said.toString().startsWith(note)), answer.notes()::toString);
    }

    /** By hand: stages of 100 from 30, 20 of flute outside. */
    @Test
    void stagesSayHowLongEachDrillMustBe() {
        SumResult answer =
                sums.answer(Unit.MILLIMETRE, "drill-set", "depth=250; start=30; per_drill=100; chip_clearance=20");
        assertEquals("3", at(answer, "drills"));
        assertEquals("30.000000", at(answer, "steps.0.from"));
        assertEquals("130.000000", at(answer, "steps.0.to"));
        assertEquals("150.000000", at(answer, "steps.0.least_reach"));
        assertEquals("250.000000", at(answer, "steps.2.to"));
        assertTrue(answer.notes().stream().anyMatch(note -> note.toString().startsWith("The last stage is short")));
        assertTrue(answer.notes().stream().anyMatch(note -> note.toString().startsWith("Clear the chips")));
        assertTrue(answer.notes().stream()
                .anyMatch(note -> note.toString().startsWith("A long drill brought up to speed outside the hole")));
    }

    @Test
    void usableReachesAreTakenAsTheyAre() {
        SumResult answer = sums.answer(Unit.MILLIMETRE, "drill-set", "depth=100; start=0; reaches=40 75 120 300");
        assertEquals("3", at(answer, "drills"));
        assertEquals("75.000000", at(answer, "steps.2.from"));
        assertEquals("100.000000", at(answer, "steps.2.least_reach"));
        assertTrue(answer.notes().toString().contains("Not every drill is needed: 1 can stay in the rack."));
    }

    /** By hand, in inches: 0.0100 too small, half for each wall. */
    @Test
    void theWearValueIsGivenAsAChangeAndAsItWillStand() {
        SumResult answer =
                sums.answer(Unit.INCH, "cutter-wear", "feature=pocket; target=1.0; measured=0.99; wear=0.02");
        assertEquals("-0.00500000", at(answer, "wear_change"));
        assertEquals("0.01500000", at(answer, "wear_after"));
        SumResult without = sums.answer(Unit.INCH, "cutter-wear", "feature=boss; target=1.0; measured=0.99");
        assertEquals(Optional.empty(), without.find(CutterWearSum.WEAR_AFTER));
    }

    /** By hand: 0.36 left on diameter, half of it now; a radius register takes half again. */
    @Test
    void halfWayTakesHalfInEitherRegister() {
        assertEquals(
                "-0.180000",
                at(
                        sums.answer(
                                Unit.MILLIMETRE, "half-way", "side=outside; aim=30; measured=30.36; register=diameter"),
                        "offset_change"));
        SumResult radius =
                sums.answer(Unit.MILLIMETRE, "half-way", "side=outside; aim=30; measured=30.36; register=radius");
        assertEquals("-0.090000", at(radius, "offset_change"));
        assertEquals("30.180000", at(radius, "expected_size"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        next-cut | side=outside; lower=2; upper=1; measured=1; register=radius | upper | upper is 1: it is below lower, which is 2
        next-cut | side=outside; lower=1; upper=2; aim=0.9; measured=3; register=radius | aim | aim is 0.9
        next-cut | side=inside; lower=1; upper=2; aim=2.1; measured=3; register=radius | aim | aim is 2.1
        next-cut | side=top; lower=1; upper=2; measured=3; register=radius | side | side is "top"
        next-cut | side=inside; lower=1; upper=2; measured=3 | register | register is missing
        next-cut | side=inside; lower=1; upper=2; sizes=0.8 0.9; measured=0.8; register=radius | sizes | give one of them
        next-cut | side=inside; lower=1; upper=2; guard_band=0; register=radius | sizes | sizes is missing
        next-cut | side=inside; lower=1; upper=2; sizes=0.8 0.9; guard_band=0.6; register=radius | guard_band | leaves nothing between them
        next-cut | side=inside; lower=1; upper=2; sizes=0.8 0.9; guard_band=-1; register=radius | guard_band | guard_band is -1
        next-cut | side=inside; lower=1; upper=2; sizes=0.8 0.9; least_cut=0; register=radius | least_cut | least_cut is 0
        next-cut | side=inside; lower=1; upper=2; sizes=0.8 0.9; offset_step=0; register=radius | offset_step | offset_step is 0
        next-cut | side=inside; lower=1; upper=2; sizes=0.8 0.9; aim=0.9; register=radius | aim | it is outside the limits
        next-cut | side=inside; lower=1; upper=2; sizes=0.8 0.9; aim=half; register=radius | aim | aim is "half"
        next-cut | side=inside; lower=1; upper=2; sizes=0.8 0.9; combine=range; register=radius | combine | one of each, largest, mean, smallest
        next-cut | side=inside; lower=2; upper=1; sizes=0.8 0.9; register=radius | upper | it is below lower
        half-way | side=outside; aim=30; measured=30; register=radius | measured | measured is 30
        wear-aim | side=outside; lower=1; upper=1.01; sd=0.002; expanded_uncertainty=0 | sd | sd is 0.002
        wear-aim | side=outside; lower=1; upper=1.01; sd=-1; expanded_uncertainty=0 | sd | sd is -1
        drill-set | depth=700; start=0; reaches=90 200 400 600; chip_clearance=18 | reaches | ends at 582 and cannot reach depth, which is 700
        drill-set | depth=100; start=100; per_drill=10; chip_clearance=5 | start | start is 100
        drill-set | depth=100; start=0; per_drill=0.1; chip_clearance=5 | per_drill | per_drill is 0.1
        drill-set | depth=100; start=0; per_drill=10 | chip_clearance | chip_clearance is missing
        drill-set | depth=100; start=0; chip_clearance=10 | per_drill | per_drill is missing
        drill-set | depth=100; start=0; per_drill=10; chip_clearance=1; reaches=40 120 | per_drill | give one of them
        drill-set | depth=100; start=0; reaches=0 120 | reaches | reaches has 0
        drill-point | diameter=8; point_angle=200 | point_angle | point_angle is 200
        pecks | depth=100; first=10; step=0.01 | step | step is 0.01
        pecks | depth=100; first=10; step=5; shrink=0.5 | least_step | least_step is missing
        pecks | depth=100; first=10; step=5; shrink=2; least_step=1 | shrink | shrink is 2
        cutter-wear | feature=slot; target=1; measured=1 | feature | feature is "slot"
        """)
    void whatMakesNoSenseIsRefusedByItsKey(String sum, String given, String key, String words) {
        Problem problem = sums.problem(Unit.MILLIMETRE, sum, given);
        assertEquals(key, problem.key().orElseThrow(), problem.why().toString());
        assertTrue(problem.why().toString().contains(words), problem.why().toString());
    }
}
