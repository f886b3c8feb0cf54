package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.PdfRecord;
import org.tenthwise.app.export.pdf.RecordLayout;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** Two bores read by radius and angle, as records tell them. Figures by hand. */
class PolarPositionRecordTest {

    private static final Plan PLAN = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "position"
            name = "Position of the bores"
            method = "Zeroed on the axis of the centre bore, +X through the slot."
            zone = 0.10
            read = "polar"
            holes = [{ name = "A", radius = 25, angle = 90 }, { name = "B", radius = 20, angle = 0 }]
            ends = ["entry", "exit"]
            gauge_kind = "coordinate-machine"
            gauge = "CM-1"
            uncertainty = "probe"
            uncertainty_of_angle = "head"

            [[uncertainty]]
            name = "probe"
            expanded = 0.004

            [[uncertainty]]
            name = "head"
            expanded = "0°01'"
            """);

    private static Evidence evidence() {
        Records.Walk walk = new Records.Walk(PLAN, "Setter 1")
                .add(new Event.Begun(PLAN.part(), "1", "L-1", "Lathe 4", PLAN.source()));
        List<Slot> slots = PLAN.step(1).check().slots();
        List<String> typed = List.of("25.02", "90", "25.01", "90.05", "20.01", "359.9", "20", "-0°03'");
        for (int i = 0; i < typed.size(); i++) {
            Unit unit = i % 2 == 0 ? Unit.MILLIMETRE : Unit.DEGREE;
            walk.add(new StepEvent.ReadingTaken(
                    1, slots.get(i).key(), Written.typed(typed.get(i), unit).orElseThrow()));
        }
        return walk.evidence();
    }

    @Test
    void everyRowOfTheTableSaysWhichUnitItsReadingIsIn() {
        assertEquals(
                List.of(
                        "A, entry, R 25.02 mm 25.02",
                        "A, entry, φ 90 ° 90",
                        "A, exit, R 25.01 mm 25.01",
                        "A, exit, φ 90.05 ° 90.05",
                        "B, entry, R 20.01 mm 20.01",
                        "B, entry, φ 359.9 ° 359.9",
                        "B, exit, R 20 mm 20",
                        "B, exit, φ -0°03′ ° ′ -0°03′"),
                ReadBack.rows(evidence()).stream()
                        .map(row -> Stream.of("place", "reading", "reading-unit", "size")
                                .map(row::get)
                                .reduce((a, b) -> a + " " + b)
                                .orElseThrow())
                        .toList());
    }

    /** 20.01 at -0.1° is 0.01 less 0.00003 out and 0.03492 to the side: twice the root is 0.07264. */
    @Test
    void theRecordForProgramsSaysHowItWasReadAndProvesItself() {
        JsonNode step = ReadBack.json(evidence()).at("/result/characteristics/0");
        String json = ReadBack.text(new JsonRecord(), evidence());
        assertTrue(json.contains("\"read\":\"polar\"") || json.contains("\"read\" : \"polar\""), json);
        assertEquals(
                "{\"figure\":\"-0°03′\",\"unit\":\"° ′\"}",
                step.at("/passes/0/readings/7/reading").toString());
        assertEquals("pass", step.at("/verdict").textValue());
        assertEquals(Optional.empty(), ReadBack.check(json).found().fault());
    }

    @Test
    void thePrintedRecordHasEveryReadingInItsUnit() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfRecord(new RecordLayout(Words.ENGLISH, Paper.A4, Records.DATA)).write(evidence(), out);
        java.nio.file.Files.createDirectories(java.nio.file.Path.of("target/records"));
        java.nio.file.Files.write(java.nio.file.Path.of("target/records/polar-position.pdf"), out.toByteArray());
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertTrue(text.contains("359.9°"), text);
            assertTrue(text.contains("-0°03′") || text.contains("−0°03′"), text);
            assertTrue(text.contains("25.02"), text);
            assertFalse(text.contains("° mm") || text.contains("′ mm"), text);
        }
    }
}
