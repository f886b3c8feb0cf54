package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;

/** The round part of {@link RunOutPicture}. */
final class RunOutRing {

    /** Share of the middle radius that half of what has to be shown may take. */
    private static final double LARGEST_SWING = 0.24;

    private static final double DOT = 7;
    /** Beyond the largest swing, for the dots. */
    private static final double EDGE = 10;

    private static final double INSET = 1;
    /** Degrees where the movement over a turn is drawn, beside the usual places. */
    private static final double BETWEEN_PLACES = 157.5;

    private final RunOutPicture picture;
    private final Drawing drawing;
    private final RunOutPicture.Around around;
    private final RunOutTable table;
    private final FreeRoom room;
    private final Point centre;
    private final double middle;
    private final double perMillimetre;
    private final double midReading;

    /** @param middle radius in the middle of the ring */
    RunOutRing(RunOutPicture picture, Drawing drawing, RunOutPicture.Around around, double middle) {
        this.picture = picture;
        this.drawing = drawing;
        this.around = around;
        this.table = new RunOutTable(picture, drawing);
        this.room = new FreeRoom(drawing.frame().box().grown(-INSET));
        Box area = area(table, drawing, around);
        this.centre = new Point(area.centreX(), area.centreY());
        this.middle = middle;
        List<Length> taken = picture.taken();
        Length low = taken.isEmpty() ? Length.ZERO : Length.least(taken);
        Length high = taken.isEmpty() ? Length.ZERO : Length.greatest(taken);
        this.midReading = low.plus(high).half().millimetres().doubleValue();
        double swing = Math.max(high.minus(low).millimetres().doubleValue(), limit()) / 2;
        this.perMillimetre = middle * LARGEST_SWING / swing;
    }

    private static Box area(RunOutTable table, Drawing drawing, RunOutPicture.Around around) {
        Box frame = drawing.frame().box();
        return new Box(frame.left(), frame.top(), frame.right() - (around.table ? table.width() : 0), frame.bottom());
    }

    /** The greatest middle radius with which ring and jaws stay inside the room beside the table. */
    static double largest(RunOutPicture picture, Drawing drawing, RunOutPicture.Around around) {
        Box area = area(new RunOutTable(picture, drawing), drawing, around);
        Frame frame = drawing.frame();
        double across = area.width() / 2 - INSET;
        double down = area.height() / 2 - INSET;
        double jaws = RunOutMarks.greatestReach(RunOutMarks.gripping(picture), frame, across, down);
        double tap = picture.hints()
                .tap()
                .map(at -> RunOutMarks.greatestReach(at, frame, across, down))
                .orElse(jaws);
        double rest = Math.min(across, down) - RunOutMarks.around(picture, frame);
        return (Math.min(rest, Math.min(jaws, tap)) - EDGE) / (1 + LARGEST_SWING);
    }

    private double limit() {
        return picture.limit().length().millimetres().doubleValue();
    }

    private double radius(Length reading) {
        return middle + (reading.millimetres().doubleValue() - midReading) * perMillimetre;
    }

    /** @return whether every word and figure found room; the rest is left out once one has none */
    boolean draw() {
        double reach = middle * (1 + LARGEST_SWING) + EDGE;
        limitRing();
        centreLines(reach);
        sweep();
        picture.fit().ifPresent(this::fitted);
        picture.readings().forEach(this::reading);
        room.take(new Shape.Circle(centre, reach));
        if (around.table) {
            room.take(table.box().grown(4));
            table.draw();
        }
        return new RunOutMarks(picture, drawing, room, centre, reach, inner()).draw(around)
                && (!around.figures || movement() && limitWords() && offCentre() && notes());
    }

    private void limitRing() {
        double half = limit() / 2 * perMillimetre;
        drawing.disc(centre, middle + half, Role.ZONE);
        drawing.disc(centre, middle - half, drawing.frame().ground());
        drawing.circle(centre, middle + half, Stroke.OUTLINE, Role.LINE);
        drawing.circle(centre, middle - half, Stroke.OUTLINE, Role.LINE);
    }

    private void centreLines(double reach) {
        drawing.line(centre.plus(-reach, 0), centre.plus(reach, 0), Stroke.CENTRE, Role.LINE);
        drawing.line(centre.plus(0, -reach), centre.plus(0, reach), Stroke.CENTRE, Role.LINE);
    }

