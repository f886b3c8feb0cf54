package org.tenthwise.model.compute.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/**
 * Sides of right-angled triangles: 3-4-5 and 5-12-13 by Euclid, the others worked out to thirty figures apart from the
 * class.
 */
class AcrossGroovesTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static Length in(String figure) {
        return Length.of(figure, Unit.INCH);
    }

    @ParameterizedTest
    @CsvSource({
        "5, 6, 1, 4",
        "13, 10, 1, 12",
        "13, 10, 3, 12",
        // root 32.500 of Tr 40×7: √(32.5² + 3.5²) = 32.687918, which is 0.188 too big
        "32.687918, 7, 1, 32.500000",
        "32.688, 7, 1, 32.500082",
    })
    void theRootIsAlongOneSideOfTheTriangle(String read, String pitch, int starts, String diameter) {
        assertEquals(mm(diameter), AcrossGrooves.diameter(mm(read), mm(pitch), starts));
    }

    /** Root 1.4050 of 1 1/2-8 stub Acme: √(1.4050² + 0.0625²) = 1.406389, which is 0.0014 too big. */
    @Test
    void inInchesAsWell() {
        Length root = AcrossGrooves.diameter(in("1.406389"), in("0.125"), 1);
        assertTrue(root.minus(in("1.405")).abs().isBelow(in("0.000001")), () -> "was " + root.in(Unit.INCH));
    }

    @Test
    void anEvenNumberOfStartsHasGroovesThatFaceEachOther() {
        assertEquals(
                mm("13.0000001"),
                AcrossGrooves.diameter(mm("13.0000001"), mm("10"), 2),
                "as it was read, rounded nowhere");
        assertEquals(Length.ZERO, AcrossGrooves.askew(mm("10"), 4));
        assertEquals(mm("5"), AcrossGrooves.askew(mm("10"), 3));
    }

    @Test
    void theSidesMakeUpTheReadingAgainWhateverItIs() {
        Random random = new Random(7);
        for (int i = 0; i < 10_000; i++) {
            BigDecimal pitch = BigDecimal.valueOf(100 + random.nextInt(20_000), 3);
            BigDecimal read = pitch.add(BigDecimal.valueOf(random.nextInt(500_000), 3));
            BigDecimal root = AcrossGrooves.diameter(new Length(read), new Length(pitch), 1)
                    .millimetres();
            BigDecimal again = root.pow(2)
                    .add(pitch.pow(2).multiply(new BigDecimal("0.25")))
                    .sqrt(MathContext.DECIMAL64);
            assertTrue(
                    again.subtract(read).abs().compareTo(new BigDecimal("0.000001")) < 0, read + " of pitch " + pitch);
        }
    }

    @Test
    void aReadingOfHalfAPitchIsOfNoThread() {
        assertThrows(IllegalArgumentException.class, () -> AcrossGrooves.diameter(mm("3.5"), mm("7"), 1));
        assertEquals(mm("3.5"), AcrossGrooves.diameter(mm("3.5"), mm("7"), 2));
        assertThrows(IllegalArgumentException.class, () -> AcrossGrooves.diameter(mm("0"), mm("7"), 2));
    }

    @Test
    void thereIsNoThreadWithoutPitchOrStart() {
        assertThrows(IllegalArgumentException.class, () -> AcrossGrooves.askew(mm("0"), 1));
        assertThrows(IllegalArgumentException.class, () -> AcrossGrooves.askew(mm("7"), 0));
    }
}
