package org.tenthwise.app.picture;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * A cylinder of a part and what lies before and behind it along the axis, in millimetres. The end at which a tool or a
 * gauge comes to it lies in front.
 *
 * @param length along the axis
 * @param diameter of the cylinder as the outline has it
 * @param outside diameter of the part there; of an outside, its own
 * @param front diameter that goes on in front: absent where the part ends
 * @param back the same behind; zero for solid metal at the end of a bore
 * @param thread depth of a thread cut into it; zero for none
 */
record TurnedStretch(
        double length, double diameter, double outside, Optional<Double> front, Optional<Double> back, double thread) {

    /** Of its diameter: what is further off is of something else. */
    private static final double NEAR = 0.06;

    /** The bore or the outside a mark sits on, of about {@code size}; absent where there is none. */
    static Optional<TurnedStretch> of(Mark mark, Outline outline, boolean isBore, Length size) {
        List<Mark> profile = isBore ? outline.inside() : outline.outside();
        double wanted = Nanometres.of(size);
        return IntStream.range(1, profile.size())
                .filter(i -> profile.get(i).at().isAbove(profile.get(i - 1).at())
                        && profile.get(i).diameter().equals(profile.get(i - 1).diameter()))
                .filter(i -> !mark.at().isBelow(profile.get(i - 1).at())
                        && !mark.at().isAbove(profile.get(i).at()))
                .boxed()
                .map(i -> stretch(profile, i, mark, outline, isBore))
                .filter(found -> found.isNear(wanted))
                .min(Comparator.comparingDouble(found -> Math.abs(found.diameter() - wanted)));
    }

    /** Crest or root. */
    private boolean isNear(double wanted) {
        return Math.abs(diameter - wanted) <= NEAR * diameter || isRoot(wanted);
    }

    /** Whether a size is that of the root of the thread. */
    boolean isRoot(double wanted) {
        return thread > 0 && Math.abs(diameter - 2 * thread - wanted) < Math.abs(diameter - wanted);
    }

    private static TurnedStretch stretch(List<Mark> profile, int end, Mark mark, Outline outline, boolean isBore) {
        Mark from = profile.get(end - 1);
        Mark to = profile.get(end);
        Optional<Double> left = end - 2 >= 0
                ? Optional.of(neighbour(profile.get(end - 2), from, profile, end - 3))
                : atEnd(from, outline, isBore);
        Optional<Double> right = end + 1 < profile.size()
                ? Optional.of(neighbour(profile.get(end + 1), to, profile, end + 2))
                : atEnd(to, outline, isBore);
        boolean rightInFront = isRightInFront(left, right, isBore, mark, from, to);
        return new TurnedStretch(
                Nanometres.of(to.at().minus(from.at())),
                Nanometres.of(from.diameter()),
                isBore
                        ? diameterAt(outline.outside(), from.at().plus(to.at()).half())
                                .orElseThrow()
                        : Nanometres.of(from.diameter()),
                rightInFront ? right : left,
                rightInFront ? left : right,
                isBore ? 0 : threadAt(outline, from, to));
    }

    /** The next diameter; of a taper the one at its far end. */
    private static double neighbour(Mark next, Mark edge, List<Mark> profile, int beyond) {
        boolean isStep = next.at().equals(edge.at());
        return Nanometres.of(
                isStep || beyond < 0 || beyond >= profile.size()
                        ? next.diameter()
                        : profile.get(beyond).diameter());
    }

    private static Optional<Double> atEnd(Mark edge, Outline outline, boolean isBore) {
        boolean partEnds = edge.at().signum() == 0 || edge.at().equals(outline.length());
        return !isBore || partEnds ? Optional.empty() : Optional.of(0.0);
    }

    /** Where it is open, or wider in a bore and thinner outside; of two such ends the one nearer to the mark. */
    private static boolean isRightInFront(
            Optional<Double> left, Optional<Double> right, boolean isBore, Mark mark, Mark from, Mark to) {
        double open = isBore ? Double.MAX_VALUE : 0;
        int order = Double.compare(right.orElse(open), left.orElse(open)) * (isBore ? 1 : -1);
        boolean sameWay = order == 0 || isBore && isOpen(left, from) && isOpen(right, to);
        boolean nearer = mark.at().minus(from.at()).isAbove(to.at().minus(mark.at()));
        return sameWay ? nearer : order > 0;
    }

    private static boolean isOpen(Optional<Double> beyond, Mark edge) {
        return beyond.isEmpty() || beyond.get() > Nanometres.of(edge.diameter());
    }

    /** Of a profile at a place along the axis, the greater one at a step; absent where it does not reach. */
    static Optional<Double> diameterAt(List<Mark> profile, Length at) {
        return IntStream.range(1, profile.size())
                .filter(i -> !at.isBelow(profile.get(i - 1).at())
                        && !at.isAbove(profile.get(i).at()))
                .mapToObj(i -> Nanometres.of(profile.get(i).diameter()))
                .max(Comparator.naturalOrder());
    }

    private static double threadAt(Outline outline, Mark from, Mark to) {
        return outline.threads().stream()
                .filter(thread -> thread.from().isBelow(to.at()) && thread.to().isAbove(from.at()))
                .mapToDouble(thread -> Nanometres.of(thread.depth()))
                .findFirst()
                .orElse(0);
    }
}
