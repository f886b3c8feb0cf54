package org.tenthwise.app.sums.profile;

import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.keyway.Keyseat;
import org.tenthwise.model.quantity.Length;

/** How deep a keyway for a key half sunk at its side wall is, from the far side of shaft and hub. */
public final class KeyseatSum implements Sum {

    public static final String NAME = "keyseat";

    public static final Input<Length> DIAMETER = Input.positiveLength("diameter");
    public static final Input<Length> WIDTH = Input.positiveLength("width");
    public static final Input<Length> HEIGHT = Input.positiveLength("height");
    public static final Output<Length> S = Output.length("s");
    public static final Output<Length> T_PARALLEL = Output.length("t_parallel");
    public static final Output<Length> T_TAPER = Output.length("t_taper");
    public static final Output<Length> CREST = Output.length("crest");
    private static final SumDescription DESCRIPTION =
            SumDescription.named(NAME).takes(DIAMETER, WIDTH, HEIGHT).gives(S, T_PARALLEL, T_TAPER, CREST);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Length diameter = given.get(DIAMETER);
        Length width = given.get(WIDTH);
        Length height = given.get(HEIGHT);
        Keyseat keyseat = given.about(WIDTH, () -> new Keyseat(diameter, width));
        return DESCRIPTION
                .in(given.inUnit())
                .put(S, given.about(HEIGHT, () -> keyseat.farSide(height)))
                .put(T_PARALLEL, keyseat.hubParallel(height))
                .put(T_TAPER, keyseat.hubTaper(height))
                .put(CREST, keyseat.crest())
                .note("inch-standard")
                .done();
    }
}
