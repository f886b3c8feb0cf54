package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Round the ring of {@link RunOutPicture}: the way from place to place, where the mallet taps, and which side is which
 * where no jaw grips.
 */
final class RunOutMarks {

    private static final double GAP = 4;
    private static final double WAY = 9;
    private static final double TAP = 26;
    private static final double NUMBER = 18;
    /** Four numbers stand clear of each other in a ring as wide as this. */
    private static final double LEAST_INNER = 28;

    private static final double WORDS = 18;
    private static final double LINE = 24;
    /** Degrees of the way that are drawn at most. */
    private static final double MOST_OF_THE_WAY = 54;

    private final RunOutPicture picture;
    private final Drawing drawing;
    private final FreeRoom room;
    private final Point centre;
    private final double reach;
    private final double inner;

    /**
     * @param reach radius all this stays out of
     * @param inner radius the numbers of the jaws stay in where none grips
     */
    RunOutMarks(RunOutPicture picture, Drawing drawing, FreeRoom room, Point centre, double reach, double inner) {
        this.picture = picture;
        this.drawing = drawing;
        this.room = room;
        this.centre = centre;
        this.reach = reach;
        this.inner = inner;
    }

    /** The jaws that are drawn round the ring. */
    static List<RunOutPicture.Jaw> gripping(RunOutPicture picture) {
        return picture.hints().farOut() ? List.of() : picture.jaws();
    }

    /** What these marks take outside the ring. */
    static double around(RunOutPicture picture, Frame frame) {
        double scale = RunOutJaws.scale(frame);
        double tap = picture.hints().tap().isPresent() ? GAP + TAP * scale : 0;
        boolean jawsStandFurtherOut = !gripping(picture).isEmpty();
        return Math.max(tap, picture.hints().way().isEmpty() || jawsStandFurtherOut ? 0 : GAP + WAY * scale);
    }

    /** What they take inside it. */
    static double inside(RunOutPicture picture, Frame frame) {
        return picture.hints().farOut() && !picture.jaws().isEmpty() ? NUMBER * frame.textScale() : 0;
    }

    /** @return whether the numbers of the jaws found room side by side, and how far to tap, where it is to be said */
    boolean draw(RunOutPicture.Around around) {
        boolean numbered =
                !picture.hints().farOut() || picture.jaws().isEmpty() || inner >= drawing.lettered(LEAST_INNER);
        if (picture.hints().farOut() && numbered) {
            picture.jaws().forEach(this::number);
        }
        boolean complete =
                picture.hints().tap().map(tap -> tap(tap, around.figures)).orElse(true) && numbered;
        picture.hints().way().ifPresent(way -> way(way, around.notes));
        return complete;
    }

    private void number(RunOutPicture.Jaw jaw) {
        drawing.text(
                Label.of(jaw.number(), WORDS, Role.INK2).bold().onGround(),
                centre.polar(inner - drawing.lettered(NUMBER / 2), jaw.at().doubleValue()),
                Anchor.CENTRE);
    }

    /** An arrow against the work, from outside. */
    private boolean tap(RunOutPicture.Tap tap, boolean inWords) {
        double at = tap.at().doubleValue();
        double length = TAP * RunOutJaws.scale(drawing.frame());
        Point tail = centre.polar(reach + length, at);
        Point tip = centre.polar(reach, at);
        drawing.line(tail, tail.towards(tip, 0.6), new Stroke(8, List.of()), Role.ACCENT);
        drawing.head(tail, tip, length * 0.55, length * 0.68, Role.ACCENT);
        room.take(new Shape.Polyline(List.of(tail, tip), false).bounds().grown(length * 0.34));
        Label label = Label.of(tap.words(), 20, Role.ACCENT).bold();
        return !inWords || placed(label, tail, place -> true);
    }

    /** A bow with a head, as far as jaws leave room for it. */
    private void way(RunOutPicture.Way way, boolean inWords) {
        double scale = RunOutJaws.scale(drawing.frame());
        double radius = reach + WAY * scale / 2;
        double clear = picture.jaws().isEmpty() || picture.hints().farOut()
                ? 6
                : RunOutJaws.halfAngle(drawing.frame(), reach) + 3;
        double from = way.from().doubleValue() + clear;
        double to = Math.min(way.to().doubleValue() - clear, from + MOST_OF_THE_WAY);
        if (to - from < 12) {
            return;
        }
        double head = Math.toDegrees(WAY * 1.3 * scale / radius);
        List<Point> bow = new ArrayList<>(IntStream.iterate(0, i -> from + i < to - head * 0.6, i -> i + 3)
                .mapToObj(i -> centre.polar(radius, from + i))
                .toList());
        bow.add(centre.polar(radius, to - head * 0.6));
        drawing.chain(bow, Stroke.OUTLINE, Role.INK2);
        drawing.head(
                centre.polar(radius, to - head), centre.polar(radius, to), WAY * 1.3 * scale, WAY * scale, Role.INK2);
        Stream.concat(bow.stream(), Stream.of(centre.polar(radius, to)))
                .forEach(spot -> room.take(new Box(spot.x(), spot.y(), spot.x(), spot.y()).grown(WAY * scale / 2)));
        if (inWords) {
            Label label = Label.of(way.words(), WORDS, Role.INK2);
            Point middle = centre.polar(radius + drawing.lettered(LINE), (from + to) / 2);
            placed(label, middle, place -> place.distanceTo(middle) < drawing.width(label));
        }
    }

    private boolean placed(Label label, Point wanted, Predicate<Point> allowed) {
        return room.nearest(drawing.width(label), drawing.lettered(LINE), wanted, allowed)
                .map(box -> drawing.text(label, new Point(box.centreX(), box.centreY()), Anchor.CENTRE))
                .isPresent();
    }
}
