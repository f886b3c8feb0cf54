package org.tenthwise.model.worked;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.groove.VeeByPin;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/**
 * The width of a vee groove at its face, by how far a pin in it stands out.
 *
 * @param angle from flank to flank
 * @param pin its diameter, by its certificate
 */
public record PinInVee(Written angle, Written pin) implements WorkedBy {

    /** @throws IllegalArgumentException if there is no such groove */
    public PinInVee {
        new VeeByPin(angle.length().in(Unit.DEGREE), pin.length());
    }

    @Override
    public WorkedWay way() {
        return WorkedWay.VEE;
    }

    @Override
    public List<WorkedReading> readings() {
        return List.of(WorkedReading.ABOVE);
    }

    @Override
    public List<Given> given() {
        return List.of(Given.of(KnownSize.ANGLE, angle), Given.of(KnownSize.PIN, pin));
    }

    @Override
    public Length of(List<Length> readings) {
        return vee().width(readings.get(0));
    }

    @Override
    public Optional<Length> reading(Length size) {
        return Optional.of(vee().above(size));
    }

    private VeeByPin vee() {
        return new VeeByPin(angle.length().in(Unit.DEGREE), pin.length());
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.vee(this);
    }
}
