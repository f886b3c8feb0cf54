package org.tenthwise.app.sums.gauge;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.roundness.CircleFit;
import org.tenthwise.model.compute.roundness.FullIndicatorMovement;
import org.tenthwise.model.compute.roundness.JawMove;
import org.tenthwise.model.compute.roundness.JawMoves;
import org.tenthwise.model.compute.roundness.Opposites;
import org.tenthwise.model.compute.roundness.Rechucking;
import org.tenthwise.model.compute.roundness.UnfitAngles;
import org.tenthwise.model.quantity.Length;

/** Run-out, how far off centre the work sits, and what to do at the jaws. */
final class RunOutFromReadings implements Sum {

    @Override
    public String name() {
        return "run-out";
    }

    @Override
    public Set<String> keys() {
        return Set.of("angles", "readings", "jaws");
    }

    @Override
    public SumResult of(SumInput given) {
        List<BigDecimal> angles = given.figures("angles");
        List<Length> readings = given.lengths("readings");
        if (angles.size() != readings.size()) {
            throw new CannotAnswer(
                    "readings",
                    "angles has %d figures and readings has %d: there is one angle for each reading"
                            .formatted(angles.size(), readings.size()));
        }
        CircleFit.refusal(angles).ifPresent(refusal -> {
            throw new CannotAnswer("angles", words(refusal));
        });
        CircleFit fit = CircleFit.of(angles, readings);
        Length movement = FullIndicatorMovement.of(readings);
        SumResult.Writing answer = SumResult.in(given.inUnit())
                .length("tir", movement)
                .length("mean", fit.mean())
                .length("cos_part", fit.cosPart())
                .length("sin_part", fit.sinPart())
                .length("eccentricity", fit.eccentricity())
                .exact("high_at", fit.highAtDegrees())
                .length("residual", fit.residual())
                .length("eccentric_run_out", fit.eccentricRunOut());
        Optional<Opposites> opposites = Opposites.of(angles, readings);
        opposites.ifPresent(
                found -> answer.length("ovality", found.ovality()).length("opposites_differ", found.sumsDiffer()));
        given.ifGiven("jaws", given::figures).ifPresent(jaws -> jaws(answer, JawMoves.of(fit, jaws)));
        notes(answer, fit, movement, opposites);
        return answer.on(
                "ISO 1101, circular run-out; least-squares circle as in ISO 12181-1 and NBSIR 79-1758; moves at the "
                        + "jaws: common practice");
    }

    private static void jaws(SumResult.Writing answer, List<JawMove> moves) {
        answer.lengths("jaw_moves", moves.stream().map(JawMove::in).toList());
        answer.note(
                moves.size() == 4
                        ? "More than nought goes in at its jaw and pushes the work away from it; the jaw opposite "
                                + "backs out first. Spindle stopped, and the work held."
                        : "More than nought is the shim under that jaw of a scroll chuck. Spindle stopped, and the "
                                + "work held.");
    }

    private static void notes(SumResult.Writing answer, CircleFit fit, Length movement, Optional<Opposites> opposites) {
        if (fit.leftOver().size() == 3) {
            answer.note("Three readings fit any circle exactly: whether the work is round is not known.");
        }
        if (fit.leftOver().size() == 4) {
            answer.note("Four readings take three lobes for an eccentricity: where the work may be three-lobed, read "
                    + "eight.");
        }
        if (fit.eccentricity().signum() == 0) {
            answer.note("The work runs true: no side is high.");
        }
        if (Rechucking.isInVain(fit.residual(), movement)) {
            answer.note("More than half of the movement is out-of-round: re-chucking will not fix this.");
        }
        if (opposites.filter(found -> found.sumsDiffer().signum() != 0).isPresent()) {
            answer.note(
                    "The sums of opposite readings differ: the work is oval by half of that, or a reading is wrong.");
        }
    }

    private static String words(UnfitAngles refusal) {
        return switch (refusal) {
            case FEWER_THAN_THREE_ANGLES ->
                "angles has fewer than three different directions: any of many circles would go through the readings";
            case GAP_OF_HALF_A_TURN ->
                "angles leaves 180 degrees or more of the turn without a reading: the centre would be a guess";
        };
    }
}
