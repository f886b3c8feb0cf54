package org.tenthwise.app.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.DrawingFile;

class FolderOfDrawingsTest {

    private static final int WHITE = 0xFFFFFFFF;

    @TempDir
    private Path folder;

    private PageReading page(String name, int page) {
        return new FolderOfDrawings(folder).page(DrawingFile.named(name), page);
    }

    private PageImage readable(String name, int page) {
        return assertInstanceOf(PageReading.Readable.class, page(name, page)).image();
    }

    private void assertUnreadable(String why, String name, int page) {
        assertEquals(
                why,
                assertInstanceOf(PageReading.Unreadable.class, page(name, page))
                        .why()
                        .key());
    }

    /** The share of pixels that are not white in a part of the page, in thousandths of it. */
    private static double ink(PageImage page, int left, int top, int right, int bottom) {
        int[] pixels = page.pixels();
        int inked = 0;
        int seen = 0;
        for (int y = page.height() * top / 1000; y < page.height() * bottom / 1000; y++) {
            for (int x = page.width() * left / 1000; x < page.width() * right / 1000; x++) {
                inked += pixels[y * page.width() + x] == WHITE ? 0 : 1;
                seen++;
            }
        }
        return (double) inked / seen;
    }

    @Test
    void aSheetIsSeenUprightAndWhole() {
        InventedDrawing.in(folder, "T-1.pdf");
        PageImage first = readable("T-1.pdf", 1);
        assertEquals(2, first.pages());
        assertEquals(3000, first.width(), 1);
        assertEquals(3000 * 842.0 / 1191, first.height(), 2);
        assertTrue(ink(first, 250, 260, 350, 300) > 0.02, "the dimension stands above the bush");
        assertTrue(ink(first, 700, 860, 950, 920) > 0.02, "the title stands at the foot, on the right");
        PageImage second = readable("T-1.pdf", 2);
        assertEquals(2, second.page());
        assertEquals(0, ink(second, 100, 100, 600, 800), "nothing is drawn on the second");
    }

    @ParameterizedTest
    @CsvSource({"20000,20000", "20000,10", "3,3", "1,14400"})
    void ofAnySheetComesAnImageThatATabletCanHold(float width, float height) {
        InventedDrawing.in(folder, "odd.pdf", new PDRectangle(width, height), 1);
        PageImage page = readable("odd.pdf", 1);
        assertTrue(Math.max(page.width(), page.height()) <= FolderOfDrawings.LONGEST + 1);
        assertTrue(Math.min(page.width(), page.height()) >= 1);
    }

    @Test
    void aPictureIsSeenOnWhite() throws IOException {
        BufferedImage image = new BufferedImage(400, 200, BufferedImage.TYPE_INT_ARGB);
        Graphics2D brush = image.createGraphics();
        brush.setColor(Color.BLACK);
        brush.fillRect(0, 0, 40, 200);
        brush.dispose();
        ImageIO.write(image, "png", folder.resolve("T-2.PNG").toFile());
        PageImage page = readable("T-2.PNG", 1);
        assertEquals(400, page.width());
        assertEquals(1, page.pages());
        assertEquals(0.5, ink(page, 0, 0, 200, 1000), 0.01);
        assertEquals(0, ink(page, 200, 0, 1000, 1000));
    }

    @Test
    void aLargePictureIsSeenSmaller() throws IOException {
        BufferedImage image = new BufferedImage(7000, 300, BufferedImage.TYPE_BYTE_GRAY);
        ImageIO.write(image, "jpg", folder.resolve("T-3.jpg").toFile());
        PageImage page = readable("T-3.jpg", 1);
        assertEquals(2334, page.width());
        assertEquals(100, page.height());
    }

    @Test
    void aFileThatIsNotThereIsSaid() {
        assertUnreadable("page.missing", "T-9.pdf", 1);
        assertEquals(
                "page.missing",
                ((PageReading.Unreadable) DrawingPages.NONE.page(DrawingFile.named("T-9.pdf"), 1))
                        .why()
                        .key());
    }

    @Test
    void aFolderIsNoFile() throws IOException {
        Files.createDirectory(folder.resolve("T-9.pdf"));
        assertUnreadable("page.missing", "T-9.pdf", 1);
    }

    @Test
    void aPageThatIsNotThereIsSaid() throws IOException {
        InventedDrawing.in(folder, "T-1.pdf");
        assertUnreadable("page.no-such", "T-1.pdf", 3);
        ImageIO.write(
                new BufferedImage(4, 4, BufferedImage.TYPE_INT_RGB),
                "png",
                folder.resolve("T-2.png").toFile());
        assertUnreadable("page.no-such", "T-2.png", 2);
    }

    @ParameterizedTest
    @CsvSource({"T-1.pdf", "T-1.png", "T-1.jpg"})
    void aBrokenFileIsSaid(String name) throws IOException {
        Files.writeString(folder.resolve(name), "no drawing at all");
        assertUnreadable("page.broken", name, 1);
        Files.write(folder.resolve(name), new byte[0]);
        assertUnreadable("page.broken", name, 1);
    }

    @Test
    void aFileCutOffAnywhereNeverFails() throws IOException {
        byte[] whole = Files.readAllBytes(InventedDrawing.in(folder, "T-1.pdf"));
        for (int cut = 1; cut < whole.length; cut += whole.length / 12) {
            Files.write(folder.resolve("cut.pdf"), Arrays.copyOf(whole, cut));
            page("cut.pdf", 1);
        }
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(50, 50, BufferedImage.TYPE_INT_RGB), "png", png);
        for (int cut = 1; cut < png.size() - 12; cut += 7) {
            Files.write(folder.resolve("cut.png"), Arrays.copyOf(png.toByteArray(), cut));
            assertInstanceOf(PageReading.class, page("cut.png", 1));
        }
    }

    /**
     * A few bytes that claim to be sixty thousand pixels square: PNG (W3C, third edition, 2025), image header alone.
     */
    @Test
    void aPictureThatSwellsIsNotRead() throws IOException {
        ByteArrayOutputStream head = new ByteArrayOutputStream();
        DataOutputStream to = new DataOutputStream(head);
        to.write("IHDR".getBytes(StandardCharsets.US_ASCII));
        to.writeInt(60_000);
        to.writeInt(60_000);
        to.write(new byte[] {8, 2, 0, 0, 0});
        CRC32 sum = new CRC32();
        sum.update(head.toByteArray());
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(file);
        out.write(new byte[] {(byte) 137, 'P', 'N', 'G', 13, 10, 26, 10});
        out.writeInt(13);
        head.writeTo(out);
        out.writeInt((int) sum.getValue());
        Files.write(folder.resolve("bomb.png"), file.toByteArray());
        assertUnreadable("page.too-large", "bomb.png", 1);
    }
}
