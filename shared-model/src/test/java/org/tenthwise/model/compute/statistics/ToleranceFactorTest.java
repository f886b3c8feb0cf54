package org.tenthwise.model.compute.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToleranceFactorTest {

    /** NIST/SEMATECH e-Handbook 7.2.6.3, from memory: 43 parts, 90 % with 99 % confidence. */
    @Test
    void bothSidesIsHowesFactor() {
        assertEquals(2.217, ToleranceFactor.bothSides(43, 0.9, 0.99), 0.0005);
    }

    /** Exact one-sided factors, M. G. Natrella, NBS Handbook 91, Table A-7, from memory: 90 % and 99 % with 95 % confidence. */
    @ParameterizedTest
    @CsvSource({"0.99, 3, 10.553", "0.99, 5, 5.741", "0.99, 11, 3.852", "0.99, 25, 3.158", "0.90, 3, 6.155", "0.90, 10, 2.355", "0.90, 50, 1.646"})
    void oneSideIsTheFactorOfTheTables(double cover, int n, double k) {
        assertEquals(k, ToleranceFactor.oneSide(n, cover, 0.95), 0.0011);
    }

    /** Two readings, half covered, on one side: δ is nought, so k is Student's t with one degree of freedom over √2. */
    @Test
    void halfTheTwoPartsIsStudents() {
        assertEquals(Math.tan(Math.PI * 0.45) / Math.sqrt(2), ToleranceFactor.oneSide(2, 0.5, 0.95), 1e-9);
    }

    @Test
    void oneReadingHasNoFactor() {
        assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.bothSides(1, 0.9, 0.9));
        assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.oneSide(1, 0.9, 0.9));
        assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.oneSide(5, 1, 0.9));
    }
}
