package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.checklists.rules.RequirementRead.HEAD;
import static org.tenthwise.checklists.rules.RequirementRead.limits;
import static org.tenthwise.checklists.rules.RequirementRead.problems;
import static org.tenthwise.checklists.rules.RequirementRead.requirement;
import static org.tenthwise.checklists.rules.RequirementRead.step;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.words.Words;

/**
 * What the words of a drawing leave in doubt, and what stands beside them and disagrees. Sources as in
 * {@link RequirementTest}.
 */
class RequirementRefusedTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            kind = "scale" unit = "µm" upper = 3.2                             | Ra 1.6        | the limits of the check are
            kind = "scale" unit = "µm" upper = 1.6 rule = "16-percent"         | Ra 1.6 MAX    | is accepted by the rule "max"
            kind = "indicated" movement_of = "flatness" limit = 0.05           | ⏥ 0.02        | the limits of the check are
            kind = "position" zone = 0.3 x = 1 y = 1                           | ⌖ Ø0.2 A B    | the limits of the check are
            kind = "indicated" movement_of = "squareness"                      | ⌖ Ø0.2 A B    | of another kind
            kind = "scale" unit = "µm"                                         | 12.5 ±0.1     | of another kind
            """)
    void whatStandsBesideAFrameOrAScaleAndSaysOtherwiseIsRefused(String keys, String text, String said) {
        String gauge =
                keys.contains("scale") ? "other-instrument" : keys.contains("indicated") ? "dial-indicator" : "caliper";
        String problems = problems(keys.replaceAll(" (?=[a-z_]+ = )", "\n") + "\nname = \"N\"\n" + requirement(text)
                + (keys.contains("position") ? "" : "places = [\"there\"]\n") + "gauge_kind = \"" + gauge + "\"\n");
        assertTrue(problems.contains(said), problems);
    }

    @Test
    void aBonusThatTheDrawingDoesNotGiveIsRefused() {
        String hole = "kind = \"position\"\nname = \"P\"\nzone = 0.2\nmodifier = \"mmc\"\nx = 1\ny = 1\n";
        String problems = problems(hole + requirement("⌖ Ø0.2 A B") + "gauge_kind = \"coordinate-machine\"\n");
        assertTrue(problems.contains("size_step"), problems);
        String bore =
                requirement("Ø6 H7") + "places = [\"there\"]\nmaster = 6.000\n\n[[step]]\nnumber = 6\noperation = 10\n";
        String beside = problems(
                bore + hole + "size_step = 5\n" + requirement("⌖ Ø0.2 A B") + "gauge_kind = \"coordinate-machine\"\n");
        assertTrue(beside.contains("has modifier \"none\", the check says \"mmc\""), beside);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            Ø12.5 ±0.1               | a bore or a shaft
            10 7                     | cannot be read: 10 and 7 with nothing between
            (12.5)                   | not inspected
            60° BSC                  | not inspected
            M10x1.25                 | No kind of check follows
            Ø6.6 ±0.1 THRU ↧ 6 ±0.2  | several parts
            45°                      | has no tolerance
            0.4                      | has no tolerance
            1.5 in ±.005 in          | in in, the plan in mm
            """)
    void whatIsInDoubtIsSaidWhereTheRequirementStands(String text, String said) {
        String problems = problems(requirement(text) + "places = [\"there\"]\n");
        assertTrue(problems.lines().anyMatch(line -> line.startsWith("18:") && line.contains(said)), () -> problems);
    }

    /** Half a diameter, degrees out of millimetres, a zone as a size: limits that would scrap the part. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            kind = "diameter"                     | R6 ±0.2
            kind = "bore"                         | R6 ±0.2
            kind = "bore"                         | M8x1.25-6H
            kind = "angle"                        | 12 ±0.1
            kind = "depth"                        | Ø12 ±0.1
            kind = "width"                        | 2 ±0.1 X 45° ±1°
            kind = "size" feature = "radius"      | Ø12 ±0.1
            kind = "size" feature = "chamfer"     | R1 ±0.1
            kind = "size" feature = "length"      | R6 ±0.2
            kind = "size" feature = "length"      | ⌖ Ø0.1 A B
            kind = "size" feature = "length"      | 45° ±1°
            """)
    void wordsOfAnotherKindGiveACheckNoLimits(String kind, String text) {
        String problems =
                problems(kind.replace(" feature", "\nfeature") + "\n" + requirement(text) + "places = [\"there\"]\n");
        assertTrue(problems.contains("The requirement is of another kind than"), problems);
    }

    /** Limits that are a radius's are not a diameter's because somebody typed them. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            kind = "diameter"                     | R6 ±0.2
            kind = "size" feature = "radius"      | Ø6 ±0.2
            kind = "size" feature = "length"      | R6 ±0.2
            """)
    void limitsTypedBesideWordsOfAnotherKindAreRefused(String kind, String text) {
        String typed = "\nname = \"It\"\nlower = 5.8\nupper = 6.2\ngauge_kind = \"projector\"\nplaces = [\"there\"]\n";
        String problems = problems(kind.replace(" feature", "\nfeature") + typed + requirement(text));
        assertTrue(problems.contains("The requirement is of another kind than"), problems);
        assertEquals("5.8 6.2", limits(step("kind = \"size\"\nfeature = \"radius\"" + typed + requirement("R6 ±0.2"))));
    }

    @Test
    void whatIsLeftToSayIsNamed() {
        String problems = problems("requirement = \"Ø30 H7\"\n");
        assertTrue(problems.contains("method"), problems);
        assertTrue(problems.contains("places"), problems);
        assertTrue(problems.contains("master"), problems);
        assertEquals(3, problems.lines().count(), problems);
    }

    private static String bore(String lower, String upper, String more) {
        return "kind = \"bore\"\nname = \"B\"\ngauge_kind = \"inside-micrometer\"\nlower = " + lower + "\nupper = "
                + upper + "\nplaces = [\"there\"]\n" + more + requirement("Ø30 H7");
    }

    @Test
    void limitsBesideItThatDisagreeAreRefused() {
        assertEquals("30.000 30.021", limits(step(bore("30.000", "30.021", ""))));
        String problems = problems(bore("30.000", "30.033", ""));
        assertTrue(
                problems.contains("says 30 to 30.021 mm, the limits of the check are 30.000 to 30.033 mm"), problems);
        assertEquals("29.5 29.6", limits(step(bore("29.5", "29.6", "class = \"in-process\"\n"))));
    }

    @Test
    void aCountBesideItThatDisagreesIsRefused() {
        String problems = problems(
                "kind = \"bore\"\ngauge_kind = \"inside-micrometer\"\ncount = 2\n" + requirement("4X Ø6 ±0.1"));
        assertTrue(problems.contains("count is 2, and the requirement says 4X"), problems);
    }

    @Test
    void theGeneralToleranceAtTheHeadMustBeOne() {
        String text = HEAD.replace("ISO 2768-m", "medium") + requirement("30") + "places = [\"there\"]\n";
        PlanReading.Bad bad = assertInstanceOf(PlanReading.Bad.class, new PlanReader().read(text));
        assertTrue(bad.problems().stream()
                .anyMatch(problem ->
                        problem.line() == 8 && Words.ENGLISH.say(problem.what()).contains("no general tolerance")));
    }
}
