package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.tenthwise.model.quantity.Nanometres;

/**
 * The thread of a {@link WirePicture}: cut along its axis, wires in the grooves, dimensions over wires and of the pitch
 * diameter.
 */
final class ThreadSection {

    private static final double TEXT = 18;
    private static final double SIZE_TEXT = 22;
    private static final double LINE = 24;
    /** Notes take no more of the height. */
    private static final double MOST_NOTES = 0.3;
    /** With more pitches across, the thread is drawn larger and its core broken out. */
    private static final double MOST_PITCHES = 8;

    private static final double FEWEST_PITCHES = 4.5;
    private static final double PITCHES_OF_A_BROKEN_CORE = 5.2;
    /** Of the height: what thread and wire of a broken core may take on one side. */
    private static final double MOST_THREAD = 0.34;

    private static final double OVERHANG = 12;
    private static final double LOW = 195;
    private static final Stroke WIRE = Stroke.solid(2.2);

    private final WirePicture picture;
    private final Drawing drawing;
    private final Box room;
    private final ThreadProfile profile;
    private final double wire;
    private final double wireCentre;
    /** There is height for the thread or for words: the thread has it. */
    private final boolean low;

    private final List<String> notes;
    private final Box metal;
    private final double scale;
    private final boolean broken;
    /** From the middle to the furthest of crest and wire, in pixels. */
    private final double half;

    private final double reach;

    ThreadSection(WirePicture picture, Drawing drawing, Box room) {
        this.picture = picture;
        this.drawing = drawing;
        this.room = room;
        this.profile = ThreadProfile.of(picture.thread(), picture.pitchDiameter(), picture.minor());
        this.wire = Nanometres.of(picture.wire().diameter());
        this.wireCentre = profile.wireCentre(wire);
        this.low = room.height() < drawing.lettered(LOW);
        this.notes = low ? List.of() : noteLines();
        this.metal = new Box(
                room.left() + OVERHANG * 0.5,
                room.top() + (low ? OVERHANG / 2 : drawing.lettered(28)),
                room.right() - OVERHANG,
                room.bottom() - drawing.lettered(LINE) * notes.size() - drawing.lettered(8));
        this.reach = Math.max(profile.crest(), wireCentre + wire / 2);
        double whole = (metal.height() - 4) / 2 / reach;
        this.broken = whole * profile.pitch() < metal.width() / MOST_PITCHES;
        this.scale = broken
                ? Math.min(
                        metal.width() / PITCHES_OF_A_BROKEN_CORE / profile.pitch(),
                        MOST_THREAD * metal.height() / (reach - profile.root()))
                : Math.min(whole, metal.width() / FEWEST_PITCHES / profile.pitch());
        this.half = broken ? metal.height() / 2 - 2 : reach * scale;
    }

    void draw() {
        List<Point> upper = surface(true);
        List<Point> lower = surface(false);
        core(upper, lower);
        drawing.chain(upper, Stroke.OUTLINE, Role.LINE);
        drawing.chain(lower, Stroke.OUTLINE, Role.LINE);
        for (boolean above : new boolean[] {true, false}) {
            double y = y(profile.pitchRadius(), above);
            drawing.across(y, room.left(), room.right(), Stroke.CENTRE, Role.ACCENT);
        }
        drawing.across(metal.centreY(), room.left(), room.right(), Stroke.CENTRE, Role.LINE);
        wires();
        FreeRoom free = new FreeRoom(
                new Box(room.left(), y(profile.root(), true) + 4, room.right(), y(profile.root(), false) - 4));
        picture.shown().ifPresent(shown -> dimensions(shown, free));
        picture.touching().ifPresent(words -> touching(words, free));
        words();
    }

    /** Height of a radius on the sheet. */
    private double y(double radius, boolean above) {
        double out = half - (reach - radius) * scale;
        return above ? metal.centreY() - out : metal.centreY() + out;
    }

    /** Left of the middle of the sheet by half a pitch, so that the groove of the lower wire is in the middle. */
    private double groove(boolean above) {
        double leftWire = metal.centreX() - profile.pitch() * scale / 2;
        boolean facing = picture.thread().starts() % 2 == 0;
        return above || facing ? leftWire : leftWire + profile.pitch() * scale / 2;
    }

    private List<Point> surface(boolean above) {
        double groove = groove(above);
        return profile.edges((metal.left() - groove) / scale, (metal.right() - groove) / scale).stream()
                .map(along -> new Point(groove + along * scale, y(profile.radius(along), above)))
                .toList();
    }

    private void core(List<Point> upper, List<Point> lower) {
        if (!broken) {
            drawing.metal(List.of(SectionWalls.between(upper, lower)));
            return;
        }
        double gap = Math.max(9, metal.height() * 0.035);
        half(upper, metal.centreY() - gap);
        half(lower, metal.centreY() + gap);
    }

    /** From the thread to a break line along the axis. */
    private void half(List<Point> surface, double edge) {
        double tooth = Math.min(5, metal.height() * 0.015);
        List<Point> line = new ArrayList<>(List.of(new Point(metal.right(), edge)));
        for (double share : new double[] {0.72, 0.28}) {
            double x = metal.left() + share * metal.width();
            line.addAll(List.of(
                    new Point(x + 2 * tooth, edge),
                    new Point(x + tooth, edge - tooth),
                    new Point(x - tooth, edge + tooth),
                    new Point(x - 2 * tooth, edge)));
        }
        line.add(new Point(metal.left(), edge));
        List<Point> ring = new ArrayList<>(surface);
        ring.addAll(line);
        drawing.metal(List.of(ring));
        drawing.chain(line, Stroke.THIN, Role.LINE);
    }

