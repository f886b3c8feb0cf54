package org.tenthwise.app.picture.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Label;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;

/** What the lines and marks of a picture are, in lines at its foot, with a sample of each. What has no room goes. */
final class ChartKey {

    private static final double TEXT = 18;
    private static final double LINE = 25;
    private static final double SAMPLE = 34;
    private static final double APART = 22;

    /** @param sample draws it in the middle of a room {@value SAMPLE} wide; nothing where there is none to draw */
    record Told(BiConsumer<Drawing, Point> sample, boolean sampled, String words) {

        static Told of(String words) {
            return new Told((drawing, at) -> {}, false, words);
        }

        static Told of(BiConsumer<Drawing, Point> sample, String words) {
            return new Told(sample, true, words);
        }
    }

    private record Piece(Told entry, int line, double x, boolean head, String words) {}

    private final Drawing drawing;
    private final List<Piece> pieces = new ArrayList<>();
    private final double left;
    private final double width;
    private int lines;

    /**
     * @param entries those that matter most first
     * @param most height it may take
     */
    ChartKey(List<Told> entries, double left, double width, double most, Drawing drawing) {
        this.drawing = drawing;
        this.left = left;
        this.width = width;
        double x = 0;
        for (Told entry : entries) {
            List<Piece> laid = lay(entry, x);
            int last = laid.get(laid.size() - 1).line();
            if ((last + 1) * drawing.lettered(LINE) > most) {
                break;
            }
            pieces.addAll(laid);
            lines = last + 1;
            Piece end = laid.get(laid.size() - 1);
            x = end.x() + wide(end.words()) + APART;
        }
    }

    /** On the line in hand where it fits whole, else from the next line on. */
    private List<Piece> lay(Told entry, double x) {
        double sample = entry.sampled() ? drawing.ruled(SAMPLE) + 8 : 0;
        int line = Math.max(0, lines - 1);
        boolean here = x + sample + wide(entry.words()) <= width;
        List<Piece> laid = new ArrayList<>();
        if (here) {
            laid.add(new Piece(entry, line, x + sample, true, entry.words()));
            return laid;
        }
        int next = x == 0 ? line : line + 1;
        for (String words : wrapped(entry.words(), width - sample)) {
            laid.add(new Piece(entry, next + laid.size(), sample, laid.isEmpty(), words));
        }
        return laid;
    }

    private List<String> wrapped(String words, double room) {
        List<String> wrapped = new ArrayList<>();
        for (String word : words.split(" ")) {
            int last = wrapped.size() - 1;
            if (last >= 0 && wide(wrapped.get(last) + " " + word) <= room) {
                wrapped.set(last, wrapped.get(last) + " " + word);
            } else {
                wrapped.add(word);
            }
        }
        return wrapped;
    }

    private double wide(String words) {
        return drawing.width(Label.of(words, TEXT, Role.INK2));
    }

    double height() {
        return lines * drawing.lettered(LINE);
    }

    void draw(double top) {
        for (Piece piece : pieces) {
            double y = top + (piece.line() + 0.5) * drawing.lettered(LINE);
            if (piece.head() && piece.entry().sampled()) {
                double half = drawing.ruled(SAMPLE) / 2;
                piece.entry().sample().accept(drawing, new Point(left + piece.x() - 8 - half, y));
            }
            drawing.text(Label.of(piece.words(), TEXT, Role.INK2), new Point(left + piece.x(), y), Anchor.LEFT);
        }
    }

    static double half(Drawing drawing) {
        return drawing.ruled(SAMPLE) / 2;
    }
}
