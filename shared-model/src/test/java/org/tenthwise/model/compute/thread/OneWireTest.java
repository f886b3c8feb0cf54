package org.tenthwise.model.compute.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class OneWireTest {

    private static Length in(String figure) {
        return Length.of(figure, Unit.INCH);
    }

    /** By hand: 2 · 1.1374 − 1.1250. */
    @Test
    void twiceTheReadingLessTheCrestIsOverWires() {
        assertEquals(in("1.1498"), OneWire.overWires(in("1.1374"), in("1.1250")));
    }

    @Test
    void sizesOfZeroAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> OneWire.overWires(Length.ZERO, in("1")));
        assertThrows(IllegalArgumentException.class, () -> OneWire.overWires(in("1"), Length.ZERO));
    }
}
