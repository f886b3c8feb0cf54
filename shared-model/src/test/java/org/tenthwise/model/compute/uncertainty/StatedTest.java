package org.tenthwise.model.compute.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class StatedTest {

    /** 2 · √(0.33² + 0.29² + 0.25²) = 1.0087, by hand, rounded up as JCGM 100, 7.2.6 allows. */
    @Test
    void anExpandedUncertaintyHasTwoFiguresAndIsRoundedUp() {
        Stated stated = Stated.of(Budget.of(List.of(known("0.33"), known("0.29"), known("0.25"))));
        assertEquals(new BigDecimal("1.1"), stated.expanded());
        assertEquals(new BigDecimal("2.00"), stated.coverageFactor());
    }

    @Test
    void whatIsWholeIsNotRoundedUp() {
        assertEquals(
                0,
                new BigDecimal("0.003")
                        .compareTo(
                                Stated.of(Budget.of(List.of(known("0.0015")))).expanded()));
    }

    @Test
    void nothingCannotBeStated() {
        Budget none = Budget.of(List.of(known("0")));
        assertThrows(IllegalArgumentException.class, () -> Stated.of(none));
    }

    private static Component known(String standard) {
        return Component.normal(new BigDecimal(standard), BigDecimal.ONE);
    }
}
