package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.model.quantity.Nanometres;

/** The thread of {@link WirePicture} cut along its axis; where the core is too thick for the sheet it is broken. */
final class GrooveSection {

    private static final double TEXT = 22;
    private static final double SMALL_TEXT = 18;
    /** How many pitches the sheet is wide. */
    private static final double PITCHES = 4.6;
    /** Of the height of the sheet: the most a groove and its wire take. */
    private static final double DEEPEST = 0.2;

    private final WirePicture picture;
    private final Drawing drawing;
    private final double left;
    private final double right;
    private final double top;
    private final double bottom;
    private final double perMillimetre;
    /** Distance from the axis on the sheet less distance on the part: less than nought where the core is broken. */
    private final double shift;
    private final boolean broken;

    GrooveSection(WirePicture picture, Drawing drawing, Box room) {
        this.picture = picture;
        this.drawing = drawing;
        this.left = room.left() + 2;
        this.right = room.right() - 26;
        this.top = room.top() + drawing.lettered(34);
        this.bottom = room.bottom() - 6 - drawing.lettered(26) * picture.notes().size();
        double byWidth = (right - left) / (PITCHES * pitch());
        double byDepth = (bottom - top) * DEEPEST / (outermost() - root());
        this.perMillimetre = Math.min(byWidth, byDepth);
        double half = (bottom - top) / 2;
        this.shift = half - outermost() * perMillimetre;
        this.broken = shift < -0.5;
    }

    private double pitch() {
        return Nanometres.of(picture.thread().pitch());
    }

    private double tangent() {
        return Math.tan(Math.toRadians(picture.thread().form().halfAngleDegrees()));
    }

    /** Radii on the part, in millimetres. */
    private double crest() {
        return Nanometres.of(picture.thread().diameter()) / 2;
    }

    private double pitchRadius() {
        return Nanometres.of(picture.pitchDiameter()) / 2;
    }

    /** Where the root is, but no deeper than the flanks meet; under a wire that rests on it, where the wire is. */
    private double root() {
        double basic = crest() - picture.thread().form().basicRootDepth() * pitch();
        double known = picture.minor().map(minor -> Nanometres.of(minor) / 2).orElse(basic);
        double given = picture.wire().filter(WirePicture.Wire::bottoms)
                .map(wire -> wireCentre(wire) - Nanometres.of(wire.diameter()) / 2).orElse(known);
        return Math.max(given, pitchRadius() - pitch() / 4 / tangent());
    }

    private double wireCentre(WirePicture.Wire wire) {
        double diameter = Nanometres.of(wire.diameter());
        double halfAngle = Math.toRadians(picture.thread().form().halfAngleDegrees());
        return wire.over().map(over -> (Nanometres.of(over.size()) - diameter) / 2)
                .orElse(pitchRadius() + diameter / 2 / Math.sin(halfAngle) - pitch() / 4 / tangent());
    }

    private double outermost() {
        return Math.max(crest(), picture.wire().map(wire -> wireCentre(wire) + Nanometres.of(wire.diameter()) / 2).orElse(0.0));
    }

    private double middle() {
        return (top + bottom) / 2;
    }

    private double y(double radius, boolean above) {
        double out = radius * perMillimetre + Math.min(0, shift);
        return above ? middle() - out : middle() + out;
    }

    void draw() {
        List<Point> upper = profile(true);
        List<Point> lower = profile(false);
        metal(upper, lower);
        drawing.chain(upper, Stroke.OUTLINE, Role.LINE);
        drawing.chain(lower, Stroke.OUTLINE, Role.LINE);
        drawing.line(new Point(left, middle()), new Point(right + 14, middle()), Stroke.CENTRE, Role.LINE);
        for (boolean above : new boolean[] {true, false}) {
            drawing.line(new Point(left, y(pitchRadius(), above)), new Point(right + 14, y(pitchRadius(), above)), Stroke.CENTRE, Role.ACCENT);
        }
        picture.wire().ifPresent(this::wires);
        pitchDimension();
        notes();
    }

    /** Crests, flanks and roots over the whole width; a single start lies half a turn, so half a lead, further on below. */
    private List<Point> profile(boolean above) {
        double step = pitch() * perMillimetre;
        double crestHalf = Math.max(0, pitch() / 4 - (crest() - pitchRadius()) * tangent()) * perMillimetre;
        double rootHalf = Math.max(0, pitch() / 4 - (pitchRadius() - root()) * tangent()) * perMillimetre;
        List<Point> chain = new ArrayList<>();
        double first = groove(above) - Math.ceil((groove(above) - left) / step + 1) * step;
        for (double x = first; x < right + step; x += step) {
            chain.add(new Point(x - step / 2 + crestHalf, y(crest(), above)));
            chain.add(new Point(x - rootHalf, y(root(), above)));
            chain.add(new Point(x + rootHalf, y(root(), above)));
            chain.add(new Point(x + step / 2 - crestHalf, y(crest(), above)));
        }
        return between(chain);
    }

