package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Point;

/** Texts of several letterings, one behind the other as one: a name and what is said of it, without a line each. */
final class RunIn {

    private record Word(String text, Style style) {}

    /** A stretch of a line in one lettering, {@code left} from where the line begins. */
    record Piece(String text, Style style, double left) {

        /** @param middle of its line, from the top of the leaf */
        void draw(Drawing drawing, double from, double middle) {
            drawing.text(style.label(text), new Point(from + left, middle), Anchor.LEFT);
        }
    }

    private final Wrapping wrapping;
    private final List<Word> words = new ArrayList<>();

    RunIn(Wrapping wrapping) {
        this.wrapping = wrapping;
    }

    /** Adds a text behind what is there; nothing where it is blank. */
    RunIn add(String text, Style style) {
        text.strip()
                .lines()
                .flatMap(line -> List.of(line.strip().split("\\s+")).stream())
                .filter(word -> !word.isEmpty())
                .forEach(word -> words.add(new Word(word, style)));
        return this;
    }

    boolean isEmpty() {
        return words.isEmpty();
    }

    /** How wide it is on one line. */
    double width() {
        double width = 0;
        for (int i = 0; i < words.size(); i++) {
            width += (i == 0 ? 0 : blank(words.get(i - 1))) + width(words.get(i));
        }
        return width;
    }

    /** What a column must have for no word to be broken. */
    double widestWord() {
        return words.stream().mapToDouble(this::width).max().orElse(0);
    }

    /** Its lines; a word wider than a line is broken. */
    List<List<Piece>> lines(double width) {
        List<List<Piece>> lines = new ArrayList<>();
        List<Word> open = new ArrayList<>();
        double used = 0;
        for (Word word : words) {
            for (String part : wrapping.lines(word.text(), word.style(), width)) {
                Word next = new Word(part, word.style());
                double gap = open.isEmpty() ? 0 : blank(open.get(open.size() - 1));
                if (!open.isEmpty() && used + gap + width(next) > width) {
                    lines.add(pieces(open));
                    open.clear();
                    used = 0;
                    gap = 0;
                }
                open.add(next);
                used += gap + width(next);
            }
        }
        if (!open.isEmpty()) {
            lines.add(pieces(open));
        }
        return lines;
    }

    private List<Piece> pieces(List<Word> line) {
        List<Piece> pieces = new ArrayList<>();
        double left = 0;
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < line.size(); i++) {
            Word word = line.get(i);
            text.append(text.isEmpty() ? "" : " ").append(word.text());
            boolean ends = i == line.size() - 1 || !line.get(i + 1).style().equals(word.style());
            if (ends) {
                Piece piece = new Piece(text.toString(), word.style(), left);
                pieces.add(piece);
                left += wrapping.width(piece.text(), piece.style()) + blank(word);
                text.setLength(0);
            }
        }
        return pieces;
    }

    private double width(Word word) {
        return wrapping.width(word.text(), word.style());
    }

    private double blank(Word behind) {
        return wrapping.width(" ", behind.style());
    }

    /** Puts it down, a line under the other, over as many leaves as it takes. */
    void into(PageFlow flow, double left, double width, double leading) {
        for (List<Piece> line : lines(width)) {
            flow.need(leading);
            double middle = flow.y() + leading / 2;
            line.forEach(piece -> flow.leaf().add(drawing -> piece.draw(drawing, left, middle)));
            flow.down(leading);
        }
    }
}
