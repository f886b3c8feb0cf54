package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/** A size of the work, read at places, set against limits and brought in by cutting. */
public sealed interface CheckOfSize extends Check permits SizeCheck, OverWiresCheck {

    /** What kind of size it is cut as: a thread is cut like an outside diameter. */
    Feature feature();

    Limits limits();

    /** Where it is read. */
    List<Place> places();

    /** Readings at every place, one or more. */
    int readingsEach();

    Combine combine();

    /** Whether a size out on the side where metal is left may be cut again. */
    boolean cutAgain();

    /** Taken off inside both limits; zero for none. */
    Written guardBand();

    Means with();

    /** What the plan says of the next cut. */
    Cutting cutting();

    /** The modifier of the drawing; absent for two-point sizes that it does not mention, and in older plans. */
    Optional<SizeModifier> drawingSays();

    /** The limits of one size; absent for a range of readings, whose limits say nothing of any of them. */
    default Optional<Limits> limitsOfASize() {
        return combine() == Combine.RANGE ? Optional.empty() : Optional.of(limits());
    }

    /** How the gauge touches the work. */
    default Contact contact() {
        return Contact.SQUARE;
    }

    /** Whether so much off the size is less than the tool can cut, as far as the plan says. */
    default boolean isTooLittleToCut(Length comesOff) {
        return feature().isTooLittle(comesOff, cutting().leastCut().map(Written::length));
    }

    /** Whether the drawing makes one size of all readings, and binds that alone by the limits. */
    default boolean isOne() {
        return drawingSays().filter(modifier -> modifier != SizeModifier.LP).isPresent();
    }

    @Override
    default List<Slot> slots() {
        return Slot.at(places(), readingsEach());
    }

    @Override
    default List<Question> questions() {
        return List.of();
    }

    @Override
    default Optional<Means> means() {
        return Optional.of(with());
    }

    @Override
    default List<Integer> restsOn() {
        return List.of();
    }

    @Override
    default Optional<Limits> judgedAgainst() {
        return Optional.of(limits());
    }

    @Override
    default Optional<String> judgedBy() {
        return Optional.of(combine().key());
    }

    @Override
    default Optional<CheckOfSize> asSize() {
        return Optional.of(this);
    }

    @Override
    default Optional<RunOutCheck> asTurn() {
        return Optional.empty();
    }
}
