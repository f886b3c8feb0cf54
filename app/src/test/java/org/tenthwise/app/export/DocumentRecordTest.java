package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.ProvenElsewhere;
import org.tenthwise.model.record.Outcome;

/** What documents prove, in the files a record is handed out as. */
class DocumentRecordTest {

    private static Evidence evidence() {
        return new Records.Walk(ProvenElsewhere.PLAN, "Setter 1")
                .addAll(ProvenElsewhere.run())
                .evidence();
    }

    private static Stream<JsonNode> all(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false);
    }

    private static List<CSVRecord> rows(int number) {
        return ReadBack.rows(evidence()).stream()
                .filter(row -> row.get("number").equals(String.valueOf(number)))
                .toList();
    }

    /** 40 at the machine, 20 elsewhere: none is left out, and each has a result or is open. */
    @Test
    void sixtyBalloonsGiveSixtyLinesOfWhichTwentySayWhereTheyAreProven() {
        List<JsonNode> account =
                all(ReadBack.json(evidence()).at("/result/account")).toList();
        assertEquals(
                IntStream.rangeClosed(1, 60).mapToObj(String::valueOf).toList(),
                account.stream().map(line -> line.path("balloon").textValue()).toList());
        assertEquals(
                20,
                account.stream()
                        .filter(line -> line.path("where").asText().equals("coordinate machine"))
                        .count());
        assertEquals("open", account.get(59).path("verdict").textValue());
        assertEquals("fail", account.get(49).path("verdict").textValue());
        assertEquals("pass", account.get(40).path("verdict").textValue());
    }

    @Test
    void aFigureJustOutsideIsNowhereRoundedOntoItsLimit() {
        JsonNode pass = all(ReadBack.json(evidence()).at("/result/characteristics"))
                .filter(line -> line.path("number").intValue() == 50)
                .findFirst()
                .orElseThrow()
                .at("/passes/0");
        assertEquals("0.0505", pass.path("value").textValue());
        assertEquals("0.0005", pass.at("/distance/size").textValue());
        assertEquals("0.0505", rows(50).get(0).get("judged"));
        assertEquals("-0.0005", rows(50).get(0).get("distance"));
    }

    @Test
    void aDocumentIsWhollyThereStruckOutOrNot() {
        JsonNode documents = all(ReadBack.json(evidence()).at("/result/characteristics"))
                .filter(line -> line.path("number").intValue() == 42)
                .findFirst()
                .orElseThrow()
                .at("/passes/0/documents");
        assertEquals(2, documents.size());
        assertEquals("CM-117", documents.get(0).path("number").textValue());
        assertEquals(
                "Of another part", documents.get(0).at("/struck-out/reason").textValue());
        assertEquals(false, documents.get(0).path("counts").booleanValue());
        assertEquals("2026-11-24", documents.get(1).path("dated").textValue());
        assertEquals("figures", documents.get(1).path("says").textValue());
        assertEquals("Measuring room", documents.get(1).path("said-by").textValue());
        assertEquals("0.030", documents.get(1).at("/figures/1/figure").textValue());
    }

    @Test
    void aTableHasARowForEveryFigureAndOneForADocumentWithout() {
        List<CSVRecord> rows = rows(42);
        assertEquals(4, rows.size());
        assertEquals(
                List.of(
                        "CM-118",
                        "2026-11-24",
                        "figures",
                        "Measuring room",
                        "2",
                        "0.030",
                        "mm",
                        "coordinate machine",
                        ""),
                List.of(
                                "document",
                                "dated",
                                "says",
                                "said-by",
                                "repeat",
                                "reading",
                                "reading-unit",
                                "where",
                                "operation")
                        .stream()
                        .map(rows.get(3)::get)
                        .toList());
        assertEquals("Of another part", rows.get(0).get("struck-out"));
        CSVRecord material = rows(71).get(0);
        assertEquals(
                List.of("material", "AMS 5663, class A", "forged bar", "M12", "Invented Alloys", "HT-4711", "pass"),
                List.of("check", "specification", "form", "code", "supplier", "document", "verdict").stream()
                        .map(material::get)
                        .toList());
        assertEquals("open", rows(73).get(0).get("verdict"));
    }

    @Test
    void aRecordProvesItself() {
        assertEquals(
                Optional.empty(),
                ReadBack.check(ReadBack.text(new JsonRecord(), evidence()))
                        .found()
                        .fault());
        assertEquals(Outcome.DOES_NOT_CONFORM, evidence().sheet().outcome());
    }
}
