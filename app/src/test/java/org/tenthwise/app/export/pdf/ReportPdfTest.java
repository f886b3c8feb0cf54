package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.firstarticle.ArticleReport;
import org.tenthwise.app.firstarticle.Reports;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.firstarticle.ReportLine;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.words.Words;

/** The three forms as they are printed. */
class ReportPdfTest {

    private static final Path TO_LOOK_AT = Path.of("target", "records");

    private static byte[] pdf(ArticleReport report, Locale language, Paper paper) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new ReportPdf(Words.of(language), paper).write(report, out);
        return out.toByteArray();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @ParameterizedTest
    @EnumSource
    void theFormsOfAWholeDrawingAreArchivalAndNameEveryCharacteristic(ExamplePart part) throws Exception {
        Files.createDirectories(TO_LOOK_AT);
        ArticleReport report = Reports.of(part, ReportAsked.Edition.C, part.passingReadings(), part.failingReadings());
        for (Locale language : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
            byte[] pdf = pdf(report, language, Paper.A4);
            Files.write(TO_LOOK_AT.resolve("first-article-" + part + "-" + language + ".pdf"), pdf);
            Archived.check(pdf);
            String text = text(pdf);
            for (ReportLine one : report.article().characteristics()) {
                one.number().ifPresent(number -> assertTrue(text.contains(" " + number + " "), number::text));
            }
            assertTrue(text.contains(Words.of(language).say("report.no-release")), text);
        }
    }

    /** AS9102 Rev B has 24 fields on the first form, Rev C 26. */
    @Test
    void eachEditionHasItsOwnNumbersAndNames() throws Exception {
        ExamplePart part = ExamplePart.GATE_ROLLER_PIN;
        byte[] b = pdf(Reports.of(part, ReportAsked.Edition.B, part.passingReadings()), Locale.ENGLISH, Paper.LETTER);
        Files.createDirectories(TO_LOOK_AT);
        Files.write(TO_LOOK_AT.resolve("first-article-B.pdf"), b);
        String text = text(b);
        assertTrue(text.contains("Arranged as the three forms of AS9102 Rev B"), text);
        assertTrue(text.contains("4 FAIR number"), text);
        assertTrue(text.contains("19 Signature"), text);
        assertTrue(text.contains("14 Additional data"), text);
        assertTrue(text.contains("14 Signature Inspector 1"), text);
        assertTrue(text.contains("12 Signature Inspector 1"), text);
        String c = text(pdf(Reports.of(part, ReportAsked.Edition.C, part.passingReadings()), Locale.ENGLISH, Paper.A4));
        assertTrue(c.contains("4 FAIR identifier"), c);
        assertTrue(c.contains("20 FAIR verified by"), c);
        assertTrue(c.contains("12 Additional data"), c);
        assertFalse(c.contains("Signature"), c);
    }

    /** An inch figure is not read as millimetres. */
    @Test
    void theUnitOfLengthsStandsOverTheResults() throws Exception {
        for (ExamplePart part : List.of(ExamplePart.GATE_ROLLER_PIN, ExamplePart.HOIST_SCREW_BUSH)) {
            String text = text(
                    pdf(Reports.of(part, ReportAsked.Edition.C, part.passingReadings()), Locale.ENGLISH, Paper.A4));
            String unit = part == ExamplePart.HOIST_SCREW_BUSH ? "in" : "mm";
            assertTrue(text.contains("9 Results (lengths in " + unit + ")"), text);
        }
    }

    @Test
    void twoOfTheSameReportAreTheSameBytes() throws Exception {
        ExamplePart part = ExamplePart.HOIST_SCREW_BUSH;
        assertArrayEquals(
                pdf(Reports.of(part, ReportAsked.Edition.C, part.passingReadings()), Locale.ENGLISH, Paper.A4),
                pdf(Reports.of(part, ReportAsked.Edition.C, part.passingReadings()), Locale.ENGLISH, Paper.A4));
    }

    /** Twelve runs go on under each other, and nothing is left out. */
    @Test
    void twelveSerialsHaveARowOfColumnsAfterTheOther() throws Exception {
        ExamplePart part = ExamplePart.GATE_ROLLER_PIN;
        String[] twelve = Collections.nCopies(12, part.passingReadings()).toArray(String[]::new);
        byte[] pdf = pdf(Reports.of(part, ReportAsked.Edition.C, twelve), Locale.ENGLISH, Paper.A4);
        Files.createDirectories(TO_LOOK_AT);
        Files.write(TO_LOOK_AT.resolve("first-article-twelve.pdf"), pdf);
        String text = text(pdf);
        for (int serial = 1; serial <= 12; serial++) {
            assertTrue(text.contains("9 Results " + serial + "-"), "serial " + serial);
        }
    }
}
