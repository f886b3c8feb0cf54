package org.tenthwise.model.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;
import static org.tenthwise.model.quantity.TemperatureScale.FAHRENHEIT;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Fixed points of the two scales: water freezes and boils, they cross, absolute zero (NIST SP 811, 2008, B.8, from
 * memory); 68 °F beside 20 °C (ISO 1:2022 in degrees Celsius, ASME B89.6.2 in both, from memory).
 */
class TemperatureScaleTest {

    @ParameterizedTest
    @CsvSource({
        "32, 0",
        "212, 100",
        "-40, -40",
        "68, 20",
        "68.0, 20",
        "77, 25",
        "72.5, 22.5",
        "70, 21.111111111",
        "64.4, 18"
    })
    void degreesFahrenheitAreBroughtToDegreesCelsius(String fahrenheit, String celsius) {
        assertEquals(
                0,
                new BigDecimal(celsius)
                        .compareTo(Degrees.of(fahrenheit, FAHRENHEIT).celsius().degrees()));
    }

    @Test
    void theReferenceIsTheSameInBoth() {
        assertEquals("20 °C", CELSIUS.reference().toString());
        assertEquals("68 °F", FAHRENHEIT.reference().toString());
        assertEquals(0, Degrees.of("68", FAHRENHEIT).celsius().aboveReference().signum());
    }

    @Test
    void everyTenthOfADegreeThatAShopCanHaveComesBackAsItWas() {
        for (BigDecimal degrees = new BigDecimal("32.0");
                degrees.intValue() < 141;
                degrees = degrees.add(new BigDecimal("0.1"))) {
            assertEquals(
                    0,
                    degrees.compareTo(FAHRENHEIT
                            .of(new Degrees(degrees, FAHRENHEIT).celsius())
                            .figure()),
                    degrees.toPlainString());
        }
    }

    @Test
    void whatWasReadStaysAsItWasRead() {
        Degrees read = Degrees.of("70.0", FAHRENHEIT);
        assertEquals("70.0", read.text());
        assertEquals("70.0 °F", read.toString());
        assertEquals(1, read.places());
        assertEquals("21.50 °C", Degrees.of("21.50", CELSIUS).toString());
    }

    /** 6.4 and 11.5 for steel stand in any handbook, each to one place; 9.0 is 16.2 exactly. */
    @ParameterizedTest
    @CsvSource({"9.0, 16.2", "6.4, 11.52", "0, 0", "-1, -1.8"})
    void expansionForADegreeFahrenheitIsFiveNinths(String perFahrenheit, String perCelsius) {
        Expansion expansion = FAHRENHEIT.expansion(new BigDecimal(perFahrenheit));
        assertEquals(0, new BigDecimal(perCelsius).compareTo(expansion.millionths()));
        assertEquals(0, new BigDecimal(perFahrenheit).compareTo(FAHRENHEIT.perDegree(expansion)));
    }

    @Test
    void aFigureOfATableIsShownToFourPlaces() {
        assertEquals("6.3889", FAHRENHEIT.perDegree(Expansion.of("11.5")).toPlainString());
        assertEquals("11.5", CELSIUS.perDegree(Expansion.of("11.5")).toPlainString());
    }

    @Test
    void whatNoPartCanBeIsRefusedInItsOwnDegrees() {
        assertEquals(
                "-459.67 °F is not a temperature at which a size is measured",
                assertThrows(IllegalArgumentException.class, () -> Degrees.of("-459.67", FAHRENHEIT))
                        .getMessage());
        assertEquals(
                "1001 °C is not a temperature at which a size is measured",
                assertThrows(IllegalArgumentException.class, () -> Degrees.of("1001", CELSIUS))
                        .getMessage());
        assertEquals(
                "Expansion 0.0000064 cannot be in 1e-6 per °F: steel is 6.4",
                assertThrows(IllegalArgumentException.class, () -> FAHRENHEIT.expansion(new BigDecimal("0.0000064")))
                        .getMessage());
    }
}
