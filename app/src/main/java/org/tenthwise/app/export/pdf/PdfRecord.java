package org.tenthwise.app.export.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.picture.Drawing;

/** The record to print and to file: PDF/A-3b (ISO 19005-3), with the other formats inside it. */
public final class PdfRecord implements RecordFormat {

    private final RecordLayout layout;

    public PdfRecord(RecordLayout layout) {
        this.layout = layout;
    }

    @Override
    public String extension() {
        return "pdf";
    }

    @Override
    public String mediaType() {
        return "application/pdf";
    }

    @Override
    public void write(Evidence evidence, OutputStream out) throws IOException {
        Paper paper = layout.paper();
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        float width = (float) paper.width() * PdfPen.POINTS_PER_PIXEL;
        float height = (float) paper.height() * PdfPen.POINTS_PER_PIXEL;
        float left = (float) paper.left() * PdfPen.POINTS_PER_PIXEL;
        try (PDDocument document = new PDDocument()) {
            new Archival(evidence, layout.words()).prepare(document);
            PdfFaces faces = new PdfFaces(document);
            for (Page leaf : layout.leaves(evidence)) {
                PDPage page = new PDPage(new PDRectangle(width, height));
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    leaf.draw(new Drawing(new PdfPen(content, faces, left, height), layout.lettering(), paper.frame()));
                }
            }
            new Enclosures(layout.enclosed()).into(document, evidence);
            document.save(whole);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        whole.writeTo(out);
    }
}
