package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * A deep hole with the stages it is drilled in, and under it every drill of the set as long as it has to reach, its tip
 * where its stage ends; depths to scale, the hole lying.
 *
 * @param start depth there is already
 * @param drills in the order they are used
 * @param reach word over the reaches
 */
public record DrillPicture(Length depth, Length start, List<Drill> drills, String reach, String spoken)
        implements Picture {

    /** A drill: the stage it cuts, and how far it has to reach. */
    public record Drill(Length from, Length to, Length leastReach, String toFigures, String reachFigures) {}

    private static final double TEXT = 18;
    private static final double LINE = 26;
    /** Share of the height the hole takes, and the least it shrinks to where the set needs the room. */
    private static final double HOLE = 0.34;

    private static final double LEAST_HOLE = 0.22;
    /** Rows no closer than this share of a line. */
    private static final double CLOSE = 0.74;

    private static final double ABOVE_ROWS = 6;
    private static final double TIP = 8;
    private static final double GAP = 14;

    public DrillPicture {
        drills = List.copyOf(drills);
    }

    @Override
    public void draw(Drawing drawing) {
        Box frame = drawing.frame().box();
        Label word = Label.of(reach, TEXT, Role.INK2);
        double lane = GAP
                + Stream.concat(
                                Stream.of(drawing.width(word)),
                                drills.stream()
                                        .map(drill -> drawing.width(Label.of(drill.reachFigures(), TEXT, Role.INK)
                                                .bold())))
                        .max(Double::compare)
                        .orElse(0.0);
        double numbers = drawing.lettered(LINE);
        double outside = drills.stream()
                .map(drill -> Nanometres.of(drill.leastReach().minus(drill.to())))
                .max(Double::compare)
                .orElse(0.0);
        double behind = Math.max(outside, 0);
        double perMillimetre = (frame.width() - lane - numbers - 12) / (behind + Nanometres.of(depth));
        double face = numbers + behind * perMillimetre;
        double holeTop = frame.top() + drawing.lettered(LINE);
        double under = frame.bottom() - holeTop;
        double holeBottom = holeTop
                + Math.min(
                        under * HOLE,
                        Math.max(
                                under * LEAST_HOLE,
                                under - ABOVE_ROWS - drills.size() * drawing.lettered(LINE) * CLOSE));
        hole(drawing, face, perMillimetre, new Box(face, holeTop, frame.right() - lane, holeBottom));
        rows(
                drawing,
                face,
                perMillimetre,
                new Box(numbers, holeBottom + ABOVE_ROWS, frame.right() - lane, frame.bottom()),
                word);
    }

    private void hole(Drawing drawing, double face, double perMillimetre, Box room) {
        double wall = room.height() * 0.3;
        double end = face + Nanometres.of(depth) * perMillimetre;
        double right = Math.min(end + 10, room.right());
        Point upper = new Point(face, room.top() + wall);
        Point lower = new Point(face, room.bottom() - wall);
        List<Point> surface = List.of(
                upper,
                new Point(end - TIP, upper.y()),
                new Point(end, room.centreY()),
                new Point(end - TIP, lower.y()),
                lower);
        List<Point> metal = new ArrayList<>(List.of(new Point(face, room.top())));
        metal.addAll(surface);
        metal.addAll(
                List.of(new Point(face, room.bottom()), new Point(right, room.bottom()), new Point(right, room.top())));
        drawing.metal(List.of(metal));
        drawing.chain(
                List.of(new Point(right, room.top()), new Point(face, room.top()), upper), Stroke.OUTLINE, Role.LINE);
        drawing.chain(surface, Stroke.OUTLINE, Role.LINE);
        drawing.chain(
                List.of(lower, new Point(face, room.bottom()), new Point(right, room.bottom())),
                Stroke.OUTLINE,
                Role.LINE);
        double begun = Nanometres.of(start) * perMillimetre;
        if (begun > TIP) {
            drawing.area(new Box(face + 1.5, upper.y() + 1.5, face + begun, lower.y() - 1.5).corners(), Role.ZONE);
        }
        drawing.across(room.centreY(), face - 8, right, Stroke.CENTRE, Role.LINE);
        double free = 0;
        for (Drill drill : drills) {
            double x = face + Nanometres.of(drill.to()) * perMillimetre;
            Label label = Label.of(drill.toFigures(), TEXT, Role.INK);
            double half = drawing.width(label) / 2;
            drawing.down(x, room.top(), room.bottom(), Stroke.THIN, Role.LINE);
            double at = Math.min(x, drawing.frame().width() - half - 1);
            if (at - half > free) {
                drawing.text(label, new Point(at, room.top() - 6), Anchor.ABOVE);
                free = at + half + 8;
            }
        }
    }

    private void rows(Drawing drawing, double face, double perMillimetre, Box room, Label word) {
        double line = drawing.lettered(LINE);
        boolean named = (room.height() - line) / drills.size() >= line * CLOSE;
        if (named) {
            drawing.text(word, new Point(room.right() + GAP, room.top() + line / 2), Anchor.LEFT);
        }
        double top = room.top() + (named ? line : 0);
        double step = Math.max(line * CLOSE, Math.min(line * 1.5, (room.bottom() - top) / drills.size()));
        int fitting = (int) ((room.bottom() + 0.5 - top) / step);
        int drawn = fitting < drills.size() ? Math.max(fitting - 1, 0) : drills.size();
        for (int i = 0; i < drawn; i++) {
            drill(
                    drawing,
                    face,
                    perMillimetre,
                    i,
                    new Box(room.left(), top + i * step, room.right(), top + (i + 1) * step));
        }
        if (drawn < drills.size()) {
            double y = top + (drawn + 0.5) * step;
            drawing.text(Label.of("…", TEXT, Role.INK2), new Point(1, y), Anchor.LEFT);
            drawing.text(Label.of("…", TEXT, Role.INK2), new Point(room.right() + GAP, y), Anchor.LEFT);
        }
    }

    private void drill(Drawing drawing, double face, double perMillimetre, int index, Box row) {
        Drill drill = drills.get(index);
        double tip = face + Nanometres.of(drill.to()) * perMillimetre;
        double from = face + Nanometres.of(drill.from()) * perMillimetre;
        double back = Math.max(row.left(), tip - Nanometres.of(drill.leastReach()) * perMillimetre);
        double half = Math.min(row.height() * 0.3, 10);
        double point = Math.min(TIP, tip - back);
        List<Point> body = List.of(
                new Point(back, row.centreY() - half),
                new Point(tip - point, row.centreY() - half),
                new Point(tip, row.centreY()),
                new Point(tip - point, row.centreY() + half),
                new Point(back, row.centreY() + half));
        drawing.area(
                List.of(
                        new Point(Math.max(back, from), row.centreY() - half),
                        new Point(tip - point, row.centreY() - half),
                        new Point(tip, row.centreY()),
                        new Point(tip - point, row.centreY() + half),
                        new Point(Math.max(back, from), row.centreY() + half)),
                Role.ACCENTFILL);
        drawing.ring(body, Stroke.NEIGHBOUR, Role.LINE);
        drawing.down(face, row.top(), row.bottom(), Stroke.CENTRE, Role.LINE);
        drawing.text(Label.of(String.valueOf(index + 1), TEXT, Role.INK2), new Point(1, row.centreY()), Anchor.LEFT);
        drawing.text(
                Label.of(drill.reachFigures(), TEXT, Role.INK).bold(),
                new Point(row.right() + GAP, row.centreY()),
                Anchor.LEFT);
    }
}
