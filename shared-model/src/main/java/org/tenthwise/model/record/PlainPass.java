package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limits;

/**
 * A measured pass that nobody needs to look at twice: at least a tenth of the tolerance inside its limits, its readings
 * no more than that apart. A tenth of the tolerance is what a gauge is usually allowed to be wrong by (the rule of ten,
 * common practice); of a run-out it is a tenth of its limit.
 */
public final class PlainPass {

    private static final BigDecimal TENTH = new BigDecimal("0.1");

    private PlainPass() {}

    /** Never where there are not two limits to be inside of, nor after a repair. */
    public static boolean is(Line line) {
        Finding finding = line.finding();
        return finding.verdict().passed()
                && !line.repaired()
                && !Plausible.spoils(finding)
                && tolerance(finding)
                        .map(width -> width.times(TENTH))
                        .filter(tenth -> isInsideBy(tenth, finding) && isEven(tenth, finding))
                        .isPresent();
    }

    private static Optional<Length> tolerance(Finding finding) {
        return finding.asTurn()
                .map(turn -> turn.check().limit().length())
                .or(() -> finding.step().limits().flatMap(Limits::width));
    }

    private static boolean isInsideBy(Length tenth, Finding finding) {
        return finding.verdict()
                .margin()
                .filter(margin -> margin.inside() && !margin.distance().isBelow(tenth))
                .isPresent();
    }

    /** A run-out is how far its readings are apart, and is judged by that. A radius and an angle are never even. */
    private static boolean isEven(Length tenth, Finding finding) {
        List<Length> sizes = finding.measured().stream().map(Measured::value).toList();
        return finding.asTurn().isPresent()
                || sizes.isEmpty()
                || sizes.stream().map(Length::kind).distinct().count() == 1
                        && !Length.greatest(sizes).minus(Length.least(sizes)).isAbove(tenth);
    }
}
