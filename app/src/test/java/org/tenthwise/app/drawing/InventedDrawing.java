package org.tenthwise.app.drawing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/** A drawing that nobody made a part by, as PDF: a stepped bush in section, a sheet more with nothing but a frame. */
public final class InventedDrawing {

    /** A3 across, in points. */
    public static final PDRectangle SHEET = new PDRectangle(1191, 842);

    private InventedDrawing() {}

    /** Two sheets; a dimension stands at 250, 300 thousandths of the first. */
    public static Path in(Path folder, String name) {
        return in(folder, name, SHEET, 2);
    }

    static Path in(Path folder, String name, PDRectangle sheet, int sheets) {
        Path file = folder.resolve(name);
        try (PDDocument document = new PDDocument()) {
            for (int i = 0; i < sheets; i++) {
                PDPage page = new PDPage(sheet);
                document.addPage(page);
                try (PDPageContentStream pen = new PDPageContentStream(document, page)) {
                    draw(pen, sheet.getWidth(), sheet.getHeight(), i == 0);
                }
            }
            document.save(file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file;
    }

    private static void draw(PDPageContentStream pen, float width, float height, boolean part) throws IOException {
        pen.setLineWidth(width / 600);
        pen.addRect(width * 0.02f, height * 0.03f, width * 0.96f, height * 0.94f);
        pen.addRect(width * 0.68f, height * 0.03f, width * 0.3f, height * 0.16f);
        if (part) {
            pen.addRect(width * 0.2f, height * 0.4f, width * 0.3f, height * 0.3f);
            pen.addRect(width * 0.5f, height * 0.46f, width * 0.2f, height * 0.18f);
            pen.moveTo(width * 0.16f, height * 0.55f);
            pen.lineTo(width * 0.74f, height * 0.55f);
        }
        pen.stroke();
        text(pen, width * 0.7f, height * 0.1f, width / 60, "INVENTED  0815  SHEET " + (part ? 1 : 2));
        if (part) {
            text(pen, width * 0.25f, height * 0.7f + width / 90, width / 70, "61.98 / 62.02");
            text(pen, width * 0.55f, height * 0.64f + width / 90, width / 70, "40.00 / 40.02");
        }
    }

    private static void text(PDPageContentStream pen, float x, float y, float size, String text) throws IOException {
        pen.beginText();
        pen.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), size);
        pen.newLineAtOffset(x, y);
        pen.showText(text);
        pen.endText();
    }
}
