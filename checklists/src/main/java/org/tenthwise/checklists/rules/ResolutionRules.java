package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/**
 * How finely a gauge is read, against the tolerance. A reading lies up to half a step from the size: a step of a fifth
 * of the tolerance leaves a tenth of it in doubt at either limit, and a coarser one more.
 *
 * <p>Source: the rule of ten, at the least of five, common practice.
 */
final class ResolutionRules {

    private static final BigDecimal FIVE = new BigDecimal(5);

    private ResolutionRules() {}

    /** A gauge whose step is more than a fifth of the tolerance is refused; one that nobody knows is not. */
    static void judge(TableKeys keys, Check check) {
        check.means()
                .flatMap(Check.Means::resolution)
                .filter(step -> isCoarser(step, FIVE, check))
                .ifPresent(step -> keys.problemUnlessKept(
                        "gauge_kind",
                        "plan.means.coarse",
                        check.means().orElseThrow().kind().key(),
                        step,
                        shown(tolerance(check).orElseThrow(), step)));
    }

    /** Whether so many steps are more than the tolerance; never with one limit. */
    static boolean isCoarser(Written step, BigDecimal times, Check check) {
        return tolerance(check)
                .filter(width -> step.length().kind().equals(width.kind())
                        && step.length().times(times).isAbove(width))
                .isPresent();
    }

    private static Optional<Length> tolerance(Check check) {
        return check.asTurn().map(RunOutCheck::limit).map(Written::length).or(() -> check.judgedAgainst()
                .flatMap(Limits::width));
    }

    private static Written shown(Length width, Written like) {
        return Written.of(width.in(like.unit()), like.unit());
    }
}
