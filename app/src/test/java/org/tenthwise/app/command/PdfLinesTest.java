package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.bundle.Making;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.PdfRecord;
import org.tenthwise.app.export.pdf.RecordLayout;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.words.Words;

class PdfLinesTest {

    private static final DemoPart PART = DemoPart.SCREW_CARRIER;
    private static final Evidence PASSED = Records.whole(PART, Records.passing(PART));
    private static final Evidence FAILED = Records.whole(PART, Records.failing(PART));

    private final StringWriter said = new StringWriter();

    private static PdfRecord printed(Paper paper) {
        return new PdfRecord(new RecordLayout(Words.ENGLISH, paper, Records.DATA));
    }

    private static byte[] pdf(Evidence evidence, Paper paper) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        printed(paper).write(evidence, out);
        return out.toByteArray();
    }

    private int pages(byte[] pdf, Evidence inside, String version) throws IOException {
        Making making = new Making(place -> List.of(printed(Paper.A4)), Locale.ENGLISH, version);
        return new PdfLines(Path.of("r.pdf"), making, Words.ENGLISH, new PrintWriter(said, true))
                .sayPages(pdf, inside.entries());
    }

    @Test
    void pagesThatAreWhatTheEntriesComeToAreSaidToBe() throws IOException {
        assertEquals(Exit.WELL, pages(pdf(PASSED, Paper.A4), PASSED, PASSED.version()));
        assertTrue(said.toString().contains("its pages are what the entries inside it come to"), said.toString());
    }

    @Test
    void pagesOfAnotherRunAreFound() throws IOException {
        assertEquals(Exit.NOT_WELL, pages(pdf(PASSED, Paper.A4), FAILED, PASSED.version()));
    }

    @Test
    void aStrokeDrawnOverAPageIsFound() throws IOException {
        ByteArrayOutputStream changed = new ByteArrayOutputStream();
        try (PDDocument document = Loader.loadPDF(pdf(FAILED, Paper.A4))) {
            try (PDPageContentStream over =
                    new PDPageContentStream(document, document.getPage(0), AppendMode.APPEND, true)) {
                over.addRect(40, 600, 500, 40);
                over.fill();
            }
            document.save(changed);
        }
        assertEquals(Exit.NOT_WELL, pages(changed.toByteArray(), FAILED, FAILED.version()));
        assertTrue(said.toString().contains("Do not rely on them"), said.toString());
    }

    /** Who draws pages of their own can say that another release made them: nothing is said for them then. */
    @Test
    void pagesOfAnotherReleaseOrOnOtherPaperAreNotCompared() throws IOException {
        assertEquals(Exit.COULD_NOT, pages(pdf(PASSED, Paper.A4), PASSED, "0.0.9"));
        assertEquals(Exit.COULD_NOT, pages(pdf(PASSED, Paper.LETTER), PASSED, PASSED.version()));
        assertTrue(said.toString().contains("Read what is inside, not the pages"), said.toString());
    }
}
