package org.tenthwise.app.picture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.tenthwise.model.words.Words;

/**
 * Measures lettering by the widths in the font files, the same for screen and record, and finds a face for every sign.
 * Faces are read when first needed. One thread at a time.
 */
public final class TextMetrics {

    /** Height of capitals and figures over the base line, in ems (Roboto: 1456 of 2048). */
    static final double CAPITAL = 0.711;
    /** Depth of tails under the base line, in ems. */
    static final double TAIL = 0.21;
    /** Unicode's own stand-in, for a sign that no face has: nothing that is drawn reads so, as a box would. */
    private static final int NO_SIGN = 0xFFFD;

    private static final String BESIDE_DIAMETERS = "(?<=%1$s)|(?=%1$s)".formatted(DiameterSign.TEXT);

    /**
     * A stretch of text in one face.
     *
     * @param face absent from the drawn diameter sign, which no face has
     * @param width pixels
     */
    record TextRun(Face face, String text, double width) {

        boolean isDiameterSign() {
            return text.equals(DiameterSign.TEXT);
        }
    }

    private record Metrics(TrueTypeFont font, CmapLookup glyphs, double unitsPerEm) {}

    private final Words words;
    private final Map<Face, Metrics> metrics = new EnumMap<>(Face.class);

    /** @param words say the signs of drawings that no face has */
    public TextMetrics(Words words) {
        this.words = words;
    }

    /** Width in pixels at {@code size} pixels to the em. */
    public double width(String text, Face face, double size) {
        return runs(text, face, size).stream().mapToDouble(TextRun::width).sum();
    }

    /** The text cut where the face changes, from left to right. */
    List<TextRun> runs(String text, Face face, double size) {
        List<TextRun> runs = new ArrayList<>();
        StringBuilder open = new StringBuilder();
        Face openFace = face;
        for (int written : readable(text).codePoints().toArray()) {
            int codePoint = shown(written, face);
            Face next = faceFor(codePoint, face);
            boolean sign = codePoint == DiameterSign.TEXT.codePointAt(0);
            if (!open.isEmpty() && (sign || next != openFace)) {
                runs.add(run(openFace, open, size));
            }
            openFace = next;
            open.appendCodePoint(codePoint);
            if (sign) {
                runs.add(new TextRun(face, DiameterSign.TEXT, DiameterSign.ADVANCE * size));
                open.setLength(0);
            }
        }
        if (!open.isEmpty()) {
            runs.add(run(openFace, open, size));
        }
        return runs;
    }

    private String readable(String text) {
        return Arrays.stream(text.split(BESIDE_DIAMETERS))
                .map(part -> part.equals(DiameterSign.TEXT) ? part : words.readable(part))
                .collect(Collectors.joining());
    }

    private TextRun run(Face face, StringBuilder open, double size) {
        String text = open.toString();
        open.setLength(0);
        Metrics of = metrics(face);
        return new TextRun(
                face,
                text,
                text.codePoints()
                                .mapToDouble(codePoint -> advance(of, codePoint))
                                .sum()
                        * size);
    }

    /**
     * What is lettered for a sign: itself, a space for any other white space such as a line end, or the stand-in where
     * no face has it.
     */
    private int shown(int codePoint, Face face) {
        boolean known = metrics(faceFor(codePoint, face)).glyphs().getGlyphId(codePoint) != 0
                || codePoint == DiameterSign.TEXT.codePointAt(0);
        if (known && !Character.isISOControl(codePoint)) {
            return codePoint;
        }
        return Character.isWhitespace(codePoint) || Character.isSpaceChar(codePoint) ? ' ' : NO_SIGN;
    }

    private Face faceFor(int codePoint, Face wanted) {
        return metrics(wanted).glyphs().getGlyphId(codePoint) != 0 || codePoint == DiameterSign.TEXT.codePointAt(0)
                ? wanted
                : wanted.fallback();
    }

    private static double advance(Metrics of, int codePoint) {
        try {
            return of.font().getAdvanceWidth(of.glyphs().getGlyphId(codePoint)) / of.unitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException("The lettering brought along cannot be read", e);
        }
    }

    private Metrics metrics(Face face) {
        return metrics.computeIfAbsent(face, TextMetrics::read);
    }

    private static Metrics read(Face face) {
        try (InputStream file = face.open()) {
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
            return new Metrics(font, font.getUnicodeCmapLookup(), font.getUnitsPerEm());
        } catch (IOException e) {
            throw new UncheckedIOException("The lettering brought along cannot be read: " + face, e);
        }
    }
}
