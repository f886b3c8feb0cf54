package org.tenthwise.model.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;

/** Limits 29.979 to 30.000: the middle is 29.9895, a third of the tolerance 0.007. */
class AimTest {

    private static final Limits LIMITS = Limits.between(mm("29.979"), mm("30.000"));

    private static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # aim,  metal is left beyond the limit, size
        middle, LOWER, 29.9895
        middle, UPPER, 29.9895
        third,  LOWER, 29.986
        third,  UPPER, 29.993
        """)
    void aWordStandsForAPlaceBetweenTheLimits(String key, Limit metalSide, String size) {
        assertEquals(
                Length.of(size, Unit.MILLIMETRE), Aim.ofKey(key).orElseThrow().of(LIMITS, metalSide));
    }

    @Test
    void aSizeIsTheAimItselfWhereverMetalIsLeft() {
        assertEquals(mm("29.995").length(), new Aim.Size(mm("29.995")).of(LIMITS, Limit.UPPER));
    }

    @Test
    void anyOtherWordIsNoAim() {
        assertEquals(Optional.empty(), Aim.ofKey("half"));
    }
}
