package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Numbers in circles above the part or below it: those of one feature touch, those of two stand apart. Where one line
 * of circles is too long, the circles of a feature are stacked.
 */
final class BalloonRow {

    /** Least room between the circles of two features, in radii. */
    private static final double BETWEEN = 0.5;

    /** Numbers of one feature with the way of their leader line, from the feature to the edge of the part. */
    record Led(List<String> numbers, List<Point> way) {

        double x() {
            return way.get(way.size() - 1).x();
        }
    }

    /** A number with the middle of its circle. */
    record Balloon(String number, Point centre) {}

    /** The circles of one feature with their leader line, which ends at the rim of one of them. */
    record Placed(List<Balloon> balloons, List<Point> leader) {}

    private final double left;
    private final double right;
    private final double radius;

    BalloonRow(double left, double right, double radius) {
        this.left = left;
        this.right = right;
        this.radius = radius;
    }

    /** How many circles have to be stacked for numbers of features, {@code sizes} of each, to fit; zero for none. */
    int levels(List<Integer> sizes) {
        int most = sizes.stream().mapToInt(Integer::intValue).max().orElse(0);
        for (int levels = 1; levels < most; levels++) {
            if (width(sizes, levels) <= right - left) {
                return levels;
            }
        }
        return most;
    }

    private double width(List<Integer> sizes, int levels) {
        double circles = sizes.stream()
                .mapToDouble(size -> 2 * radius * columns(size, levels))
                .sum();
        return circles + Math.max(0, sizes.size() - 1) * BETWEEN * radius;
    }

    private static int columns(int size, int levels) {
        return (size + levels - 1) / levels;
    }

    /**
     * Circles in the order of their leaders from left to right, as near to them as they go.
     *
     * @param edge the height of the rims that are nearest to the part
     */
    List<Placed> place(List<Led> inOrder, int levels, double edge, boolean above) {
        double[] wanted = new double[inOrder.size()];
        double[] offsets = new double[inOrder.size()];
        double end = 0;
        for (int i = 0; i < wanted.length; i++) {
            double half = radius * columns(inOrder.get(i).numbers().size(), levels);
            offsets[i] = end + half;
            end += 2 * half + BETWEEN * radius;
            wanted[i] = inOrder.get(i).x() - offsets[i];
        }
        double[] shifts = rising(wanted);
        double most = right - (end - BETWEEN * radius);
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < wanted.length; i++) {
            double centre = Math.min(Math.max(shifts[i], left), most) + offsets[i];
            placed.add(stack(inOrder.get(i), centre, levels, edge, above));
        }
        return placed;
    }

    /**
     * The numbers nearest to {@code wanted} by least squares that never fall: neighbours in disorder take their mean.
     */
    private static double[] rising(double[] wanted) {
        double[] rising = wanted.clone();
        for (int i = 1; i < rising.length; i++) {
            int from = i;
            double sum = wanted[i];
            while (from > 0 && rising[from - 1] > sum / (i - from + 1)) {
                from--;
                sum += wanted[from];
            }
            for (int j = from; j <= i; j++) {
                rising[j] = sum / (i - from + 1);
            }
        }
        return rising;
    }

    /** Read line by line from the top; the line next to the part is full. */
    private Placed stack(Led group, double centre, int levels, double edge, boolean above) {
        int size = group.numbers().size();
        int columns = columns(size, levels);
        int lines = columns(size, columns);
        int first = above ? size - columns * (lines - 1) : columns;
        double outwards = above ? -1 : 1;
        List<Balloon> balloons = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            int line = i < first ? 0 : 1 + (i - first) / columns;
            int column = i < first ? i : (i - first) % columns;
            int away = above ? lines - 1 - line : line;
            balloons.add(new Balloon(
                    group.numbers().get(i),
                    new Point(
                            centre + radius * (2 * column + 1 - columns), edge + outwards * radius * (2 * away + 1))));
        }
        double x = balloons.stream()
                .map(balloon -> balloon.centre().x())
                .min((one, other) -> Double.compare(Math.abs(one - group.x()), Math.abs(other - group.x())))
                .orElse(centre);
        List<Point> leader = new ArrayList<>(group.way());
        leader.add(new Point(x, edge));
        return new Placed(balloons, leader);
    }
}
