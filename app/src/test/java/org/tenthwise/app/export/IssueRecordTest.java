package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/** Why the plan of a run was issued, in the files its record is handed out as. */
class IssueRecordTest {

    private static final String STEP =
            """
            [[step]]
            number = 1
            operation = 10
            balloon = "7"
            kind = "look"
            name = "Edges"
            what = "Edges are broken."
            """;

    private static final String BEFORE =
            """
            [[issued]]
            issue = "0"
            reason = "First issue"
            by = "Planner 1"
            affected = ["9"]

            """;

    private static final String NOW =
            """
            [[issued]]
            issue = "1"
            reason = "Edge 7 was 0.5"
            by = "Planner 2"
            """;

    private static Evidence evidence(String tables) {
        Plan plan = InventedPlans.inMillimetres(STEP + tables);
        return new Records.Walk(plan, "Setter 1")
                .add(new Event.Begun(plan.part(), "014", "L-1", "Lathe 4", plan.source()))
                .add(new StepEvent.Answered(1, Question.LOOKS_RIGHT, Answer.YES))
                .evidence();
    }

    private static JsonNode issued(String tables) {
        return ReadBack.json(evidence(tables)).at("/result/issued");
    }

    private static CSVRecord row(String tables) {
        return ReadBack.rows(evidence(tables)).get(0);
    }

    @Test
    void theIssueInForceIsThereWithReasonNamesDayAndWhatIsAffected() {
        String whole =
                BEFORE + NOW + "approved_by = \"Inspector 1\"\non = \"2026-11-20\"\naffected = [\"7\", \"Bore\"]\n";
        assertEquals(
                "{\"number\":\"1\",\"reason\":\"Edge 7 was 0.5\",\"by\":\"Planner 2\",\"approved-by\":\"Inspector 1\","
                        + "\"on\":\"2026-11-20\",\"affected\":[\"7\",\"Bore\"]}",
                issued(whole).toString());
        CSVRecord row = row(whole);
        assertEquals("1", row.get("plan-issue"));
        assertEquals("Edge 7 was 0.5", row.get("issue-reason"));
        assertEquals("Planner 2", row.get("issued-by"));
        assertEquals("Inspector 1", row.get("approved-by"));
        assertEquals("2026-11-20", row.get("issued-on"));
        assertEquals("7; Bore", row.get("affected"));
    }

    /** None affected is another thing than nobody having said. */
    @Test
    void noneAffectedIsToldApartFromNothingSaid() {
        assertEquals("[]", issued(NOW + "affected = []\n").path("affected").toString());
        assertEquals("none", row(NOW + "affected = []\n").get("affected"));
        assertFalse(issued(BEFORE + NOW).has("affected"), "what was said of the issue before does not count");
        assertEquals("", row(BEFORE + NOW).get("affected"));
    }

    @Test
    void aPlanThatDoesNotTellLeavesTheFieldsEmpty() {
        assertTrue(issued("").isMissingNode());
        Stream.of("issue-reason", "issued-by", "approved-by", "issued-on", "affected")
                .forEach(column -> assertEquals("", row("").get(column), column));
    }

    @Test
    void aReasonThatWasChangedIsFound() throws IOException {
        String record = ReadBack.text(new JsonRecord(), evidence(NOW));
        assertTrue(isIntact(record));
        assertFalse(isIntact(record.replaceFirst("(\"reason\" : \")Edge 7 was 0.5", "$1Edge 7 was 5")));
    }

    private static boolean isIntact(String record) throws IOException {
        return new RecordCheck()
                .check(new ByteArrayInputStream(record.getBytes(StandardCharsets.UTF_8)))
                .found()
                .fault()
                .isEmpty();
    }
}
