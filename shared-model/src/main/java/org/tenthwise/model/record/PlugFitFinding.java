package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.fit.Clearance;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.verdict.Verdict;

/**
 * A plug in its bore, measured and felt.
 *
 * @param bore sizes of the bore, from the step that measured it; empty before that, and while a figure there is far off
 * @param plug the plug as measured
 * @param farOff those of them that no such plug can have
 * @param clearance absent until both are measured
 * @param feel what the hand found; absent until it was asked
 * @param contradiction where hand and gauges cannot both be right
 */
public record PlugFitFinding(
        Step step,
        PlugFitCheck check,
        List<Length> bore,
        List<Measured> plug,
        List<Measured> farOff,
        Optional<Clearance> clearance,
        Optional<Answer> feel,
        Optional<Contradiction> contradiction,
        Verdict verdict,
        int missing)
        implements Finding {

    /** How hand and gauges can contradict each other. */
    public enum Contradiction {
        /**
         * It went in, yet by the gauges every bore reading is smaller than the plug; or it would pass as going in
         * freely, yet one of them is.
         */
        ENTERS_YET_MEASURES_TIGHT,
        /** It did not go in, yet by the gauges every bore reading is bigger than the plug. */
        STICKS_YET_MEASURES_CLEAR
    }

    public PlugFitFinding {
        bore = List.copyOf(bore);
        plug = List.copyOf(plug);
        farOff = List.copyOf(farOff);
    }

    /** The plug; the bore was measured at a step of its own. */
    @Override
    public List<Measured> measured() {
        return plug;
    }

    @Override
    public Optional<Length> value() {
        return Optional.empty();
    }

    @Override
    public boolean isOfOneSize() {
        return false;
    }

    @Override
    public boolean awaitsAnother() {
        return bore.isEmpty();
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.plugFit(this);
    }

    @Override
    public boolean isFeltOtherwise() {
        return feel.filter(felt -> felt != check.feel().answer()).isPresent();
    }
}
