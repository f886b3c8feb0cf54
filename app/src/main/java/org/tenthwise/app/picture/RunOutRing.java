package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.model.quantity.Length;

/** The round part of {@link RunOutPicture}. */
final class RunOutRing {

    /** Share of the middle radius that half of what has to be shown may take. */
    private static final double LARGEST_SWING = 0.24;
    private static final double JAW_DEPTH = 38;
    private static final double GAP = 8;
    private static final double DOT = 7;

    private final RunOutPicture picture;
    private final Drawing drawing;
    private final FreeRoom room;
    private final Point centre;
    private final double middle;
    private final double perMillimetre;
    private final double midReading;
    private boolean complete = true;

    /** @param share how much of the room the ring may take */
    RunOutRing(RunOutPicture picture, Drawing drawing, Box area, double share) {
        this.picture = picture;
        this.drawing = drawing;
        this.room = new FreeRoom(area.grown(-1));
        this.centre = new Point(area.centreX(), area.centreY());
        double jaw = picture.jaws().isEmpty() ? GAP : JAW_DEPTH * jawScale() + 3 * GAP;
        this.middle = share * (Math.min(area.width(), area.height()) / 2 - jaw) / (1 + LARGEST_SWING);
        List<Length> taken = picture.taken();
        Length low = taken.isEmpty() ? Length.ZERO : Length.least(taken);
        Length high = taken.isEmpty() ? Length.ZERO : Length.greatest(taken);
        this.midReading = low.plus(high).half().millimetres().doubleValue();
        double swing = Math.max(high.minus(low).millimetres().doubleValue(), limit()) / 2;
        this.perMillimetre = middle * LARGEST_SWING / swing;
    }

    private double limit() {
        return picture.limit().length().millimetres().doubleValue();
    }

    private double jawScale() {
        return Math.min(1.25, Math.max(0.62, drawing.frame().textScale()));
    }

    private double radius(Length reading) {
        return middle + (reading.millimetres().doubleValue() - midReading) * perMillimetre;
    }

