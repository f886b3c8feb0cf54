package org.tenthwise.model.compute.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.compute.statistics.GaugeStudy.Interaction;

class GaugeStudyTest {

    /**
     * By hand: sums of squares of parts 8, persons 0, interaction 2, error 0.08; F of the interaction 100 with 1 and 4
     * degrees of freedom.
     */
    @Test
    void aSignificantInteractionCountsWithTheReproducibility() {
        GaugeStudy study = GaugeByVariance.of(readings("1.0 1.2 | 2.0 2.2", "4.0 4.2 | 3.0 3.2"));
        assertEquals(Interaction.KEPT, study.interaction());
        assertEquals(Math.sqrt(0.02), study.repeatability(), 1e-14);
        assertEquals(Math.sqrt(0.99), study.reproducibility(), 1e-14);
        assertEquals(Math.sqrt(1.5), study.part(), 1e-14);
        assertTrue(study.cutAtZero());
    }

    /**
     * By hand: readings 10 ± 5 by part, ± 3 by person, ± 1 by both, ± 0.1 by repeat. Mean squares 200, 72, 8 and 0.02,
     * so repeatability² 0.02, interaction² (8 - 0.02)/2, persons² (72 - 8)/4, part² (200 - 8)/4.
     */
    @Test
    void personsAndPartsAreSetAgainstTheInteractionWhereItIsKept() {
        GaugeStudy study = GaugeByVariance.of(readings("18.9 19.1 | 10.9 11.1", "6.9 7.1 | 2.9 3.1"));
        assertEquals(Interaction.KEPT, study.interaction());
        assertEquals(Math.sqrt(0.02), study.repeatability(), 1e-12);
        assertEquals(Math.sqrt(3.99 + 16), study.reproducibility(), 1e-12);
        assertEquals(Math.sqrt(48), study.part(), 1e-12);
        assertFalse(study.cutAtZero());
    }

    /**
     * The same with repeats of ± 1.4 and ± 1.5: F of the interaction is 2.041 and 1.778, with 1 and 4 degrees of
     * freedom. A quarter lies above t² = 1.344² = 1.807: Student's t of 4 degrees of freedom, 87.5 %, Fisher and Yates,
     * Statistical Tables, 6th ed., Table III.
     */
    @Test
    void theInteractionIsKeptToAQuarterAndPooledBeyond() {
        GaugeStudy kept = GaugeByVariance.of(readings("17.6 20.4 | 9.6 12.4", "5.6 8.4 | 1.6 4.4"));
        assertEquals(Interaction.KEPT, kept.interaction());
        assertEquals(Math.sqrt(3.92), kept.repeatability(), 1e-12);
        GaugeStudy pooled = GaugeByVariance.of(readings("17.5 20.5 | 9.5 12.5", "5.5 8.5 | 1.5 4.5"));
        assertEquals(Interaction.POOLED, pooled.interaction());
        assertEquals(Math.sqrt((18 + 8) / 5.0), pooled.repeatability(), 1e-12);
        assertEquals(Math.sqrt((72 - 5.2) / 4), pooled.reproducibility(), 1e-12);
        assertEquals(Math.sqrt((200 - 5.2) / 4), pooled.part(), 1e-12);
    }

    /** By hand: s of the gauge from pairs is √(Σd²/2m) = √(0.05/6), NIST/SEMATECH e-Handbook 2.4.4. */
    @Test
    void onePersonHasRepeatabilityOnly() {
        GaugeStudy study = GaugeByVariance.of(readings("10.0 10.2", "11.0 11.0", "12.1 12.0"));
        assertEquals(Math.sqrt(0.05 / 6), study.repeatability(), 1e-14);
        assertEquals(0, study.reproducibility());
        assertEquals(Interaction.NOT_SOUGHT, study.interaction());
        GaugeStudy byRange = GaugeByRange.of(readings("10.0 10.2", "11.0 11.0", "12.1 12.0"));
        assertEquals(0.8862 * 0.1, byRange.repeatability(), 1e-14);
        assertEquals(0.5231 * 1.95, byRange.part(), 1e-14);
        assertEquals(0, byRange.reproducibility());
    }

    @Test
    void readingsAllAlikeHaveNoShares() {
        for (GaugeStudy study : List.of(
                GaugeByVariance.of(readings("5 5 | 5 5", "5 5 | 5 5")),
                GaugeByRange.of(readings("5 5 | 5 5", "5 5 | 5 5")))) {
            assertEquals(0, study.total());
            assertTrue(study.percentOfTotal().isEmpty());
            assertTrue(study.distinct().isEmpty());
        }
    }

    @Test
    void aPerfectGaugeHasNoNumberOfDistinctParts() {
        GaugeStudy study = GaugeByVariance.of(readings("5.1 5.1 5.1 | 5.1 5.1 5.1", "5.3 5.3 5.3 | 5.3 5.3 5.3"));
        assertEquals(0, study.gauge());
        assertTrue(study.distinct().isEmpty());
        assertEquals(0, study.percentOfTotal().orElseThrow());
        assertEquals(Math.sqrt(0.02), study.part(), 1e-15);
        assertFalse(study.cutAtZero());
    }

    /** Six standard deviations of the gauge against the tolerance. */
    @Test
    void theGaugeIsSetAgainstTheTolerance() {
        GaugeStudy study = new GaugeStudy(0.003, 0.004, 0.012, Interaction.NOT_SOUGHT, false);
        assertEquals(0.005, study.gauge(), 1e-15);
        assertEquals(0.013, study.total(), 1e-15);
        assertEquals(30, study.percentOfTolerance(0.1), 1e-12);
        assertEquals(1.41 * 12 / 5, study.distinct().orElseThrow(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> study.percentOfTolerance(0));
    }

    @Test
    void everyPersonReadsEveryPartEquallyOften() {
        assertThrows(IllegalArgumentException.class, () -> readings("1 2 | 1 2"));
        assertThrows(IllegalArgumentException.class, () -> readings("1 | 2", "1 | 2"));
        assertEquals(
                "Each of the 2 persons must read each of the 2 parts 2 times, as the first did the first",
                assertThrows(IllegalArgumentException.class, () -> readings("1 2 | 1 2", "1 2 | 1 2 3"))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> readings("1 2 | 1 2", "1 2"));
        assertThrows(IllegalArgumentException.class, () -> new GaugeReadings(List.of(List.of(), List.of())));
    }

    private static GaugeReadings readings(String... parts) {
        return new GaugeReadings(Arrays.stream(parts)
                .map(part -> Arrays.stream(part.split("\\|")).map(Decimals::of).toList())
                .<List<List<BigDecimal>>>map(part -> part)
                .toList());
    }
}
