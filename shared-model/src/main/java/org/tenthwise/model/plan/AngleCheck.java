package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/**
 * An angle of the work: of a taper, a chamfer, a dovetail, a face. No even cut brings it in, and heat does not change
 * it.
 *
 * @param limits in a unit of angle, as {@code guardBand}
 */
public record AngleCheck(
        Limits limits,
        List<Place> places,
        int readingsEach,
        Combine combine,
        Written guardBand,
        Means with,
        Optional<SizeModifier> drawingSays)
        implements CheckOfDimension {

    /** The word plans and files for programs have for it. */
    public static final String KEY = "angle";

    public AngleCheck {
        places = List.copyOf(places);
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.angle(this);
    }
}
