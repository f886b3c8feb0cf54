package org.tenthwise.model.compute.roundness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class JawMovesTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static List<Length> lengths(String list) {
        return Arrays.stream(list.split(";")).map(JawMovesTest::mm).toList();
    }

    private static CircleFit fit(String angles, String readings) {
        return CircleFit.of(
                Arrays.stream(angles.split(";")).map(BigDecimal::new).toList(), lengths(readings));
    }

    private static List<Length> moves(CircleFit fit, int jaws, String firstJaw) {
        return JawMoves.of(fit, JawMoves.evenly(jaws, new BigDecimal(firstJaw))).stream()
                .map(JawMove::in)
                .toList();
    }

    /** Constructed from half the difference of opposite readings, common practice; plus is a surface further out. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        0.12;0.02;-0.1;0,       0.11;0.01;-0.11;-0.01, 0.1105
        # an oval bar: the oval makes no difference to the moves
        0.05;-0.03;0.03;-0.05,  0.01;0.01;-0.01;-0.01, 0.0141
        """)
    void ofFourJawsTheHighSideGoesInByHalfTheDifference(String readings, String moves, double eccentricity) {
        CircleFit fit = fit("0;90;180;270", readings);
        assertEquals(lengths(moves), moves(fit, 4, "0"));
        assertEquals(eccentricity, fit.eccentricity().millimetres().doubleValue(), 0.00005);
    }

    /** Constructed from e = 2s/3 for one shim s in a scroll chuck: first-order geometry. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # work off by 0.100 towards jaw 1: 0.150 under jaw 1
        0.1;0;-0.1;0,  0.15;0;0
        # towards the gap opposite jaw 1: the same under both other jaws
        -0.1;0;0.1;0,  0;0.15;0.15
        """)
    void ofThreeJawsTheNearOnesGetShims(String readings, String shims) {
        assertEquals(lengths(shims), moves(fit("0;90;180;270", readings), 3, "0"));
    }

    @Test
    void jawsAreCountedOnFromTheFirst() {
        List<BigDecimal> jaws = JawMoves.evenly(3, new BigDecimal("300"));
        List<JawMove> moves = JawMoves.of(fit("0;90;180;270", "0.1;0;-0.1;0"), jaws);
        assertEquals(
                List.of("300", "60", "180"),
                jaws.stream().map(BigDecimal::toPlainString).toList());
        assertEquals(List.of(1, 2, 3), moves.stream().map(JawMove::jaw).toList());
        assertEquals(lengths("0.15;0.15;0"), moves.stream().map(JawMove::in).toList());
    }

    @Test
    void fourJawsBetweenTheReadingsShareTheMove() {
        // by hand: 0.1 cos 45 deg = 0.070711
        assertEquals(
                lengths("0.070711;-0.070711;-0.070711;0.070711"), moves(fit("0;90;180;270", "0.1;0;-0.1;0"), 4, "45"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "17", "90", "133.7", "200", "301"})
    void theMovesBringTheWorkToTheMiddle(String firstJaw) {
        CircleFit fit = fit("0;60;120;180;240;300", "0.031;0.044;0.012;-0.033;-0.04;-0.02");
        assertMiddle(fit, JawMoves.evenly(4, new BigDecimal(firstJaw)), 0.5);
        List<BigDecimal> three = JawMoves.evenly(3, new BigDecimal(firstJaw));
        List<JawMove> shims = JawMoves.of(fit, three);
        assertMiddle(fit, three, 2.0 / 3.0);
        assertEquals(Length.ZERO, Length.least(shims.stream().map(JawMove::in).toList()));
    }

    /** Work goes away from a jaw by {@code share} of its move: all jaws together must undo the eccentricity. */
    private static void assertMiddle(CircleFit fit, List<BigDecimal> jaws, double share) {
        double x = fit.cosPart().millimetres().doubleValue();
        double y = fit.sinPart().millimetres().doubleValue();
        assertTrue(Math.hypot(x, y) > 0.02);
        for (JawMove move : JawMoves.of(fit, jaws)) {
            double angle = Math.toRadians(jaws.get(move.jaw() - 1).doubleValue());
            x -= share * move.in().millimetres().doubleValue() * Math.cos(angle);
            y -= share * move.in().millimetres().doubleValue() * Math.sin(angle);
        }
        assertEquals(0, x, 0.000002);
        assertEquals(0, y, 0.000002);
    }

    @Test
    void workThatRunsTrueStays() {
        CircleFit fit = fit("0;120;240", "0.2;0.2;0.2");
        assertEquals(lengths("0;0;0"), moves(fit, 3, "0"));
        assertEquals(lengths("0;0;0;0"), moves(fit, 4, "0"));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 2, 5, 6})
    void otherChucksAreRefused(int jaws) {
        CircleFit fit = fit("0;120;240", "0.2;0.2;0.2");
        String words = "Jaw moves are worked out for three or four jaws, not for " + jaws;
        assertEquals(
                words,
                assertThrows(IllegalArgumentException.class, () -> JawMoves.evenly(jaws, BigDecimal.ZERO))
                        .getMessage());
        assertEquals(
                words,
                assertThrows(
                                IllegalArgumentException.class,
                                () -> JawMoves.of(fit, Collections.nCopies(jaws, BigDecimal.ZERO)))
                        .getMessage());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # jaws in an order of their own; by hand, the opposite readings of the first table
        180;0;270;90,   -0.11;0.11;-0.01;0.01
        90;180;270;360,  0.01;-0.11;-0.01;0.11
        """)
    void jawsNamedInAnyOrderGetTheirOwnMoves(String jaws, String moves) {
        assertEquals(
                lengths(moves),
                JawMoves.of(
                                fit("0;90;180;270", "0.12;0.02;-0.1;0"),
                                Arrays.stream(jaws.split(";"))
                                        .map(BigDecimal::new)
                                        .toList())
                        .stream()
                        .map(JawMove::in)
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        0;90;180,      'Jaws at 0, 90, 180 are not evenly spaced: 3 jaws are 120° apart'
        0;90;90;270,   'Jaws at 0, 90, 90, 270 are not evenly spaced: 4 jaws are 90° apart'
        """)
    void jawsThatAreNotEvenlySpacedAreRefused(String jaws, String words) {
        CircleFit fit = fit("0;120;240", "0.2;0.2;0.2");
        List<BigDecimal> places =
                Arrays.stream(jaws.split(";")).map(BigDecimal::new).toList();
        assertEquals(
                words,
                assertThrows(IllegalArgumentException.class, () -> JawMoves.of(fit, places))
                        .getMessage());
    }
}
