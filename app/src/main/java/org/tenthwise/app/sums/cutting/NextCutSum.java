package org.tenthwise.app.sums.cutting;

import java.util.List;
import java.util.Locale;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
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
public final class NextCutSum implements Sum {

    public static final String NAME = "next-cut";
    public static final Input<Length> MEASURED = Input.length("measured");
    public static final Input<List<Length>> SIZES = Input.lengths("sizes");
    public static final Input<Length> AIM = Input.length("aim").usually();
    public static final Input<Length> GUARD_BAND =
            Input.lengthNotNegative("guard_band").usually("0");
    public static final Input<Length> LEAST_CUT =
            Input.positiveLength("least_cut").optional();
    public static final Input<Length> OFFSET_STEP =
            Input.positiveLength("offset_step").optional();
    public static final Input<CombinedSizes> COMBINE =
            Input.choice("combine", CombinedSizes.values()).usually("`each`");
    public static final Output<Length> OFFSET_CHANGE =
            Output.length("offset_change").withSign().sometimes();
    public static final Output<Length> STOCK_LEFT = Output.length("stock_left").sometimes();
    public static final Output<Length> SAFE_CUT = Output.length("safe_cut").sometimes();
    public static final Output<String> STATE = Output.word("state", "cut-again", "in-size", "past-size", "uneven");
    public static final Output<String> REASON =
            Output.word("reason", "uneven", "below-least-cut", "past-size").sometimes();
    static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(CutInputs.SIDE, CutInputs.LOWER, CutInputs.UPPER, AIM)
            .takesOneOf(MEASURED, SIZES)
            .takes(CutInputs.REGISTER, GUARD_BAND, LEAST_CUT, OFFSET_STEP, COMBINE)
            .gives(OFFSET_CHANGE, STOCK_LEFT, SAFE_CUT, STATE, REASON)
            .on("basis", "even");

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        return EvenCutAnswer.isAsked(given) ? new EvenCutAnswer(given).answer() : ofOneSize(given);
    }

    private static SumResult ofOneSize(SumInput given) {
        Feature side = given.get(CutInputs.SIDE);
        Length lower = CutInputs.lower(given);
        Length upper = given.get(CutInputs.UPPER);
        Length aim = given.find(AIM).orElseGet(() -> lower.plus(upper).half());
        CutState ofTheAim = CutState.of(side, lower, upper, aim);
        if (ofTheAim == CutState.PAST_SIZE) {
            throw new CannotAnswer(
                    AIM, "past", given.text(AIM), given.text(CutInputs.LOWER), given.text(CutInputs.UPPER));
        }
        Length measured = given.get(MEASURED);
        NextCut cut = NextCut.of(side, measured, aim);
        CutState state = CutState.of(side, lower, upper, measured);
        SumResult.Writing answer = DESCRIPTION
                .in(given.inUnit())
                .put(OFFSET_CHANGE, given.get(CutInputs.REGISTER).counts(cut.changeOnDiameter()))
                .put(STOCK_LEFT, cut.stockLeft())
                .put(STATE, state.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .note("register");
        if (ofTheAim == CutState.CUT_AGAIN) {
            answer.note("aim-leaves");
        }
        if (state == CutState.IN_SIZE && cut.changeOnDiameter().signum() != 0) {
            answer.note("in-size");
        } else if (state == CutState.PAST_SIZE) {
            answer.note("past-size");
        }
        return answer.done();
    }
}
