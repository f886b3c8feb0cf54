package org.tenthwise.model.compute.thread;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;

/**
 * The least wire that clears the root of a thread and lies on its flanks.
 *
 * <p>The wire w with {@link RootClearance} = M(w) / 2 − w − root / 2 = 0, M by {@link MeasurementOverWires} at a given
 * pitch diameter. A larger wire lies higher, so the room grows with w, and halving between least and greatest wire of
 * {@link WireSizes} finds it.
 *
 * <p>A diameter, rounded up to 1 µm, or 0.0001 in where the thread is asked for in inches.
 *
 * <p>Where the least wire clears, that; where no wire clears that still lies on the flanks, none.
 *
 * <p>Source: geometry. The smaller the pitch diameter, the lower a wire lies.
 */
public final class ClearingWire {

    private static final int HALVINGS = 40;

    private ClearingWire() {}

    /**
     * @param pitchDiameter more than zero
     * @param root minor diameter
     * @param unit to be rounded up in
     */
    public static Optional<Length> of(ScrewThread thread, Length pitchDiameter, Length root, Unit unit) {
        WireSizes sizes = WireSizes.of(thread);
        Length low = sizes.least();
        Length high = sizes.greatest();
        for (int i = 0; i < HALVINGS; i++) {
            Length middle = low.plus(high).half();
            if (restsOnTheRoot(thread, pitchDiameter, root, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        if (!liesOnTheFlanks(thread, pitchDiameter, high)) {
            return Optional.empty();
        }
        BigDecimal up = high.in(unit).setScale(unit == Unit.INCH ? 4 : 3, RoundingMode.CEILING);
        return Optional.of(Length.of(up, unit)).filter(wire -> liesOnTheFlanks(thread, pitchDiameter, wire));
    }

    private static boolean restsOnTheRoot(ScrewThread thread, Length pitchDiameter, Length root, Length wire) {
        return liesOnTheFlanks(thread, pitchDiameter, wire)
                && RootClearance.of(new MeasurementOverWires(thread, wire).overWires(pitchDiameter), wire, root)
                                .signum()
                        <= 0;
    }

    private static boolean liesOnTheFlanks(ScrewThread thread, Length pitchDiameter, Length wire) {
        try {
            new MeasurementOverWires(thread, wire).overWires(pitchDiameter);
            return true;
        } catch (IllegalArgumentException tooThick) {
            return false;
        }
    }
}
