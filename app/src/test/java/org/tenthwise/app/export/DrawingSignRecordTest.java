package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.PdfRecord;
import org.tenthwise.app.export.pdf.RecordLayout;
import org.tenthwise.app.picture.DrawingSigns;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.words.Words;

/** A check for every sign a drawing can hold, printed and for programs: none is a box, and none is lost. */
class DrawingSignRecordTest {

    private static final List<String> SIGNS = DrawingSigns.all().toList();

    private static final Plan PLAN = InventedPlans.inMillimetres(IntStream.range(0, SIGNS.size())
            .mapToObj(place ->
                    """
                    [[step]]
                    number = %d
                    operation = 10
                    kind = "look"
                    name = "%s"
                    what = "As drawn."
                    """
                            .formatted(place + 1, name(place)))
            .collect(Collectors.joining("\n")));

    private static String name(int place) {
        return "N" + (place + 1) + ": 4X" + SIGNS.get(place) + "15";
    }

    private static Evidence evidence() {
        return new Records.Walk(PLAN, "Setter 1")
                .add(new Event.Begun(PLAN.part(), "1", "L-1", "Lathe 4", PLAN.source()))
                .evidence();
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void thePrintedRecordSaysEveryOne(Locale language) throws IOException {
        Words words = Words.of(language);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfRecord(new RecordLayout(words, Paper.A4, Records.DATA)).write(evidence(), out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            for (int place = 0; place < SIGNS.size(); place++) {
                String said = words.readable(name(place));
                assertTrue(text.contains(said), said + " in " + text);
            }
            assertFalse(text.contains("\ufffd"), text);
        }
    }

    @Test
    void theRecordForProgramsKeepsEveryOneAsItStandsOnTheDrawing() {
        JsonNode steps = ReadBack.json(evidence()).at("/result/characteristics");
        for (int place = 0; place < SIGNS.size(); place++) {
            assertEquals(name(place), steps.at("/" + place + "/name").textValue());
        }
        String table = ReadBack.text(new CsvRecord(), evidence());
        for (int place = 0; place < SIGNS.size(); place++) {
            assertTrue(table.contains(name(place)), name(place));
        }
    }
}
