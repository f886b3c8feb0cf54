package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.export.SeriesView;
import org.tenthwise.app.export.SeriesView.Kind;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.app.series.Followed;
import org.tenthwise.app.series.SeriesSums;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.history.PartsMade;
import org.tenthwise.model.words.Words;

/** Views over parts, printed. */
class SeriesViewPdfTest {

    private static final Sought OF_PART = Sought.ALL.with(SoughtBy.PART_NUMBER, PartsMade.PART);

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private static SeriesViewPdf pdf(Words words) {
        return new SeriesViewPdf(new SeriesSums(Handbook.sums()), words, Paper.A4, "Tenthwise 0.1.0");
    }

    private History history() {
        return workshop.shop.history();
    }

    private byte[] course(Words words) throws IOException {
        Characteristic journal = new Followed(history()).of(OF_PART).get(0).characteristic();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        pdf(words)
                .write(
                        history(),
                        new SeriesView(Kind.COURSE, OF_PART, Optional.of(journal), SizeOf.AS_CUT, Set.of()),
                        out);
        return out.toByteArray();
    }

    private byte[] shares(Words words) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        pdf(words).write(history(), all(Kind.SHARES), out);
        return out.toByteArray();
    }

    private static SeriesView all(Kind kind) {
        return new SeriesView(kind, OF_PART, Optional.empty(), SizeOf.AS_CUT, Set.of());
    }

    private byte[] deviations() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        pdf(Words.ENGLISH).write(history(), all(Kind.DEVIATIONS), out);
        return out.toByteArray();
    }

    @Test
    void differentSizesStandOnOnePageByTheirDeviation() throws Exception {
        twelve();
        byte[] deviations = saved("history-deviations", deviations());
        Archived.check(deviations);
        String text = text(deviations);
        assertTrue(text.contains("Width of the rim") && text.contains("Journal"), text);
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " ");
        }
    }

    /** To be looked at. */
    private static byte[] saved(String name, byte[] pdf) throws IOException {
        Path to = Path.of("target", "records", name + ".pdf");
        Files.createDirectories(to.getParent());
        return Files.readAllBytes(Files.write(to, pdf));
    }

    private void twelve() {
        new PartsMade(workshop)
                .bores(PartsMade.plan(), "Setter 2", 16, 15, 12)
                .bores(
                        PartsMade.plan("1", "30.000", "30.021", "", "MC-9"),
                        "Setter 2",
                        20,
                        19,
                        18,
                        16,
                        15,
                        14,
                        12,
                        11,
                        10);
    }

    @Test
    void aViewIsAnArchivalFileWithEveryPartOnIt() throws Exception {
        twelve();
        byte[] course = saved("history-course", course(Words.ENGLISH));
        Archived.check(course);
        String text = text(course);
        for (String said : new String[] {"012", "30.010", "no leave to run on", "gauge MC-9", "9 parts"}) {
            assertTrue(text.contains(said), said + " is not in " + text);
        }
        byte[] shares = saved("history-shares", shares(Words.ENGLISH));
        Archived.check(shares);
        assertTrue(text(shares).contains("Width of the rim"));
    }

    @Test
    void theSamePartsGiveTheSameBytes() throws Exception {
        twelve();
        assertArrayEquals(course(Words.ENGLISH), course(Words.ENGLISH));
        assertArrayEquals(shares(Words.ENGLISH), shares(Words.ENGLISH));
    }

    @Test
    void moreThanFiftyPartsAreSeveralPicturesAndEveryOneHasALine() throws Exception {
        new PartsMade(workshop).bores(PartsMade.plan(), "Setter 2", PartsMade.scattered(60));
        byte[] course = saved("history-course-60", course(Words.ENGLISH));
        Archived.check(course);
        String text = text(course);
        for (int part = 1; part <= 60; part++) {
            assertTrue(text.contains(" %03d ".formatted(part)), "part " + part);
        }
    }

    @Test
    void inGermanItIsAnArchivalFileToo() throws Exception {
        twelve();
        byte[] course = saved("history-course-de", course(Words.of(Locale.GERMAN)));
        Archived.check(course);
        assertTrue(text(course).contains("gibt nichts zum Weiterfertigen frei"));
    }

    @Test
    void ofAPartThatNobodyMadeThereIsAPageThatSaysSo() throws Exception {
        byte[] shares = saved("history-shares-none", shares(Words.ENGLISH));
        Archived.check(shares);
        assertTrue(text(shares).contains("No part"), text(shares));
    }
}
