package org.tenthwise.app.export.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.tenthwise.app.firstarticle.ArticleReport;
import org.tenthwise.app.firstarticle.ReportFormat;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.TextMetrics;
import org.tenthwise.model.words.Words;

/** The three forms of a first-article report to print and to file, in a layout of our own: PDF/A-3b (ISO 19005-3). */
public final class ReportPdf implements ReportFormat {

    private final Words words;
    private final Paper paper;

    public ReportPdf(Words words, Paper paper) {
        this.words = words;
        this.paper = paper;
    }

    @Override
    public String extension() {
        return "pdf";
    }

    @Override
    public void write(ArticleReport report, OutputStream out) throws IOException {
        TextMetrics lettering = new TextMetrics(words);
        FormPages forms = new FormPages(report, words, paper, lettering);
        List<Page> pages = forms.all();
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        float width = (float) forms.sheet().width() * PdfPen.POINTS_PER_PIXEL;
        float height = (float) forms.sheet().height() * PdfPen.POINTS_PER_PIXEL;
        try (PDDocument document = new PDDocument()) {
            String identifier = report.article().asked().identifier();
            new Archival(
                            words.say(
                                    "report.document",
                                    identifier,
                                    report.article().asked().part().number()),
                            report.tool(),
                            identifier + report.stands() + report.movedOn(),
                            words)
                    .prepare(document);
            PdfFaces faces = new PdfFaces(document);
            for (Page leaf : pages) {
                PDPage page = new PDPage(new PDRectangle(width, height));
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    leaf.draw(new Drawing(
                            new PdfPen(content, faces, 0, height),
                            lettering,
                            forms.sheet().frame()));
                }
            }
            document.save(whole);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        whole.writeTo(out);
    }
}
