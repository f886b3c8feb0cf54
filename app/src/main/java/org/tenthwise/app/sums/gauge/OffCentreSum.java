package org.tenthwise.app.sums.gauge;

import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.comparison.OffCentre;
import org.tenthwise.model.quantity.Length;

/** A bore gauge whose points stand on a chord. */
final class OffCentreSum implements Sum {

    @Override
    public String name() {
        return "off-centre";
    }

    @Override
    public Set<String> keys() {
        return Set.of("diameter", "off_centre");
    }

    @Override
    public SumResult of(SumInput given) {
        Length diameter = given.positiveLength("diameter");
        Length offCentre = given.length("off_centre");
        if (!OffCentre.touches(diameter, offCentre)) {
            throw new CannotAnswer(
                    "off_centre",
                    "off_centre is %s: points that far off the middle do not touch a bore of %s"
                            .formatted(given.text("off_centre"), given.text("diameter")));
        }
        return SumResult.in(given.inUnit())
                .length("reads_less", OffCentre.readsLess(diameter, offCentre))
                .note("Swing the gauge across the bore and take the greatest reading: there the points stand on "
                        + "the middle.")
                .on("geometry of a chord; common practice");
    }
}
