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
            BigDecimal x = read.get(slot + ".1").figure().subtract(demanded.nominal(slot));
            BigDecimal y = read.get((slot + 1) + ".1").figure().subtract(demanded.nominal(slot + 1));
            BigDecimal distance = x.multiply(x).add(y.multiply(y)).sqrt(MathContext.DECIMAL64);
            room.add(demanded.zone().add(bonus).subtract(distance).subtract(distance));
        }
        return Oracle.inside(room, Optional.of(BigDecimal.ZERO), Optional.empty(), true);
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
