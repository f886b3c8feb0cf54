package org.tenthwise.app.export.pdf;

import java.io.IOException;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * By what and how a PDF says it was made.
 *
 * @param tool with its version; empty where it does not say
 * @param language of its words, as a tag of BCP 47; empty where it does not say
 * @param paper width and height of its first page, in points; empty without one
 */
public record PdfParticulars(String tool, String language, String paper) {

    /** @throws IOException if the bytes are no PDF */
    public static PdfParticulars of(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PdfParticulars(
                    Optional.ofNullable(document.getDocumentInformation().getProducer())
                            .orElse(""),
                    Optional.ofNullable(document.getDocumentCatalog().getLanguage())
                            .orElse(""),
                    document.getNumberOfPages() > 0 ? paper(document.getPage(0).getMediaBox()) : "");
        }
    }

    private static String paper(PDRectangle box) {
        return box.getWidth() + " x " + box.getHeight();
    }
}
