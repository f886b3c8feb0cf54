package org.tenthwise.model.compute.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NonCentralTTest {

    /**
     * By another way to the same probability: the series of incomplete beta functions of R. V. Lenth, Algorithm AS 243,
     * Applied Statistics 38 (1989) 185, summed with mpmath 1.3.0 to 40 figures.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # t, degrees of freedom, delta, P(T > t)
            0.5,   1,    0.5,  0.54013980592346
            3,     1,    2,    0.47514283826631
            -1,    1,    0.5,  0.86907412660827
            2.5,   2,    -1,   0.010583471523615
            4,     3,    2.5,  0.27199301576158
            10,    3,    7,    0.31442540764719
            -3,    5,    -1.2, 0.88982773969812
            6,     9,    4.2,  0.17091111761528
            0.001, 10,   0.7,  0.75773168161856
            30,    19,   25,   0.17674548897929
            2.1,   30,   0,    0.022121235631162
            1.5,   40,   3,    0.93170136553894
            60,    50,   50,   0.052029579511137
            95,    99,   90,   0.24447759434956
            12,    200,  11.3, 0.27868937758653
            3.2,   1000, 2.9,  0.38268519578326
            """)
    void theProbabilityIsThatOfTheSeries(double t, int degreesOfFreedom, double delta, double probability) {
        assertEquals(probability, new NonCentralT(degreesOfFreedom).above(t, delta), 2e-12);
    }

    @ParameterizedTest
    @CsvSource({"1, 0.3", "1, 40", "2, -1.5", "7, 2.2", "60, 1.98", "5000, 0.01"})
    void withTheMeanAtZeroItIsStudents(int degreesOfFreedom, double t) {
        assertEquals(
                TDistribution.of(degreesOfFreedom).survivalProbability(t),
                new NonCentralT(degreesOfFreedom).above(t, 0),
                2e-12);
    }

    @ParameterizedTest
    @CsvSource({"1, 0.3", "9, -2", "400, 3"})
    void aboveZeroItIsNormal(int degreesOfFreedom, double delta) {
        NormalDistribution normal = NormalDistribution.of(0, 1);
        assertEquals(normal.cumulativeProbability(delta), new NonCentralT(degreesOfFreedom).above(0, delta), 1e-15);
        assertEquals(normal.cumulativeProbability(delta), new NonCentralT(degreesOfFreedom).above(1e-12, delta), 1e-11);
    }

    /**
     * P(T > t) for t and delta without end, in a fixed proportion, is P(V &lt; delta / t): 0.75² chi-square units of 4.
     */
    @Test
    void farOutOnlyTheSpreadOfTheSpreadIsLeft() {
        double far = 1 - Math.exp(-9.0 / 8) * (1 + 9.0 / 8);
        assertEquals(far, new NonCentralT(4).above(4e9, 3e9), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 5, 0.05",
        "1, -3, 0.999",
        "4, 0, 0.5",
        "19, 20.571, 0.05",
        "99, 300, 0.975",
        "9, -0.4, 1e-6",
        "2000, 4000, 0.01"
    })
    void theWayBackLeadsBack(int degreesOfFreedom, double t, double probability) {
        NonCentralT distribution = new NonCentralT(degreesOfFreedom);
        assertEquals(probability, distribution.above(t, distribution.deltaExceeding(t, probability)), 1e-11);
        assertEquals(probability, distribution.above(distribution.exceeded(probability, t), t), 1e-11);
    }
}
