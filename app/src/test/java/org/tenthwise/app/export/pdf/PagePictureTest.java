package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.RecordingPen;
import org.tenthwise.model.words.Words;

/** The pages shown are the pages written. */
class PagePictureTest {

    private static final RecordLayout A4 = new RecordLayout(Words.ENGLISH, Paper.A4, Records.DATA);

    private static String letters(String text) {
        return text.codePoints()
                .filter(sign -> !Character.isWhitespace(sign))
                .sorted()
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static RecordingPen drawn(Picture picture, double width, double height) {
        return RecordingPen.of(picture, Frame.screen(width, height, 1.5));
    }

    /** Page by page the same letters, however large the text of the screen is. */
    @ParameterizedTest
    @EnumSource(
            value = Scene.class,
            names = {"FAILED", "INCH_FAILED", "CONCEDED"})
    void everyPageShownHasTheLettersOfThePageWritten(Scene scene) throws IOException {
        for (Paper paper : Paper.values()) {
            RecordLayout layout = new RecordLayout(Words.ENGLISH, paper, Records.DATA);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            new PdfRecord(layout).write(scene.evidence(), out);
            List<PagePicture> shown = layout.pages(scene.evidence());
            try (PDDocument written = Loader.loadPDF(out.toByteArray())) {
                assertEquals(written.getNumberOfPages(), shown.size());
                for (int i = 0; i < shown.size(); i++) {
                    PDFTextStripper page = new PDFTextStripper();
                    page.setStartPage(i + 1);
                    page.setEndPage(i + 1);
                    assertEquals(
                            letters(page.getText(written)),
                            letters(String.join(
                                    "", drawn(shown.get(i), 900, 640).texts())),
                            "page " + (i + 1));
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"1256, 600", "776, 1060", "1000, 420"})
    void theWholePageLiesInItsRoomWithNothingOnAnything(double width, double height) {
        Frame room = Frame.screen(width, height, 1);
        for (PagePicture page : A4.pages(Scene.FAILED.evidence())) {
            RecordingPen pen = RecordingPen.of(page, room);
            assertEquals(
                    List.of(),
                    pen.faults(room).stream()
                            .filter(fault -> fault.contains("leaves the frame") || fault.contains(" lies on "))
                            .toList());
        }
    }

    /** Every line of text is whole in one of the parts, and the parts go on from head to foot. */
    @ParameterizedTest
    @CsvSource({"1256, 600", "776, 1060", "1000, 420", "1256, 150"})
    void partAfterPartEveryLineOfThePageIsRead(double width, double height) {
        PagePicture page = A4.pages(Scene.FAILED.evidence()).get(2);
        int parts = page.parts(width, height);
        List<String> read = new ArrayList<>();
        double above = Double.POSITIVE_INFINITY;
        for (int i = 0; i < parts; i++) {
            RecordingPen pen = drawn(page.part(i), width, height);
            pen.lettered().stream()
                    .filter(text -> text.box().top() >= -0.5 && text.box().bottom() <= height + 0.5)
                    .map(RecordingPen.Lettered::text)
                    .forEach(read::add);
            double first = pen.lettered().get(0).box().top();
            assertTrue(first < above, "part " + i);
            above = first;
        }
        List<String> all = new ArrayList<>(drawn(page, width, height).texts());
        all.removeAll(read);
        assertEquals(List.of(), all);
    }
}
