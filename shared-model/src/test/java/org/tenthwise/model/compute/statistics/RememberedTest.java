package org.tenthwise.model.compute.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RememberedTest {

    private final List<Integer> workedOut = new ArrayList<>();
    private final Remembered<Integer, Integer> squares = new Remembered<>(number -> {
        workedOut.add(number);
        if (number < 0) {
            throw new IllegalArgumentException("below zero");
        }
        return number * number;
    });

    @Test
    void whatIsAskedAgainIsNotWorkedOutAgain() {
        assertEquals(List.of(9, 16, 9), List.of(squares.of(3), squares.of(4), squares.of(3)));
        assertEquals(List.of(3, 4), workedOut);
    }

    @Test
    void whatWasNotAskedForLongestGoesFirst() {
        for (int number = 0; number < Remembered.MOST; number++) {
            squares.of(number);
        }
        squares.of(0);
        squares.of(Remembered.MOST);
        workedOut.clear();
        assertEquals(List.of(0, 1), List.of(squares.of(0), squares.of(1)));
        assertEquals(List.of(1), workedOut);
    }

    @Test
    void aRefusalIsNotKept() {
        assertThrows(IllegalArgumentException.class, () -> squares.of(-1));
        assertThrows(IllegalArgumentException.class, () -> squares.of(-1));
        assertEquals(List.of(-1, -1), workedOut);
    }
}
