package org.tenthwise.app.picture;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;

/**
 * The zone of a position tolerance as it is looked at along the axes, drawn large, with every axis read in it: all true
 * places laid over one another. X points to the right, Y upwards. An axis too far out for the room is an arrow at its
 * edge.
 *
 * @param zone diameter the drawing gives
 * @param allowed the same with what the size adds for the axis that decides
 * @param notes lines to read beside the zone, the first the weightiest
 */
public record PositionPicture(Length zone, Length allowed, List<Axis> spots, List<String> notes, String spoken)
        implements Picture {

    /**
     * An axis.
     *
     * @param x measured less true
     * @param y measured less true
     * @param decides whether it has the least room
     * @param sameAxis whether the one before it is the other end of the same axis
     */
    public record Axis(Length x, Length y, boolean decides, boolean sameAxis) {}

    private static final double TEXT = 20;
    private static final double LINE = 28;
    private static final double LETTER_ROOM = 26;
    private static final double DOT = 5;
    private static final double DECIDING_DOT = 7;
    private static final double ARROW = 18;
    private static final double BETWEEN = 18;

    /** Of the larger side, for the zone where the notes stand beside it. */
    private static final double SHARE = 0.62;

    /** Of the larger circle; what lies further out is an arrow. */
    private static final double FURTHEST = 2.2;

    private static final int MOST_LINES = 8;
    /** With less of the height for the zone, notes are left out. */
    private static final double LEAST_SHARE = 0.5;

    private static final double SMALL = 1e-6;

    public PositionPicture {
        spots = List.copyOf(spots);
        notes = List.copyOf(notes);
    }

    @Override
    public void draw(Drawing drawing) {
        Box frame = drawing.frame().box();
        if (frame.width() > frame.height()) {
            double side = Math.min(frame.height(), frame.width() * SHARE);
            zone(drawing, new Point(side / 2, frame.height() / 2), side / 2);
            Box beside = new Box(side + BETWEEN, frame.top(), frame.right(), frame.bottom());
            List<String> lines = lines(drawing, beside.width(), (int) (frame.height() / drawing.lettered(LINE)));
            notes(drawing, lines, beside.left(), (frame.height() - lines.size() * drawing.lettered(LINE)) / 2);
            return;
        }
        int room = (int) (frame.height() * (1 - LEAST_SHARE) / drawing.lettered(LINE));
        List<String> lines = lines(drawing, frame.width(), room);
        double under = frame.height() - lines.size() * drawing.lettered(LINE);
        double side = Math.min(frame.width(), under);
        zone(drawing, new Point(frame.width() / 2, under / 2), side / 2);
        notes(drawing, lines, frame.left(), under);
    }

    /** Each note on lines of its own; one that does not fit whole is left out, and what comes after it. */
    private List<String> lines(Drawing drawing, double width, int most) {
        Predicate<String> fits = text -> drawing.width(label(text)) <= width;
        List<String> lines = List.of();
        for (String note : notes) {
            List<String> words = Arrays.asList(note.split(" "));
            List<String> broken = TextLines.joined(words, " ", MOST_LINES, fits);
            boolean whole = String.join(" ", broken).equals(note);
            if (!whole || lines.size() + broken.size() > most) {
                return lines;
            }
            lines = Stream.concat(lines.stream(), broken.stream()).toList();
        }
        return lines;
    }

    private static Label label(String text) {
        return Label.of(text, TEXT, Role.INK);
    }

    private static void notes(Drawing drawing, List<String> lines, double left, double top) {
        double step = drawing.lettered(LINE);
        for (int i = 0; i < lines.size(); i++) {
            drawing.text(label(lines.get(i)), new Point(left, top + (i + 0.5) * step), Anchor.LEFT);
        }
    }

    private void zone(Drawing drawing, Point centre, double half) {
        double letters = Math.min(drawing.lettered(LETTER_ROOM), half / 3);
        double lines = half - letters;
        double reach = lines - drawing.ruled(DECIDING_DOT);
        double radius = millimetres(allowed) / 2;
        double out = spots.stream().mapToDouble(PositionPicture::distance).max().orElse(0);
        double extent = Math.max(SMALL, Math.max(radius, radius > 0 ? Math.min(out, FURTHEST * radius) : out));
        double scale = reach / extent;
        drawing.disc(centre, radius * scale, Role.ZONE);
        drawing.circle(centre, radius * scale, Stroke.OUTLINE, Role.LINE);
        if (allowed.isAbove(zone) && zone.signum() > 0) {
            drawing.circle(centre, millimetres(zone) / 2 * scale, Stroke.AIM, Role.LINE);
        }
        drawing.across(centre.y(), centre.x() - lines, centre.x() + lines, Stroke.CENTRE, Role.LINE);
        drawing.down(centre.x(), centre.y() - lines, centre.y() + lines, Stroke.CENTRE, Role.LINE);
        Label x = Label.of("X", TEXT, Role.INK2);
        Label y = Label.of("Y", TEXT, Role.INK2);
        if (drawing.height(x) < letters) {
            drawing.text(x, centre.plus(lines + letters / 2, 0), Anchor.CENTRE);
            drawing.text(y, centre.plus(0, -lines - letters / 2), Anchor.CENTRE);
        }
        spots(drawing, centre, reach, scale);
    }

    private void spots(Drawing drawing, Point centre, double reach, double scale) {
        for (int i = 0; i < spots.size(); i++) {
            if (spots.get(i).sameAxis()) {
                drawing.line(
                        at(spots.get(i - 1), centre, reach, scale),
                        at(spots.get(i), centre, reach, scale),
                        Stroke.NEIGHBOUR,
                        Role.INK2);
            }
        }
        for (Axis spot : spots) {
            Point at = at(spot, centre, reach, scale);
            Role role = spot.decides() ? Role.ACCENT : Role.INK2;
            if (spot.decides()) {
                drawing.line(centre, at, Stroke.OUTLINE, role);
            }
            if (distance(spot) * scale > reach) {
                drawing.head(centre, at, drawing.ruled(ARROW), drawing.ruled(ARROW), role);
            } else {
                drawing.disc(at, drawing.ruled(spot.decides() ? DECIDING_DOT : DOT), role);
            }
        }
    }

    /** On the edge where it lies further out. */
    private static Point at(Axis spot, Point centre, double reach, double scale) {
        double out = distance(spot) * scale;
        double shown = out > reach ? reach / out * scale : scale;
        return centre.plus(millimetres(spot.x()) * shown, -millimetres(spot.y()) * shown);
    }

    private static double distance(Axis spot) {
        return Math.hypot(millimetres(spot.x()), millimetres(spot.y()));
    }

    private static double millimetres(Length length) {
        return length.millimetres().doubleValue();
    }
}
