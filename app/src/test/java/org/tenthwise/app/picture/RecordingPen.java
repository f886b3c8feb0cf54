package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tenthwise.model.words.Words;

/** Keeps what is drawn, for tests to look at. */
public final class RecordingPen implements Pen {

    /** How far a line may reach into the box of a text, whose corners are empty. */
    private static final double LETTER_ROOM = 1.5;
    /** How far a line that strikes a text out reaches past it. */
    private static final double STRIKE = 2.5;

    /** A shape followed or filled; {@code width} zero where filled. */
    public record Drawn(Shape shape, double width, boolean dashed, Role role) {}

    /** A text with the box its letters fill. */
    public record Lettered(String text, Box box, double size, Role role) {}

    /** Read from the font files once for all tests, which take longer to read than to draw. */
    private static final TextMetrics LETTERING = new TextMetrics(Words.ENGLISH);

    private final List<Drawn> drawn = new ArrayList<>();
    private final List<Lettered> lettered = new ArrayList<>();
    /** How many shapes were drawn before each text. */
    private final List<Integer> before = new ArrayList<>();

    /** What drawing {@code picture} in {@code frame} leaves. */
    public static RecordingPen of(Picture picture, Frame frame) {
        RecordingPen pen = new RecordingPen();
        picture.draw(new Drawing(pen, LETTERING, frame));
        return pen;
    }

    @Override
    public void stroke(Shape shape, Stroke stroke, Role role) {
        drawn.add(new Drawn(shape, stroke.width(), !stroke.dash().isEmpty(), role));
    }

    @Override
    public void fill(Shape shape, Role role) {
        drawn.add(new Drawn(shape, 0, false, role));
    }

    @Override
    public void text(Face face, String text, Point start, double size, Role role) {
        before.add(drawn.size());
        boolean tails = text.chars().anyMatch(sign -> "gjpqy,;()".indexOf(sign) >= 0);
        lettered.add(new Lettered(
                text,
                new Box(
                        start.x(),
                        start.y() - TextMetrics.CAPITAL * size,
                        start.x() + LETTERING.width(text, face, size),
                        start.y() + (tails ? TextMetrics.TAIL * size : 0)),
                size,
                role));
    }

    public List<Drawn> drawn() {
        return drawn;
    }

    public List<Lettered> lettered() {
        return lettered;
    }

    public List<String> texts() {
        return lettered.stream().map(Lettered::text).toList();
    }

    public List<Drawn> drawnIn(Role role) {
        return drawn.stream().filter(mark -> mark.role() == role).toList();
    }

    /** Faults of layout: text on text, anything outside the frame. */
    public List<String> faults(Frame frame) {
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < lettered.size(); i++) {
            Lettered one = lettered.get(i);
            if (!frame.box().grown(0.5).holds(one.box())) {
                faults.add("\"%s\" leaves the frame: %s".formatted(one.text(), one.box()));
            }
            for (Lettered other : lettered.subList(i + 1, lettered.size())) {
                if (one.box().grown(-0.3).meets(other.box().grown(-0.3))) {
                    faults.add("\"%s\" lies on \"%s\"".formatted(other.text(), one.text()));
                }
            }
        }
        drawn.stream()
                .filter(mark -> !frame.box().grown(0.5).holds(mark.shape().bounds()))
                .forEach(mark -> faults.add("%s leaves the frame".formatted(mark)));
        faults.addAll(crossed());
        return faults.stream().distinct().collect(Collectors.toList());
    }

    /**
     * Texts with a line through them: one drawn over them, or one under them that no ground was laid over. A text
     * struck out is meant so.
     */
    private List<String> crossed() {
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < lettered.size(); i++) {
            Lettered text = lettered.get(i);
            Box letters = text.box().grown(-LETTER_ROOM);
            for (int j = 0; j < drawn.size(); j++) {
                if (Crossing.of(drawn.get(j).shape(), letters)
                        && !isCovered(j, before.get(i), letters)
                        && !isStrike(drawn.get(j).shape(), text.box())) {
                    faults.add("\"%s\" is crossed by %s".formatted(text.text(), drawn.get(j)));
                }
            }
        }
        return faults;
    }

    /** Whether a line lies along a text and ends with it at both sides. */
    private static boolean isStrike(Shape shape, Box text) {
        return shape.bounds().height() == 0
                && Math.abs(shape.bounds().left() - text.left()) <= STRIKE
                && Math.abs(shape.bounds().right() - text.right()) <= STRIKE;
    }

    private boolean isCovered(int shape, int upTo, Box letters) {
        boolean filled = drawn.get(shape).width() == 0;
        return filled && shape < upTo
                || drawn.subList(Math.min(shape, upTo), upTo).stream()
                        .anyMatch(later -> later.width() == 0
                                && later.shape() instanceof Shape.Polyline
                                && later.shape().bounds().holds(letters));
    }
}
