package org.tenthwise.model.compute.zone;

import java.math.BigDecimal;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/** The sizes the tables of ISO 286 are for here, and the micrometres they are written in. */
final class Sizes {

    private static final BigDecimal GREATEST = new BigDecimal("500");
    private static final BigDecimal THREE = new BigDecimal("3");

    private Sizes() {}

    /** The millimetres of a size the tables hold. */
    static BigDecimal inRange(Length nominal) {
        BigDecimal size = nominal.millimetres();
        if (size.signum() <= 0 || size.compareTo(GREATEST) > 0) {
            throw new Refused("model.sizes.size-iso", nominal);
        }
        return size;
    }

    static boolean isToOneMillimetre(BigDecimal size) {
        return size.compareTo(BigDecimal.ONE) <= 0;
    }

    static boolean isToThreeMillimetres(BigDecimal size) {
        return size.compareTo(THREE) <= 0;
    }

    static Length micrometres(BigDecimal micrometres) {
        return new Length(micrometres.movePointLeft(3));
    }
}
