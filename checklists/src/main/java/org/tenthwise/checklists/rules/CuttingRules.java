package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;

/**
 * What the next cut aims at, how deep it must be, and what can be typed for it: at the head, by operation and by step;
 * the step wins.
 */
final class CuttingRules {

    private static final String AIM = "aim";
    private static final String LEAST_CUT = "least_cut";
    private static final String OFFSET_STEP = "offset_step";

    private CuttingRules() {}

    /** For the whole plan, whose sizes have nothing else in common. */
    static Optional<Aim> ofPlan(TableKeys plan) {
        return plan.ifAny(AIM, plan::text).flatMap(word -> {
            Optional<Aim> aim = Aim.ofKey(word);
            if (aim.isEmpty()) {
                plan.problem(AIM, "plan.cutting.aim-of-plan", word);
            }
            return aim;
        });
    }

    static Cutting ofOperation(TableKeys operation, Unit unit) {
        return new Cutting(
                Optional.empty(),
                operation.ifAny(LEAST_CUT, key -> operation.size(key, unit)),
                operation.ifAny(OFFSET_STEP, key -> operation.size(key, unit)));
    }

    /**
     * @param cutAgain whether a wrong size of the step can be cut again at all
     * @param usual what holds where the step says nothing
     */
    static Cutting ofStep(
            TableKeys keys, Unit unit, boolean cutAgain, Optional<Limits> limits, Written guardBand, Cutting usual) {
        Optional<Aim> aim = keys.ifAny(AIM, key -> keys.isText(key) ? word(keys) : size(keys, unit, limits, guardBand));
        Optional<Written> leastCut = keys.ifAny(LEAST_CUT, key -> keys.size(key, unit));
        Optional<Written> step = keys.ifAny(OFFSET_STEP, key -> keys.size(key, unit));
        step.ifPresent(one -> limits.flatMap(Limits::width)
                .filter(one.length()::isAbove)
                .ifPresent(width -> keys.problem(OFFSET_STEP, "plan.cutting.coarse-step", one)));
        if (!cutAgain) {
            Stream.of(AIM, LEAST_CUT, OFFSET_STEP)
                    .filter(keys::has)
                    .forEach(key -> keys.problem(key, "plan.cutting.nothing-cut", key));
            return Cutting.UNSAID;
        }
        return new Cutting(aim.or(usual::aim), leastCut.or(usual::leastCut), step.or(usual::offsetStep));
    }

    private static Optional<Aim> word(TableKeys keys) {
        return keys.text(AIM).flatMap(word -> {
            Optional<Aim> aim = Aim.ofKey(word);
            if (aim.isEmpty()) {
                keys.problem(AIM, "plan.cutting.aim", word);
            }
            return aim;
        });
    }

    private static Optional<Aim> size(TableKeys keys, Unit unit, Optional<Limits> limits, Written guardBand) {
        Optional<Written> size = keys.figure(AIM, unit);
        size.filter(aim -> limits.filter(allowed -> !isInside(aim.length(), allowed, guardBand.length()))
                        .isPresent())
                .ifPresent(aim -> keys.problem(
                        AIM,
                        guardBand.figure().signum() == 0 ? "plan.cutting.aim-outside" : "plan.cutting.aim-guarded",
                        aim,
                        guardBand));
        limits.filter(only -> only.width().isEmpty())
                .filter(only -> size.filter(aim -> isOn(aim.length(), only)).isPresent())
                .ifPresent(only -> keys.problem(AIM, "plan.cutting.aim-on-limit", size.orElseThrow()));
        return size.map(Aim.Size::new);
    }

    private static boolean isOn(Length aim, Limits limits) {
        return Stream.of(Limit.values())
                .flatMap(which -> limits.at(which).stream())
                .map(Written::length)
                .anyMatch(aim::equals);
    }

    private static boolean isInside(Length aim, Limits limits, Length guardBand) {
        return List.of(Limit.values()).stream().allMatch(which -> limits.at(which)
                .map(Written::length)
                .map(limit -> which == Limit.LOWER
                        ? !aim.isBelow(limit.plus(guardBand))
                        : !aim.isAbove(limit.minus(guardBand)))
                .orElse(true));
    }
}
