package org.tenthwise.app.sums.cutting;

import java.math.BigDecimal;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.drilling.DrillPoint;
import org.tenthwise.model.quantity.Length;

/** What the point of a drill adds to the depth of the full diameter. */
public final class DrillPointSum implements Sum {

    private static final BigDecimal FLAT = BigDecimal.valueOf(180);

    public static final Input<Length> DIAMETER = Input.positiveLength("diameter");
    public static final Input<BigDecimal> POINT_ANGLE =
            Input.positive("point_angle").in(Quantity.ANGLE).that(angle -> angle.compareTo(FLAT) <= 0);
    public static final Output<Length> LENGTH = Output.length("length");
    private static final SumDescription DESCRIPTION =
            SumDescription.named("drill-point").takes(DIAMETER, POINT_ANGLE).gives(LENGTH);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        BigDecimal angle = given.get(POINT_ANGLE);
        return DESCRIPTION
                .in(given.inUnit())
                .put(LENGTH, DrillPoint.length(given.get(DIAMETER), angle))
                .done();
    }
}
