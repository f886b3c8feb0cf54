package org.tenthwise.model.worked;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.gear.InvoluteTeeth;
import org.tenthwise.model.compute.gear.OverPins;
import org.tenthwise.model.compute.gear.ToothSide;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;

/**
 * Involute teeth over two pins, or between two of internal ones: the measurement itself is judged, and the tooth
 * thickness that it is of told beside it.
 *
 * @param pin its diameter, by its certificate
 */
public record PinsInTeeth(InvoluteTeeth teeth, Written pin, ToothSide side) implements WorkedBy {

    @Override
    public WorkedWay way() {
        return WorkedWay.OVER_PINS;
    }

    @Override
    public List<WorkedReading> readings() {
        return List.of(side == ToothSide.EXTERNAL ? WorkedReading.OVER_PINS : WorkedReading.BETWEEN_PINS);
    }

    @Override
    public List<Given> given() {
        return List.of(
                Given.of(KnownSize.TEETH, teeth.teeth()),
                Given.of(KnownSize.MODULE, Written.of(teeth.module().in(pin.unit()), pin.unit())),
                Given.of(KnownSize.PRESSURE_ANGLE, Written.of(teeth.pressureAngle(), Unit.DEGREE)),
                Given.of(KnownSize.PIN, pin));
    }

    /** @throws IllegalArgumentException if no such teeth could be read so */
    @Override
    public Length of(List<Length> readings) {
        pins().thickness(readings.get(0));
        return readings.get(0);
    }

    @Override
    public Optional<Length> reading(Length size) {
        return Optional.of(size);
    }

    @Override
    public Optional<Length> beside(List<Length> readings) {
        return Optional.of(pins().thickness(readings.get(0)));
    }

    /** Teeth too thick lift the pins: over them it is too much, between them too little. */
    @Override
    public Optional<Limit> metalBeyond() {
        return Optional.of(side == ToothSide.EXTERNAL ? Limit.UPPER : Limit.LOWER);
    }

    private OverPins pins() {
        return new OverPins(teeth, pin.length(), side);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.pinsInTeeth(this);
    }
}
