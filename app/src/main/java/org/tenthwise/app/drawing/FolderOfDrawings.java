package org.tenthwise.app.drawing;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.tenthwise.app.key.Sha256;
import org.tenthwise.model.plan.DrawingFile;
import org.tenthwise.model.plan.PageSpot;
import org.tenthwise.model.words.Message;

/**
 * Pages of the files in the folder of the plans. However large a page or a picture is, what comes of it has
 * {@value #LONGEST} pixels at the most from one end to the other.
 */
public final class FolderOfDrawings implements DrawingPages {

    /** Of A1 (841 mm), letters 3.5 mm high have twelve pixels then. */
    static final int LONGEST = 3000;

    private static final long MOST_BYTES = 200_000_000;
    /** Of a picture that is read line by line, one of several. */
    private static final long MOST_PIXELS = 400_000_000;

    private final Path folder;

    public FolderOfDrawings(Path folder) {
        this.folder = folder;
    }

    @Override
    public PageReading page(DrawingFile file, int page) {
        Path path = folder.resolve(file.name());
        if (!Files.isRegularFile(path)) {
            return unreadable("page.missing", file);
        }
        try {
            if (Files.size(path) > MOST_BYTES) {
                return unreadable("page.too-large", file);
            }
            String hash = Sha256.of(path);
            if (!file.canHave(hash)) {
                return unreadable("page.replaced", file);
            }
            return switch (file.form()) {
                case PDF -> ofPdf(path, file, page, hash);
                case PICTURE -> ofPicture(path, file, page, hash);
            };
        } catch (IOException | RuntimeException | StackOverflowError e) { // a broken file breaks its reader anyhow
            return unreadable("page.broken", file);
        } catch (OutOfMemoryError e) { // what was begun is let go of with it
            return unreadable("page.too-large", file);
        }
    }

    private static PageReading unreadable(String why, DrawingFile file) {
        return new PageReading.Unreadable(Message.of(why, file.name()));
    }

    private static PageReading ofPdf(Path path, DrawingFile file, int page, String hash) throws IOException {
        try (PDDocument document = Loader.loadPDF(path.toFile())) {
            int pages = Math.min(document.getNumberOfPages(), PageSpot.MOST_PAGES);
            if (page > pages) {
                return noSuchPage(file, page, pages);
            }
            PDRectangle box = document.getPage(page - 1).getCropBox();
            float longest = Math.max(box.getWidth(), box.getHeight());
            if (!(Math.min(box.getWidth(), box.getHeight()) > 0) || Float.isInfinite(longest)) {
                return unreadable("page.broken", file);
            }
            PDFRenderer renderer = new PDFRenderer(document);
            renderer.setSubsamplingAllowed(true);
            return new PageReading.Readable(
                    new PageImage(page, pages, renderer.renderImage(page - 1, LONGEST / longest, ImageType.RGB)), hash);
        }
    }

    private static PageReading noSuchPage(DrawingFile file, int page, int pages) {
        return new PageReading.Unreadable(Message.of("page.no-such", file.name(), page, pages));
    }

    private static PageReading ofPicture(Path path, DrawingFile file, int page, String hash) throws IOException {
        if (page > 1) {
            return noSuchPage(file, page, 1);
        }
        try (FileImageInputStream in = new FileImageInputStream(path.toFile())) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                return unreadable("page.broken", file);
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
                return pixels > MOST_PIXELS
                        ? unreadable("page.too-large", file)
                        : new PageReading.Readable(new PageImage(1, 1, onWhite(read(reader))), hash);
            } finally {
                reader.dispose();
            }
        }
    }

    /** Every pixel, or one of so many across and down that it is small enough. */
    private static BufferedImage read(ImageReader reader) throws IOException {
        int longest = Math.max(reader.getWidth(0), reader.getHeight(0));
        int every = (longest + LONGEST - 1) / LONGEST;
        ImageReadParam how = reader.getDefaultReadParam();
        how.setSourceSubsampling(every, every, 0, 0);
        return reader.read(0, how);
    }

    private static BufferedImage onWhite(BufferedImage image) {
        BufferedImage page = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = page.createGraphics();
        brush.setColor(Color.WHITE);
        brush.fillRect(0, 0, page.getWidth(), page.getHeight());
        brush.drawImage(image, 0, 0, null);
        brush.dispose();
        return page;
    }
}