    private void fitted(RunOutPicture.Fit fit) {
        double high = fit.highAt().doubleValue();
        double off = fit.eccentricity().millimetres().doubleValue() * perMillimetre;
        List<Point> circle = new ArrayList<>();
        for (int degrees = 0; degrees < 360; degrees += 3) {
            circle.add(centre.polar(radius(fit.mean()) + off * Math.cos(Math.toRadians(degrees - high)), degrees));
        }
        drawing.ring(circle, Stroke.OUTLINE, Role.ACCENT);
        double cross = 9 * RunOutMarks.scale(drawing.frame());
        drawing.circle(centre, cross, Stroke.NEIGHBOUR, Role.LINE);
        if (off > 2) {
            Point work = centre.polar(off, high);
            drawing.line(work, centre, Stroke.OUTLINE, Role.ACCENT);
            if (off > 14) {
                drawing.head(work, centre, 13, 11, Role.ACCENT);
            }
            drawing.disc(work, 5, Role.ACCENT);
        }
        if (around.offCentre && wordsFitInside(fit)) {
            wordsInside(fit);
        }
    }

    /** In the half of the ring the arrow does not reach. */
    private void wordsInside(RunOutPicture.Fit fit) {
        int down = arrowIsAbove(fit) ? 1 : -1;
        drawing.text(offCentre(fit).get(0), centre.plus(0, drawing.lettered(down > 0 ? 24 : -50)), Anchor.CENTRE);
        drawing.text(offCentre(fit).get(1), centre.plus(0, drawing.lettered(down > 0 ? 49 : -25)), Anchor.CENTRE);
    }

    private static boolean arrowIsAbove(RunOutPicture.Fit fit) {
        return Math.cos(Math.toRadians(fit.highAt().doubleValue())) >= 0;
    }

    private boolean wordsFitInside(RunOutPicture.Fit fit) {
        double inner = inner() - RunOutMarks.inside(picture, drawing.frame());
        int widerAt = arrowIsAbove(fit) ? 31 : 58;
        int otherAt = arrowIsAbove(fit) ? 60 : 36;
        return Math.hypot(drawing.width(offCentre(fit).get(0)) / 2, drawing.lettered(widerAt)) < inner
                && Math.hypot(drawing.width(offCentre(fit).get(1)) / 2, drawing.lettered(otherAt)) < inner;
    }

    private static List<Label> offCentre(RunOutPicture.Fit fit) {
        return List.of(
                Label.of(fit.words().get(0), 18, Role.INK2).onGround(),
                Label.of(fit.words().get(1), 24, Role.INK).bold().onGround());
    }

    /** Highest and lowest over the turn, thin where the circle fitted to the places says more. */
    private void sweep() {
        List<Length> swept = picture.swept();
        boolean behindTheCircle = picture.fit().isPresent();
        Stroke stroke = behindTheCircle ? Stroke.NEIGHBOUR : Stroke.READ;
        Role role = behindTheCircle ? Role.INK2 : Role.ACCENT;
        swept.forEach(length -> drawing.circle(centre, radius(length), stroke, role));
        if (swept.size() == 2) {
            Point low = centre.polar(radius(swept.get(1)), BETWEEN_PLACES);
            Point high = centre.polar(radius(swept.get(0)), BETWEEN_PLACES);
            Shape.Polyline line = drawing.rehearsal().dimension(low, high, Role.LINE);
            if (drawing.frame().box().holds(line.bounds())) {
                drawing.dimension(low, high, Role.LINE);
                room.take(line.points().get(0), line.points().get(1));
            }
        }
    }

    /** Within this radius nothing is drawn of the ring. */
    private double inner() {
        return middle * (1 - LARGEST_SWING) - DOT - 2;
    }

    private void reading(RunOutPicture.Reading reading) {
        double degrees = reading.angle().doubleValue();
        if (reading.value().isEmpty()) {
            drawing.disc(centre.polar(middle, degrees), DOT - 1, drawing.frame().ground());
            drawing.circle(centre.polar(middle, degrees), DOT - 1, Stroke.NEIGHBOUR, Role.OPEN);
            return;
        }
        double crowded = Math.PI * middle / picture.readings().size() * 0.55;
        double size =
                Math.min(crowded, DOT * Math.max(0.7, drawing.frame().lineScale())) * (reading.extreme() ? 1.3 : 1);
        Point spot = centre.polar(radius(reading.value().get().length()), degrees);
        drawing.disc(spot, size + 2, drawing.frame().ground());
        drawing.disc(spot, size, Role.INK);
    }

