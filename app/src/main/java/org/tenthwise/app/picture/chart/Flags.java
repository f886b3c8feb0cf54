package org.tenthwise.app.picture.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Label;
import org.tenthwise.app.picture.Point;

/** Words at upright lines, in lanes above the picture: none lies on another or on a line. */
final class Flags {

    private static final double BESIDE = 10;
    private static final double APART = 8;
    private static final double LINE = 5;
    private static final double LANE = 26;

    /** An upright line and what stands at its head. */
    record Flag(double x, Label label) {}

    /** Lane 0 lies lowest; the line of a flag reaches up to its lane. */
    private record Placed(Flag flag, int lane, double left, double right) {}

    private final Drawing drawing;
    private final List<Placed> placed;

    private Flags(Drawing drawing, List<Placed> placed) {
        this.drawing = drawing;
        this.placed = placed;
    }

    /**
     * @param flags from left to right
     * @param lanes at most
     * @return absent where there is no room for all of them
     */
    static Optional<Flags> of(List<Flag> flags, int lanes, double left, double right, Drawing drawing) {
        List<Flag> fromTheRight = new ArrayList<>(flags);
        Collections.reverse(fromTheRight);
        List<Flag> narrowFirst = flags.stream()
                .sorted(Comparator.comparingDouble(flag -> drawing.width(flag.label())))
                .toList();
        return inOrder(fromTheRight, lanes, left, right, drawing)
                .or(() -> inOrder(narrowFirst, lanes, left, right, drawing));
    }

    private static Optional<Flags> inOrder(List<Flag> flags, int lanes, double left, double right, Drawing drawing) {
        List<Placed> placed = new ArrayList<>();
        for (Flag flag : flags) {
            Optional<Placed> found = places(flag, lanes, drawing.width(flag.label()))
                    .filter(some -> some.left() >= left && some.right() <= right)
                    .filter(some -> placed.stream().allMatch(other -> agree(some, other)))
                    .findFirst();
            if (found.isEmpty()) {
                return Optional.empty();
            }
            placed.add(found.get());
        }
        return Optional.of(new Flags(drawing, placed));
    }

    /** At the right of its line in the lowest lane first. */
    private static Stream<Placed> places(Flag flag, int lanes, double width) {
        return Stream.of(flag.x() + BESIDE, flag.x() - BESIDE - width).flatMap(from -> IntStream.range(0, lanes)
                .mapToObj(lane -> new Placed(flag, lane, from, from + width)));
    }

    private static boolean agree(Placed one, Placed other) {
        boolean apart = one.lane() != other.lane()
                || one.right() + APART <= other.left()
                || other.right() + APART <= one.left();
        return apart && !strikes(one, other) && !strikes(other, one);
    }

    /** Whether the line of one runs through the words of the other, or its head over them. */
    private static boolean strikes(Placed line, Placed words) {
        return line.lane() >= words.lane()
                && line.flag().x() > words.left() - LINE
                && line.flag().x() < words.right() + LINE;
    }

    /** Height of the lanes that are used. */
    double height() {
        OptionalInt highest = placed.stream().mapToInt(Placed::lane).max();
        return highest.isPresent() ? (highest.getAsInt() + 1) * drawing.lettered(LANE) : 0;
    }

    /** @param foot where the lanes end and the picture begins */
    void draw(double foot) {
        for (Placed some : placed) {
            drawing.text(some.flag().label(), new Point(some.left(), y(some.lane(), foot)), Anchor.LEFT);
        }
    }

    /** The top of the line of a flag. */
    double head(Flag flag, double foot) {
        return placed.stream()
                .filter(some -> some.flag() == flag)
                .mapToDouble(some -> y(some.lane(), foot))
                .findFirst()
                .orElse(foot);
    }

    private double y(int lane, double foot) {
        return foot - (lane + 0.5) * drawing.lettered(LANE);
    }
}