    /** @return whether every word and figure found room */
    boolean draw() {
        double reach = middle * (1 + LARGEST_SWING) + DOT;
        limitRing();
        centreLines(reach);
        picture.fit().ifPresent(this::fitted);
        picture.sweep().ifPresent(this::sweep);
        picture.readings().forEach(this::reading);
        room.take(new Shape.Circle(centre, reach));
        picture.jaws().forEach(this::jaw);
        picture.jaws().forEach(this::jawMove);
        figures();
        notes();
        return complete;
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
        double cross = 9 * jawScale();
        drawing.circle(centre, cross, Stroke.NEIGHBOUR, Role.LINE);
        if (off > 2) {
            Point work = centre.polar(off, high);
            drawing.line(work, centre, Stroke.OUTLINE, Role.ACCENT);
            if (off > 14) {
                drawing.head(work, centre, 13, 11, Role.ACCENT);
            }
            drawing.disc(work, 5, Role.ACCENT);
        }
        if (wordsFitInside(fit)) {
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
        double inner = middle * (1 - LARGEST_SWING) - DOT - 2;
        int widerAt = arrowIsAbove(fit) ? 31 : 58;
        int otherAt = arrowIsAbove(fit) ? 60 : 36;
        return Math.hypot(drawing.width(offCentre(fit).get(0)) / 2, drawing.lettered(widerAt)) < inner
                && Math.hypot(drawing.width(offCentre(fit).get(1)) / 2, drawing.lettered(otherAt)) < inner;
    }

    private static List<Label> offCentre(RunOutPicture.Fit fit) {
        return List.of(Label.of(fit.words().get(0), 18, Role.INK2).onGround(),
                Label.of(fit.words().get(1), 24, Role.INK).bold().onGround());
    }

    private void sweep(RunOutPicture.Sweep sweep) {
        sweep.highest().ifPresent(high -> drawing.circle(centre, radius(high.length()), Stroke.READ, Role.ACCENT));
        sweep.lowest().ifPresent(low -> drawing.circle(centre, radius(low.length()), Stroke.READ, Role.ACCENT));
        if (sweep.highest().isPresent() && sweep.lowest().isPresent()) {
            drawing.dimension(centre.polar(radius(sweep.lowest().get().length()), 135),
                    centre.polar(radius(sweep.highest().get().length()), 135), Role.LINE);
        }
    }

    private void reading(RunOutPicture.Reading reading) {
        double degrees = reading.angle().doubleValue();
        if (reading.value().isEmpty()) {
            drawing.disc(centre.polar(middle, degrees), DOT - 1, drawing.frame().ground());
            drawing.circle(centre.polar(middle, degrees), DOT - 1, Stroke.NEIGHBOUR, Role.OPEN);
            return;
        }
        double crowded = Math.PI * middle / picture.readings().size() * 0.55;
        double size = Math.min(crowded, DOT * Math.max(0.7, drawing.frame().lineScale())) * (reading.extreme() ? 1.3 : 1);
        Point spot = centre.polar(radius(reading.value().get().length()), degrees);
        drawing.disc(spot, size + 2, drawing.frame().ground());
        drawing.disc(spot, size, Role.INK);
    }

    private void jaw(RunOutPicture.Jaw jaw) {
        List<Point> outline = jawOutline(jaw);
        boolean goesIn = jaw.in().signum() > 0;
        drawing.area(outline, goesIn ? Role.ACCENTFILL : Role.PAPER);
        drawing.ring(outline, Stroke.NEIGHBOUR, goesIn ? Role.ACCENT : Role.LINE);
        drawing.text(Label.of(jaw.number(), Math.min(20, 20 * 1.25 / drawing.frame().textScale()),
                goesIn ? Role.ONACCENT : Role.INK).bold(), jawCentre(jaw), Anchor.CENTRE);
        room.take(new Shape.Chain(outline, true).bounds().grown(2));
    }

    private Point jawCentre(RunOutPicture.Jaw jaw) {
        return centre.polar(middle * (1 + LARGEST_SWING) + 1.6 * GAP + DOT + JAW_DEPTH * jawScale() / 2 - 2, jaw.at().doubleValue());
    }

    /** Narrower towards the work. */
    private List<Point> jawOutline(RunOutPicture.Jaw jaw) {
        double degrees = jaw.at().doubleValue();
        Point at = jawCentre(jaw);
        double depth = JAW_DEPTH * jawScale() / 2;
        double wide = 29 * jawScale();
        double narrow = 20 * jawScale();
        return List.of(at.polar(depth, degrees).polar(-wide, degrees + 90), at.polar(depth, degrees).polar(wide, degrees + 90),
                at.polar(-depth, degrees).polar(narrow, degrees + 90), at.polar(-depth, degrees).polar(-narrow, degrees + 90));
    }

    /** An arrow the way the jaw goes, and how far, beside the jaw. */
    private void jawMove(RunOutPicture.Jaw jaw) {
        if (jaw.words().isEmpty()) {
            return;
        }
        boolean moves = jaw.in().signum() != 0;
        Label label = Label.of(jaw.words(), 20, jaw.in().signum() > 0 ? Role.ACCENT : Role.INK).bold();
        double arrow = moves ? 34 * jawScale() : 0;
        double width = arrow + drawing.width(label) + 8;
        double height = Math.max(arrow, drawing.lettered(24));
        room.place(width, height, beside(jaw, width, height)).or(() -> room.nearest(width, height, jawCentre(jaw))).ifPresentOrElse(box -> {
            Point middleOfArrow = new Point(box.left() + arrow / 2, box.centreY());
            if (moves) {
                double towards = jaw.at().doubleValue() + (jaw.in().signum() > 0 ? 180 : 0);
                Point tip = middleOfArrow.polar(arrow / 2, towards);
                Point tail = middleOfArrow.polar(-arrow / 2, towards);
                drawing.line(tail, tail.towards(tip, 0.6), new Stroke(8, List.of()), label.role());
                drawing.head(tail, tip, arrow * 0.5, arrow * 0.62, label.role());
            }
            drawing.text(label, new Point(box.left() + arrow + 6, box.centreY()), Anchor.LEFT);
        }, this::noRoom);
    }

    private List<Point> beside(RunOutPicture.Jaw jaw, double width, double height) {
        Point at = jawCentre(jaw);
        Box jawBox = new Shape.Chain(jawOutline(jaw), true).bounds().grown(4);
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

    /** The movement stands in a corner; the limit is named, with a line to its ring. */
    private void figures() {
        picture.movement().ifPresent(movement -> inACorner(List.of(Label.of(movement.words(), 24, Role.ACCENT).bold())));
        Label label = Label.of(picture.limit().words(), 20, Role.INK).bold();
        double width = drawing.width(label);
        double height = drawing.lettered(24);
        List<Point> places = corners(width, height).stream().filter(place -> room.isFree(leaderStart(place, width), leaderEnd(place)) && !isAtReading(leaderEnd(place)))
                .toList();
        room.place(width, height, places).or(() -> room.nearest(width, height, centre)).ifPresentOrElse(box -> {
            Point at = new Point(box.centreX(), box.centreY());
            drawing.text(label, at, Anchor.CENTRE);
            drawing.line(leaderStart(at, width), leaderEnd(at), Stroke.THIN, Role.LINE);
            room.take(leaderStart(at, width), leaderEnd(at));
        }, this::noRoom);
    }

    private boolean isAtReading(Point spot) {
        return picture.readings().stream().filter(reading -> reading.value().isPresent())
                .anyMatch(reading -> centre.polar(radius(reading.value().get().length()), reading.angle().doubleValue())
                        .distanceTo(spot) < 2 * DOT);
    }

    private void noRoom() {
        complete = false;
    }

    private Point leaderStart(Point place, double width) {
        return place.plus((place.x() < centre.x() ? 1 : -1) * (width / 2 + 4), 0);
    }

    private Point leaderEnd(Point place) {
        double degrees = Math.toDegrees(Math.atan2(place.x() - centre.x(), centre.y() - place.y()));
        boolean clockwise = place.x() < centre.x() == place.y() < centre.y();
        return centre.polar(middle + limit() / 2 * perMillimetre, degrees + (clockwise ? 8 : -8));
    }

    private void notes() {
        picture.fit().filter(fit -> !wordsFitInside(fit)).ifPresent(fit -> inACorner(offCentre(fit)));
        if (picture.notes().isEmpty()) {
            return;
        }
        inACorner(picture.notes().stream().map(note -> Label.of(note, 18, Role.INK2)).toList());
    }

    /** Lines under one another, in a corner or wherever there is room for them. */
    private void inACorner(List<Label> lines) {
        double width = lines.stream().mapToDouble(drawing::width).max().orElse(0);
        double line = drawing.lettered(26);
        room.place(width, line * lines.size(), corners(width, line * lines.size()))
                .or(() -> room.nearest(width, line * lines.size(), new Point(0, 0))).ifPresentOrElse(box -> {
                    boolean left = box.centreX() < centre.x();
                    for (int i = 0; i < lines.size(); i++) {
                        drawing.text(lines.get(i), new Point(left ? box.left() : box.right(), box.top() + (i + 0.5) * line),
                                left ? Anchor.LEFT : Anchor.RIGHT);
                    }
                }, this::noRoom);
    }

    /** Along the edges of the sheet, from its corners inwards. */
    private List<Point> corners(double width, double height) {
        Box frame = drawing.frame().box();
        List<Point> places = new ArrayList<>();
        double bottom = 2 * centre.y();
        for (double down = 0; down < centre.y(); down += drawing.lettered(13)) {
            for (double x : new double[] {width / 2, frame.right() - width / 2}) {
                places.add(new Point(x, down + height / 2 + 1));
            }
        }
        for (double up = 0; up < centre.y(); up += drawing.lettered(13)) {
            for (double x : new double[] {width / 2, frame.right() - width / 2}) {
                places.add(new Point(x, bottom - up - height / 2 - 1));
            }
        }
        return places;
    }
}
