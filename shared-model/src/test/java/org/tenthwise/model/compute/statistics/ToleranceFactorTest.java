package org.tenthwise.model.compute.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToleranceFactorTest {

    /**
     * ISO 16269-6:2014, Annex F, Tables F.1 to F.9, one sample, as listed in github.com/cjekel/tolerance_interval_py,
     * tests/test_twoside_normal_factor_iso.py: number of readings and k, which the tables round up, never down.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            0.9, 0.9, '2 15.5124; 8 2.7542; 16 2.2537; 35 1.9906; 100 1.8232; 300 1.7401; 1000 1.6947'
            0.95, 0.9, '3 6.8233; 9 3.1323; 15 2.7196; 30 2.4166; 90 2.1862; 150 2.1276; 400 2.0569; 1000 2.0193'
            0.99, 0.9, '4 6.3722; 8 4.2707; 17 3.4741; 28 3.2023; 100 2.8548; 300 2.7249; 1000 2.6538'
            0.9, 0.95, '2 31.0923; 8 3.1561; 16 2.4486; 35 2.0943; 150 1.8260; 500 1.7374; 1000 1.7088'
            0.95, 0.95, '5 5.0769; 10 3.3935; 26 2.6188; 90 2.2519; 200 2.1430; 1000 2.0362'
            0.99, 0.95, '3 12.6472; 9 4.6329; 17 3.7606; 35 3.2762; 100 2.9356; 500 2.7208'
            0.9, 0.99, '4 9.4162; 10 3.6167; 22 2.5979; 80 2.0282; 200 1.8657; 1000 1.7359'
            0.95, 0.99, '2 182.7201; 9 4.5810; 17 3.3641; 40 2.6836; 150 2.2712; 500 2.1175'
            0.99, 0.99, '3 28.5857; 7 7.1908; 15 4.6212; 28 3.8042; 70 3.2284; 200 2.9215; 1000 2.7184'
            """)
    void bothSidesIsTheFactorOfTheStandardToItsLastDigit(double cover, double confidence, String factors) {
        for (String factor : factors.split("; ")) {
            String[] row = factor.split(" ");
            assertEquals(
                    new BigDecimal(row[1]),
                    new BigDecimal(ToleranceFactor.bothSides(Integer.parseInt(row[0]), cover, confidence))
                            .setScale(4, RoundingMode.CEILING),
                    factor);
        }
    }

    /**
     * The same integral over the mean, worked by adaptive quadrature in another program: few readings, and little or
     * nearly all covered.
     */
    @ParameterizedTest
    @CsvSource({
        "2, 0.5, 0.5, 1.2427213636",
        "2, 0.9973, 0.95, 54.0260554402",
        "3, 0.9973, 0.5, 3.9470615594",
        "43, 0.9, 0.99, 2.2228251738",
        "1000, 0.95, 0.95, 2.0361142779"
    })
    void bothSidesHasTenFigures(int n, double cover, double confidence, double k) {
        assertEquals(k, ToleranceFactor.bothSides(n, cover, confidence), k * 2e-10);
    }

    /** Where everything is known of mean and spread, k is the half width of the share itself: 1.959964 for 95 %. */
    @Test
    void veryManyReadingsLeaveTheNormalItself() {
        assertEquals(1.959964, ToleranceFactor.bothSides(100_000_000, 0.95, 0.95), 3e-4);
    }

    /** NIST/SEMATECH e-Handbook 7.2.6.3, from memory: 43 parts, 90 % with 99 % confidence. */
    @Test
    void howesFactorIsTheOneOfTheHandbook() {
        assertEquals(2.217, ToleranceFactor.byHowe(43, 0.9, 0.99), 0.0005);
    }

    /**
     * Exact one-sided factors, M. G. Natrella, NBS Handbook 91, Table A-7, from memory: 90 % and 99 % with 95 %
     * confidence.
     */
    @ParameterizedTest
    @CsvSource({
        "0.99, 3, 10.553",
        "0.99, 5, 5.741",
        "0.99, 11, 3.852",
        "0.99, 25, 3.158",
        "0.90, 3, 6.155",
        "0.90, 10, 2.355",
        "0.90, 50, 1.646"
    })
    void oneSideIsTheFactorOfTheTables(double cover, int n, double k) {
        assertEquals(k, ToleranceFactor.oneSide(n, cover, 0.95), 0.0011);
    }

    /** Two readings, half covered, on one side: δ is zero, so k is Student's t with one degree of freedom over √2. */
    @Test
    void halfTheTwoPartsIsStudents() {
        assertEquals(Math.tan(Math.PI * 0.45) / Math.sqrt(2), ToleranceFactor.oneSide(2, 0.5, 0.95), 1e-9);
    }

    @Test
    void oneReadingHasNoFactor() {
        assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.bothSides(1, 0.9, 0.9));
        assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.bothSides(5, 0.9, 1));
        assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.oneSide(1, 0.9, 0.9));
        assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.oneSide(5, 1, 0.9));
    }
}
