package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.plan.SizeCheck;

/**
 * Readings that cannot speak for the whole of what they are taken for are refused in a plan, and read in one kept with
 * its run.
 */
class SpeaksForTheWholeTest {

    private static final String HEAD =
            """
            format = 1
            part = "T-9"
            revision = "A"
            issue = "1"
            name = "Test spindle, invented"
            material = "steel"
            drawing = "T-9"
            unit = "mm"

            [temperature]
            part_expansion = 11.6
            shop_least = 18
            shop_greatest = 24

            [[operation]]
            number = 10
            name = "Turn"
            """;
    private static final String RUN_OUT =
            """

            [[step]]
            number = 1
            operation = 10
            kind = "run-out"
            name = "Run-out"
            method = "By hand."
            limit = 0.02
            angles = %s
            gauge_kind = "dial-indicator"
            """;
    private static final String THREAD =
            """

            [[step]]
            number = 1
            operation = 10
            kind = "diameter"
            name = "Root"
            method = "Vee pieces."
            upper = 33.0
            places = ["a", "b"]
            drawing_says = "%s"
            gauge_kind = "micrometer"

            [[step]]
            number = 2
            operation = 10
            kind = "thread-over-wires"
            name = "Thread"
            method = "Three wires."
            form = "trapezoidal"
            diameter = 40
            pitch = 7
            lower = 36.0
            upper = 36.375
            wire = 3.626
            minor_step = 1
            places = ["a"]
            """;
    private static final String RANGE =
            """

            [[step]]
            number = 1
            operation = 10
            kind = "depth"
            name = "Floor"
            method = "Four ways."
            upper = 0.02
            places = ["a", "b"]
            drawing_says = "SR"
            gauge_kind = "depth-micrometer"
            temperature = "ask"
            """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        [0]               | fewer than three angles
        [0, 180]          | fewer than three angles
        [0, 10, 20]       | half a turn or more without an angle
        [0, 90, 180]      | half a turn or more without an angle
        [0, 30, 60, 90]   | half a turn or more without an angle
        """)
    void anglesThatDoNotGoAllRoundAreRefused(String angles, String why) {
        assertEquals(
                "check 1: " + why
                        + ": such readings do not cover the whole turn; leave \"angles\" out and sweep a full "
                        + "turn for "
                        + "highest and lowest, or give three or more all round",
                onlyProblem(HEAD + RUN_OUT.formatted(angles)));
    }

    @Test
    void threeAnglesAllRoundWillDo() {
        assertInstanceOf(PlanReading.Good.class, new PlanReader().read(HEAD + RUN_OUT.formatted("[0, 120, 240]")));
    }

    @ParameterizedTest
    @CsvSource({"SA, mean", "SN, smallest", "SR, range"})
    void aRootIsTheLargestAndNothingElse(String says, String combine) {
        String said = onlyProblem(HEAD + THREAD.formatted(says));
        assertTrue(
                said.contains("check 2: \"minor_step\" names check 1, which is judged by the %s of its readings"
                        .formatted(combine)),
                said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"LP", "SX"})
    void aRootJudgedAtEveryPlaceOrByTheLargestWillDo(String says) {
        assertInstanceOf(PlanReading.Good.class, new PlanReader().read(HEAD + THREAD.formatted(says)));
    }

    /** One place of a bore may be out under "largest": only a drawing with that modifier means so. */
    @ParameterizedTest
    @CsvSource({"mean, SA", "largest, SX", "smallest, SN", "range, SR"})
    void readingsBecomeOneSizeOnlyWhereTheDrawingSaysSo(String combine, String says) {
        String plan = HEAD
                + RANGE.replace("drawing_says = \"SR\"", "combine = \"%s\"".formatted(combine))
                        .replace("temperature = \"ask\"\n", "");
        String said = onlyProblem(plan);
        assertTrue(said.contains("\"drawing_says\" \"%s\" where it has that modifier".formatted(says)), said);
        PlanReading.Good kept = assertInstanceOf(PlanReading.Good.class, new PlanReader().readKept(plan));
        assertEquals(Optional.empty(), ((SizeCheck) kept.plan().steps().get(0).check()).drawingSays());
        assertInstanceOf(
                PlanReading.Good.class, new PlanReader().read(plan + "drawing_says = \"%s\"\n".formatted(says)));
    }

    @Test
    void askingForTheTemperatureOfARangeIsRefusedRatherThanIgnored() {
        assertTrue(onlyProblem(HEAD + RANGE).startsWith("check 1: temperature hardly changes the range"));
    }

    private static String onlyProblem(String text) {
        assertInstanceOf(PlanReading.Good.class, new PlanReader().readKept(text), "a run begun with it still opens");
        PlanReading.Bad bad = assertInstanceOf(PlanReading.Bad.class, new PlanReader().read(text));
        assertEquals(1, bad.problems().size(), bad.problems().toString());
        return bad.problems().get(0).what().toString();
    }
}
