package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.compute.cutting.NextCut;
import org.tenthwise.model.compute.form.WallForm;
import org.tenthwise.model.compute.form.WallReading;
import org.tenthwise.model.compute.temperature.AtTwenty;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Judge;
import org.tenthwise.model.verdict.Standing;

/** A plain size: every reading as a size, combined, judged, and what the wall looks like. */
final class SizeSum {

    /** A change of size over the wall is worth a name from a tenth of the tolerance on; common practice. */
    private static final BigDecimal NOTICEABLE_SHARE = new BigDecimal("0.1");

    private SizeSum() {
    }

    static SizeFinding of(Plan plan, Step step, Check.Size check, Run.Pass pass) {
        Optional<Warmth> warmth = Warmth.of(plan, step, pass);
        Optional<AtTwenty> toTwenty = warmth.flatMap(Warmth::correction);
        List<Measured> measured = measure(check.slots(), pass).stream()
                .map(read -> toTwenty.map(read::corrected).orElse(read)).toList();
        int temperatures = warmth.map(Warmth::missing).orElse(0);
        int missing = check.slots().size() - measured.size() + temperatures;
        Judge judge = judge(check);
        Combined read = Combined.of(check.combine(), measured, missing, judge);
        Combined combined = (temperatures == 0 ? read : read.stillOpen()).provingNothingIf(Plausible.spoils(check, measured, warmth));
        Optional<NextCut> next = combined.verdict().standing() == Standing.CUT_AGAIN
                ? nextCut(check.feature(), check.limits(), measured) : Optional.empty();
        return new SizeFinding(step, check, measured, combined.value(), combined.deciding(), combined.past(),
                combined.lightCut(), next, WallForm.of(wall(measured), noticeable(check.limits())), combined.verdict(), missing, warmth);
    }

    static Judge judge(Check.Size check) {
        return new Judge(check.limits(), check.guardBand().length(),
                check.cutAgain() ? Optional.of(check.feature().stillCutBeyond()) : Optional.empty());
    }

    /** The readings of a pass that count, in slot order, each as the size it stands for. */
    static List<Measured> measure(List<Slot> slots, Run.Pass pass) {
        Map<String, Run.Reading> standing = pass.standing();
        List<Measured> measured = new ArrayList<>();
        for (Slot slot : slots) {
            Run.Reading reading = standing.get(slot.key());
            if (reading != null) {
                measured.add(Measured.of(reading, slot));
            }
        }
        return measured;
    }

    /**
     * The cut that brings the middle of the readings to the middle of the limits, so that a wall that is not quite even
     * keeps as much room on either side. None where that would mean putting metal on, nor where the readings differ by more
     * than the limits are apart: whatever is cut then, one place stays outside or goes past size.
     */
    static Optional<NextCut> nextCut(Feature feature, Limits limits, List<Measured> measured) {
        List<Length> sizes = measured.stream().map(Measured::value).toList();
        Length greatest = Length.greatest(sizes);
        Length least = Length.least(sizes);
        Length between = greatest.plus(least).half();
        Length aim = limits.middle();
        boolean metalLeft = feature == Feature.DIAMETER ? between.isAbove(aim) : between.isBelow(aim);
        boolean tooUneven = limits.width().filter(width -> greatest.minus(least).isAbove(width)).isPresent();
        return metalLeft && !tooUneven ? Optional.of(NextCut.of(feature, between, aim)) : Optional.empty();
    }

    private static Length noticeable(Limits limits) {
        return limits.width().map(width -> width.times(NOTICEABLE_SHARE)).orElse(Length.ZERO);
    }

    private static List<WallReading> wall(List<Measured> measured) {
        return measured.stream().map(m -> new WallReading(m.slot().place().depth().map(Written::length),
                m.slot().place().angle(), m.value())).toList();
    }
}
