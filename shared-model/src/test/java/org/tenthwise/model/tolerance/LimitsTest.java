package org.tenthwise.model.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

class LimitsTest {

    private static final Written LOWER = new Written("29.98", Unit.MILLIMETRE);
    private static final Written UPPER = new Written("30.001", Unit.MILLIMETRE);

    @Test
    void limitsTheWrongWayRoundAreRefusedWithBothFigures() {
        assertEquals(
                "Upper limit 29.98 mm is below lower limit 30.001 mm",
                assertThrows(IllegalArgumentException.class, () -> Limits.between(UPPER, LOWER))
                        .getMessage());
    }

    @Test
    void noLimitAtAllIsRefused() {
        assertEquals(
                "Limits need a lower or an upper limit",
                assertThrows(IllegalArgumentException.class, () -> new Limits(Optional.empty(), Optional.empty()))
                        .getMessage());
    }

    @Test
    void equalLimitsLeaveOneSize() {
        assertEquals(Optional.of(Length.ZERO), Limits.between(LOWER, LOWER).width());
    }

    @Test
    void widthAndMiddleAreExact() {
        Limits limits = Limits.between(LOWER, UPPER);
        assertEquals(Optional.of(Length.of("0.021", Unit.MILLIMETRE)), limits.width());
        assertEquals(Length.of("29.9905", Unit.MILLIMETRE), limits.middle());
    }

    @Test
    void oneLimitHasNoWidthAndIsItsOwnMiddle() {
        Limits limits = Limits.atMost(UPPER);
        assertEquals(Optional.empty(), limits.width());
        assertEquals(UPPER.length(), limits.middle());
        assertEquals(Optional.empty(), limits.at(Limit.LOWER));
        assertEquals(Optional.of(UPPER), limits.at(Limit.UPPER));
    }

    @Test
    void placesAreThoseOfTheFinerFigure() {
        assertEquals(3, Limits.between(LOWER, UPPER).places());
        assertEquals(Unit.MILLIMETRE, Limits.between(LOWER, UPPER).unit());
        assertEquals(Unit.INCH, Limits.atMost(new Written("0.0005", Unit.INCH)).unit());
    }

    @Test
    void limitsAreComparedAcrossUnits() {
        Written oneInch = new Written("1.000", Unit.INCH);
        assertEquals(
                Optional.of(Length.ZERO),
                Limits.between(oneInch, new Written("25.4", Unit.MILLIMETRE)).width());
        assertThrows(
                IllegalArgumentException.class, () -> Limits.between(oneInch, new Written("25.3", Unit.MILLIMETRE)));
    }

    @Test
    void eachLimitHasTheOtherForItsOther() {
        assertEquals(Limit.UPPER, Limit.LOWER.other());
        assertEquals(Limit.LOWER, Limit.UPPER.other());
    }
}
