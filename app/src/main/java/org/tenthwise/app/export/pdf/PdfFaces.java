package org.tenthwise.app.export.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.tenthwise.app.picture.Face;

/** The lettering brought along, embedded in one document as the subset it uses. */
final class PdfFaces {

    private final PDDocument document;
    private final Map<Face, PDFont> embedded = new EnumMap<>(Face.class);

    PdfFaces(PDDocument document) {
        this.document = document;
    }

    PDFont of(Face face) throws IOException {
        PDFont font = embedded.get(face);
        if (font == null) {
            try (InputStream file = face.open()) {
                font = PDType0Font.load(document, file, true);
            }
            embedded.put(face, font);
        }
        return font;
    }
}
