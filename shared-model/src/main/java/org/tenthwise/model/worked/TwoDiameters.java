package org.tenthwise.model.worked;

import java.util.List;
import org.tenthwise.model.compute.taper.Taper;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Written;

/**
 * The included angle of a taper, by its diameter at two sections.
 *
 * @param apart along the axis from one section to the other
 */
public record TwoDiameters(Written apart) implements WorkedBy {

    @Override
    public WorkedWay way() {
        return WorkedWay.TWO_DIAMETERS;
    }

    @Override
    public List<WorkedReading> readings() {
        return List.of(WorkedReading.LARGE, WorkedReading.SMALL);
    }

    @Override
    public List<Given> given() {
        return List.of(Given.of(KnownSize.APART, apart));
    }

    @Override
    public QuantityKind gives() {
        return QuantityKind.ANGLE;
    }

    @Override
    public Length of(List<Length> readings) {
        return WorkedBy.angle(Taper.ofDiameters(readings.get(0), readings.get(1), apart.length())
                .included());
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.twoDiameters(this);
    }
}
