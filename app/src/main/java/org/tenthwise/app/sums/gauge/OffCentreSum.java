package org.tenthwise.app.sums.gauge;

import java.util.Set;
import org.tenthwise.app.sums.Answer;
import org.tenthwise.app.sums.Given;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.model.compute.comparison.OffCentre;

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
    public Answer of(Given given) {
        return Answer.in(given.inUnit())
                .length("reads_less", OffCentre.readsLess(given.positiveLength("diameter"), given.length("off_centre")))
                .note("Swing the gauge across the bore and take the greatest reading: there the points stand on the middle.")
                .on("geometry of a chord; common practice");
    }
}
