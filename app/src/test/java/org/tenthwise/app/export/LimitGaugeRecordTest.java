package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/** What a limit gauge is worth, by its certificate, in the files a record is handed out as. Invented. */
class LimitGaugeRecordTest {

    private static final Plan PLAN = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "go-not-go"
            name = "Bore Ø20 H7 by plug"
            method = "Wipe both, no force."
            go = "Enters over the full length."
            not_go = "Enters."
            gauge = "LP-1"
            gauge_form = "plug"
            go_size = 19.998
            not_go_size = 20.019
            lower = 20.000
            upper = 20.021
            """);

    private static Evidence evidence() {
        return new Records.Walk(PLAN, "Setter 1")
                .add(new Event.Begun(PLAN.part(), "001", "L-1", "Lathe 4", PLAN.source()))
                .add(new StepEvent.Answered(1, Question.GO_ENTERS, Answer.YES))
                .add(new StepEvent.Answered(1, Question.NOT_GO_STAYS_OUT, Answer.YES))
                .evidence();
    }

    @Test
    void aTableHasTheEndsOfItsCertificateInEveryRow() {
        List<CSVRecord> rows = ReadBack.rows(evidence());
        assertEquals(2, rows.size());
        for (CSVRecord row : rows) {
            assertEquals(
                    List.of("19.998", "20.019", "plug", "unproven"),
                    List.of(row.get("go-size"), row.get("not-go-size"), row.get("gauge-form"), row.get("verdict")));
        }
    }

    @Test
    void aFileForProgramsHasThemBesideTheVerdict() {
        JsonNode pass = ReadBack.json(evidence()).at("/result/characteristics/0/passes/0");
        assertEquals("unproven", pass.path("verdict").textValue());
        assertEquals("plug", pass.at("/certified-ends/form").textValue());
        assertEquals("19.998", pass.at("/certified-ends/go/figure").textValue());
        assertEquals("20.019", pass.at("/certified-ends/not-go/figure").textValue());
        assertEquals("mm", pass.at("/certified-ends/not-go/unit").textValue());
    }
}
