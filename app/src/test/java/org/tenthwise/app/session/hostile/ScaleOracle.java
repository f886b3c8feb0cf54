package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * When a figure of a scale has passed: read at every place, and each inside its limits by the guard band. A roughness
 * by the 16 % rule: of all that were measured, none left out, none at all over 70 % of the limit, or of three none over
 * it, of six no more than one, of twelve no more than two.
 */
final class ScaleOracle {

    private static final BigDecimal LITTLE = new BigDecimal("0.7");

    private final Facts.Scale demanded;
    private final Map<String, Counting.Read> read;
    private final List<BigDecimal> values;

    ScaleOracle(Facts.Scale demanded, Map<String, Counting.Read> read) {
        this.demanded = demanded;
        this.read = read;
        this.values = read.values().stream().map(Counting.Read::figure).toList();
    }

    Oracle.Says passed() {
        if (demanded.bySteps()) {
            boolean gaps = IntStream.rangeClosed(1, read.size()).anyMatch(i -> !read.containsKey("1." + i));
            return Oracle.says(
                    !gaps && !values.isEmpty() && bySteps(demanded.upper().orElseThrow()));
        }
        return values.size() < demanded.places()
                ? Oracle.Says.NOT_PASSED
                : Oracle.inside(
                        values,
                        demanded.lower().map(demanded.guard()::add),
                        demanded.upper().map(upper -> upper.subtract(demanded.guard())),
                        false);
    }

    private boolean bySteps(BigDecimal limit) {
        BigDecimal little = limit.multiply(LITTLE);
        long over = values.stream().filter(value -> value.compareTo(limit) > 0).count();
        return values.stream().allMatch(value -> value.compareTo(little) <= 0)
                || values.size() >= 3 && over == 0
                || values.size() >= 6 && over <= 1
                || values.size() >= 12 && over <= 2;
    }
}
