package org.tenthwise.model.compute.roundness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class CircleFitTest {

    private static final String UNEQUAL_ANGLES = "10;50;130;190;260;330";
    private static final String UNEQUAL_READINGS = "0.021;0.034;0.018;-0.006;-0.019;0.007";

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static List<BigDecimal> angles(String list) {
        return Arrays.stream(list.split(";")).map(BigDecimal::new).toList();
    }

    private static List<Length> readings(String list) {
        return Arrays.stream(list.split(";")).map(CircleFitTest::mm).toList();
    }

    private static void near(String expected, Length found, String within) {
        assertTrue(found.minus(mm(expected)).abs().compareTo(mm(within)) <= 0, expected + " but was " + found);
    }

    /**
     * Constructed from the cited formulas, not by this code: for equal spacing 2/N times the sums with cosine and sine
     * (NIST/SEMATECH e-Handbook of Statistical Methods; C. P. Reeve, NBSIR 79-1758), which this code does not use; for
     * unequal spacing another program's least squares. The fit is linear, so rows in micrometres stand here as
     * millimetres.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # angles, readings, mean, cosine part, sine part, eccentricity, high at, residual, 2e
        0;120;240, 5;-1;-4, 0, 5.000000, 1.732051, 5.291503, 19.106605, 0, 10.583005
        10;50;130;190;260;330, 0.021;0.034;0.018;-0.006;-0.019;0.007, \
            0.007710, 0.010995, 0.023836, 0.026250, 65.237662, 0.003363, 0.052500
        0;90;180;270, 12;-4;-8;4, 1, 10, -4, 10.770330, 338.198591, 2, 21.540659
        0;30;60;90;120;150;180;210;240;270;300;330, \
            -5.219;-5.059;-5.607;-5.034;-1.43;4.621;9.816;10.698;6.649;0.438;-4.208;-5.663, \
            0.000167, -7.517361, -2.736115, 7.999815, 200.000128, 5.638852, 15.999631
        0;45;90;135;180;225;270;315, 8.66;9.659;5;-2.588;-8.66;-9.659;-5;2.588, \
            0, 8.659968, 4.999976, 9.999741, 30.000699, 0.000079, 19.999481
        0;22.5;45;67.5;90;112.5;135;157.5;180;202.5;225;247.5;270;292.5;315;337.5, \
            7;10;12;13;12;9;6;2;-3;-8;-10;-12;-11;-9;-4;1, \
            0.937500, 4.608752, 11.578153, 12.461710, 68.294679, 2.458123, 24.923420
        """)
    void theFirstHarmonicIsFitted(
            String angles,
            String readings,
            String mean,
            String cosPart,
            String sinPart,
            String eccentricity,
            double highAt,
            String residual,
            String runOut) {
        CircleFit fit = CircleFit.of(angles(angles), readings(readings));
        near(mean, fit.mean(), "0.00001");
        near(cosPart, fit.cosPart(), "0.00001");
        near(sinPart, fit.sinPart(), "0.00001");
        near(eccentricity, fit.eccentricity(), "0.00001");
        assertEquals(highAt, fit.highAtDegrees().doubleValue(), 0.01);
        near(residual, fit.residual(), "0.00001");
        near(runOut, fit.eccentricRunOut(), "0.00001");
    }

    /**
     * Published: US Bureau of Reclamation, alignment of vertical shafts, Figure 16, pinacia.com, read November 2026;
     * inches, N, E, S, W. Half the difference of opposite readings, and the sums of opposites against each other.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        0.3510;0.3480;0.3550;0.3585, 0.0020, 0.00525, 0.0005
        0.3470;0.3540;0.3590;0.3525, 0.0060, 0.00075, 0.0005
        """)
    void fourReadingsGiveHalfTheDifferenceOfOpposites(
            String readings, String northSouth, String eastWest, String sums) {
        CircleFit fit = CircleFit.of(
                angles("0;90;180;270"),
                Arrays.stream(readings.split(";"))
                        .map(reading -> Length.of(reading, Unit.INCH))
                        .toList());
        assertEquals(0, Length.of(northSouth, Unit.INCH).compareTo(fit.cosPart().abs()));
        assertEquals(0, Length.of(eastWest, Unit.INCH).compareTo(fit.sinPart().abs()));
        assertEquals(0, Length.of(sums, Unit.INCH).compareTo(fit.residual().plus(fit.residual())));
    }

    @Test
    void whatIsLeftOverAndTheFittedCircleMakeUpTheReadings() {
        CircleFit fit = CircleFit.of(angles("0;90;180;270"), readings("12;-4;-8;4"));
        // by hand: mean 1, cosine part 10, sine part -4; an oval of 1 is left over
        assertEquals(readings("1;-1;1;-1"), fit.leftOver());
        assertEquals(mm("2"), fit.residual());
    }

    @Test
    void threeReadingsLeaveNothingOver() {
        CircleFit fit = CircleFit.of(angles("3;100;250"), readings("0.013;-0.007;0.002"));
        assertEquals(List.of(Length.ZERO, Length.ZERO, Length.ZERO), fit.leftOver());
        assertEquals(Length.ZERO, fit.residual());
    }

    @Test
    void equalReadingsRunTrue() {
        CircleFit fit = CircleFit.of(angles(UNEQUAL_ANGLES), readings("0.3;0.3;0.30;0.3;0.3;0.3"));
        assertEquals(mm("0.3"), fit.mean());
        assertEquals(Length.ZERO, fit.eccentricity());
        assertEquals(BigDecimal.ZERO, fit.highAtDegrees());
        assertEquals(Length.ZERO, fit.residual());
    }

    @ParameterizedTest
    @ValueSource(strings = {"37.3", "-90", "360", "815.25"})
    void turningTheWorkTurnsTheHighSideAndNothingElse(String turn) {
        CircleFit still = CircleFit.of(angles(UNEQUAL_ANGLES), readings(UNEQUAL_READINGS));
        CircleFit turned = CircleFit.of(
                angles(UNEQUAL_ANGLES).stream()
                        .map(angle -> angle.add(new BigDecimal(turn)))
                        .toList(),
                readings(UNEQUAL_READINGS));
        near(still.eccentricity().millimetres().toPlainString(), turned.eccentricity(), "0.000001");
        near(still.mean().millimetres().toPlainString(), turned.mean(), "0.000001");
        near(still.residual().millimetres().toPlainString(), turned.residual(), "0.000002");
        assertEquals(
                0,
                still.highAtDegrees()
                        .add(new BigDecimal(turn))
                        .subtract(turned.highAtDegrees())
                        .remainder(BigDecimal.valueOf(360))
                        .doubleValue(),
                0.000002);
    }

    @Test
    void anIndicatorSetHigherChangesTheMeanOnly() {
        CircleFit fit = CircleFit.of(angles(UNEQUAL_ANGLES), readings(UNEQUAL_READINGS));
        CircleFit higher = CircleFit.of(
                angles(UNEQUAL_ANGLES),
                readings(UNEQUAL_READINGS).stream().map(mm("1234.5")::plus).toList());
        assertEquals(
                new CircleFit(
                        fit.mean().plus(mm("1234.5")),
                        fit.cosPart(),
                        fit.sinPart(),
                        fit.eccentricity(),
                        fit.eccentricRunOut(),
                        fit.highAtDegrees(),
                        fit.residual(),
                        fit.leftOver()),
                higher);
    }

    @Test
    void theHighSideIsNeverGivenAsAFullTurn() {
        CircleFit fit = CircleFit.of(angles("0;90;180;270"), readings("1000;-0.000001;-1000;0.000001"));
        assertEquals(BigDecimal.ZERO, fit.highAtDegrees());
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            textBlock =
                    """
        0;90,            FEWER_THAN_THREE_ANGLES
        0;90;450,        FEWER_THAN_THREE_ANGLES
        0;360.0;-360,    FEWER_THAN_THREE_ANGLES
        0;90;180,        GAP_OF_HALF_A_TURN
        0;60;120,        GAP_OF_HALF_A_TURN
        350;0;10,        GAP_OF_HALF_A_TURN
        200;300;20,      GAP_OF_HALF_A_TURN
        0;90;180.001,    none
        0;120;240,       none
        300;60;540,      none
        """)
    void anglesThatDoNotSettleTheCentreAreRefused(String angles, UnfitAngles refusal) {
        assertEquals(Optional.ofNullable(refusal), CircleFit.refusal(angles(angles)));
    }

    @Test
    void noAnglesAreRefused() {
        assertEquals(Optional.of(UnfitAngles.FEWER_THAN_THREE_ANGLES), CircleFit.refusal(List.of()));
    }

    @Test
    void aRefusedFitIsNotMade() {
        assertTrue(
                assertThrows(IllegalArgumentException.class, () -> CircleFit.of(angles("0;90;180"), readings("1;2;3")))
                        .getMessage()
                        .contains("GAP_OF_HALF_A_TURN"));
        assertEquals(
                "3 angles for 2 readings: each reading needs one angle",
                assertThrows(IllegalArgumentException.class, () -> CircleFit.of(angles("0;120;240"), readings("1;2")))
                        .getMessage());
    }
}