    /** The middle of a groove near the middle of the sheet. */
    private double groove(boolean above) {
        double centre = left + (right - left) * 0.56;
        return above ? centre - pitch() * perMillimetre / 2 : centre;
    }

    /** The part of a chain that goes to the right between the edges. */
    private List<Point> between(List<Point> chain) {
        List<Point> cut = new ArrayList<>();
        for (int i = 0; i < chain.size(); i++) {
            Point to = chain.get(i);
            if (i > 0) {
                Point from = chain.get(i - 1);
                for (double edge : new double[] {left, right}) {
                    if (from.x() < edge && to.x() > edge) {
                        cut.add(from.towards(to, (edge - from.x()) / (to.x() - from.x())));
                    }
                }
            }
            if (to.x() >= left && to.x() <= right) {
                cut.add(to);
            }
        }
        return cut;
    }

    private void metal(List<Point> upper, List<Point> lower) {
        if (!broken) {
            List<Point> ring = new ArrayList<>(upper);
            for (int i = lower.size() - 1; i >= 0; i--) {
                ring.add(lower.get(i));
            }
            drawing.metal(List.of(ring));
            return;
        }
        piece(upper, middle() - (middle() - y(root(), true)) * 0.3);
        piece(lower, middle() + (y(root(), false) - middle()) * 0.3);
    }

    /** Metal from the thread to a break line. */
    private void piece(List<Point> thread, double end) {
        double width = right - left;
        List<Point> line = List.of(new Point(right, end), new Point(left + width * 0.7, end - 5), new Point(left + width * 0.35, end + 5),
                new Point(left, end));
        List<Point> ring = new ArrayList<>(thread);
        ring.addAll(line);
        drawing.metal(List.of(ring));
        drawing.chain(line, Stroke.THIN, Role.LINE);
    }

    private void wires(WirePicture.Wire wire) {
        double step = pitch() * perMillimetre;
        wire(new Point(groove(true), y(wireCentre(wire), true)), wire);
        wire(new Point(groove(true) + step, y(wireCentre(wire), true)), wire);
        wire(new Point(groove(false), y(wireCentre(wire), false)), wire);
        double outer = wireCentre(wire) + Nanometres.of(wire.diameter()) / 2;
        double x = right - 12;
        drawing.line(new Point(groove(true) - step * 0.4, y(outer, true)), new Point(x + 12, y(outer, true)), Stroke.THIN, Role.LINE);
        drawing.line(new Point(groove(false) - step * 0.4, y(outer, false)), new Point(x + 12, y(outer, false)), Stroke.THIN, Role.LINE);
        wire.over().ifPresent(over -> {
            drawing.dimension(new Point(x, y(outer, true)), new Point(x, y(outer, false)), Role.LINE);
            letter(Label.of(over.figures(), TEXT, Role.INK).bold(), x, middle() + (y(root(), false) - middle()) * 0.5);
        });
    }

    private void wire(Point centre, WirePicture.Wire wire) {
        double radius = Nanometres.of(wire.diameter()) / 2 * perMillimetre;
        Role role = wire.bottoms() ? Role.UNPROVEN : Role.ACCENT;
        drawing.disc(centre, radius, drawing.frame().ground());
        drawing.circle(centre, radius, Stroke.OUTLINE, role);
        double cross = Math.min(6, radius * 0.5);
        drawing.line(centre.plus(-cross, 0), centre.plus(cross, 0), Stroke.THIN, role);
        drawing.line(centre.plus(0, -cross), centre.plus(0, cross), Stroke.THIN, role);
        if (wire.bottoms()) {
            drawing.disc(centre.plus(0, (centre.y() < middle() ? 1 : -1) * radius), 4.5, role);
        }
    }

    private void pitchDimension() {
        double x = left + (right - left) * 0.14;
        drawing.dimension(new Point(x, y(pitchRadius(), true)), new Point(x, y(pitchRadius(), false)), Role.ACCENT);
        picture.pitch().ifPresent(pitch -> letter(Label.of(pitch.figures(), TEXT, Role.ACCENT).bold(), x,
                middle() - (middle() - y(root(), true)) * 0.5));
    }

    /** On its dimension line, but within the section. */
    private void letter(Label label, double x, double y) {
        double half = drawing.width(label) / 2 + 5;
        drawing.text(label.onGround(), new Point(Math.min(Math.max(x, left + half), right + 22 - half), y), Anchor.CENTRE);
    }

    private void notes() {
        double y = bottom + drawing.lettered(19);
        for (String note : picture.notes()) {
            Label label = Label.of(note, SMALL_TEXT, Role.INK2);
            if (drawing.width(label) <= right + 24 - left) {
                drawing.text(label, new Point(left, y), Anchor.LEFT);
                y += drawing.lettered(26);
            }
        }
    }
}
