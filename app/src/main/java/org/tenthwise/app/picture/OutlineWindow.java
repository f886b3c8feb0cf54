package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * A stretch of a part between two places along its axis, as an outline of its own that begins at zero.
 *
 * @param from where it is broken off, or the left end; {@code to} likewise at the right
 */
record OutlineWindow(Outline whole, Length from, Length to) {

    /** Of the stretch shown: an end that is nearer is shown as well. */
    private static final BigDecimal NEARLY = new BigDecimal("0.15");

    /**
     * The stretch that holds both places, with a share of it more at either side.
     *
     * @param least more at either side
     */
    static OutlineWindow around(Outline whole, Length one, Length other, Length least) {
        Length low = Length.least(List.of(one, other));
        Length high = Length.greatest(List.of(one, other));
        Length more = Length.greatest(List.of(least, high.minus(low).times(new BigDecimal("0.25"))));
        Length nearly = high.minus(low).plus(more).times(NEARLY);
        Length from = low.minus(more);
        Length to = high.plus(more);
        return new OutlineWindow(
                whole,
                from.isBelow(nearly) ? Length.ZERO : from,
                to.isAbove(whole.length().minus(nearly)) ? whole.length() : to);
    }

    boolean isBrokenAtLeft() {
        return from.signum() > 0;
    }

    boolean isBrokenAtRight() {
        return to.isBelow(whole.length());
    }

    /** A place along the axis of the whole, in the stretch. */
    Length place(Length at) {
        return at.minus(from);
    }

    Mark mark(Mark mark) {
        return new Mark(place(mark.at()), mark.diameter());
    }

    Outline outline() {
        return new Outline(
                profile(whole.outside()),
                profile(whole.inside()),
                whole.threads().stream()
                        .filter(thread -> overlaps(thread.from(), thread.to()))
                        .map(thread -> new Outline.ThreadedLength(
                                clipped(thread.from()), clipped(thread.to()), thread.pitch(), thread.depth()))
                        .toList(),
                whole.pockets().stream()
                        .filter(pocket -> overlaps(pocket.from(), pocket.to()))
                        .map(pocket -> new Outline.Pocket(
                                clipped(pocket.from()), clipped(pocket.to()), pocket.width(), pocket.rounded()))
                        .toList(),
                whole.crossHoles().stream()
                        .filter(hole -> hole.at().isAbove(from) && hole.at().isBelow(to))
                        .map(hole -> new Outline.CrossHole(place(hole.at()), hole.diameter()))
                        .toList());
    }

    private boolean overlaps(Length start, Length end) {
        return end.isAbove(from) && start.isBelow(to);
    }

    private Length clipped(Length at) {
        return place(Length.least(List.of(Length.greatest(List.of(at, from)), to)));
    }

    private List<Mark> profile(List<Mark> profile) {
        List<Mark> inside = new ArrayList<>();
        for (int i = 0; i < profile.size(); i++) {
            if (i > 0) {
                Mark before = profile.get(i - 1);
                Mark after = profile.get(i);
                Stream.of(from, to)
                        .filter(edge -> before.at().isBelow(edge) && after.at().isAbove(edge))
                        .forEach(edge -> inside.add(new Mark(edge, between(before, after, edge))));
            }
            Mark mark = profile.get(i);
            if (!mark.at().isBelow(from) && !mark.at().isAbove(to)) {
                inside.add(mark);
            }
        }
        return inside.size() < 2 ? List.of() : inside.stream().map(this::mark).toList();
    }

    private static Length between(Mark before, Mark after, Length at) {
        double share =
                Nanometres.of(at.minus(before.at())) / Nanometres.of(after.at().minus(before.at()));
        return before.diameter()
                .plus(Nanometres.round(Nanometres.of(after.diameter().minus(before.diameter())) * share));
    }
}
