package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.model.plan.Outline;

/** A stretch of a part: above the axis cut and hatched, below it seen from outside, broken off where it goes on. */
record PartDrawing(
        Outline outline, Drawing drawing, HalfSection section, boolean isBrokenAtLeft, boolean isBrokenAtRight) {

    private static final double OVERHANG = 12;
    private static final double TOOTH = 6;

    void draw() {
        List<List<Point>> rings = new ArrayList<>(List.of(section.cut()));
        outline.crossHoles().forEach(hole -> rings.add(section.hole(hole).corners()));
        drawing.metal(rings);
        inside();
        for (boolean above : new boolean[] {true, false}) {
            drawing.chain(section.outside(above), Stroke.OUTLINE, Role.LINE);
        }
        end(section.box().left(), isBrokenAtLeft);
        end(section.box().right(), isBrokenAtRight);
        outline.crossHoles().forEach(hole -> OutlinePicture.hole(drawing, section.hole(hole)));
        seen();
        drawing.across(
                section.axis(),
                section.box().left() - OVERHANG,
                section.box().right() + OVERHANG,
                Stroke.CENTRE,
                Role.LINE);
    }

    private void inside() {
        List<Point> inside = section.inside();
        if (inside.isEmpty()) {
            return;
        }
        OutlinePicture.surface(drawing, inside, section.axis());
        OutlinePicture.edgesToAxis(drawing, inside, section.axis());
        for (Point end : List.of(inside.get(0), inside.get(inside.size() - 1))) {
            boolean within = end.x() > section.box().left() + 0.01
                    && end.x() < section.box().right() - 0.01;
            if (within && end.y() < section.axis()) {
                drawing.line(end, new Point(end.x(), section.axis()), Stroke.OUTLINE, Role.LINE);
            }
        }
    }

    /** From the outside down to the axis and on to the outside, or a break line. */
    private void end(double x, boolean broken) {
        double radius = section.outsideRadius(x);
        double axis = section.axis();
        if (broken) {
            drawing.chain(
                    List.of(
                            new Point(x, axis - radius),
                            new Point(x, axis - radius * 0.5 - TOOTH),
                            new Point(x - TOOTH, axis - radius * 0.5 - TOOTH / 3),
                            new Point(x + TOOTH, axis - radius * 0.5 + TOOTH / 3),
                            new Point(x, axis - radius * 0.5 + TOOTH),
                            new Point(x, axis + radius)),
                    Stroke.THIN,
                    Role.LINE);
        } else {
            drawing.down(x, axis - radius, axis + radius, Stroke.OUTLINE, Role.LINE);
        }
    }

    private void seen() {
        for (int i = 1; i + 1 < outline.outside().size(); i++) {
            Point edge = section.point(outline.outside().get(i), false);
            drawing.line(new Point(edge.x(), section.axis()), edge, Stroke.NEIGHBOUR, Role.LINE);
        }
        outline.pockets().forEach(pocket -> {
            List<Point> rim = OutlinePicture.rim(section.pocket(pocket), pocket.rounded());
            drawing.area(rim, drawing.frame().ground());
            drawing.ring(rim, Stroke.OUTLINE, Role.LINE);
        });
    }
}
