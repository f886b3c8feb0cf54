package org.tenthwise.app.sums.cutting;

import java.math.BigDecimal;
import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.drilling.DrillPoint;

/** What the point of a drill adds to the depth of the full diameter. */
final class DrillPointSum implements Sum {

    private static final BigDecimal FLAT = BigDecimal.valueOf(180);

    @Override
    public String name() {
        return "drill-point";
    }

    @Override
    public Set<String> keys() {
        return Set.of("diameter", "point_angle");
    }

    @Override
    public SumResult of(SumInput given) {
        BigDecimal angle = given.positive("point_angle");
        if (angle.compareTo(FLAT) > 0) {
            throw new CannotAnswer(
                    "point_angle",
                    "point_angle is %s: it must not be more than 180 degrees".formatted(given.text("point_angle")));
        }
        return SumResult.in(given.inUnit())
                .length("length", DrillPoint.length(given.positiveLength("diameter"), angle))
                .on("Geometry of a cone");
    }
}
