package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * When an axis is where it should be: twice its distance from its true place is inside the zone, with what the smallest
 * size of a bore that has passed is over its least.
 */
final class PositionOracle {

    private PositionOracle() {}

    static Oracle.Says passed(Facts.Position demanded, Map<String, Counting.Read> read, BigDecimal bonus) {
        if (read.size() < demanded.slots()) {
            return Oracle.Says.NOT_PASSED;
        }
        List<BigDecimal> room = new ArrayList<>();
        for (int slot = 1; slot < demanded.slots(); slot += 2) {
            BigDecimal first = read.get(slot + ".1").figure();
            BigDecimal second = read.get((slot + 1) + ".1").figure();
            BigDecimal x = (demanded.polar() ? along(first, second, 0) : first).subtract(demanded.nominal(slot));
            BigDecimal y = (demanded.polar() ? along(first, second, 90) : second).subtract(demanded.nominal(slot + 1));
            if (demanded.polar() && first.signum() <= 0) {
                return Oracle.Says.NOT_PASSED;
            }
            BigDecimal distance = x.multiply(x).add(y.multiply(y)).sqrt(MathContext.DECIMAL64);
            room.add(demanded.zone().add(bonus).subtract(distance).subtract(distance));
        }
        return Oracle.inside(room, Optional.of(BigDecimal.ZERO), Optional.empty(), true);
    }

    /** What a radius reaches along an axis at so many degrees. @param minutes of the angle it was read at */
    private static BigDecimal along(BigDecimal radius, BigDecimal minutes, int axis) {
        double between = Math.toRadians(minutes.doubleValue() / 60 - axis);
        return BigDecimal.valueOf(radius.doubleValue() * Math.cos(between));
    }

    /** @param smallest size read anywhere in the bore */
    static BigDecimal bonus(Facts.Size size, BigDecimal smallest) {
        BigDecimal over = smallest.subtract(size.about()).max(BigDecimal.ZERO);
        return size.upper()
                .map(upper -> upper.subtract(size.about()))
                .map(over::min)
                .orElse(over);
    }
}
