package org.tenthwise.model.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The letters and what they mean: ISO 14405-1:2016, table 1 (from memory). */
class SizeModifierTest {

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # letters, size that is meant
        LP, EACH
        SA, MEAN
        SX, LARGEST
        SN, SMALLEST
        SR, RANGE
        """)
    void eachModifierMeansOneWayToMakeASizeOfReadings(SizeModifier modifier, Combine combine) {
        assertEquals(combine, modifier.combine());
        assertEquals(modifier, SizeModifier.of(combine));
    }
}
