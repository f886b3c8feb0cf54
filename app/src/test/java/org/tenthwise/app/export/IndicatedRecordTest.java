package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
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

/** Movements of an indicator, one that passes, one that fails and one that turned about no datum. Figures by hand. */
class IndicatedRecordTest {

    private static final Plan PLAN = InventedPlans.inMillimetres(step(1, "Journal to A", "circular-run-out", "centres")
            + step(2, "Journal, all of it", "total-run-out", "v-blocks")
            + step(3, "Journal in the jaws", "circular-run-out", "chuck"));

    private static String step(int number, String name, String of, String datumBy) {
        return """
            [[step]]
            number = %d
            operation = 10
            kind = "indicated"
            movement_of = "%s"
            datum = "A"
            datum_by = "%s"
            limit = 0.020
            name = "%s"
            method = "Needle square to the surface."
            places = ["near", "far"]
            gauge_kind = "lever-indicator"
            gauge = "LI-1"

            """
                .formatted(number, of, datumBy, name);
    }

    /** Near it moves 0.008, far 0.012, in all from −0.005 to 0.020: 0.025. The same was read at each of the three. */
    private static Evidence evidence() {
        Records.Walk walk = new Records.Walk(PLAN, "Setter 1")
                .add(new Event.Begun(PLAN.part(), "001", "L-1", "Lathe 4", PLAN.source()));
        for (int step = 1; step <= 3; step++) {
            int at = step;
            Stream.of("1.1 0.003", "1.2 -0.005", "2.1 0.020", "2.2 0.008")
                    .map(read -> read.split(" "))
                    .forEach(read -> walk.add(new StepEvent.ReadingTaken(
                            at, read[0], Written.typed(read[1], Unit.MILLIMETRE).orElseThrow())));
        }
        return walk.evidence();
    }

    @Test
    void aTableHasEveryReadingBesideWhatTheyComeToTogether() {
        List<CSVRecord> rows = ReadBack.rows(evidence());
        assertEquals(
                List.of("near 1 0.003", "near 2 -0.005", "far 1 0.020", "far 2 0.008"),
                rows.stream()
                        .limit(4)
                        .map(row -> row.get("place") + " " + row.get("repeat") + " " + row.get("reading"))
                        .toList());
        List<String> ofAStep = List.of(
                "pass greatest-range 0.012 0.008 upper",
                "fail range 0.025 -0.005 upper",
                "unproven greatest-range 0.012  ");
        assertEquals(
                Stream.iterate(0, i -> i < rows.size(), i -> i + 1)
                        .map(i -> ofAStep.get(i / 4))
                        .toList(),
                rows.stream()
                        .map(row -> Stream.of("verdict", "judged-by", "judged", "distance", "from-limit")
                                .map(row::get)
                                .collect(Collectors.joining(" ")))
                        .toList());
        assertEquals(12, rows.size());
    }

    /** What nothing is proven by has no distance to a limit. */
    @Test
    void aFileForProgramsHasTheDatumAndHowItWasHeld() {
        JsonNode steps = ReadBack.json(evidence()).at("/result/characteristics");
        assertEquals(
                List.of(
                        "circular-run-out A centres pass 0.012 0.008 true",
                        "total-run-out A v-blocks fail 0.025 0.005 false",
                        "circular-run-out A chuck unproven 0.012  "),
                Stream.of("/0", "/1", "/2")
                        .map(steps::at)
                        .map(step -> Stream.of(
                                        "/movement-of",
                                        "/datum",
                                        "/datum-by",
                                        "/verdict",
                                        "/passes/0/value",
                                        "/passes/0/distance/size",
                                        "/passes/0/distance/inside")
                                .map(key -> step.at(key).asText())
                                .collect(Collectors.joining(" ")))
                        .toList());
    }

    @Test
    void thePrintedRecordSaysWhatItProvesAndWhatNot() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfRecord(new RecordLayout(Words.ENGLISH, Paper.A4, Records.DATA)).write(evidence(), out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            for (String said : List.of(
                    "Pass: 0.012. 0.008 mm inside the upper limit.",
                    "Datum A, between centres.",
                    "Fail: 0.025. 0.005 mm above the upper limit.",
                    "Datum A, in V-blocks: what it is out of round is in it.",
                    "Unproven: 0.012.",
                    "Held in jaws: it is read against the jaws, not against datum A.",
                    "It counts against datum A alone, and a new issue of the plan says what stands for it. Or get a"
                            + " disposition.")) {
                assertTrue(text.contains(said), said + "\n" + text);
            }
            assertFalse(text.contains("Unproven: 0.012. 0.008"), text);
        }
    }
}
