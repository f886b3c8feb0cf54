package org.tenthwise.model.plan;

import java.util.Optional;

/**
 * What the drawing says of what a step looks after, and where it stands there. None of it changes how it is judged.
 *
 * @param balloon its number on the drawing; absent where the plan does not say
 * @param sheet of the drawing, as it is numbered there; absent where the plan does not say
 * @param zone of the sheet, {@code C4}; absent where the plan does not say
 * @param requirement words of the drawing; empty if the drawing says nothing
 * @param designator how the drawing marks it, {@code key} or {@code critical}, as it stands there; absent where it does
 *     not
 * @param instances how often it is there
 * @param onPage where its balloon is on the file of the drawing; absent where the plan does not say
 */
public record OnDrawing(
        Optional<BalloonNumber> balloon,
        Optional<String> sheet,
        Optional<String> zone,
        String requirement,
        Optional<String> designator,
        Instances instances,
        Optional<PageSpot> onPage) {

    /** Of a step of which the drawing says nothing. */
    public static final OnDrawing NOTHING = words("");

    /** With nothing said but the words of the drawing. */
    public static OnDrawing words(String requirement) {
        return new OnDrawing(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                requirement,
                Optional.empty(),
                Instances.ONE,
                Optional.empty());
    }
}
