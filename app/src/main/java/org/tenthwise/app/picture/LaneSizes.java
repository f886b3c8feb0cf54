package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;

/**
 * Finds where the sizes at the right of a strip stand, in the order of the sizes, greatest on top: each at its own line
 * where all can, otherwise one under another and each led to its own.
 */
final class LaneSizes {

    /** Where a size stands to its line. */
    enum Stand {
        ABOVE,
        BELOW,
        ON,
        LED
    }

    /**
     * A size to be written.
     *
     * @param line height it belongs to
     * @param stands where it may stand to its line, the best first
     */
    record Wanted(Label label, Length size, double line, List<Stand> stands) {}

    record Placed(Wanted wanted, Box box, Stand stand) {}

    /** From a line to the letters over or under it, at the usual size of letters. */
    private static final double OFF = 6;

    /** Between two sizes. */
    private static final double CLEAR = 5;

    private static final double LINE = 2;

    private final Drawing drawing;
    private final Box lane;

    LaneSizes(Drawing drawing, Box lane) {
        this.drawing = drawing;
        this.lane = lane;
    }

    List<Placed> place(List<Wanted> wanted) {
        List<Wanted> sorted = wanted.stream()
                .sorted(Comparator.comparing(Wanted::size).reversed().thenComparing(Wanted::line))
                .toList();
        return atTheirLines(sorted, List.of(), 0).map(Choice::placed).orElseGet(() -> led(sorted));
    }

    private record Choice(List<Placed> placed, int cost) {}

    /** The cheapest of all ways to go on from what is placed. */
    private Optional<Choice> atTheirLines(List<Wanted> sorted, List<Placed> placed, int cost) {
        if (placed.size() == sorted.size()) {
            return Optional.of(new Choice(placed, cost));
        }
        Wanted next = sorted.get(placed.size());
        Optional<Choice> best = Optional.empty();
        for (int i = 0; i < next.stands().size(); i++) {
            Placed tried = new Placed(
                    next, box(next, next.stands().get(i)), next.stands().get(i));
            if (isClear(tried, sorted, placed)) {
                List<Placed> longer = new ArrayList<>(placed);
                longer.add(tried);
                best = better(best, atTheirLines(sorted, longer, cost + i * i));
            }
        }
        return best;
    }

    private static Optional<Choice> better(Optional<Choice> one, Optional<Choice> other) {
        return other.filter(found ->
                        one.isEmpty() || found.cost() < one.orElseThrow().cost())
                .or(() -> one);
    }

    private double height(Label label) {
        return drawing.height(label) + 2;
    }

    private Box box(Wanted wanted, Stand stand) {
        double height = height(wanted.label());
        double off = height / 2 + OFF * Math.max(0.7, drawing.frame().textScale());
        double middle =
                switch (stand) {
                    case ABOVE -> wanted.line() - off;
                    case BELOW -> wanted.line() + off;
                    case ON, LED -> wanted.line();
                };
        return boxAt(wanted.label(), middle);
    }

    private Box boxAt(Label label, double middle) {
        double half = height(label) / 2;
        return new Box(lane.right() - drawing.width(label), middle - half, lane.right(), middle + half);
    }

    private boolean isClear(Placed tried, List<Wanted> sorted, List<Placed> placed) {
        Box box = tried.box();
        boolean clearOfLines = sorted.stream()
                .filter(other -> other != tried.wanted())
                .noneMatch(other -> other.line() > box.top() - LINE && other.line() < box.bottom() + LINE);
        return clearOfLines
                && box.top() >= lane.top()
                && box.bottom() <= lane.bottom()
                && (placed.isEmpty() || placed.get(placed.size() - 1).box().bottom() + CLEAR <= box.top());
    }

    /** One under another, each as near to its line as those before and after it let it. */
    private List<Placed> led(List<Wanted> sorted) {
        double[] middles = new double[sorted.size()];
        double free = lane.bottom();
        for (int i = sorted.size() - 1; i >= 0; i--) {
            double half = height(sorted.get(i).label()) / 2;
            middles[i] = Math.min(sorted.get(i).line(), free - half);
            free = middles[i] - half - CLEAR;
        }
        free = lane.top();
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            double half = height(sorted.get(i).label()) / 2;
            middles[i] = Math.max(middles[i], free + half);
            free = middles[i] + half + CLEAR;
            placed.add(new Placed(sorted.get(i), boxAt(sorted.get(i).label(), middles[i]), Stand.LED));
        }
        return placed;
    }

    /** The largest letters, down to {@code least} of {@code size}, with which so many sizes stand under one another. */
    static double letters(Drawing drawing, double room, int count, double size, double least) {
        double each = (room - (count - 1) * CLEAR) / Math.max(1, count) - 2;
        double fits = each / (TextMetrics.CAPITAL * drawing.frame().textScale());
        return Math.max(least, Math.min(size, fits));
    }
}
