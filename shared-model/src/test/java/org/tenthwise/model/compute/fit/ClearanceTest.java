package org.tenthwise.model.compute.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.NoSuchElementException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class ClearanceTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # published limits: Shigley's Mechanical Engineering Design, 9th ed., Example 7-7, 34H11/c11
        MILLIMETRE, 34.160, 34.000, 33.880, 33.720, 0.440,   0.120,   CLEARANCE
        # published interference 0.0007 to 0.0023 in: Shigley's Mechanical Engineering Design, instructor's solutions,
        # Problem 7-24, 1.5 in H7/s6; its limits from memory
        INCH,       1.5010, 1.5000, 1.5023, 1.5017, -0.0007, -0.0023, INTERFERENCE
        # published: National Instructional Media Institute, CITS Engineering Drawing, p. 232, 20H7/g6 has 0.007 to
        # 0.041
        MILLIMETRE, 20.021, 20.000, 19.993, 19.980, 0.041,   0.007,   CLEARANCE
        # constructed from the formula with 30H7 and k6 of ISO 286-2
        MILLIMETRE, 30.021, 30.000, 30.015, 30.002, 0.019,   -0.015,  TRANSITION
        """)
    void playIsBoreLessPlugAtItsMostAndLeast(
            Unit unit,
            String boreGreatest,
            String boreLeast,
            String plugGreatest,
            String plugLeast,
            String greatest,
            String least,
            FitKind kind) {
        Clearance clearance = Clearance.of(
                List.of(Length.of(boreLeast, unit), Length.of(boreGreatest, unit)),
                List.of(Length.of(plugGreatest, unit), Length.of(plugLeast, unit)));
        assertEquals(new Clearance(Length.of(greatest, unit), Length.of(least, unit)), clearance);
        assertEquals(kind, clearance.kind());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # extreme cases as ISO 286-1 defines the kinds: size for size at one end does not make a fit a transition
        0.010,  0,      CLEARANCE
        0,      -0.010, INTERFERENCE
        0,      0,      CLEARANCE
        0.001,  -0.001, TRANSITION
        """)
    void sizeForSizeBelongsToTheKindOnItsOtherSide(String greatest, String least, FitKind kind) {
        assertEquals(kind, new Clearance(mm(greatest), mm(least)).kind());
    }

    @Test
    void oneBoreAndOnePlugHaveOneClearance() {
        assertEquals(new Clearance(mm("0.02"), mm("0.02")), Clearance.of(List.of(mm("20.01")), List.of(mm("19.99"))));
    }

    @Test
    void nothingMeasuredHasNoClearance() {
        assertThrows(NoSuchElementException.class, () -> Clearance.of(List.of(), List.of(mm("19.99"))));
        assertThrows(IllegalArgumentException.class, () -> new Clearance(mm("0"), mm("0.001")));
    }
}
