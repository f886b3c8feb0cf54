package org.tenthwise.app.sums.gauge;

import java.math.BigDecimal;
import java.util.Set;
import java.util.stream.Collectors;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.comparison.Lobes;
import org.tenthwise.model.quantity.Unit;

/** What a gauge with two or three points sees of out-of-round work. */
final class LobesSum implements Sum {

    private static final int MOST_LOBES = 1000;
    private static final BigDecimal TWO_POINTS = BigDecimal.valueOf(180);

    @Override
    public String name() {
        return "lobes";
    }

    @Override
    public Set<String> keys() {
        return Set.of("lobes", "v_angle");
    }

    @Override
    public SumResult of(SumInput given) {
        int number = given.whole("lobes", 2, MOST_LOBES);
        BigDecimal angle = given.figure("v_angle");
        Lobes lobes = new Lobes(angle);
        SumResult.Writing answer =
                SumResult.in(given.unit().orElse(Unit.MILLIMETRE)).figure("magnification", lobes.magnification(number));
        String gauge = angle.compareTo(TWO_POINTS) == 0
                ? "Two points"
                : "A vee of %s degrees".formatted(angle.toPlainString());
        if (lobes.misses(number)) {
            answer.note("%s does not show %d lobes: turn the work against a fixed centre, or use another gauge."
                    .formatted(gauge.replace("Two points", "A gauge of two points"), number));
        }
        if (!lobes.missed().isEmpty()) {
            answer.note("%s: of two to nine lobes, %s do not show."
                    .formatted(
                            gauge, lobes.missed().stream().map(String::valueOf).collect(Collectors.joining(", "))));
        }
        return answer.on("Journal of the Japan Society of Precision Engineering 43 (514), 1977, p. 1167; ISO 4292");
    }
}
