package org.tenthwise.model.worked;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.gear.InvoluteTeeth;
import org.tenthwise.model.compute.gear.OverTeeth;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;

/**
 * Involute teeth by the span over several of them: the span itself is judged, and the tooth thickness told beside it.
 *
 * @param over so many teeth
 * @param unit the module is written in
 */
public record OverTeethSpan(InvoluteTeeth teeth, int over, Unit unit) implements WorkedBy {

    /** @throws IllegalArgumentException if there are not so many teeth */
    public OverTeethSpan {
        new OverTeeth(teeth, over);
    }

    @Override
    public WorkedWay way() {
        return WorkedWay.SPAN;
    }

    @Override
    public List<WorkedReading> readings() {
        return List.of(WorkedReading.SPAN);
    }

    @Override
    public List<Given> given() {
        return List.of(
                Given.of(KnownSize.TEETH, teeth.teeth()),
                Given.of(KnownSize.MODULE, Written.of(teeth.module().in(unit), unit)),
                Given.of(KnownSize.PRESSURE_ANGLE, Written.of(teeth.pressureAngle(), Unit.DEGREE)),
                Given.of(KnownSize.OVER, over));
    }

    /** @throws IllegalArgumentException if no such teeth could be read so */
    @Override
    public Length of(List<Length> readings) {
        OverTeeth several = new OverTeeth(teeth, over);
        several.span(several.thickness(readings.get(0)));
        return readings.get(0);
    }

    @Override
    public Optional<Length> reading(Length size) {
        return Optional.of(size);
    }

    @Override
    public Optional<Length> beside(List<Length> readings) {
        return Optional.of(new OverTeeth(teeth, over).thickness(readings.get(0)));
    }

    @Override
    public Optional<Limit> metalBeyond() {
        return Optional.of(Limit.UPPER);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.span(this);
    }
}
