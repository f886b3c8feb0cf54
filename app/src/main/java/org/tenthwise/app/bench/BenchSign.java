package org.tenthwise.app.bench;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Stroke;

/** The drawn sign of a bench sum on its key, in a box of 96 by 56 in the middle of its room. */
public record BenchSign(BenchKind kind, String spoken) implements Picture {

    private static final double WIDTH = 96;
    private static final double HEIGHT = 56;

    @Override
    public void draw(Drawing drawing) {
        double scale = Math.min(drawing.frame().width() / WIDTH, drawing.frame().height() / HEIGHT);
        Sketch sketch = new Sketch(
                drawing,
                scale,
                (drawing.frame().width() - WIDTH * scale) / 2,
                (drawing.frame().height() - HEIGHT * scale) / 2);
        switch (kind) {
            case WIRES -> wires(sketch);
            case NEXT_CUT -> nextCut(sketch);
            case RUN_OUT -> runOut(sketch);
            case FIT -> fit(sketch);
            case TEMPERATURE -> temperature(sketch);
            case DRILL_SET -> drills(sketch);
            case THREAD_LIMITS -> threadLimits(sketch);
            case ZONE -> zone(sketch);
        }
    }

    /** Three wires in the grooves of a thread. */
    private static void wires(Sketch sketch) {
        sketch.thick(Role.LINE, 2, 44, 10, 22, 18, 22, 30, 48, 36, 48, 48, 22, 56, 22, 68, 48, 74, 48, 86, 22, 94, 22);
        sketch.ring(33, 32, 9);
        sketch.ring(71, 32, 9);
    }

    /** A surface, the finished line under it, and the tool that takes the rest. */
    private static void nextCut(Sketch sketch) {
        sketch.area(Role.ZONE, 4, 30, 60, 30, 60, 52, 4, 52);
        sketch.thick(Role.LINE, 4, 18, 60, 18, 60, 52);
        sketch.thin(Role.LINE, 4, 30, 60, 30);
        sketch.thick(Role.ACCENT, 82, 4, 82, 22);
        sketch.area(Role.ACCENT, 74, 18, 90, 18, 82, 30);
        sketch.thin(Role.LINE, 64, 30, 94, 30);
    }

    /** Work off the centre of its turning. */
    private static void runOut(Sketch sketch) {
        sketch.thinRing(48, 28, 25);
        sketch.ring(52, 25, 19);
        sketch.thin(Role.LINE, 20, 28, 76, 28);
        sketch.thin(Role.LINE, 48, 1, 48, 55);
        sketch.dot(52, 25, 3);
    }

    /** A plug half in its bore. */
    private static void fit(Sketch sketch) {
        sketch.thick(Role.LINE, 4, 12, 56, 12, 56, 3);
        sketch.thick(Role.LINE, 4, 44, 56, 44, 56, 53);
        sketch.thick(Role.ACCENT, 92, 16, 30, 16, 30, 41, 92, 41);
        sketch.thin(Role.LINE, 2, 28, 94, 28);
    }

    /** A rod cold, and the same rod warm. */
    private static void temperature(Sketch sketch) {
        sketch.thick(Role.LINE, 6, 8, 70, 8, 70, 22, 6, 22, 6, 8);
        sketch.thick(Role.ACCENT, 6, 34, 86, 34, 86, 48, 6, 48, 6, 34);
        sketch.thin(Role.LINE, 70, 22, 70, 34);
        sketch.thin(Role.LINE, 86, 8, 86, 34);
    }

    /** A deep hole in three stages. */
    private static void drills(Sketch sketch) {
        sketch.thick(Role.LINE, 8, 4, 8, 16, 82, 16, 90, 28, 82, 40, 8, 40, 8, 52);
        sketch.thick(Role.ACCENT, 8, 22, 26, 22, 31, 28, 26, 34, 8, 34);
        sketch.thin(Role.LINE, 34, 8, 34, 48);
        sketch.thin(Role.LINE, 62, 8, 62, 48);
    }

    /** One ridge of a thread between its greatest and its least. */
    private static void threadLimits(Sketch sketch) {
        sketch.area(
                Role.ZONE, 4, 46, 26, 46, 40, 10, 56, 10, 70, 46, 92, 46, 92, 54, 64, 54, 51, 20, 45, 20, 32, 54, 4,
                54);
        sketch.thick(Role.LINE, 4, 46, 26, 46, 40, 10, 56, 10, 70, 46, 92, 46);
        sketch.thin(Role.ACCENT, 4, 54, 32, 54, 45, 20, 51, 20, 64, 54, 92, 54);
    }

    /** Two zones on a nominal line. */
    private static void zone(Sketch sketch) {
        sketch.area(Role.ZONE, 18, 10, 40, 10, 40, 30, 18, 30);
        sketch.thick(Role.LINE, 18, 10, 40, 10, 40, 30, 18, 30, 18, 10);
        sketch.area(Role.ZONE, 56, 36, 78, 36, 78, 50, 56, 50);
        sketch.thick(Role.ACCENT, 56, 36, 78, 36, 78, 50, 56, 50, 56, 36);
        sketch.thin(Role.LINE, 4, 30, 92, 30);
    }

    /** Draws in the box of the sign. */
    private record Sketch(Drawing drawing, double scale, double left, double top) {

        private static final Stroke THICK = Stroke.OUTLINE;

        void thick(Role role, double... places) {
            drawing.chain(points(places), THICK, role);
        }

        void thin(Role role, double... places) {
            drawing.chain(points(places), Stroke.THIN, role);
        }

        void area(Role role, double... places) {
            drawing.area(points(places), role);
        }

        void ring(double x, double y, double radius) {
            drawing.disc(points(x, y).get(0), radius * scale, drawing.frame().ground());
            drawing.circle(points(x, y).get(0), radius * scale, THICK, Role.ACCENT);
        }

        void thinRing(double x, double y, double radius) {
            drawing.circle(points(x, y).get(0), radius * scale, THICK, Role.LINE);
        }

        void dot(double x, double y, double radius) {
            drawing.disc(points(x, y).get(0), radius * scale, Role.ACCENT);
        }

        private List<Point> points(double... places) {
            List<Point> points = new ArrayList<>();
            for (int i = 0; i + 1 < places.length; i += 2) {
                points.add(new Point(left + places[i] * scale, top + places[i + 1] * scale));
            }
            return points;
        }
    }
}
