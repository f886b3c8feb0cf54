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
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/** One even cut for every size, or why there is none and what may come off at the most. */
final class EvenCutAnswer {

    static final String BASIS =
            "One even cut, never more than the size with the least metal left can give: common practice; a size "
                    + "on a limit is in size, guard band as in ISO 14253-1";

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
        limits = Limits.between(written(CutInputs.LOWER), written(CutInputs.UPPER));
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
            answer.note("One size was given: the rest of the wall is taken to be as large.");
        } else if (bound.size() < sizes.size()) {
            answer.note(
                    "The limits bind the %s of the sizes, %s, as the drawing must say; single sizes may lie outside."
                            .formatted(given.text(COMBINE), plain(bound.get(0))));
        }
        return answer.on(BASIS);
    }

    private void offered(SumResult.Writing answer, EvenCut.Offered cut) {
        answer.note("The change is as the register counts, for an X offset that counts away from the axis, outside and "
                + "inside alike.");
        answer.note("It takes for granted that as much comes off as is asked: the same edge, about the same depth of "
                + "cut. With a fresh edge or a much lighter cut take half, measure, take the rest.");
        Length ends = Length.greatest(bound).plus(Length.least(bound)).half().plus(cut.change());
        if (!ends.equals(aim)) {
            answer.note("%s comes to %s, not to the aim, %s: a limit or the step of the register keeps it from there."
                    .formatted(bound.size() == 1 ? "The size" : "The middle of the sizes", plain(ends), plain(aim)));
        }
        if (isInside()) {
            answer.note(
                    isProven()
                            ? "In size: the cut is not needed."
                            : "In size, but within the guard band: a light cut, or a better gauge.");
        }
        if (!given.has(OFFSET_STEP)) {
            answer.note(
                    "No offset_step was given: if the register cannot hold all places, round so that metal is left.");
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
                            case BELOW_LEAST_CUT -> "cut-again";
                            case PAST_SIZE -> "past-size";
                        });
        answer.put(REASON, no.reason().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        answer.note(
                switch (no.reason()) {
                    case UNEVEN ->
                        (bound.size() == 1
                                        ? "No step of the register brings it in between the guard bands."
                                        : "Uneven by %s: no even cut brings every size in."
                                                .formatted(plain(
                                                        Length.greatest(bound).minus(Length.least(bound)))))
                                + safe(no);
                    case BELOW_LEAST_CUT ->
                        inside && !given.has(LEAST_CUT)
                                ? "In size, and nothing is left to the aim: no cut."
                                : "Below the least cut: a spring pass at the same offset, a fresh edge, hone, or "
                                        + "leave it as it is and have it signed for.";
                    case PAST_SIZE -> "Past size: no cut brings it back. Nothing more may come off.";
                });
        answer.note(
                "The safe cut is on diameter, whatever the register counts: by it no size passes its limit less the "
                        + "guard band.");
    }

    private String safe(EvenCut.NoCut no) {
        return no.safe()
                .map(safe -> safe.signum() == 0
                        ? " Nothing more may come off."
                        : " At most %s may come off without a size passing its limit%s."
                                .formatted(
                                        plain(safe),
                                        side.isTooLittle(safe, given.find(LEAST_CUT))
                                                ? ": too little for this tool to cut"
                                                : ""))
                .orElse("");
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
            throw new CannotAnswer(
                    SIZES,
                    given.has(SIZES)
                            ? "sizes are given and measured is %s: one of them is enough"
                                    .formatted(given.text(MEASURED))
                            : "sizes is missing: give it, or measured");
        }
        return given.has(SIZES) ? given.get(SIZES) : List.of(given.get(MEASURED));
    }

    private Length guardBand() {
        Length band = given.get(GUARD_BAND);
        if (band.plus(band).isAbove(limits.width().orElseThrow())) {
            throw new CannotAnswer(
                    GUARD_BAND,
                    "guard_band is %s: from both limits it leaves nothing between them"
                            .formatted(given.text(GUARD_BAND)));
        }
        return band;
    }

    private Length aim() {
        Aim wanted = Aim.ofKey(given.find(AIM_IN_WORDS).orElse(Aim.ByLimits.MIDDLE.key()))
                .orElseGet(() -> new Aim.Size(written(AIM)));
        Length size = wanted.of(limits, side.stillCutBeyond());
        if (CutState.of(side, given.get(CutInputs.LOWER), given.get(CutInputs.UPPER), size) != CutState.IN_SIZE) {
            throw new CannotAnswer(
                    AIM,
                    "aim is %s: it lies outside the limits, %s to %s"
                            .formatted(given.text(AIM), given.text(CutInputs.LOWER), given.text(CutInputs.UPPER)));
        }
        return size;
    }

    private Written written(Input<Length> size) {
        return Written.of(given.figure(size), given.inUnit());
    }

    private String plain(Length length) {
        return length.in(given.inUnit()).toPlainString();
    }
}
