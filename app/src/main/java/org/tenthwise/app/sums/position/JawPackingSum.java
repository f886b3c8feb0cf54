package org.tenthwise.app.sums.position;

import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.eccentric.JawPacking;
import org.tenthwise.model.quantity.Length;

/** The packing under one jaw of a three-jaw chuck for work held off centre. */
public final class JawPackingSum implements Sum {

    public static final Input<Length> DIAMETER = Input.positiveLength("diameter");
    public static final Input<Length> OFFSET = Input.lengthNotNegative("offset");
    public static final Output<Length> PACKING = Output.length("packing");
    private static final SumDescription DESCRIPTION =
            SumDescription.named("jaw-packing").takes(DIAMETER, OFFSET).gives(PACKING);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Length diameter = given.get(DIAMETER);
        Length offset = given.get(OFFSET);
        return DESCRIPTION
                .in(given.inUnit())
                .put(PACKING, given.about(OFFSET, () -> JawPacking.of(diameter, offset)))
                .note("wide-jaws")
                .note("balance")
                .done();
    }
}
