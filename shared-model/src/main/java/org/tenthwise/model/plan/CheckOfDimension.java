package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;

/** A dimension of the drawing, read at places and set against limits. */
public sealed interface CheckOfDimension extends Check
        permits CheckOfSize, AngleCheck, IndicatedCheck, ScaleCheck, WorkedCheck {

    Limits limits();

    /** Where it is read. */
    List<Place> places();

    /** Readings at every place, one or more. */
    int readingsEach();

    Combine combine();

    /** Taken off inside both limits; zero for none. */
    Written guardBand();

    Means with();

    /** The modifier of the drawing; absent for two-point sizes that it does not mention, and in older plans. */
    Optional<SizeModifier> drawingSays();

    /** The limit beyond which it may be cut again; absent where it may not. */
    default Optional<Limit> cutAgainBeyond() {
        return Optional.empty();
    }

    /** The limits of one size; absent for a range of readings, whose limits say nothing of any of them. */
    default Optional<Limits> limitsOfASize() {
        return combine().isRange() ? Optional.empty() : Optional.of(limits());
    }

    @Override
    default boolean isBestAtZero() {
        return combine().isRange();
    }

    /** It as what an indicator shows over a sweep; absent for what is none. */
    default Optional<IndicatedCheck> asIndicated() {
        return Optional.empty();
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
    default Optional<CheckOfDimension> asDimension() {
        return Optional.of(this);
    }
}
