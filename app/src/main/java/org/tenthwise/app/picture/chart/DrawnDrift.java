package org.tenthwise.app.picture.chart;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalInt;

/**
 * A drift that was shown, with how far it is known.
 *
 * @param at two places or more in the order of the parts, those to come last; a place beyond the last part is one to
 *     come
 * @param before place of the part before which it is measured again; absent where none is named
 * @param again what stands at that line
 * @param said what line and band are
 */
public record DrawnDrift(List<At> at, OptionalInt before, String again, String said) {

    /** The line at one part, and between which sizes it lies. */
    public record At(int place, BigDecimal line, BigDecimal least, BigDecimal most) {}

    public DrawnDrift {
        at = List.copyOf(at);
    }

    int lastPlace() {
        return at.get(at.size() - 1).place();
    }
}
