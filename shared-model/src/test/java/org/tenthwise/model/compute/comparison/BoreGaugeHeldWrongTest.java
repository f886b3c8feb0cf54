package org.tenthwise.model.compute.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class BoreGaugeHeldWrongTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    /** By hand: 1/cos 60° is 2; otherwise D · tilt²/2, the tilt being small (0.001 rad is 0.0572958°). */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        30,  60,        30
        200, 0.0572958, 0.0001
        25,  0,         0
        """)
    void aTiltedGaugeReadsMore(String diameter, String tilt, String more) {
        assertEquals(mm(more), Rocking.readsMore(mm(diameter), new BigDecimal(tilt)));
    }

    /**
     * By hand: a chord of 40 at 15 beside the middle of a bore of 50, one of 24 at 5 in one of 26; zero in the middle.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
        50, 15, 10
        50, -15, 10
        26, 5,  2
        25, 0,  0
        """)
    void pointsOnAChordReadLess(String diameter, String offCentre, String less) {
        assertEquals(mm(less), OffCentre.readsLess(mm(diameter), mm(offCentre)));
    }

    @Test
    void whatCannotBeHeldSoIsRefused() {
        assertEquals(
                "tilt is 90: it must be 0° or more and less than 90°",
                assertThrows(IllegalArgumentException.class, () -> Rocking.readsMore(mm("25"), new BigDecimal("90")))
                        .getMessage());
        assertEquals(
                "diameter is 0 mm: a bore must be more than zero",
                assertThrows(IllegalArgumentException.class, () -> Rocking.readsMore(mm("0"), BigDecimal.ONE))
                        .getMessage());
        assertEquals(
                "off_centre is 12.5 mm: that far off centre the points do not touch a bore of 25 mm",
                assertThrows(IllegalArgumentException.class, () -> OffCentre.readsLess(mm("25"), mm("12.5")))
                        .getMessage());
    }
}
