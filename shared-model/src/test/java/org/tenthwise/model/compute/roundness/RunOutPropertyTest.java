package org.tenthwise.model.compute.roundness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * What holds for every turn of readings. The last digit of what is compared may round either way: 1 nm, 1e-6 degree.
 */
class RunOutPropertyTest {

    private static final double ROUNDING = 0.0000021;

    @Property
    void anOffsetOfTheIndicatorChangesTheMeanOnly(
            @ForAll @Size(min = 3, max = 24) List<@BigRange(min = "-1", max = "1") @Scale(4) BigDecimal> heights,
            @ForAll @BigRange(min = "-1000", max = "1000") @Scale(4) BigDecimal offset,
            @ForAll Random chance) {
        List<Length> readings = lengths(heights);
        List<Length> higher = readings.stream().map(new Length(offset)::plus).toList();
        List<BigDecimal> angles = unevenly(heights.size(), chance);
        CircleFit fit = CircleFit.of(angles, readings);
        CircleFit moved = CircleFit.of(angles, higher);
        assertEquals(
                new CircleFit(
                        fit.mean().plus(new Length(offset)),
                        fit.cosPart(),
                        fit.sinPart(),
                        fit.eccentricity(),
                        fit.eccentricRunOut(),
                        fit.highAtDegrees(),
                        fit.residual(),
                        fit.leftOver()),
                moved);
        assertEquals(FullIndicatorMovement.of(readings), FullIndicatorMovement.of(higher));
    }

    @Property
    void turningTheWorkTurnsTheHighSideAndNothingElse(
            @ForAll @Size(min = 3, max = 24) List<@BigRange(min = "-1", max = "1") @Scale(4) BigDecimal> heights,
            @ForAll @BigRange(min = "-720", max = "720") @Scale(2) BigDecimal turn,
            @ForAll Random chance) {
        List<Length> readings = lengths(heights);
        List<BigDecimal> angles = unevenly(heights.size(), chance);
        CircleFit fit = CircleFit.of(angles, readings);
        CircleFit turned = CircleFit.of(angles.stream().map(turn::add).toList(), readings);
        near(fit.mean(), turned.mean());
        near(fit.eccentricity(), turned.eccentricity());
        near(fit.residual(), turned.residual());
        if (fit.eccentricity().isAbove(new Length(new BigDecimal("0.001")))) {
            double along = turned.highAtDegrees()
                    .subtract(fit.highAtDegrees())
                    .subtract(turn)
                    .doubleValue();
            assertEquals(0, Math.IEEEremainder(along, 360), ROUNDING);
        }
    }

    /** A turn may be begun at any of its readings, and be read either way round. */
    @Property
    void whereTheReadingsBeginDoesNotMatter(
            @ForAll @Size(min = 3, max = 24) List<@BigRange(min = "-1", max = "1") @Scale(4) BigDecimal> heights,
            @ForAll Random chance) {
        List<Length> readings = new ArrayList<>(lengths(heights));
        List<BigDecimal> angles = new ArrayList<>(unevenly(heights.size(), chance));
        CircleFit fit = CircleFit.of(angles, readings);
        int begin = chance.nextInt(heights.size());
        Collections.rotate(readings, begin);
        Collections.rotate(angles, begin);
        CircleFit begun = CircleFit.of(angles, readings);
        near(fit.mean(), begun.mean());
        near(fit.cosPart(), begun.cosPart());
        near(fit.sinPart(), begun.sinPart());
        near(fit.residual(), begun.residual());
        CircleFit back = CircleFit.of(angles.stream().map(BigDecimal::negate).toList(), readings);
        near(fit.cosPart(), back.cosPart());
        near(fit.sinPart(), back.sinPart().negated());
        near(fit.residual(), back.residual());
    }

    @Property
    void movementLiesBetweenWhatEccentricityAndFormLeaveAndWhatTheyCanDo(
            @ForAll @Size(min = 3, max = 24) List<@BigRange(min = "-1", max = "1") @Scale(4) BigDecimal> heights) {
        List<Length> readings = lengths(heights);
        CircleFit fit = CircleFit.of(evenly(heights.size()), readings);
        double movement = Nanometres.of(FullIndicatorMovement.of(readings));
        double eccentric = Nanometres.of(fit.eccentricRunOut());
        double residual = Nanometres.of(fit.residual());
        assertTrue(movement <= eccentric + residual + ROUNDING, movement + " above " + eccentric + " and " + residual);
        assertTrue(residual <= movement + eccentric + ROUNDING, residual + " above " + movement + " and " + eccentric);
    }

    @Property
    void opposedJawsMoveByOneAmountAndTheirMovesUndoTheEccentricity(
            @ForAll @Size(min = 3, max = 24) List<@BigRange(min = "-1", max = "1") @Scale(4) BigDecimal> heights,
            @ForAll @BigRange(min = "0", max = "360") @Scale(2) BigDecimal first) {
        CircleFit fit = CircleFit.of(evenly(heights.size()), lengths(heights));
        List<Length> moves = JawMoves.of(fit, JawMoves.evenly(4, first)).stream()
                .map(JawMove::in)
                .toList();
        assertEquals(moves.get(0), moves.get(2).negated());
        assertEquals(moves.get(1), moves.get(3).negated());
        assertEquals(
                Nanometres.of(fit.eccentricity()),
                Math.hypot(Nanometres.of(moves.get(0)), Nanometres.of(moves.get(1))),
                ROUNDING);
    }

    private static List<BigDecimal> evenly(int readings) {
        return IntStream.range(0, readings)
                .mapToObj(i -> BigDecimal.valueOf(360_000L * i / readings, 3))
                .toList();
    }

    /** Each up to 20 degrees past its place among even ones: no gap is wider than 140 degrees. */
    private static List<BigDecimal> unevenly(int readings, Random chance) {
        return evenly(readings).stream()
                .map(angle -> angle.add(BigDecimal.valueOf(chance.nextInt(20_001), 3)))
                .toList();
    }

    private static List<Length> lengths(List<BigDecimal> millimetres) {
        return millimetres.stream().map(Length::new).toList();
    }

    private static void near(Length expected, Length found) {
        assertEquals(Nanometres.of(expected), Nanometres.of(found), ROUNDING);
    }
}
