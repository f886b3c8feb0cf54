package org.tenthwise.app.export.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.tenthwise.app.picture.Face;

/**
 * The lettering brought along, embedded in one document as the subset it uses. Every letter is its own sign: joined
 * ones would be missed by whoever searches the record, and looking for them takes most of the time of writing it.
 */
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
                TrueTypeFont whole = new TTFParser().parse(new RandomAccessReadBuffer(file));
                whole.setEnableGsub(false);
                font = PDType0Font.load(document, whole, true);
            }
            embedded.put(face, font);
        }
        return font;
    }
}
