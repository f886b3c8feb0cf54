package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The jaws around the ring of {@link RunOutPicture}, each with its move. */
final class RunOutJaws {

    private static final double DEPTH = 24;
    /** Half the width away from the work, and at the work. */
    private static final double WIDE = 29;

    private static final double NARROW = 21;
    private static final double GAP = 3;
    private static final double ARROW = 28;

    private final List<RunOutPicture.Jaw> jaws;
    private final Drawing drawing;
    private final FreeRoom room;
    private final Point centre;
    private final double reach;
    private final double scale;

    /** @param reach radius the jaws stay out of */
    RunOutJaws(List<RunOutPicture.Jaw> jaws, Drawing drawing, FreeRoom room, Point centre, double reach) {
        this.jaws = jaws;
        this.drawing = drawing;
        this.room = room;
        this.centre = centre;
        this.reach = reach;
        this.scale = scale(drawing.frame());
    }

    /** Jaws grow with the text, within bounds. */
    static double scale(Frame frame) {
        return Math.min(1.25, Math.max(0.62, frame.textScale()));
    }

    /** The greatest reach with which the jaws stay within {@code across} and {@code down} of the centre. */
    static double greatestReach(List<RunOutPicture.Jaw> jaws, Frame frame, double across, double down) {
        double greatest = Math.min(across, down);
        double scale = scale(frame);
        for (RunOutPicture.Jaw jaw : jaws) {
            double angle = Math.toRadians(jaw.at().doubleValue());
            double sin = Math.abs(Math.sin(angle));
            double cos = Math.abs(Math.cos(angle));
            double depth = DEPTH * scale + GAP;
            greatest = Math.min(greatest, cos < 0.01 ? greatest : (down - WIDE * scale * sin) / cos - depth);
            greatest = Math.min(greatest, sin < 0.01 ? greatest : (across - WIDE * scale * cos) / sin - depth);
        }
        return greatest;
    }

    /** Degrees a jaw covers at {@code reach}, to either side of its middle. */
    static double halfAngle(Frame frame, double reach) {
        return Math.toDegrees(Math.atan2(NARROW * scale(frame), reach));
    }

    /**
     * @param around which moves are said beside their jaws
     * @return whether every one of them found room for its words; the rest is left out once one has none
     */
    boolean draw(RunOutPicture.Around around) {
        jaws.forEach(this::jaw);
        return jaws.stream()
                .filter(jaw -> around.figures
                        && !jaw.words().isEmpty()
                        && (around.loosening || jaw.in().signum() > 0))
                .allMatch(this::move);
    }

    private void jaw(RunOutPicture.Jaw jaw) {
        List<Point> outline = outline(jaw);
        boolean goesIn = jaw.in().signum() > 0;
        drawing.area(outline, goesIn ? Role.ACCENTFILL : Role.PAPER);
        drawing.ring(outline, Stroke.NEIGHBOUR, goesIn ? Role.ACCENT : Role.LINE);
        drawing.text(
                Label.of(
                                jaw.number(),
                                Math.min(20, 20 * 1.25 / drawing.frame().textScale()),
                                goesIn ? Role.ONACCENT : Role.INK)
                        .bold(),
                middleOf(jaw),
                Anchor.CENTRE);
        room.take(new Shape.Polyline(outline, true).bounds().grown(2));
    }

    private Point middleOf(RunOutPicture.Jaw jaw) {
        return centre.polar(reach + GAP + DEPTH * scale / 2, jaw.at().doubleValue());
    }

    /** Narrower towards the work. */
    private List<Point> outline(RunOutPicture.Jaw jaw) {
        double degrees = jaw.at().doubleValue();
        Point at = middleOf(jaw);
        double depth = DEPTH * scale / 2;
        double wide = WIDE * scale;
        double narrow = NARROW * scale;
        return List.of(
                at.polar(depth, degrees).polar(-wide, degrees + 90),
                at.polar(depth, degrees).polar(wide, degrees + 90),
                at.polar(-depth, degrees).polar(narrow, degrees + 90),
                at.polar(-depth, degrees).polar(-narrow, degrees + 90));
    }

    /** An arrow the way the jaw goes, and how far, beside the jaw. */
    private boolean move(RunOutPicture.Jaw jaw) {
        Label label = Label.of(jaw.words(), 20, jaw.in().signum() > 0 ? Role.ACCENT : Role.INK)
                .bold();
        double arrow = ARROW * scale;
        double width = arrow + drawing.width(label) + 8;
        double height = Math.max(arrow, drawing.lettered(24));
        Optional<Box> found = room.place(width, height, beside(jaw, width, height))
                .or(() -> room.nearest(width, height, middleOf(jaw), place -> isNearestTo(jaw, place)));
        found.ifPresent(box -> {
            Point middleOfArrow = new Point(box.left() + arrow / 2, box.centreY());
            double towards = jaw.at().doubleValue() + (jaw.in().signum() > 0 ? 180 : 0);
            Point tip = middleOfArrow.polar(arrow / 2, towards);
            Point tail = middleOfArrow.polar(-arrow / 2, towards);
            drawing.line(tail, tail.towards(tip, 0.6), new Stroke(8, List.of()), label.role());
            drawing.head(tail, tip, arrow * 0.5, arrow * 0.62, label.role());
            drawing.text(label, new Point(box.left() + arrow + 6, box.centreY()), Anchor.LEFT);
        });
        return found.isPresent();
    }

    private boolean isNearestTo(RunOutPicture.Jaw jaw, Point place) {
        double distance = place.distanceTo(middleOf(jaw));
        return jaws.stream().noneMatch(other -> place.distanceTo(middleOf(other)) < distance);
    }

    private List<Point> beside(RunOutPicture.Jaw jaw, double width, double height) {
        Point at = middleOf(jaw);
        Box jawBox = new Shape.Polyline(outline(jaw), true).bounds().grown(4);
        double out = at.x() >= centre.x() - 1 ? 1 : -1;
        List<Point> places = new ArrayList<>();
        for (double side : new double[] {out, -out}) {
            double x = side > 0 ? jawBox.right() + width / 2 : jawBox.left() - width / 2;
            places.add(new Point(x, at.y()));
            places.add(new Point(x, jawBox.bottom() - height / 2));
            places.add(new Point(x, jawBox.top() + height / 2));
        }
        for (double shift = 0; shift <= width; shift += width / 4) {
            places.add(new Point(at.x() + out * shift, jawBox.bottom() + height / 2 + 1));
            places.add(new Point(at.x() + out * shift, jawBox.top() - height / 2 - 1));
        }
        return places;
    }
}
