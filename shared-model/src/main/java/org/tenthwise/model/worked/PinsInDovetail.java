package org.tenthwise.model.worked;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.dovetail.DovetailByPins;
import org.tenthwise.model.compute.dovetail.DovetailSide;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Refused;

/**
 * The width of a dovetail between its sharp corners, over two pins (male) or between them (female).
 *
 * @param angle between flank and base
 * @param pin its diameter, by its certificate
 * @param height of the flank, that the pin must not stand over
 */
public record PinsInDovetail(Written angle, Written pin, DovetailSide side, Written height) implements WorkedBy {

    /** @throws IllegalArgumentException if there is no such dovetail, or the pin would stand over its flank */
    public PinsInDovetail {
        DovetailByPins dovetail = new DovetailByPins(angle.length().in(Unit.DEGREE), pin.length(), side);
        if (!dovetail.contactHeight().isBelow(height.length())) {
            throw new Refused(
                    "model.dovetail.pin-above-flank", pin.length(), dovetail.contactHeight(), height.length());
        }
    }

    @Override
    public WorkedWay way() {
        return WorkedWay.DOVETAIL;
    }

    @Override
    public List<WorkedReading> readings() {
        return List.of(side == DovetailSide.MALE ? WorkedReading.OVER_PINS : WorkedReading.BETWEEN_PINS);
    }

    @Override
    public List<Given> given() {
        return List.of(
                Given.of(KnownSize.ANGLE, angle), Given.of(KnownSize.PIN, pin), Given.of(KnownSize.HEIGHT, height));
    }

    @Override
    public Length of(List<Length> readings) {
        return dovetail().width(readings.get(0));
    }

    @Override
    public Optional<Length> reading(Length size) {
        return Optional.of(dovetail().measured(size));
    }

    private DovetailByPins dovetail() {
        return new DovetailByPins(angle.length().in(Unit.DEGREE), pin.length(), side);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.dovetail(this);
    }
}
