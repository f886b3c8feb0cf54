package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;

/**
 * The half section a part is known by: above the axis cut and hatched, below it seen from outside.
 *
 * @param inHand the feature in hand, drawn in the accent; absent if none is
 * @param numbers features numbered as on the drawing; empty for a small picture
 */
public record OutlinePicture(Outline outline, Optional<Mark> inHand, List<Numbered> numbers, String spoken)
        implements Picture {

    /** A feature's number and where on the outline it sits. */
    public record Numbered(String number, Mark mark) {}

    private static final double NUMBER_TEXT = 18;
    private static final double OVERHANG = 12;
    /** How far beside the part a finger may be. */
    private static final double FINGER = 64;

    public OutlinePicture {
        numbers = List.copyOf(numbers);
    }

    /** Without numbers, for a list. */
    public static OutlinePicture small(Outline outline, Optional<Mark> inHand, String spoken) {
        return new OutlinePicture(outline, inHand, List.of(), spoken);
    }

    @Override
    public void draw(Drawing drawing) {
        if (numbers.isEmpty()) {
            part(drawing, new HalfSection(outline, room(drawing.frame())));
        } else {
            LetterSize.draw(drawing, this::numbered);
        }
    }

    /** What the part may fill where there are no numbers. */
    private static Box room(Frame frame) {
        double weight = frame.lineScale();
        Box all = frame.box();
        return new Box(OVERHANG * weight, 4 * weight, all.right() - OVERHANG * weight, all.bottom() - 4 * weight);
    }

    /**
     * The middle of what a finger points at, where the picture is drawn without numbers; absent where it is far from
     * the part.
     */
    public Optional<Mark> touched(Frame frame, Point spot) {
        HalfSection section = new HalfSection(outline, room(frame));
        Box part = section.box();
        boolean isNear = spot.x() > part.left() - FINGER
                && spot.x() < part.right() + FINGER
                && spot.y() > part.top() - FINGER
                && spot.y() < part.bottom() + FINGER;
        return isNear ? Optional.of(OutlineFeature.touched(section.mark(spot), outline, section)) : Optional.empty();
    }

    /** Tells how many numbers are shown. */
    private int numbered(Drawing drawing) {
        double radius = radius(drawing);
        Balloons balloons = new Balloons(
                drawing.frame().box(), radius, drawing.frame().lineScale(), FeatureGroup.of(numbers, outline));
        HalfSection section = new HalfSection(outline, balloons.room());
        part(drawing, section);
        List<BalloonRow.Placed> placed = balloons.place(outline, section);
        placed.forEach(group -> number(drawing, group, radius));
        int shown = placed.stream().mapToInt(group -> group.balloons().size()).sum();
        return shown == numbers.size() ? LetterSize.ALL : shown;
    }

    private void part(Drawing drawing, HalfSection section) {
        double weight = drawing.frame().lineScale();
        cut(drawing, section);
        seen(drawing, section);
        Box part = section.box();
        drawing.across(
                section.axis(),
                part.left() - OVERHANG * weight,
                part.right() + OVERHANG * weight,
                Stroke.CENTRE,
                Role.LINE);
        inHand.ifPresent(mark -> highlight(drawing, OutlineFeature.at(mark, outline, section)));
    }

    private void cut(Drawing drawing, HalfSection section) {
        List<List<Point>> rings = new ArrayList<>(List.of(section.cut()));
        outline.crossHoles().forEach(hole -> rings.add(section.hole(hole).corners()));
        drawing.metal(rings);
        List<Point> outside = section.outside(true);
        drawing.chain(outside, Stroke.OUTLINE, Role.LINE);
        List<Point> inside = section.inside();
        if (!inside.isEmpty()) {
            surface(drawing, inside, section.axis());
            edgesToAxis(drawing, inside, section.axis());
        }
        end(drawing, outside.get(0), inside.isEmpty() ? Optional.empty() : Optional.of(inside.get(0)), section.axis());
        end(
                drawing,
                outside.get(outside.size() - 1),
                inside.isEmpty() ? Optional.empty() : Optional.of(inside.get(inside.size() - 1)),
                section.axis());
        outline.crossHoles().forEach(hole -> hole(drawing, section.hole(hole)));
    }

    /** The inside; a stretch on the axis is solid metal and no surface. */
    static void surface(Drawing drawing, List<Point> inside, double axis) {
        List<Point> stretch = new ArrayList<>(List.of(inside.get(0)));
        for (int i = 1; i < inside.size(); i++) {
            if (inside.get(i - 1).y() > axis - 0.01 && inside.get(i).y() > axis - 0.01) {
                draw(drawing, stretch);
                stretch.clear();
            }
            stretch.add(inside.get(i));
        }
        draw(drawing, stretch);
    }

    private static void draw(Drawing drawing, List<Point> stretch) {
        if (stretch.size() > 1) {
            drawing.chain(stretch, Stroke.OUTLINE, Role.LINE);
        }
    }

    private static void end(Drawing drawing, Point outside, Optional<Point> inside, double axis) {
        drawing.line(outside, new Point(outside.x(), axis), Stroke.OUTLINE, Role.LINE);
        inside.filter(point -> Math.abs(point.x() - outside.x()) > 0.01 && point.y() < axis)
                .ifPresent(point -> drawing.line(point, new Point(point.x(), axis), Stroke.OUTLINE, Role.LINE));
    }

    /** Edges of a bore behind the cut, seen down to the axis. */
    static void edgesToAxis(Drawing drawing, List<Point> inside, double axis) {
        for (int i = 1; i + 1 < inside.size(); i++) {
            Point edge = inside.get(i);
            boolean widest = edge.y()
                    <= Math.min(inside.get(i - 1).y(), inside.get(i + 1).y());
            boolean narrows = Math.abs(edge.x() - inside.get(i - 1).x()) < 0.01
                    || Math.abs(edge.x() - inside.get(i + 1).x()) < 0.01;
            if (!widest && narrows) {
                drawing.line(edge, new Point(edge.x(), axis), Stroke.OUTLINE, Role.LINE);
            }
        }
    }

    static void hole(Drawing drawing, Box hole) {
        double over = 2 * drawing.frame().lineScale();
        drawing.area(
                new Box(hole.left(), hole.top() - over, hole.right(), hole.bottom() + over).corners(),
                drawing.frame().ground());
        for (double x : new double[] {hole.left(), hole.right()}) {
            drawing.down(x, hole.top() - over * 0.75, hole.bottom() + over * 0.75, Stroke.OUTLINE, Role.LINE);
        }
    }

    /** The lower half from outside: its profile, its edges, its pockets. */
    private void seen(Drawing drawing, HalfSection section) {
        List<Point> profile = section.outside(false);
        drawing.chain(profile, Stroke.OUTLINE, Role.LINE);
        for (Point end : List.of(profile.get(0), profile.get(profile.size() - 1))) {
            drawing.line(end, new Point(end.x(), section.axis()), Stroke.OUTLINE, Role.LINE);
        }
        for (int i = 1; i + 1 < outline.outside().size(); i++) {
            Point edge = section.point(outline.outside().get(i), false);
            drawing.line(new Point(edge.x(), section.axis()), edge, Stroke.NEIGHBOUR, Role.LINE);
        }
        outline.pockets().forEach(pocket -> {
            List<Point> rim = rim(section.pocket(pocket), pocket.rounded());
            drawing.area(rim, drawing.frame().ground());
            drawing.ring(rim, Stroke.OUTLINE, Role.LINE);
        });
    }

    /** The rim of a pocket, its ends half round or square. */
    static List<Point> rim(Box pocket, boolean rounded) {
        if (!rounded) {
            return pocket.corners();
        }
        double radius = Math.min(pocket.width(), pocket.height()) / 2;
        List<Point> rim = new ArrayList<>();
        for (int degrees = 0; degrees <= 180; degrees += 15) {
            rim.add(new Point(pocket.right() - radius, pocket.centreY()).polar(radius, degrees));
        }
        for (int degrees = 180; degrees <= 360; degrees += 15) {
            rim.add(new Point(pocket.left() + radius, pocket.centreY()).polar(radius, degrees));
        }
        return rim;
    }

    private void highlight(Drawing drawing, OutlineFeature feature) {
        if (feature.closed()) {
            boolean rounded = feature.side() == OutlineFeature.Side.BELOW
                    && outline.pockets().stream().anyMatch(Outline.Pocket::rounded);
            List<Point> corners = feature.line();
            Box box = new Box(
                    corners.get(0).x(),
                    corners.get(0).y(),
                    corners.get(2).x(),
                    corners.get(2).y());
            drawing.ring(rim(box, rounded), Stroke.READ, Role.ACCENT);
        } else {
            drawing.chain(feature.line(), Stroke.READ, Role.ACCENT);
        }
    }

    private double radius(Drawing drawing) {
        double widest = numbers.stream()
                .mapToDouble(number -> drawing.width(label(number.number())))
                .max()
                .orElse(0);
        return Math.max(drawing.lettered(NUMBER_TEXT) * 0.9, widest / 2 + drawing.lettered(5));
    }

    private static Label label(String number) {
        return Label.of(number, NUMBER_TEXT, Role.INK).bold();
    }

    private static void number(Drawing drawing, BalloonRow.Placed placed, double radius) {
        drawing.chain(placed.leader(), Stroke.THIN, Role.LINE);
        drawing.disc(placed.leader().get(0), Math.max(2, 3.5 * drawing.frame().lineScale()), Role.LINE);
        for (BalloonRow.Balloon balloon : placed.balloons()) {
            drawing.circle(balloon.centre(), radius, Stroke.NEIGHBOUR, Role.LINE);
            drawing.text(label(balloon.number()), balloon.centre(), Anchor.CENTRE);
        }
    }
}
