package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** When angles are inside: as a protractor reads them, and over rollers. @param read the readings that count */
record AngleOracle(Map<String, Counting.Read> read) {

    Oracle.Says passed(Facts.Angle demanded) {
        List<BigDecimal> figures =
                read.values().stream().map(Counting.Read::figure).toList();
        return figures.size() < demanded.places()
                ? Oracle.Says.NOT_PASSED
                : Oracle.inside(
                        figures,
                        Optional.of(demanded.lower().add(demanded.guard())),
                        Optional.of(demanded.upper().subtract(demanded.guard())),
                        false);
    }

    /** tan(half the angle) = (high − low) / (2 · 40), place by place; the other way round it is no such taper. */
    Oracle.Says passed(Facts.Taper demanded) {
        List<BigDecimal> minutes = new ArrayList<>();
        for (int place = 1; place <= demanded.places(); place++) {
            Counting.Read low = read.get(place + ".1");
            Counting.Read high = read.get(place + ".2");
            if (low == null || high == null) {
                return Oracle.Says.NOT_PASSED;
            }
            double rise = high.figure().subtract(low.figure()).doubleValue();
            minutes.add(BigDecimal.valueOf(120 * Math.toDegrees(Math.atan(rise / 80))));
        }
        return Oracle.inside(
                minutes,
                Optional.of(demanded.lower().add(demanded.guard())),
                Optional.of(demanded.upper().subtract(demanded.guard())),
                true);
    }
}
