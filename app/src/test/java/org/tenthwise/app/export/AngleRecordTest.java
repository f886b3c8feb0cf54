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
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** Two angles of a part in millimetres, as files tell them. Figures by hand. */
class AngleRecordTest {

    private static final Plan PLAN = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "angle"
            name = "Dovetail"
            method = "Bevel protractor."
            nominal = "60°"
            plus_minus = "0°20'"
            guard_band = "uncertainty"
            uncertainty = "protractor"
            places = ["front", "middle", "back"]
            gauge_kind = "bevel-protractor"

            [[step]]
            number = 2
            operation = 10
            kind = "angle"
            name = "Taper"
            method = "Sine bar."
            lower = 2.50
            upper = 2.75
            places = ["end"]
            gauge_kind = "sine-bar"

            [[uncertainty]]
            name = "protractor"
            expanded = "0°00'30"
            """);

    private static final String DOVETAIL = "° ′ ″ 59°40′00″ 60°20′00″ 0°00′30″ fail -0°04′30″ lower|";

    private static Evidence evidence() {
        Records.Walk walk = new Records.Walk(PLAN, "Setter 1")
                .add(new Event.Begun(PLAN.part(), "1", "L-1", "Lathe 4", PLAN.source()));
        Stream.of("1 1.1 60°05'", "1 2.1 59.9°", "1 3.1 59°35'30", "2 1.1 2°40'")
                .map(read -> read.split(" "))
                .forEach(read -> walk.add(new StepEvent.ReadingTaken(
                        Integer.parseInt(read[0]),
                        read[1],
                        Written.typed(read[2], Unit.SECOND_OF_ARC).orElseThrow())));
        return walk.evidence();
    }

    /**
     * Limits to the second as the guard band has it; each reading with the unit it was typed in, each size in that of
     * the limits: 59.9° is 59°54′, and 59°35′30″ is 4′30″ under 59°40′. 2°40′ is 2.666…°, 0.0833…° from 2.75°. 40′ over
     * twice 30″ is 40.
     */
    @Test
    void everyRowOfTheTableSaysWhichUnitItsFiguresAreIn() {
        assertEquals(
                List.of(
                        DOVETAIL + "60°05′ ° ′ 0°00′00″ 60°05′00″ pass",
                        DOVETAIL + "59.9 ° 0°00′00″ 59°54′00″ pass",
                        DOVETAIL + "59°35′30″ ° ′ ″ 0°00′00″ 59°35′30″ fail",
                        "° 2.50 2.75 0 pass 0.08333333 upper|2°40′ ° ′ 0.00 2.66666667 pass"),
                ReadBack.rows(evidence()).stream()
                        .map(row -> Stream.of(
                                                "unit",
                                                "lower-limit",
                                                "upper-limit",
                                                "guard-band",
                                                "verdict",
                                                "distance",
                                                "from-limit")
                                        .map(row::get)
                                        .reduce((a, b) -> a + " " + b)
                                        .orElseThrow()
                                + "|"
                                + Stream.of("reading", "reading-unit", "correction", "size", "place-verdict")
                                        .map(row::get)
                                        .reduce((a, b) -> a + " " + b)
                                        .orElseThrow())
                        .toList());
    }

    @Test
    void theRecordForProgramsHasAUnitWithEveryReadingAndProvesItself() {
        JsonNode steps = ReadBack.json(evidence()).at("/result/characteristics");
        assertEquals(
                "{\"lower\":\"59°40′00″\",\"upper\":\"60°20′00″\",\"unit\":\"° ′ ″\"}",
                steps.at("/0/limits").toString());
        assertEquals(
                "{\"figure\":\"59.9\",\"unit\":\"°\"}",
                steps.at("/0/passes/0/readings/1/reading").toString());
        assertEquals("59°54′00″", steps.at("/0/passes/0/readings/1/size").textValue());
        assertEquals(
                "{\"size\":\"0°04′30″\",\"from\":\"lower\",\"inside\":false}",
                steps.at("/0/passes/0/distance").toString());
        String json = ReadBack.text(new JsonRecord(), evidence());
        assertEquals(Optional.empty(), ReadBack.check(json).found().fault());
        String changed = json.replace("59°54′00″", "59°55′00″");
        assertFalse(changed.equals(json));
        assertTrue(ReadBack.check(changed).found().fault().isPresent());
    }

    @Test
    void thePrintedRecordHasEveryMark() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfRecord(new RecordLayout(Words.ENGLISH, Paper.A4, Records.DATA)).write(evidence(), out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertTrue(text.contains("59°40′00″ to 60°20′00″"), text);
            assertTrue(text.contains("Fail: 59°35′30″. 0°04′30″ below the lower limit."), text);
            assertTrue(text.contains("59.9°"), text);
            assertTrue(text.contains("±0°00′30″, k = 2: protractor. The tolerance is 40.0 times as wide."), text);
            assertTrue(text.contains("2.50° to 2.75°"), text);
            assertFalse(text.contains("′ mm") || text.contains("° mm"), text);
        }
    }

    /** 0.05° are 3′. */
    @Test
    void anUncertaintyInDecimalsStandsInTheUnitOfItsRow() {
        Plan plan = InventedPlans.inMillimetres(
                """
                [[step]]
                number = 1
                operation = 10
                kind = "angle"
                name = "Dovetail"
                method = "Bevel protractor."
                lower = "59°40'"
                upper = "60°20'"
                uncertainty = "protractor"
                places = ["front"]
                gauge_kind = "bevel-protractor"

                [[uncertainty]]
                name = "protractor"
                expanded = "0.05°"
                """);
        Evidence evidence = new Records.Walk(plan, "Setter 1")
                .add(new Event.Begun(plan.part(), "1", "L-1", "Lathe 4", plan.source()))
                .evidence();
        assertEquals("0°03′", ReadBack.rows(evidence).get(0).get("uncertainty"));
        assertEquals("° ′", ReadBack.rows(evidence).get(0).get("unit"));
        assertEquals(
                "{\"of\":\"protractor\",\"expanded\":\"0.05\",\"unit\":\"°\",\"coverage-factor\":\"2\"}",
                ReadBack.json(evidence)
                        .at("/result/characteristics/0/uncertainty")
                        .toString());
    }
}
