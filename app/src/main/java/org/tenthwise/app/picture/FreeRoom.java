package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Keeps account of what is already on the sheet, and finds places where something still fits. */
public final class FreeRoom {

    private static final double STEP = 6;
    private static final double ROUNDING = 0.01;

    /** What is kept free on either side of a line. */
    private static final double LINE = 3;

    private final Box frame;
    private final List<Box> taken = new ArrayList<>();
    private final List<Shape.Circle> round = new ArrayList<>();

    public FreeRoom(Box frame) {
        this.frame = frame;
    }

    public void take(Box box) {
        taken.add(box);
    }

    void take(Shape.Circle circle) {
        round.add(circle);
    }

    boolean isFree(Box box) {
        if (!frame.grown(ROUNDING).holds(box)) {
            return false;
        }
        for (Shape.Circle circle : round) {
            if (touches(circle, box)) {
                return false;
            }
        }
        for (Box other : taken) {
            if (box.meets(other)) {
                return false;
            }
        }
        return true;
    }

    Optional<Box> place(double width, double height, List<Point> centres) {
        return place(width, height, centres.stream());
    }

    /** The first of the places, pushed into the frame, that is free; it is then taken. */
    Optional<Box> place(double width, double height, Stream<Point> centres) {
        return place(width, height, centres, box -> true);
    }

    /** The same, of the places that are {@code allowed} where they lie in the frame. */
    Optional<Box> place(double width, double height, Stream<Point> centres, Predicate<Box> allowed) {
        Optional<Box> found = centres.map(centre -> within(width, height, centre))
                .filter(this::isFree)
                .filter(allowed)
                .findFirst();
        found.ifPresent(this::take);
        return found;
    }

    private Box within(double width, double height, Point centre) {
        double x = Math.min(Math.max(centre.x(), frame.left() + width / 2), frame.right() - width / 2);
        double y = Math.min(Math.max(centre.y(), frame.top() + height / 2), frame.bottom() - height / 2);
        return new Box(x - width / 2, y - height / 2, x + width / 2, y + height / 2);
    }

    /** The free place nearest to {@code wanted}; it is then taken. Absent where the sheet is full. */
    public Optional<Box> nearest(double width, double height, Point wanted) {
        return nearest(width, height, wanted, box -> true);
    }

    /** The same, of the places that are {@code allowed}. */
    Optional<Box> nearest(double width, double height, Point wanted, Predicate<Box> allowed) {
        Optional<Box> found = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (double x = frame.left() + width / 2; x <= frame.right() - width / 2; x += STEP) {
            for (double y = frame.top() + height / 2; y <= frame.bottom() - height / 2; y += STEP) {
                Point centre = new Point(x, y);
                double distance = wanted.distanceTo(centre);
                if (distance < least) {
                    Box box = within(width, height, centre);
                    if (isFree(box) && allowed.test(box)) {
                        least = distance;
                        found = Optional.of(box);
                    }
                }
            }
        }
        found.ifPresent(this::take);
        return found;
    }

    /** Whether a line crosses nothing that is taken as a box. */
    public boolean isFree(Point from, Point to) {
        int spots = spots(from, to);
        for (Box box : taken) {
            Box clear = box.grown(LINE);
            for (int i = 0; i <= spots; i++) {
                if (clear.encloses(spot(from, to, i, spots))) {
                    return false;
                }
            }
        }
        return true;
    }

    public void take(Point from, Point to) {
        along(from, to).forEach(taken::add);
    }

    private static Stream<Box> along(Point from, Point to) {
        int spots = spots(from, to);
        return IntStream.rangeClosed(0, spots)
                .mapToObj(i -> spot(from, to, i, spots))
                .map(spot -> new Box(spot.x(), spot.y(), spot.x(), spot.y()).grown(LINE));
    }

    private static int spots(Point from, Point to) {
        return (int) Math.ceil(from.distanceTo(to) / STEP);
    }

    private static Point spot(Point from, Point to, int which, int spots) {
        return from.towards(to, spots == 0 ? 0 : (double) which / spots);
    }

    private static boolean touches(Shape.Circle circle, Box box) {
        return box.distanceTo(circle.centre()) < circle.radius();
    }
}
