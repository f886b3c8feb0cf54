package org.tenthwise.model.plan;

import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;

/** A size of the work, brought in by cutting. */
public sealed interface CheckOfSize extends CheckOfDimension permits SizeCheck, OverWiresCheck {

    /** What kind of size it is cut as: a thread is cut like an outside diameter. */
    Feature feature();

    /** Whether a size out on the side where metal is left may be cut again. */
    boolean cutAgain();

    /** What the plan says of the next cut. */
    Cutting cutting();

    /** How the gauge touches the work. */
    default Contact contact() {
        return Contact.SQUARE;
    }

    /** Whether so much off the size is less than the tool can cut, as far as the plan says. */
    default boolean isTooLittleToCut(Length comesOff) {
        return feature().isTooLittle(comesOff, cutting().leastCut().map(Written::length));
    }

    /** A range is never cut again. */
    @Override
    default Optional<Limit> cutAgainBeyond() {
        return cutAgain() && combine() != Combine.RANGE ? Optional.of(feature().stillCutBeyond()) : Optional.empty();
    }

    @Override
    default Optional<CheckOfSize> asSize() {
        return Optional.of(this);
    }
}
