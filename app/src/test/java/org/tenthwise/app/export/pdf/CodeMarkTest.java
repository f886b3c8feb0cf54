package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Records;
import org.tenthwise.model.words.Words;

/** The code of run and head, read back from the printed page as a camera has it. */
class CodeMarkTest {

    @ParameterizedTest
    @EnumSource(
            value = Scene.class,
            names = {"PASSED", "FAILED", "UNFINISHED", "INCH_FAILED", "LONG_NAMES"})
    void theCodeOfTheFirstPageSaysTheRunAndItsWholeHead(Scene scene) throws Exception {
        Evidence evidence = scene.evidence();
        String said = "Run %s, %d entries, head %s"
                .formatted(
                        evidence.sheet().run().id(),
                        evidence.head().place(),
                        evidence.head().hash());
        for (Paper paper : Paper.values()) {
            assertEquals(said, read(evidence, paper));
        }
    }

    @Test
    void aTextThatNoCodeHoldsIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new CodeMark("a".repeat(3_000)));
    }

    /**
     * A camera comes nearer until the code is read; one in a hundred is not from a given distance, whatever it says.
     */
    private static String read(Evidence evidence, Paper paper) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfRecord(new RecordLayout(Words.ENGLISH, paper, Records.DATA)).write(evidence, out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            NotFoundException last = NotFoundException.getNotFoundInstance();
            for (int dotsToTheInch : new int[] {150, 180, 120}) {
                try {
                    return read(new PDFRenderer(document).renderImageWithDPI(0, dotsToTheInch));
                } catch (NotFoundException e) {
                    last = e;
                }
            }
            throw last;
        }
    }

    private static String read(BufferedImage page) throws NotFoundException {
        int[] pixels = page.getRGB(0, 0, page.getWidth(), page.getHeight(), null, 0, page.getWidth());
        return new MultiFormatReader()
                .decode(
                        new BinaryBitmap(
                                new HybridBinarizer(new RGBLuminanceSource(page.getWidth(), page.getHeight(), pixels))),
                        Map.of(
                                DecodeHintType.POSSIBLE_FORMATS,
                                List.of(BarcodeFormat.QR_CODE),
                                DecodeHintType.TRY_HARDER,
                                true))
                .getText();
    }
}
