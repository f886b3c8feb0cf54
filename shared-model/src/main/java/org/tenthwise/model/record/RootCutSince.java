package org.tenthwise.model.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.OverWiresFinding.OverWiresReading;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/**
 * The root of a thread after what was cut over wires since it was measured: a tool that is fed in radially takes as
 * much off it, on diameter, as off the flanks.
 *
 * <p>What came off is told by the pitch diameters before those cuts and now, by the place where most did, and never
 * less than zero; for a cut without readings before it, by what was asked. Nobody can tell what rework took off that
 * was not read before.
 *
 * <p>Source: common practice.
 */
final class RootCutSince {

    private final Plan plan;
    private final Step step;
    private final OverWiresCheck check;
    private final Run run;

    RootCutSince(Plan plan, Step step, OverWiresCheck check, Run run) {
        this.plan = plan;
        this.step = step;
        this.check = check;
        this.run = run;
    }

    /** Whether anything was cut, or reworked, over wires after one of the roots was measured; not where none is. */
    boolean isSo(List<Measured> roots, Pass pass) {
        List<Pass> passes = run.passes(step).subList(0, pass.number());
        return roots.stream().anyMatch(root -> !cutsSince(root, passes).isEmpty());
    }

    /**
     * The least root there can be in a pass over wires; absent where nobody can tell.
     *
     * @param roots as measured, at least one
     * @param now pitch diameters of the pass
     */
    Optional<Length> now(List<Measured> roots, Pass pass, List<Measured> now) {
        Length highest = roots.stream()
                .map(Measured::value)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        List<Pass> passes = run.passes(step).subList(0, pass.number());
        List<Optional<Length>> left = roots.stream()
                .map(root -> cameOff(cutsSince(root, passes), passes, highest, bySlot(now))
                        .map(root.value()::minus))
                .toList();
        return left.stream().allMatch(Optional::isPresent)
                ? left.stream().map(Optional::orElseThrow).min(Comparator.naturalOrder())
                : Optional.empty();
    }

    /** The passes, each by its place, that were begun for a cut or for rework after a root was read. */
    private static List<Integer> cutsSince(Measured root, List<Pass> passes) {
        List<Integer> cuts = new ArrayList<>();
        for (int i = 1; i < passes.size(); i++) {
            long begun = passes.get(i - 1).ended().orElseThrow().by().seq();
            if (takesMetal(passes.get(i)) && begun > root.reading().entry().seq()) {
                cuts.add(i);
            }
        }
        return cuts;
    }

    private static boolean takesMetal(Pass pass) {
        return pass.why()
                .filter(why -> why == Why.CUT || why == Why.REWORKED || why == Why.REPAIRED)
                .isPresent();
    }

    private Optional<Length> cameOff(List<Integer> cuts, List<Pass> passes, Length root, Map<Slot, Length> now) {
        if (cuts.isEmpty()) {
            return Optional.of(Length.ZERO);
        }
        return byReadings(cuts.get(0), passes, root, now)
                .or(() -> asked(passes.get(cuts.get(0) - 1), passes.get(cuts.get(0)))
                        .flatMap(asked -> cameOff(cuts.subList(1, cuts.size()), passes, root, now)
                                .map(asked::plus)));
    }

    /** By what was read last before a cut and after the one before that. */
    private Optional<Length> byReadings(int cut, List<Pass> passes, Length root, Map<Slot, Length> now) {
        for (int i = cut - 1; i >= 0; i--) {
            Map<Slot, Length> before = telling(passes.get(i), root);
            Optional<Length> most = before.keySet().stream()
                    .filter(now::containsKey)
                    .map(slot -> before.get(slot).minus(now.get(slot)))
                    .max(Comparator.naturalOrder());
            if (most.isPresent()) {
                return most.map(off -> off.signum() < 0 ? Length.ZERO : off);
            }
            if (takesMetal(passes.get(i))) {
                break;
            }
        }
        return Optional.empty();
    }

    /**
     * The pitch diameters of a pass; none where a figure is far off, a temperature is missing or a wire lay on the
     * root.
     */
    private Map<Slot, Length> telling(Pass pass, Length root) {
        Optional<TemperatureEffect> warmth = TemperatureEffect.of(plan, step, pass);
        List<OverWiresReading> readings =
                OverWiresAssessment.readings(check, pass, warmth.flatMap(TemperatureEffect::correction));
        List<Measured> measured =
                readings.stream().map(OverWiresReading::measured).toList();
        boolean telling = warmth.filter(heat -> heat.missing() > 0).isEmpty()
                && !Plausible.spoils(check, measured, warmth)
                && OverWiresAssessment.room(readings, root)
                        .filter(room -> room.signum() > 0)
                        .isPresent();
        return telling ? bySlot(measured) : Map.of();
    }

    private static Map<Slot, Length> bySlot(List<Measured> measured) {
        return measured.stream().collect(Collectors.toMap(Measured::slot, Measured::value));
    }

    /** What was asked for before a cut; absent for rework, and where nothing was. */
    private Optional<Length> asked(Pass before, Pass after) {
        return after.isAfterACut()
                ? Assessment.proposedBefore(before.ended().orElseThrow().by(), plan, step, run)
                        .flatMap(proposal -> proposal.comesOff(check))
                : Optional.empty();
    }
}
