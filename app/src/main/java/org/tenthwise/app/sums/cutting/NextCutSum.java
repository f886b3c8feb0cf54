package org.tenthwise.app.sums.cutting;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.cutting.CutState;
import org.tenthwise.model.compute.cutting.NextCut;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;

/**
 * What to type into the offset register, and whether there is metal left for another cut: the way from one size to the
 * aim, or one even cut that brings every size in.
 */
final class NextCutSum implements Sum {

    @Override
    public String name() {
        return "next-cut";
    }

    @Override
    public Set<String> keys() {
        Set<String> keys = new HashSet<>(Set.of("side", "lower", "upper", "aim", "measured", "register"));
        keys.addAll(EvenCutAnswer.KEYS);
        return keys;
    }

    @Override
    public SumResult of(SumInput given) {
        return EvenCutAnswer.isAsked(given) ? new EvenCutAnswer(given).answer() : ofOneSize(given);
    }

    private static SumResult ofOneSize(SumInput given) {
        Feature side = CutInputs.side(given);
        Length lower = CutInputs.lower(given);
        Length upper = CutInputs.upper(given);
        Length aim = CutInputs.aim(given);
        CutState ofTheAim = CutState.of(side, lower, upper, aim);
        if (ofTheAim == CutState.PAST_SIZE) {
            throw new CannotAnswer(
                    "aim",
                    "aim is %s: it lies past the limits, %s to %s"
                            .formatted(given.text("aim"), given.text("lower"), given.text("upper")));
        }
        Length measured = given.length("measured");
        NextCut cut = NextCut.of(side, measured, aim);
        CutState state = CutState.of(side, lower, upper, measured);
        SumResult.Writing answer = SumResult.in(given.inUnit())
                .length("offset_change", CutInputs.register(given).counts(cut.changeOnDiameter()))
                .length("stock_left", cut.stockLeft())
                .word("state", state.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .note("The change is for an X offset that counts away from the axis, outside and inside alike; "
                        + "stock_left is on diameter.");
        if (ofTheAim == CutState.CUT_AGAIN) {
            answer.note("The aim leaves metal on for a later cut: a part at the aim is not in size yet.");
        }
        if (state == CutState.IN_SIZE && cut.changeOnDiameter().signum() != 0) {
            answer.note("In size: the change is for the next part, not for another cut on this one.");
        } else if (state == CutState.PAST_SIZE) {
            answer.note("Past size: no cut brings this part back; the change is for the next one.");
        }
        return answer.on("Change = aim − measured on diameter, common practice; a size on a limit is in size");
    }
}
