package org.tenthwise.app.sums.profile;

import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.polygon.AcrossCorners;
import org.tenthwise.model.quantity.Length;

/** Across the corners of a hexagon, a square and the like, from across the flats. */
public final class AcrossCornersSum implements Sum {

    public static final String NAME = "across-corners";

    private static final int FEWEST = 4;
    private static final int MOST = 1000;

    public static final Input<Integer> SIDES = Input.whole("sides", FEWEST, MOST);
    public static final Input<Length> ACROSS_FLATS = Input.positiveLength("across_flats");
    public static final Output<Length> ACROSS_CORNERS = Output.length("across_corners");
    private static final SumDescription DESCRIPTION =
            SumDescription.named(NAME).takes(SIDES, ACROSS_FLATS).gives(ACROSS_CORNERS);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        int sides = given.get(SIDES);
        Length flats = given.get(ACROSS_FLATS);
        return DESCRIPTION
                .in(given.inUnit())
                .put(ACROSS_CORNERS, given.about(SIDES, () -> AcrossCorners.of(sides, flats)))
                .note("bar")
                .done();
    }
}
