package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RowsInSightTest {

    private final RowsInSight rows = new RowsInSight();

    /** Twenty rows, six in sight. */
    private void inHand(int row) {
        rows.show(20, row);
        rows.fit(6);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "4, 0", "5, 3", "12, 10", "19, 14"})
    void theRowInHandIsInSightWithTheNext(int row, int first) {
        inHand(row);
        assertEquals(first, rows.first());
        assertEquals(6, rows.number());
    }

    @Test
    void theyStayWhereTheyAreWhileTheRowInHandIsToBeSeenThere() {
        inHand(5);
        inHand(7);
        assertEquals(3, rows.first());
    }

    @Test
    void turnedByHandTheyStayUntilAnotherRowIsInHand() {
        inHand(0);
        rows.turn(1);
        inHand(0);
        assertEquals(6, rows.first());
        inHand(1);
        assertEquals(0, rows.first());
    }

    @Test
    void theyStopAtBothEnds() {
        inHand(0);
        assertTrue(rows.isAtTheFirst());
        assertFalse(rows.isAtTheLast());
        for (int i = 0; i < 4; i++) {
            rows.turn(1);
        }
        assertEquals(14, rows.first());
        assertTrue(rows.isAtTheLast());
        rows.turn(-1);
        assertEquals(8, rows.first());
    }

    @Test
    void withLessRoomTheRowInHandIsSoughtAgain() {
        inHand(4);
        rows.fit(3);
        assertEquals(3, rows.first());
        assertEquals(3, rows.number());
        rows.fit(0);
        assertEquals(4, rows.first());
        assertEquals(1, rows.number());
    }

    @Test
    void withRoomForAllTheFirstIsTheFirst() {
        inHand(19);
        rows.fit(40);
        assertEquals(0, rows.first());
        assertEquals(20, rows.number());
        assertTrue(rows.isAtTheFirst() && rows.isAtTheLast());
    }
}
