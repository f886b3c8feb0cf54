package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.bundle.Making;
import org.tenthwise.app.certificate.Issued;
import org.tenthwise.app.certificate.PdfSignatures;
import org.tenthwise.app.certificate.PdfSigning;
import org.tenthwise.app.certificate.Signer;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.PdfRecord;
import org.tenthwise.app.export.pdf.RecordLayout;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.words.Words;

class PdfLinesTest {

    @TempDir
    private Path folder;

    private static final DemoPart PART = DemoPart.SCREW_CARRIER;
    private static final Evidence PASSED = Records.whole(PART, Records.passing(PART));
    private static final Evidence FAILED = Records.whole(PART, Records.failing(PART));

    private static final OffsetDateTime SIGNED_AT = OffsetDateTime.parse("2026-03-02T09:00:00Z");

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

    private PdfSigning signing() throws Exception {
        return new PdfSigning(Signer.open(
                Issued.atAnyTime(folder), Issued.passphrase().toCharArray(), Instant.parse("2026-03-02T09:00:00Z")));
    }

    @Test
    void pagesStayWhatTheyWereWhereOthersSign() throws Exception {
        byte[] signed = signing().sign(pdf(PASSED, Paper.A4), SIGNED_AT);
        assertEquals(Exit.WELL, pages(signing().sign(signed, SIGNED_AT), PASSED, PASSED.version()), said::toString);
    }

    /** Whoever signs, with whatever certificate, adds bytes behind the record: another page can be among them. */
    @Test
    void whatIsDrawnOverAPageInTheSameStrokeAsASignatureIsFound() throws Exception {
        ByteArrayOutputStream changed = new ByteArrayOutputStream();
        try (PDDocument document = Loader.loadPDF(pdf(FAILED, Paper.A4))) {
            try (PDPageContentStream over =
                    new PDPageContentStream(document, document.getPage(0), AppendMode.APPEND, true)) {
                over.addRect(40, 600, 500, 40);
                over.fill();
            }
            document.getPage(0).getCOSObject().setNeedToBeUpdated(true);
            signing().sign(document, SIGNED_AT, changed);
        }
        assertTrue(PdfSignatures.in(changed.toByteArray()).found().get(0).isGood());
        assertEquals(Exit.NOT_WELL, pages(changed.toByteArray(), FAILED, FAILED.version()));
    }

    /** A field of a signature is a picture on the page where it takes room there. */
    @Test
    void aSignatureThatIsSeenOnThePageIsFound() throws Exception {
        ByteArrayOutputStream changed = new ByteArrayOutputStream();
        try (PDDocument document = Loader.loadPDF(signing().sign(pdf(FAILED, Paper.A4), SIGNED_AT))) {
            PDAnnotation field = document.getPage(0).getAnnotations().get(0);
            field.setRectangle(new PDRectangle(40, 600, 500, 40));
            field.getCOSObject().setNeedToBeUpdated(true);
            signing().sign(document, SIGNED_AT, changed);
        }
        assertEquals(Exit.NOT_WELL, pages(changed.toByteArray(), FAILED, FAILED.version()));
    }

    /** Who draws pages of their own can say that another release made them: nothing is said for them then. */
    @Test
    void pagesOfAnotherReleaseOrOnOtherPaperAreNotCompared() throws IOException {
        assertEquals(Exit.COULD_NOT, pages(pdf(PASSED, Paper.A4), PASSED, "0.0.9"));
        assertEquals(Exit.COULD_NOT, pages(pdf(PASSED, Paper.LETTER), PASSED, PASSED.version()));
        assertTrue(said.toString().contains("Read what is inside, not the pages"), said.toString());
    }
}
