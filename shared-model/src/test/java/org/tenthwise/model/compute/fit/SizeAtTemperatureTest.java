package org.tenthwise.model.compute.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class SizeAtTemperatureTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # constructed from the formula by hand: 50.01 · 11.5e-6 · 7 = 0.004025805 and 50 · 11.5e-6 · 15 = 0.008625
        50.01, 27, 11.5, 50,      35, 11.5, 0.005400805
        # constructed: a cast iron bore straight from the cut, 100 · 11.4e-6 · 20 = 0.0228, plug 100.005 · 11.5e-6 · 1
        # = 0.0011500575
        100,   40, 11.4, 100.005, 21, 11.5, 0.0166499425
        # at 20 °C it is the clearance of the sizes themselves
        50.01, 20, 11.5, 50,      20, 11.5, 0.01
        # a cold plug in a warm bore goes in where at 20 °C it would not
        30,    30, 12,   30.001,  10, 12,   0.0062001200
        """)
    void clearanceNowIsBetweenTheSizesNow(
            String bore,
            String boreTemp,
            String boreAlpha,
            String plug,
            String plugTemp,
            String plugAlpha,
            String clearance) {
        SizeAtTemperature ofBore = new SizeAtTemperature(new BigDecimal(boreTemp), new BigDecimal(boreAlpha));
        SizeAtTemperature ofPlug = new SizeAtTemperature(new BigDecimal(plugTemp), new BigDecimal(plugAlpha));
        Clearance now = Clearance.of(List.of(ofBore.now(mm(bore))), List.of(ofPlug.now(mm(plug))));
        assertEquals(new Clearance(mm(clearance), mm(clearance)), now);
    }

    @Test
    void nothingGrowsAtTheReferenceTemperature() {
        assertEquals(mm("50.01"), SizeAtTemperature.atReference().now(mm("50.01")));
        assertEquals(mm("50.01"), new SizeAtTemperature(new BigDecimal("-40"), BigDecimal.ZERO).now(mm("50.01")));
    }

    @ParameterizedTest
    @CsvSource({"50, true", "49.9, false", "20, false", "0.1, false", "0, true", "-196, true"}) // common practice
    void handsKeepOffWhatIsHotOrFrozen(BigDecimal celsius, boolean burns) {
        assertEquals(burns, new SizeAtTemperature(celsius, BigDecimal.TEN).burns());
    }

    @Test
    void noPartIsColderThanThereIs() {
        BigDecimal alpha = new BigDecimal("11.5");
        assertThrows(IllegalArgumentException.class, () -> new SizeAtTemperature(new BigDecimal("-273.16"), alpha));
    }
}
