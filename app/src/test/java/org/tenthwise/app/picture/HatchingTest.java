package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class HatchingTest {

    private static final List<Point> SQUARE = new Box(0, 0, 100, 100).corners();
    private static final List<Point> HOLE = new Box(40, 40, 60, 60).corners();

    @Test
    void linesStayInsideTheArea() {
        assertTrue(Hatching.lines(List.of(SQUARE), 45, 10).stream()
                .allMatch(line -> new Box(0, 0, 100, 100).grown(1e-9).holds(line.bounds())));
    }

    /** The area of a square is the spacing times the length of its hatch, as the spacing gets small. */
    @Test
    void theLengthOfTheLinesMakesUpTheArea() {
        assertEquals(10_000, length(Hatching.lines(List.of(SQUARE), 45, 0.5)) * 0.5, 50);
    }

    @Test
    void aHoleIsLeftOpen() {
        assertEquals(9_600, length(Hatching.lines(List.of(SQUARE, HOLE), 30, 0.5)) * 0.5, 60);
    }

    @Test
    void linesRiseToTheRightAtAPositiveAngle() {
        Shape.Polyline line = Hatching.lines(List.of(SQUARE), 45, 10).get(5);
        double dx = line.points().get(1).x() - line.points().get(0).x();
        double dy = line.points().get(1).y() - line.points().get(0).y();
        assertEquals(-1, dy / dx, 1e-9);
    }

    private static double length(List<Shape.Polyline> lines) {
        return lines.stream()
                .mapToDouble(
                        line -> line.points().get(0).distanceTo(line.points().get(1)))
                .sum();
    }
}
