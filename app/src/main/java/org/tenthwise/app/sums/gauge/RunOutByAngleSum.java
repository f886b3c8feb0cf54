package org.tenthwise.app.sums.gauge;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.roundness.CircleFit;
import org.tenthwise.model.compute.roundness.FullIndicatorMovement;
import org.tenthwise.model.compute.roundness.JawMove;
import org.tenthwise.model.compute.roundness.JawMoves;
import org.tenthwise.model.compute.roundness.Opposites;
import org.tenthwise.model.compute.roundness.Rechucking;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Message;

/** Run-out, how far off centre the work sits, and what to do at the jaws. */
public final class RunOutByAngleSum implements Sum {

    public static final String NAME = "run-out";
    public static final Input<List<BigDecimal>> ANGLES = Input.figures("angles").in(Quantity.ANGLE);
    public static final Input<List<Length>> READINGS = Input.lengths("readings");
    public static final Input<List<BigDecimal>> JAWS =
            Input.figures("jaws").in(Quantity.ANGLE).optional();
    public static final Output<Length> TIR = Output.length("tir");
    public static final Output<Length> MEAN = Output.length("mean").withSign();
    public static final Output<Length> COS_PART = Output.length("cos_part").withSign();
    public static final Output<Length> SIN_PART = Output.length("sin_part").withSign();
    public static final Output<Length> ECCENTRICITY = Output.length("eccentricity");
    public static final Output<BigDecimal> HIGH_AT = Output.exact("high_at").in(Quantity.ANGLE);
    public static final Output<Length> RESIDUAL = Output.length("residual");
    public static final Output<Length> ECCENTRIC_RUN_OUT = Output.length("eccentric_run_out");
    public static final Output<Length> OVALITY = Output.length("ovality").sometimes();
    public static final Output<Length> OPPOSITES_DIFFER =
            Output.length("opposites_differ").sometimes();
    public static final Output<List<Length>> JAW_MOVES =
            Output.lengths("jaw_moves").sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(ANGLES, READINGS, JAWS)
            .gives(
                    TIR,
                    MEAN,
                    COS_PART,
                    SIN_PART,
                    ECCENTRICITY,
                    HIGH_AT,
                    RESIDUAL,
                    ECCENTRIC_RUN_OUT,
                    OVALITY,
                    OPPOSITES_DIFFER,
                    JAW_MOVES);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        List<BigDecimal> angles = given.get(ANGLES);
        List<Length> readings = given.get(READINGS);
        if (angles.size() != readings.size()) {
            throw new CannotAnswer(READINGS, "not-as-many", angles.size(), readings.size());
        }
        CircleFit.refusal(angles).ifPresent(refusal -> {
            throw new CannotAnswer(ANGLES, Message.ofValue("given.angles", refusal));
        });
        CircleFit fit = CircleFit.of(angles, readings);
        Length movement = FullIndicatorMovement.of(readings);
        SumResult.Writing answer = DESCRIPTION
                .in(given.inUnit())
                .put(TIR, movement)
                .put(MEAN, fit.mean())
                .put(COS_PART, fit.cosPart())
                .put(SIN_PART, fit.sinPart())
                .put(ECCENTRICITY, fit.eccentricity())
                .put(HIGH_AT, fit.highAtDegrees())
                .put(RESIDUAL, fit.residual())
                .put(ECCENTRIC_RUN_OUT, fit.eccentricRunOut());
        Optional<Opposites> opposites = Opposites.of(angles, readings);
        opposites.ifPresent(found -> answer.put(OVALITY, found.ovality()).put(OPPOSITES_DIFFER, found.sumsDiffer()));
        given.find(JAWS).ifPresent(jaws -> jaws(answer, JawMoves.of(fit, jaws)));
        notes(answer, fit, movement, opposites);
        return answer.done();
    }

    private static void jaws(SumResult.Writing answer, List<JawMove> moves) {
        answer.put(JAW_MOVES, moves.stream().map(JawMove::in).toList());
        answer.note(moves.size() == 4 ? "four-jaws" : "three-jaws");
    }

    private static void notes(SumResult.Writing answer, CircleFit fit, Length movement, Optional<Opposites> opposites) {
        if (fit.leftOver().size() == 3) {
            answer.note("three-readings");
        }
        if (fit.leftOver().size() == 4) {
            answer.note("four-readings");
        }
        if (fit.eccentricity().signum() == 0) {
            answer.note("true");
        }
        if (Rechucking.isInVain(fit.residual(), movement)) {
            answer.note("in-vain");
        }
        if (opposites.filter(found -> found.sumsDiffer().signum() != 0).isPresent()) {
            answer.note("opposites");
        }
    }
}
