package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.run.Event;

/** What programs read of a run that was put away, whatever passed in it. */
class PutAwayRecordTest {

    private static final DemoPart PART = DemoPart.SCREW_CARRIER;

    private static Records.Walk putAway() {
        return Records.walk(PART, Records.passing(PART), 60).add(new Event.PutAway("Setter 3", "Started twice"));
    }

    @Test
    void theRecordForProgramsSaysItAndProvesItself() {
        JsonNode record = ReadBack.json(putAway().evidence());
        assertEquals("put-away", record.at("/result/outcome").asText());
        assertEquals("Setter 3", record.at("/result/put-away/by").asText());
        assertEquals("Started twice", record.at("/result/put-away/reason").asText());
        assertTrue(ReadBack.check(record.toString()).compared(), record::toString);
    }

    @Test
    void everyRowOfTheTableSaysIt() {
        Set<String> outcomes = ReadBack.rows(putAway().evidence()).stream()
                .map(row -> row.get("outcome"))
                .collect(Collectors.toSet());
        assertEquals(Set.of("put-away"), outcomes);
    }

    @Test
    void takenUpAgainItSaysNothingOfItButInItsEntries() {
        JsonNode record = ReadBack.json(putAway().add(new Event.TakenUp()).evidence());
        assertEquals("not-complete", record.at("/result/outcome").asText());
        assertFalse(record.path("result").has("put-away"));
    }
}