    /** The limit is named, with a line to its ring. */
    private boolean limitWords() {
        Label label = Label.of(picture.limit().words(), 20, Role.INK).bold();
        double width = drawing.width(label);
        double height = drawing.lettered(24);
        Predicate<Point> leads = place -> leadsAway(place, width)
                && room.isFree(leaderStart(place, width), leaderEnd(place))
                && !isAtReading(leaderEnd(place));
        Optional<Box> found = room.place(
                        width, height, corners(width, height, true).stream().filter(leads))
                .or(() -> room.nearest(width, height, centre, box -> leads.test(box.centre())));
        found.ifPresent(box -> {
            Point at = new Point(box.centreX(), box.centreY());
            drawing.text(label, at, Anchor.CENTRE);
            drawing.line(leaderStart(at, width), leaderEnd(at), Stroke.THIN, Role.LINE);
            room.take(leaderStart(at, width), leaderEnd(at));
        });
        return found.isPresent();
    }

    private boolean isAtReading(Point spot) {
        return picture.readings().stream()
                .filter(reading -> reading.value().isPresent())
                .anyMatch(reading -> centre.polar(
                                        radius(reading.value().get().length()),
                                        reading.angle().doubleValue())
                                .distanceTo(spot)
                        < 2 * DOT);
    }

    private Point leaderStart(Point place, double width) {
        return place.plus((place.x() < centre.x() ? 1 : -1) * (width / 2 + 4), 0);
    }

    /** Whether the line does not run back through its own words. */
    private boolean leadsAway(Point place, double width) {
        double start = leaderStart(place, width).x();
        return (leaderEnd(place).x() - start) * (start - place.x()) >= 0;
    }

    private Point leaderEnd(Point place) {
        double degrees = Math.toDegrees(Math.atan2(place.x() - centre.x(), centre.y() - place.y()));
        boolean clockwise = place.x() < centre.x() == place.y() < centre.y();
        return centre.polar(middle + limit() / 2 * perMillimetre, degrees + (clockwise ? 8 : -8));
    }

    /** Outside the ring where there is no room inside it. */
    private boolean offCentre() {
        return picture.fit()
                .filter(fit -> around.offCentre && !wordsFitInside(fit))
                .map(fit -> placed(offCentre(fit), true))
                .orElse(true);
    }

    private boolean notes() {
        return !around.notes
                || picture.notes().isEmpty()
                || placed(
                        picture.notes().stream()
                                .map(note -> Label.of(note, 18, Role.INK2))
                                .toList(),
                        false);
    }

    /** In a corner; where there is none as wide, the figure goes under the word. */
    private boolean movement() {
        return picture.movement()
                .map(RunOutPicture.Sized::words)
                .map(words -> placed(List.of(movementLabel(words)), true)
                        || placed(
                                Stream.of(words.split(" "))
                                        .map(this::movementLabel)
                                        .toList(),
                                true))
                .orElse(true);
    }

    private Label movementLabel(String words) {
        return Label.of(words, Math.min(24, 30 / drawing.frame().textScale()), Role.ACCENT)
                .bold();
    }

    /** Lines under one another, in a corner or wherever there is room for them. */
    private boolean placed(List<Label> lines, boolean fromAbove) {
        double width = lines.stream().mapToDouble(drawing::width).max().orElse(0);
        double line = drawing.lettered(26);
        double height = line * lines.size();
        Point corner = fromAbove ? new Point(0, 0) : new Point(0, 2 * centre.y());
        Optional<Box> found = room.place(width, height, corners(width, height, fromAbove))
                .or(() -> room.nearest(width, height, corner));
        found.ifPresent(box -> {
            boolean left = box.centreX() < centre.x();
            for (int i = 0; i < lines.size(); i++) {
                drawing.text(
                        lines.get(i),
                        new Point(left ? box.left() : box.right(), box.top() + (i + 0.5) * line),
                        left ? Anchor.LEFT : Anchor.RIGHT);
            }
        });
        return found.isPresent();
    }

    /** Along the edges of the sheet, from its corners inwards. */
    private List<Point> corners(double width, double height, boolean fromAbove) {
        double right = drawing.frame().box().right();
        List<Point> above = new ArrayList<>();
        List<Point> below = new ArrayList<>();
        for (double away = height / 2 + 1; away < centre.y() + height / 2; away += drawing.lettered(13)) {
            for (double x : new double[] {width / 2, right - width / 2}) {
                above.add(new Point(x, away));
                below.add(new Point(x, 2 * centre.y() - away));
            }
        }
        return Stream.of(fromAbove ? above : below, fromAbove ? below : above)
                .flatMap(List::stream)
                .toList();
    }
}
