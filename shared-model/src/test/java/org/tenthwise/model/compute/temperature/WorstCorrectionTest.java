package org.tenthwise.model.compute.temperature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.TemperatureRange;
import org.tenthwise.model.quantity.Unit;

/** Sums from the formula by hand; the rule of the twentieth is common practice. */
class WorstCorrectionTest {

    private static final TemperatureRange SHOP = new TemperatureRange(Celsius.of("18"), Celsius.of("22"));

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    /**
     * 100·(1 + 23e-6)/(1 − 47.2e-6) − 100 = 0.0070203: gauge at its warmest, part at its coldest; first order 0.00702.
     */
    @Test
    void gaugeAndPartStandAtOppositeEnds() {
        WorstCorrection worst = WorstCorrection.of(mm("100"), Expansion.of("23.6"), SHOP, Expansion.of("11.5"), SHOP);
        assertEquals(new BigDecimal("0.00702"), worst.worst().millimetres().setScale(5, RoundingMode.HALF_EVEN));
    }

    /** 100·11.5e-6·1 = 0.00115 with the part kept at 20 °C and not growing: a twentieth of 0.023 exactly. */
    @Test
    void exactlyATwentiethDoesNotMatter() {
        TemperatureRange oneDegree = new TemperatureRange(Celsius.of("20"), Celsius.of("21"));
        WorstCorrection worst =
                WorstCorrection.of(mm("100"), Expansion.of("0"), oneDegree, Expansion.of("11.5"), oneDegree);
        assertEquals(mm("0.00115"), worst.worst());
        assertFalse(worst.mattersIn(mm("0.023")));
        assertTrue(worst.mattersIn(mm("0.02299")));
        assertEquals(0, new BigDecimal("0.05").compareTo(worst.shareOf(mm("0.023"))));
    }

    @Test
    void withNoToleranceAnyCorrectionMatters() {
        WorstCorrection worst = new WorstCorrection(mm("0.000001"));
        assertTrue(worst.mattersIn(Length.ZERO));
        assertThrows(IllegalArgumentException.class, () -> worst.shareOf(Length.ZERO));
    }

    @Test
    void aRangeTheWrongWayRoundIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new TemperatureRange(Celsius.of("22"), Celsius.of("18")));
    }
}
