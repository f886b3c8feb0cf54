package org.tenthwise.model.record;

import java.util.List;
import org.tenthwise.model.quantity.Length;

/**
 * Where a figure is looked for.
 *
 * @param about what is expected
 * @param room how far from it a figure may lie
 * @param mistaken where a figure within that lies if it was read of something else
 * @param goesRound whether it is a direction, of which a full turn more or less is the same
 */
public record Expected(Length about, Length room, List<Expected> mistaken, boolean goesRound) {

    public Expected {
        mistaken = List.copyOf(mistaken);
    }

    public Expected(Length about, Length room, List<Expected> mistaken) {
        this(about, room, mistaken, false);
    }

    public Expected(Length about, Length room) {
        this(about, room, List.of());
    }

    static Expected ofADirection(Length about, Length room) {
        return new Expected(about, room, List.of(), true);
    }

    public boolean fits(Length figure) {
        Length off = figure.minus(about).abs();
        Length away = goesRound ? off.shortWayRound() : off;
        return !away.isAbove(room) && !isMistaken(figure);
    }

    /** Whether it lies where it would if something else had been read. */
    boolean isMistaken(Length figure) {
        return mistaken.stream().anyMatch(other -> other.fits(figure));
    }
}
