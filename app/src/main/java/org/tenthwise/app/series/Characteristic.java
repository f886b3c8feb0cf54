package org.tenthwise.app.series;

import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.Optional;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;
import org.tenthwise.model.plan.BalloonNumber;

/**
 * A characteristic of a part number, followed over runs and issues of its plan. It is named as the part made last names
 * it.
 *
 * @param balloon number on the drawing; absent where the plan names none
 * @param step number of the step
 * @param designator on the drawing; absent where it has none
 */
public record Characteristic(
        String part, Optional<String> balloon, int step, String name, Optional<String> designator) {

    private static final BalloonNumber NONE = BalloonNumber.of(0);

    /** In the order of the drawing; what has no balloon comes last, in the order of work. */
    static final Comparator<Characteristic> OF_DRAWING = Comparator.comparing(
                    (Characteristic one) -> one.balloon().isEmpty())
            .thenComparing(one -> one.balloon().map(BalloonNumber::new), Comparator.comparing(one -> one.orElse(NONE)))
            .thenComparing(Characteristic::step);

    /** What is looked for, no wider than where this one stands: at its balloon, or at its step. */
    public Sought in(Sought sought) {
        if (balloon.isPresent()) {
            return hasPlainLetters(balloon.get()) ? sought.with(SoughtBy.BALLOON, balloon.get()) : sought;
        }
        return sought.of(SoughtBy.CHARACTERISTIC).isPresent()
                ? sought
                : sought.with(SoughtBy.CHARACTERISTIC, String.valueOf(step));
    }

    /** A store takes capitals and small letters beyond these for different ones. */
    private static boolean hasPlainLetters(String number) {
        return StandardCharsets.US_ASCII.newEncoder().canEncode(number);
    }

    /** Its number: that of the balloon, or of the step. */
    public String number() {
        return balloon.orElseGet(() -> String.valueOf(step));
    }
}
