package org.tenthwise.model.compute.roundness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** Worked by hand from the straight line through two points; common practice. */
class ShiftAndTiltTest {

    private static final Eccentricity NEAR = off("0.010", "0.002");
    private static final Eccentricity FAR = off("-0.020", "0.042");
    private static final ShiftAndTilt WORK = new ShiftAndTilt(mm("20"), NEAR, mm("120"), FAR);

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static Eccentricity off(String cosPart, String sinPart) {
        return new Eccentricity(mm(cosPart), mm(sinPart));
    }

    @Test
    void theLeanIsWhatTheFarSectionStandsOffBeyondTheNearOne() {
        assertEquals(off("-0.030", "0.040"), WORK.lean());
        assertEquals(mm("0.050"), WORK.lean().amount());
    }

    /** 2 √(0.020² + 0.042²) = 0.0930376, at the far one; the same the other way round. */
    @Test
    void theCoaxialErrorIsTwiceTheGreatestOfBothEnds() {
        assertEquals(mm("0.093038"), WORK.coaxialError());
        assertEquals(mm("0.093038"), new ShiftAndTilt(mm("0"), FAR, mm("100"), NEAR).coaxialError());
    }

    /** A middle that crosses the axis of the spindle between the sections stands off least there. */
    @Test
    void noPlaceBetweenTheSectionsStandsOffFurtherThanBothEnds() {
        for (int hundredths = 0; hundredths <= 100; hundredths++) {
            BigDecimal share = BigDecimal.valueOf(hundredths, 2);
            Length twice = new Eccentricity(
                            NEAR.cosPart().plus(WORK.lean().cosPart().times(share)),
                            NEAR.sinPart().plus(WORK.lean().sinPart().times(share)))
                    .amount()
                    .times(BigDecimal.valueOf(2));
            assertFalse(twice.isAbove(WORK.coaxialError()), twice::toString);
        }
    }

    @Test
    void workThatIsOnlyShiftedDoesNotLean() {
        ShiftAndTilt shifted = new ShiftAndTilt(mm("20"), NEAR, mm("120"), NEAR);
        assertEquals(off("0", "0"), shifted.lean());
        assertEquals(mm("0"), new ShiftAndTilt(mm("1"), off("0", "0"), mm("2"), off("0", "0")).coaxialError());
    }

    @ParameterizedTest
    @CsvSource({"20, 20", "20, 10"})
    void sectionsThatDoNotLieOneBehindTheOtherAreRefused(String near, String far) {
        assertThrows(IllegalArgumentException.class, () -> new ShiftAndTilt(mm(near), NEAR, mm(far), FAR));
    }
}
