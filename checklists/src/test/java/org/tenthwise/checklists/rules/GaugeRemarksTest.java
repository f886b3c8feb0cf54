package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.words.Message;

/** What is said of the gauges of a plan without errors. */
class GaugeRemarksTest {

    private static final String PLAN =
            """
            format = 1
            part = "T-1"
            revision = "A"
            issue = "1"
            name = "Test piece"
            material = "steel"
            drawing = "T-1"
            unit = "mm"

            [[gauge_kind]]
            name = "caliper"
            resolution = 0.01

            [[operation]]
            number = 10
            name = "Turn"

            [[step]]
            number = 1
            operation = 10
            kind = "run-out"
            name = "Run-out"
            method = "Turn by hand."
            limit = 0.02
            holding = "%s"
            gauge_kind = "dial-indicator"

            [[step]]
            number = 2
            operation = 10
            kind = "bore"
            name = "Bore"
            method = "So."
            lower = 30.00
            upper = %s
            places = ["a"]
            gauge_kind = "%s"
            """;

    /** 0.01 goes ten times into 0.10 and nine times into 0.09. */
    @ParameterizedTest
    @CsvSource({"30.10, ''", "30.09, the gauge of check 2 reads in steps of more than a tenth of the tolerance"})
    void aGaugeThatIsReadTooCoarselyIsNamed(String upper, String said) {
        assertEquals(said, String.join("", remarks("collet", upper, "caliper")));
    }

    @ParameterizedTest
    @CsvSource({
        "three-jaw,   inside-micrometer,      1",
        "power-chuck, inside-micrometer,      1",
        "three-jaw,   three-point-micrometer, 0",
        "four-jaw,    inside-micrometer,      0",
        "collet,      inside-micrometer,      0"
    })
    void twoPointsInThreeJawsShowNoLobes(String holding, String gauge, int said) {
        assertEquals(said, remarks(holding, "30.10", gauge).size());
    }

    @Test
    void theLobesAreSpokenOf() {
        assertEquals(
                List.of("check 2 is read at two points in three jaws, which shows no lobes: read at three points, or"
                        + " released as well"),
                remarks("three-jaw", "30.10", "inside-micrometer"));
        assertEquals(List.of(), remarks("three-jaw", "30.10", "inside-micrometer\"\nclamping = \"released"));
    }

    private static List<String> remarks(String holding, String upper, String gauge) {
        PlanReading reading = new PlanReader().read(PLAN.formatted(holding, upper, gauge));
        return PlanRemarks.of(assertInstanceOf(PlanReading.Good.class, reading, reading::toString)
                        .plan())
                .stream()
                .map(Message::toString)
                .toList();
    }
}
