package org.tenthwise.model.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.FeatureOfSize;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.tolerance.MaterialModifier;

/**
 * Where the axes of holes or pins lie to their true places, in a round zone. X and Y, or a radius and the angle of its
 * direction, are read from the datums, hole by hole, and at both ends of each where the plan names two. Nothing can be
 * cut to bring an axis in.
 *
 * @param zone its diameter; zero only with a modifier
 * @param modifier whether the size adds to the zone
 * @param feature what is placed
 * @param sizeStep number of the step that measures its size; there with a modifier, absent without
 * @param by what is read of each
 * @param holes the true places, one at least, named where there are several; read by radius and angle, none on the axis
 * @param ends names of the ends it is read at; empty where it is read at one
 * @param with its uncertainty is that of a length
 * @param ofDirection how sure an angle is; absent if the plan names none, and where none is read
 */
public record PositionCheck(
        Written zone,
        MaterialModifier modifier,
        FeatureOfSize feature,
        Optional<Integer> sizeStep,
        PositionReading by,
        List<TruePlace> holes,
        List<String> ends,
        Means with,
        Optional<Uncertainty> ofDirection)
        implements Check {

    /** The word plans and files for programs have for it. */
    public static final String KEY = "position";

    /** @throws IllegalArgumentException if a step for the size is there without a modifier, or the other way round */
    public PositionCheck {
        holes = List.copyOf(holes);
        ends = List.copyOf(ends);
        if (sizeStep.isPresent() != (modifier != MaterialModifier.NONE)) {
            throw new IllegalArgumentException("A size belongs to a modifier: " + modifier + ", " + sizeStep);
        }
        if (by == PositionReading.POLAR && holes.stream().anyMatch(TruePlace::isOnTheAxis)) {
            throw new IllegalArgumentException("On the axis there is no direction: " + holes);
        }
    }

    /**
     * An axis at one end of it, with the room for both of its readings.
     *
     * @param end absent where it is read at one
     */
    public record AxisAt(TruePlace hole, Optional<String> end, PositionReading by, Slot first, Slot second) {

        /** What the axis is called there; empty where there is one, read at one end. */
        public List<String> called() {
            return Stream.of(hole.name(), end).flatMap(Optional::stream).toList();
        }

        /** The basic dimension that belongs to one of its slots; absent for a slot of another point. */
        public Optional<Written> nominal(Slot slot) {
            boolean polar = by == PositionReading.POLAR;
            return slot.equals(first)
                    ? Optional.of(polar ? hole.radius() : hole.x())
                    : slot.equals(second) ? Optional.of(polar ? hole.direction() : hole.y()) : Optional.empty();
        }
    }

    /** Hole by hole, at each its ends in their order. */
    public List<AxisAt> points() {
        List<AxisAt> points = new ArrayList<>();
        for (TruePlace hole : holes) {
            List<Optional<String>> at = ends.isEmpty()
                    ? List.of(Optional.empty())
                    : ends.stream().map(Optional::of).toList();
            for (Optional<String> end : at) {
                int first = 2 * points.size() + 1;
                points.add(new AxisAt(
                        hole, end, by, slot(hole, end, by.first(), first), slot(hole, end, by.second(), first + 1)));
            }
        }
        return points;
    }

    private static Slot slot(TruePlace hole, Optional<String> end, String axis, int number) {
        String name = Stream.of(hole.name(), end, Optional.of(axis))
                .flatMap(Optional::stream)
                .reduce((one, next) -> one + ", " + next)
                .orElseThrow();
        return new Slot(number + ".1", Place.named(name), 1);
    }

    /** The basic dimension that a slot is read against. */
    public Written nominal(Slot slot) {
        return points().stream()
                .flatMap(point -> point.nominal(slot).stream())
                .findFirst()
                .orElseThrow();
    }

    /** Whether the size of the feature adds to the zone. */
    public boolean hasBonus() {
        return sizeStep.isPresent();
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public boolean isBestAtZero() {
        return true;
    }

    @Override
    public List<Slot> slots() {
        return points().stream()
                .flatMap(point -> Stream.of(point.first(), point.second()))
                .toList();
    }

    @Override
    public int readsAlike() {
        return holes.size();
    }

    /** No axis lies at a radius below zero, whatever it was read from. */
    @Override
    public boolean readsBelowZero(Slot slot) {
        return by == PositionReading.X_AND_Y || isOfADirection(slot);
    }

    @Override
    public Optional<Unit> unit(Slot slot) {
        return isOfADirection(slot) ? Optional.of(PositionReading.OF_A_DIRECTION) : Optional.empty();
    }

    private boolean isOfADirection(Slot slot) {
        return by == PositionReading.POLAR
                && points().stream().map(AxisAt::second).anyMatch(slot::equals);
    }

    @Override
    public Optional<Means> means() {
        return Optional.of(with);
    }

    @Override
    public List<Integer> restsOn() {
        return sizeStep.stream().toList();
    }

    @Override
    public Optional<Limits> judgedAgainst() {
        return Optional.of(Limits.atMost(zone));
    }

    @Override
    public Optional<String> judgedBy() {
        return Optional.of("deviation");
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.position(this);
    }
}
