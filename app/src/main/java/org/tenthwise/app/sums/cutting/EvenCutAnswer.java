package org.tenthwise.app.sums.cutting;

import static org.tenthwise.app.sums.cutting.NextCutSum.AIM;
import static org.tenthwise.app.sums.cutting.NextCutSum.COMBINE;
import static org.tenthwise.app.sums.cutting.NextCutSum.GUARD_BAND;
import static org.tenthwise.app.sums.cutting.NextCutSum.LEAST_CUT;
import static org.tenthwise.app.sums.cutting.NextCutSum.MEASURED;
import static org.tenthwise.app.sums.cutting.NextCutSum.OFFSET_CHANGE;
import static org.tenthwise.app.sums.cutting.NextCutSum.OFFSET_STEP;
import static org.tenthwise.app.sums.cutting.NextCutSum.REASON;
import static org.tenthwise.app.sums.cutting.NextCutSum.SAFE_CUT;
import static org.tenthwise.app.sums.cutting.NextCutSum.SIZES;
import static org.tenthwise.app.sums.cutting.NextCutSum.STATE;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.cutting.CutState;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Message;

/** One even cut for every size, or why there is none and what may come off at the most. */
final class EvenCutAnswer {

    /** Each of them asks for an even cut. */
    private static final List<Input<?>> ASKING = List.of(SIZES, GUARD_BAND, LEAST_CUT, OFFSET_STEP, COMBINE);

    private static final Input<String> AIM_IN_WORDS = Input.name(AIM.key());
    /** The last place an answer is written to. */
    private static final Map<Unit, BigDecimal> FINEST =
            Map.of(Unit.MILLIMETRE, new BigDecimal("0.000001"), Unit.INCH, new BigDecimal("0.00000001"));

    private final SumInput given;
    private final Feature side;
    private final Limits limits;
    private final Register register;
    private final List<Length> sizes;
    private final List<Length> bound;
    private final Length guardBand;
    private final Length aim;

    EvenCutAnswer(SumInput given) {
        this.given = given;
        side = given.get(CutInputs.SIDE);
        CutInputs.lower(given);
        limits = Limits.between(given.written(CutInputs.LOWER), given.written(CutInputs.UPPER));
        guardBand = given.has(GUARD_BAND) ? guardBand() : Length.ZERO;
        aim = aim();
        register = given.get(CutInputs.REGISTER);
        sizes = sizes();
        bound = given.find(COMBINE).orElse(CombinedSizes.EACH).of(sizes);
    }

    static boolean isAsked(SumInput given) {
        return ASKING.stream().anyMatch(given::has)
                || given.find(AIM_IN_WORDS).flatMap(Aim::ofKey).isPresent();
    }

    SumResult answer() {
        Optional<Length> step = Optional.of(register.onDiameter(
                given.has(OFFSET_STEP)
                        ? given.get(OFFSET_STEP)
                        : Length.of(FINEST.get(given.inUnit()), given.inUnit())));
        EvenCut cut = EvenCut.of(side, limits, guardBand, aim, given.find(LEAST_CUT), step, bound);
        SumResult.Writing answer = NextCutSum.DESCRIPTION.in(given.inUnit());
        if (cut instanceof EvenCut.Offered offered) {
            answer.put(OFFSET_CHANGE, register.counts(offered.change()))
                    .put(STATE, isInside() ? "in-size" : "cut-again");
            offered(answer, offered);
        } else {
            refused(answer, (EvenCut.NoCut) cut);
        }
        if (sizes.size() == 1) {
            answer.note("one-size");
        } else if (bound.size() < sizes.size()) {
            answer.note("combined", given.get(COMBINE), plain(bound.get(0)));
        }
        return answer.on("even");
    }

    private void offered(SumResult.Writing answer, EvenCut.Offered cut) {
        answer.note("even-register");
        answer.note("as-asked");
        Length ends = Length.greatest(bound).plus(Length.least(bound)).half().plus(cut.change());
        if (!ends.equals(aim)) {
            answer.note(bound.size() == 1 ? "size-ends" : "middle-ends", plain(ends), plain(aim));
        }
        if (isInside()) {
            answer.note(isProven() ? "no-need" : "within-band");
        }
        if (!given.has(OFFSET_STEP)) {
            answer.note("no-step");
        }
    }

