package org.tenthwise.model.plan;

import java.util.List;
import org.tenthwise.model.quantity.Length;

/**
 * The half section a part is known by. Axial positions run from the left end; profiles go from left to right, a step in
 * diameter being two points at one position.
 *
 * @param outside two points or more
 * @param inside empty for a solid part, otherwise two points or more
 */
public record Outline(
        List<Mark> outside,
        List<Mark> inside,
        List<ThreadedLength> threads,
        List<Pocket> pockets,
        List<CrossHole> crossHoles) {

    /** A threaded length of the outside profile, between two axial positions. */
    public record ThreadedLength(Length from, Length to, Length pitch, Length depth) {}

    /** A pocket seen from the side on the unsectioned half; {@code rounded} ends or square. */
    public record Pocket(Length from, Length to, Length width, boolean rounded) {}

    /** A hole square to the axis, through one wall. */
    public record CrossHole(Length at, Length diameter) {}

    public Outline {
        outside = List.copyOf(outside);
        inside = List.copyOf(inside);
        threads = List.copyOf(threads);
        pockets = List.copyOf(pockets);
        crossHoles = List.copyOf(crossHoles);
        if (outside.size() < 2 || inside.size() == 1) {
            throw new IllegalArgumentException("A profile has at least two points");
        }
    }

    public Length length() {
        return outside.get(outside.size() - 1).at();
    }

    public Length greatestDiameter() {
        return Length.greatest(outside.stream().map(Mark::diameter).toList());
    }
}
