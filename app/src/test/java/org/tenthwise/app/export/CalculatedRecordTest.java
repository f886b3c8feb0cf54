package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.PdfRecord;
import org.tenthwise.app.export.pdf.RecordLayout;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** Two depths from one face, and the web between their floors, as files tell it. Figures by hand. */
class CalculatedRecordTest {

    private static final Plan PLAN = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "depth"
            name = "Deep"
            method = "From the face."
            lower = 29.9
            upper = 30.1
            places = ["left", "right"]
            uncertainty = "rod"
            gauge_kind = "depth-gauge"

            [[step]]
            number = 2
            operation = 10
            kind = "depth"
            name = "Shallow"
            method = "From the face."
            lower = 19.9
            upper = 20.1
            places = ["middle"]
            uncertainty = "rod"
            gauge_kind = "depth-gauge"

            [[step]]
            number = 3
            operation = 10
            kind = "calculated"
            name = "Web"
            of = "deep - shallow"
            names = { deep = 1, shallow = 2 }
            lower = 9.950
            upper = 10.050

            [[uncertainty]]
            name = "rod"
            expanded = 0.006
            """);

    private static Evidence evidence(String... readings) {
        Records.Walk walk = new Records.Walk(PLAN, "Setter 1")
                .add(new Event.Begun(PLAN.part(), "1", "L-1", "Lathe 4", PLAN.source()));
        Stream.of(readings)
                .map(read -> read.split(" "))
                .forEach(read -> walk.add(new StepEvent.ReadingTaken(
                        Integer.parseInt(read[0]), read[1], new Written(read[2], Unit.MILLIMETRE))));
        return walk.evidence();
    }

    /** 30.02 − 20.01 and 30.07 − 20.01; measured in one way, 0.006 and 0.006 add up. */
    private static Evidence read() {
        return evidence("1 1.1 30.02", "1 2.1 30.07", "2 1.1 20.01");
    }

    @Test
    void theRecordForProgramsHasWhatWentInAndBothEndsAndProvesItself() {
        JsonNode found = ReadBack.json(read()).at("/result/characteristics/2/passes/0");
        assertEquals("deep - shallow", found.get("expression").textValue());
        assertEquals(
                "{\"name\":\"deep\",\"step\":1,\"by\":\"each\","
                        + "\"least\":\"30.02\",\"greatest\":\"30.07\",\"unit\":\"mm\"}",
                found.at("/names/0").toString());
        assertEquals("10.010", found.get("least").textValue());
        assertEquals("10.060", found.get("greatest").textValue());
        assertEquals("0.012", found.get("expanded-uncertainty").textValue());
        assertEquals("fail", found.get("verdict").textValue());
        String json = ReadBack.text(new JsonRecord(), read());
        assertEquals(Optional.empty(), ReadBack.check(json).found().fault());
        String changed = json.replace("\"greatest\" : \"10.060\"", "\"greatest\" : \"10.050\"");
        assertFalse(changed.equals(json));
        assertTrue(ReadBack.check(changed).found().fault().isPresent());
    }

    @Test
    void theTableHasARowForItWithBothEnds() {
        CSVRecord row = ReadBack.rows(read()).get(3);
        assertEquals("calculated", row.get("check"));
        assertEquals("worst-case", row.get("judged-by"));
        assertEquals("10.010 10.060 fail", row.get("least") + " " + row.get("greatest") + " " + row.get("verdict"));
        assertEquals("-0.010", row.get("distance"));
    }

    @Test
    void whileSomethingIsOpenItIsOpenInEveryFormat() throws IOException {
        Evidence open = evidence("1 1.1 30.02", "2 1.1 20.01");
        assertEquals("open", ReadBack.rows(open).get(2).get("verdict"));
        JsonNode found = ReadBack.json(open).at("/result/characteristics/2/passes/0");
        assertEquals("open", found.get("verdict").textValue());
        assertFalse(found.has("least"));
        assertTrue(printed(open).contains("Waits for check 1."));
    }

    @Test
    void thePrintedRecordHasTheExpressionWithItsFigures() throws IOException {
        String text = printed(read());
        assertTrue(text.contains("deep − shallow = 30.02…30.07 − 20.01"), text);
        assertTrue(text.contains("10.010 to 10.060. 0.010 mm above the upper limit."), text);
        assertTrue(text.contains("U = 0.012 mm with k = 2; what is measured in one way adds up in full."), text);
        assertTrue(text.contains("Nothing is taken here: it is worked out of other checks."), text);
    }

    private static String printed(Evidence evidence) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfRecord(new RecordLayout(Words.ENGLISH, Paper.A4, Records.DATA)).write(evidence, out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
