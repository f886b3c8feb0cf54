package org.tenthwise.app.picture;

import java.util.List;

/** The screen of a run in its main parts, each with a number: what the numbers mean is said beside it. */
public record RunScreenSketch(String spoken) implements Picture {

    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double NUMBER = 26;

    /** A part of the screen, in pixels of the reference size. */
    private record Area(double left, double top, double right, double bottom) {}

    private static final Area HEADING = new Area(0, 0, 1280, 66);
    private static final Area LIST = new Area(0, 66, 248, 800);
    private static final Area CHECK = new Area(248, 66, 928, 214);
    private static final Area DRAWING = new Area(248, 214, 928, 618);
    private static final Area VERDICT = new Area(248, 618, 928, 718);
    /** What is asked and the figure, over the pad. */
    private static final Area READOUT = new Area(928, 66, 1280, 206);

    private static final Area COMMIT = new Area(1052, 622, 1268, 718);
    private static final Area MIDDLE_KEY = new Area(596, 726, 752, 792);
    private static final Area FOOT = new Area(248, 718, 1280, 800);

    @Override
    public void draw(Drawing drawing) {
        Box room = drawing.frame().box();
        double scale = Math.min(room.width() / WIDTH, room.height() / HEIGHT);
        Point corner = new Point(room.centreX() - WIDTH * scale / 2, room.centreY() - HEIGHT * scale / 2);
        drawing.area(points(new Area(248, 66, 928, 718), corner, scale), Role.SHEET);
        for (int key = 0; key < 12; key++) {
            double left = 940 + key % 3 * 112.0;
            double top = 206 + key / 3 * 104.0;
            outline(drawing, new Area(left, top, left + 104, top + 96), corner, scale, Stroke.RULE);
        }
        for (double left : new double[] {260, 428, 596, 764, 940, 1108}) {
            outline(drawing, new Area(left, 726, left + 156, 792), corner, scale, Stroke.RULE);
        }
        drawing.area(points(COMMIT, corner, scale), Role.ACCENTFILL);
        for (Area area : List.of(HEADING, LIST, CHECK, DRAWING, VERDICT, FOOT)) {
            outline(drawing, area, corner, scale, Stroke.THIN);
        }
        outline(drawing, new Area(0, 0, WIDTH, HEIGHT), corner, scale, Stroke.OUTLINE);
        List<Area> numbered = List.of(HEADING, LIST, CHECK, DRAWING, VERDICT, READOUT, COMMIT, MIDDLE_KEY);
        for (int i = 0; i < numbered.size(); i++) {
            number(drawing, i + 1, numbered.get(i), corner, scale);
        }
    }

    private static void number(Drawing drawing, int number, Area area, Point corner, double scale) {
        boolean commit = area == COMMIT;
        Label label = Label.of(String.valueOf(number), NUMBER, commit ? Role.ONACCENT : Role.ACCENT)
                .bold();
        Point centre = corner.plus((area.left() + area.right()) / 2 * scale, (area.top() + area.bottom()) / 2 * scale);
        drawing.text(label, centre, Anchor.CENTRE);
    }

    private static void outline(Drawing drawing, Area area, Point corner, double scale, Stroke stroke) {
        List<Point> points = points(area, corner, scale);
        for (int i = 0; i < points.size(); i++) {
            drawing.line(points.get(i), points.get((i + 1) % points.size()), stroke, Role.LINE);
        }
    }

    private static List<Point> points(Area area, Point corner, double scale) {
        return List.of(
                corner.plus(area.left() * scale, area.top() * scale),
                corner.plus(area.right() * scale, area.top() * scale),
                corner.plus(area.right() * scale, area.bottom() * scale),
                corner.plus(area.left() * scale, area.bottom() * scale));
    }
}