    private void refused(SumResult.Writing answer, EvenCut.NoCut no) {
        boolean inside = isInside();
        no.safe().ifPresent(safe -> answer.put(SAFE_CUT, safe));
        answer.put(
                STATE,
                inside
                        ? "in-size"
                        : switch (no.reason()) {
                            case UNEVEN -> "uneven";
                            case BELOW_LEAST_CUT, NO_AIM -> "cut-again";
                            case PAST_SIZE -> "past-size";
                        });
        answer.put(REASON, no.reason().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        switch (no.reason()) {
            case UNEVEN -> answer.note(uneven(no));
            case BELOW_LEAST_CUT -> answer.note(inside && !given.has(LEAST_CUT) ? "at-aim" : belowLeastCut(no));
            case PAST_SIZE -> answer.note("past");
            case NO_AIM -> {} // both limits are given here
        }
        answer.note("safe");
    }

    /** Nobody knows here what a spring pass takes; it is thought to take all but the least cut. */
    private String belowLeastCut(EvenCut.NoCut no) {
        boolean tooLittle = no.safe()
                .filter(safe -> safe.signum() == 0 || side.isTooLittle(safe, given.find(LEAST_CUT)))
                .isPresent();
        return tooLittle ? "below-least-cut" : "below-least-cut-spring";
    }

    private Message uneven(EvenCut.NoCut no) {
        Message why = bound.size() == 1
                ? said("no-step-in")
                : said("uneven", plain(Length.greatest(bound).minus(Length.least(bound))));
        return no.safe().map(safe -> why.and(mostOff(safe))).orElse(why);
    }

    private Message mostOff(Length safe) {
        if (safe.signum() == 0) {
            return said("nothing-more");
        }
        return said(
                side.isTooLittle(safe, given.find(LEAST_CUT)) ? "too-little" : "at-most",
                plain(safe, RoundingMode.DOWN));
    }

    private static Message said(String which, Object... values) {
        return NextCutSum.DESCRIPTION.said(which, values);
    }

    private boolean isInside() {
        return bound.stream()
                .allMatch(size -> CutState.of(side, given.get(CutInputs.LOWER), given.get(CutInputs.UPPER), size)
                        == CutState.IN_SIZE);
    }

    private boolean isProven() {
        return bound.stream()
                .noneMatch(size -> size.minus(guardBand).isBelow(given.get(CutInputs.LOWER))
                        || size.plus(guardBand).isAbove(given.get(CutInputs.UPPER)));
    }

    private List<Length> sizes() {
        if (given.has(SIZES) == given.has(MEASURED)) {
            throw given.has(SIZES)
                    ? new CannotAnswer(SIZES, "both", given.text(MEASURED))
                    : new CannotAnswer(SIZES, "neither");
        }
        return given.has(SIZES) ? given.get(SIZES) : List.of(given.get(MEASURED));
    }

    private Length guardBand() {
        Length band = given.get(GUARD_BAND);
        if (band.plus(band).isAbove(limits.width().orElseThrow())) {
            throw new CannotAnswer(GUARD_BAND, "leaves-zero", given.text(GUARD_BAND));
        }
        return band;
    }

    private Length aim() {
        Aim wanted = Aim.ofKey(given.find(AIM_IN_WORDS).orElse(Aim.ByLimits.MIDDLE.key()))
                .orElseGet(() -> new Aim.Size(given.written(AIM)));
        Length size = wanted.of(limits, side.stillCutBeyond());
        if (CutState.of(side, given.get(CutInputs.LOWER), given.get(CutInputs.UPPER), size) != CutState.IN_SIZE) {
            throw new CannotAnswer(
                    AIM, "outside", given.text(AIM), given.text(CutInputs.LOWER), given.text(CutInputs.UPPER));
        }
        return size;
    }

    /** To as many places as an answer has. */
    private BigDecimal plain(Length length) {
        return plain(length, RoundingMode.HALF_EVEN);
    }

    private BigDecimal plain(Length length, RoundingMode way) {
        BigDecimal figure = length.in(given.inUnit());
        return figure.setScale(
                Math.min(figure.scale(), FINEST.get(given.inUnit()).scale()), way);
    }
}
