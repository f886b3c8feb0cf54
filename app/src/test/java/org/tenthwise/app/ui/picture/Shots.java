package org.tenthwise.app.ui.picture;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.CheckedOutputStream;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/**
 * What the toolkit has drawn, as pictures in files. Thousands are saved in one run of the tests, so they are packed as
 * fast as can be and not as small: PNG (W3C, third edition, 2025), eight bits of red, green and blue, no filter.
 */
public final class Shots {

    private static final byte[] SIGNATURE = {(byte) 137, 'P', 'N', 'G', 13, 10, 26, 10};
    private static final byte[] EIGHT_BITS_OF_RGB = {8, 2, 0, 0, 0};

    private Shots() {}

    /** An image of whole pixels, red, green and blue in one figure each; on the screen thread. */
    public static BufferedImage image(WritableImage seen) {
        int width = (int) seen.getWidth();
        int height = (int) seen.getHeight();
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        seen.getPixelReader()
                .getPixels(0, 0, width, height, PixelFormat.getIntArgbPreInstance(), pixels(image), 0, width);
        return image;
    }

    /** Line by line from the top. */
    static int[] pixels(BufferedImage image) {
        return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }

    /** Saves what {@link #image} made; the folder is made where there is none. */
    public static void save(BufferedImage image, Path file) {
        try {
            Files.createDirectories(file.getParent());
            try (DataOutputStream to = new DataOutputStream(Files.newOutputStream(file))) {
                to.write(SIGNATURE);
                chunk(to, "IHDR", head -> {
                    head.writeInt(image.getWidth());
                    head.writeInt(image.getHeight());
                    head.write(EIGHT_BITS_OF_RGB);
                });
                chunk(to, "IDAT", data -> packed(data, image));
                chunk(to, "IEND", end -> {});
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private interface Content {
        void write(DataOutputStream to) throws IOException;
    }

    /** Length, name, content, and a check sum over name and content. */
    private static void chunk(DataOutputStream to, String name, Content content) throws IOException {
        ByteArrayOutputStream chunk = new ByteArrayOutputStream();
        CRC32 sum = new CRC32();
        DataOutputStream checked = new DataOutputStream(new CheckedOutputStream(chunk, sum));
        checked.write(name.getBytes(US_ASCII));
        content.write(checked);
        to.writeInt(chunk.size() - name.length());
        chunk.writeTo(to);
        to.writeInt((int) sum.getValue());
    }

    private static void packed(OutputStream to, BufferedImage image) throws IOException {
        int[] pixels = pixels(image);
        byte[] line = new byte[1 + 3 * image.getWidth()];
        Deflater fast = new Deflater(Deflater.BEST_SPEED);
        try (DeflaterOutputStream packing = new DeflaterOutputStream(to, fast, 1 << 16)) {
            for (int from = 0; from < pixels.length; from += image.getWidth()) {
                for (int x = 0; x < image.getWidth(); x++) {
                    int pixel = pixels[from + x];
                    line[3 * x + 1] = (byte) (pixel >> 16);
                    line[3 * x + 2] = (byte) (pixel >> 8);
                    line[3 * x + 3] = (byte) pixel;
                }
                packing.write(line);
            }
        } finally {
            fast.end();
        }
    }
}