    private List<Point> upperWires() {
        double y = y(wireCentre, true);
        return List.of(new Point(groove(true), y), new Point(groove(true) + profile.pitch() * scale, y));
    }

    private Point lowerWire() {
        return new Point(groove(false), y(wireCentre, false));
    }

    private void wires() {
        List<Point> centres = new ArrayList<>(upperWires());
        centres.add(lowerWire());
        double radius = wire / 2 * scale;
        Role role = picture.wire().set() ? Role.ACCENT : Role.INK2;
        for (Point centre : centres) {
            drawing.disc(centre, radius, drawing.frame().ground());
            drawing.circle(centre, radius, picture.wire().set() ? WIRE : Stroke.THIN, role);
            double cross = Math.min(6, radius * 0.45);
            drawing.line(centre.plus(-cross, 0), centre.plus(cross, 0), Stroke.THIN, role);
            drawing.line(centre.plus(0, -cross), centre.plus(0, cross), Stroke.THIN, role);
        }
    }

    private void dimensions(WirePicture.Shown shown, FreeRoom free) {
        double core = (y(profile.root(), false) - y(profile.root(), true)) / 2;
        double pitchAt = metal.left() + metal.width() * 0.13;
        shown.pitchDiameter().ifPresent(figures -> {
            drawing.dimension(
                    new Point(pitchAt, y(profile.pitchRadius(), true)),
                    new Point(pitchAt, y(profile.pitchRadius(), false)),
                    Role.ACCENT);
            figure(Label.of(figures, SIZE_TEXT, Role.ACCENT), new Point(pitchAt, metal.centreY() - core * 0.5), free);
        });
        double overAt = metal.right() - metal.width() * 0.11;
        double over = wireCentre + wire / 2;
        drawing.across(y(over, true), upperWires().get(0).x() - wire * scale, overAt + 8, Stroke.THIN, Role.LINE);
        drawing.across(y(over, false), lowerWire().x() - wire * scale, overAt + 8, Stroke.THIN, Role.LINE);
        drawing.dimension(new Point(overAt, y(over, true)), new Point(overAt, y(over, false)), Role.LINE);
        figure(Label.of(shown.overWires(), SIZE_TEXT, Role.INK), new Point(overAt, metal.centreY() + core * 0.5), free);
    }

    private void figure(Label figures, Point at, FreeRoom free) {
        Label label = figures.bold().onGround();
        free.place(
                        drawing.width(label) + 10,
                        drawing.height(label) + 10,
                        List.of(at, new Point(at.x(), metal.centreY())))
                .ifPresent(box -> drawing.text(label, box));
    }

    /** Words in the core with a line to where a wire meets the root. */
    private void touching(String words, FreeRoom free) {
        Label label = Label.of(words, TEXT, Role.UNPROVEN).bold().onGround();
        Point spot = new Point(upperWires().get(1).x(), y(profile.root(), true));
        double width = drawing.width(label) + 10;
        double height = drawing.height(label) + 12;
        free.nearest(width, height, new Point(metal.centreX(), spot.y() + 22 + height / 2))
                .ifPresent(box -> {
                    Point start = new Point(
                            Math.min(Math.max(spot.x(), box.left() + 8), box.right() - 8),
                            box.centreY() < spot.y() ? box.bottom() : box.top() + 2);
                    drawing.line(start, spot, Stroke.NEIGHBOUR, Role.UNPROVEN);
                    drawing.text(label, box);
                });
        double dot = Math.max(2, Math.min(4, wire * scale * 0.15));
        DoubleStream.of(upperWires().get(0).x(), spot.x())
                .forEach(x -> drawing.disc(new Point(x, y(profile.root(), true)), dot, Role.UNPROVEN));
        drawing.disc(new Point(lowerWire().x(), y(profile.root(), false)), dot, Role.UNPROVEN);
    }

    /** From wire to wire and from flank to flank: not over a broken core, nor where another thread is drawn. */
    private boolean isTrueToScale() {
        return !broken
                && profile.asGiven()
                && profile.isOnFlanks(wire)
                && picture.touching().isEmpty();
    }

    private void words() {
        picture.shown()
                .filter(any -> !low)
                .map(shown -> Label.of(isTrueToScale() ? shown.toScale() : shown.where(), TEXT, Role.INK2))
                .filter(where -> !where.text().isEmpty() && drawing.width(where) <= room.width())
                .ifPresent(where ->
                        drawing.text(where, new Point(room.left(), room.top() + drawing.lettered(11)), Anchor.LEFT));
        double y = room.bottom() - drawing.lettered(LINE) * (notes.size() - 0.5);
        for (String line : notes) {
            drawing.text(Label.of(line, TEXT, Role.INK2), new Point(room.left(), y), Anchor.LEFT);
            y += drawing.lettered(LINE);
        }
    }

    /** As many notes as find room under the thread, several to a line. */
    private List<String> noteLines() {
        int most = (int) Math.max(1, MOST_NOTES * room.height() / drawing.lettered(LINE));
        return TextLines.joined(
                picture.notes(), ", ", most, line -> drawing.width(Label.of(line, TEXT, Role.INK2)) <= room.width());
    }
}
