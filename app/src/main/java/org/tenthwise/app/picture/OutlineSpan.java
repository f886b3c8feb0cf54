package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * Two places along the axis of a part that a length is measured between.
 *
 * @param feature the place the plan marks; {@code reference} the other
 */
record OutlineSpan(Length feature, Length reference) {

    /** A length that is further off what the outline has is none of it. */
    private static final BigDecimal NEAR = new BigDecimal("0.01");

    private static final Box SHEET = new Box(0, 0, 1000, 1000);

    /** The two places about {@code length} apart, one of them at the mark; absent where the outline has none. */
    static Optional<OutlineSpan> of(Mark mark, Outline outline, Length length) {
        List<Length> edges = edges(outline);
        Length off = length.abs().times(NEAR);
        return starts(mark, outline, edges).stream()
                .flatMap(start ->
                        edges.stream().filter(edge -> !edge.equals(start)).map(edge -> new OutlineSpan(start, edge)))
                .filter(span -> !span.off(length).isAbove(off))
                .min(Comparator.comparing((OutlineSpan span) -> span.off(length))
                        .thenComparing(span -> span.isFromAnEnd(outline), Comparator.reverseOrder())
                        .thenComparing(span -> span.feature().minus(mark.at()).abs()));
    }

    /** Whether it is measured from an end of the part to something within it. */
    private boolean isFromAnEnd(Outline outline) {
        return isEnd(reference, outline) && !isEnd(feature, outline);
    }

    private static boolean isEnd(Length at, Outline outline) {
        return at.signum() == 0 || at.equals(outline.length());
    }

    private Length off(Length length) {
        return feature.minus(reference).abs().minus(length).abs();
    }

    /** Ends of the feature a mark sits on. */
    private static List<Length> starts(Mark mark, Outline outline, List<Length> edges) {
        HalfSection section = new HalfSection(outline, SHEET);
        Box bounds =
                new Shape.Polyline(OutlineFeature.at(mark, outline, section).line(), true).bounds();
        return edges.stream()
                .filter(edge -> Stream.of(bounds.left(), bounds.right())
                        .anyMatch(x -> Math.abs(x - section.x(edge)) < 0.01 * Nanometres.of(outline.length())))
                .toList();
    }

    private static List<Length> edges(Outline outline) {
        List<Length> edges = new ArrayList<>();
        outline.outside().forEach(mark -> edges.add(mark.at()));
        outline.inside().forEach(mark -> edges.add(mark.at()));
        outline.threads().forEach(thread -> edges.addAll(List.of(thread.from(), thread.to())));
        outline.pockets().forEach(pocket -> edges.addAll(List.of(pocket.from(), pocket.to())));
        outline.crossHoles()
                .forEach(hole -> edges.addAll(List.of(
                        hole.at().minus(hole.diameter().half()),
                        hole.at().plus(hole.diameter().half()))));
        return edges.stream().distinct().sorted().toList();
    }
}
