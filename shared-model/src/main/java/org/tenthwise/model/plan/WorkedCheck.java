package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.worked.WorkedBy;
import org.tenthwise.model.worked.WorkedReading;

/**
 * A size or an angle worked out of what is read at each place. Of teeth over pins, between them or by a span it tells
 * whether metal is left; of all else nobody can tell that here, so it is never cut again by what it says.
 *
 * @param by how it is worked out
 * @param limits of what comes out, as {@code guardBand}
 * @param ofAReading how sure one reading is; absent if the plan names none
 */
public record WorkedCheck(
        WorkedBy by,
        Limits limits,
        List<Place> places,
        Combine combine,
        Written guardBand,
        Means with,
        Optional<Uncertainty> ofAReading,
        Optional<SizeModifier> drawingSays)
        implements CheckOfDimension {

    /** The word plans and files for programs have for it. */
    public static final String KEY = "worked";

    public WorkedCheck {
        places = List.copyOf(places);
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public int readingsEach() {
        return 1;
    }

    @Override
    public Optional<WorkedCheck> asWorked() {
        return Optional.of(this);
    }

    @Override
    public Optional<Limit> cutAgainBeyond() {
        return by.metalBeyond();
    }

    @Override
    public boolean readsBelowZero(Slot slot) {
        return by.readings().stream().anyMatch(WorkedReading::canBeBelowZero);
    }

    /** An angle does not feel heat: what grows all over keeps its shape. */
    @Override
    public Optional<Limits> underHeat() {
        return by.gives().equals(QuantityKind.LENGTH) ? limitsOfASize() : Optional.empty();
    }

    /** All that is read at a place, then the next. */
    @Override
    public List<Slot> slots() {
        return IntStream.range(0, places.size())
                .mapToObj(this::slotsAt)
                .flatMap(List::stream)
                .toList();
    }

    /** The slots of one place, in the order they are read. */
    public List<Slot> slotsAt(int place) {
        List<WorkedReading> readings = by.readings();
        return IntStream.range(0, readings.size())
                .mapToObj(i -> new Slot((place + 1) + "." + (i + 1), named(places.get(place), readings.get(i)), 1))
                .toList();
    }

    private static Place named(Place place, WorkedReading reading) {
        return new Place(place.name() + ": " + reading.key(), place.depth(), place.angle());
    }

    /** Where a slot is. */
    public Place place(Slot slot) {
        return places.get(Integer.parseInt(slot.key().split("\\.")[0]) - 1);
    }

    /** What is read in a slot. */
    public WorkedReading reading(Slot slot) {
        return by.readings().get(Integer.parseInt(slot.key().split("\\.")[1]) - 1);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.worked(this);
    }
}
