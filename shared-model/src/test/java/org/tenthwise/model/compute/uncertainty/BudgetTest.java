package org.tenthwise.model.compute.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BudgetTest {

    private static BigDecimal of(String figure) {
        return new BigDecimal(figure);
    }

    /**
     * talalspecialbolt.com, page on the GUM, example of a micrometer at 21.5 mm, read November 2026, in micrometres:
     * 0.33, 0.29 and 0.25 give 0.51, and U is 1.0.
     */
    @Test
    void componentsAddUpAsSquares() {
        Budget budget = Budget.of(List.of(
                Component.repeat(of("0.58"), 3), Component.resolution(of("1")), Component.normal(of("0.5"), of("2"))));
        assertEquals(0.51, budget.standard(), 0.005);
        assertEquals(1.0, budget.expanded(), 0.05);
        assertEquals(new Coverage(2, Coverage.Rule.USUAL_TWO), budget.coverage());
    }

    /** National Physical Laboratory, Good Practice Guide 11, length of a string, from memory: 0.3, 2.5 and 0.7 mm. */
    @Test
    void eachKindHasItsDivisor() {
        assertEquals(0.3, Component.rectangular(of("0.5")).standard(), 0.05);
        assertEquals(2.5, Component.normal(of("5.0"), of("2")).standard(), 0);
        assertEquals(0.7, Component.repeat(of("2.1"), 10).standard(), 0.05);
        // JCGM 100:2008, 4.3.9: a / root 6; root 6 is 2.449490
        assertEquals(1, Component.triangular(of("2.449490")).standard(), 0.000001);
        // JCGM 100:2008, F.2.2.1: 0.29 d
        assertEquals(0.29, Component.resolution(of("1")).standard(), 0.005);
    }

    /**
     * JCGM 100:2008, H.1.3.4: 50 mm of end gauge, 2.9e-6 and 16.6e-6 as products of a sensitivity and its source, in
     * nanometres.
     */
    @Test
    void aSensitivityMultipliesWhateverItsSign() {
        // u(d alpha) = 0.58e-6 per degree with l theta = 50e6 nm * 0.1 degree: 2.9 nm
        assertEquals(
                2.9, Component.normal(of("0.58e-6"), of("1")).times(of("-5e6")).standard(), 1e-9);
        // u(d theta) = 0.029 degree with l alpha = 50e6 nm * 11.5e-6 per degree: 16.6 nm, as printed from 16.7
        // unrounded
        assertEquals(
                16.6, Component.normal(of("0.029"), of("1")).times(of("575")).standard(), 0.1);
    }

    /** Student's factor for 95.45 %: JCGM 100:2008, table G.2, and EA-4/02, table E.1, from memory. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        1,  13.97
        2,  4.53
        3,  3.31
        4,  2.87
        5,  2.65
        6,  2.52
        7,  2.43
        8,  2.37
        10, 2.28
        20, 2.13
        50, 2.05
        """)
    void fewReadingsTakeStudentsFactor(double degreesOfFreedom, double factor) {
        assertEquals(factor, Coverage.studentFactor(degreesOfFreedom), 0.005);
        assertEquals(factor, Coverage.studentFactor(degreesOfFreedom + 0.9), 0.005);
    }

    @Test
    void aScatterOfFewReadingsAloneHasItsOwnDegreesOfFreedom() {
        Budget budget = Budget.of(List.of(Component.repeat(of("1"), 4)));
        assertEquals(3, budget.effectiveDegreesOfFreedom().orElseThrow(), 1e-12);
        assertEquals(Coverage.Rule.FEW_READINGS, budget.coverage().rule());
        assertEquals(3.31 / 2, budget.expanded(), 0.005);
    }

    /**
     * JCGM 100:2008, H.1.6: 25, 9.7, 2.9 and 16.6 nm with 18, 25.6, 50 and 2 give 16; here the 25.6 is the 26 nearest
     * to it.
     */
    @Test
    void effectiveDegreesOfFreedomAreThoseOfTheEndGauge() {
        Budget budget = Budget.of(List.of(known("25", 18), known("9.7", 26), known("2.9", 50), known("16.6", 2)));
        assertEquals(32, budget.standard(), 0.5);
        assertEquals(16, Math.floor(budget.effectiveDegreesOfFreedom().orElseThrow()));
    }

    /**
     * A standard uncertainty with its degrees of freedom: a scatter that its own number of readings brings back to it.
     */
    private static Component known(String standard, int degreesOfFreedom) {
        Component one = Component.repeat(BigDecimal.ONE, degreesOfFreedom + 1);
        return one.times(BigDecimal.valueOf(Double.parseDouble(standard) / one.standard()));
    }

    /** EA-4/02, supplement 2, from memory: S9, multimeter, 1.65 and 0.05 V; S10, vernier caliper, 1.83 and 0.06 mm. */
    @Test
    void rectanglesThatOutweighTheRestTakeLessThanTwo() {
        Budget multimeter = Budget.of(List.of(
                Component.normal(of("0.002"), of("2")),
                Component.rectangular(of("0.011")),
                Component.resolution(of("0.1"))));
        assertEquals(Coverage.Rule.ONE_RECTANGLE, multimeter.coverage().rule());
        assertEquals(1.65, multimeter.coverage().factor(), 0.005);
        assertEquals(0.05, multimeter.expanded(), 0.005);
        Budget caliper = Budget.of(List.of(
                Component.rectangular(of("0.0008")),
                Component.rectangular(of("0.0035")),
                Component.resolution(of("0.05")),
                Component.rectangular(of("0.05"))));
        assertEquals(Coverage.Rule.TWO_RECTANGLES, caliper.coverage().rule());
        assertEquals(1.83, caliper.coverage().factor(), 0.005);
        assertEquals(0.06, caliper.expanded(), 0.005);
    }

    @Test
    void aRestOfMoreThanThreeTenthsTakesTwo() {
        // by hand: a rectangle of 1 and a rest of 0.31; with 0.30 the rectangle outweighs it
        Component rectangle = Component.rectangular(of("1.7320508"));
        assertEquals(
                Coverage.Rule.USUAL_TWO,
                Budget.of(List.of(rectangle, Component.normal(of("0.31"), of("1"))))
                        .coverage()
                        .rule());
        assertEquals(
                Coverage.Rule.ONE_RECTANGLE,
                Budget.of(List.of(rectangle, Component.normal(of("0.299"), of("1"))))
                        .coverage()
                        .rule());
    }

    @Test
    void nothingUncertainHasNoUncertainty() {
        Budget budget = Budget.of(List.of(Component.resolution(of("0")), Component.repeat(of("0"), 5)));
        assertEquals(0, budget.expanded());
        assertEquals(2, budget.coverage().factor());
        assertTrue(budget.effectiveDegreesOfFreedom().isEmpty());
    }

    @Test
    void whatIsNoComponentIsRefused() {
        assertEquals(
                "An uncertainty needs at least one component",
                assertThrows(IllegalArgumentException.class, () -> Budget.of(List.of()))
                        .getMessage());
        assertEquals(
                "value is -1: an uncertainty must not be less than zero",
                assertThrows(IllegalArgumentException.class, () -> Component.resolution(of("-1")))
                        .getMessage());
        assertEquals(
                "k is 0: a coverage factor must be more than zero",
                assertThrows(IllegalArgumentException.class, () -> Component.normal(of("1"), of("0")))
                        .getMessage());
        assertEquals(
                "n is 0: at least one reading is needed",
                assertThrows(IllegalArgumentException.class, () -> Component.repeat(of("1"), 0))
                        .getMessage());
    }
}
