package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Round the ring of {@link RunOutPicture}: the jaws, each with its move, the way from place to place, where the mallet
 * taps, and which side is which where no jaw grips.
 */
final class RunOutMarks {

    private static final double JAW = 22;
    /** Half the width of a jaw away from the work, and at the work. */
    private static final double WIDE = 29;

    private static final double NARROW = 21;
    private static final double JAW_GAP = 3;
    private static final double ARROW = 28;
    /** How thick an arrow is. */
    private static final double SHAFT = 8;

    private static final double GAP = 4;
    private static final double WAY = 9;
    private static final double TAP = 26;
    /** Half of it across, of its length. */
    private static final double TAP_WIDE = 0.34;

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
    private final double scale;

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
            double depth = JAW * scale + JAW_GAP;
            greatest = Math.min(greatest, cos < 0.01 ? greatest : (down - WIDE * scale * sin) / cos - depth);
            greatest = Math.min(greatest, sin < 0.01 ? greatest : (across - WIDE * scale * cos) / sin - depth);
        }
        return greatest;
    }

    /** Degrees a jaw covers at {@code reach}, to either side of its middle. */
    static double halfAngle(Frame frame, double reach) {
        return Math.toDegrees(Math.atan2(NARROW * scale(frame), reach));
    }

    /** The jaws that are drawn round the ring. */
    static List<RunOutPicture.Jaw> gripping(RunOutPicture picture) {
        return picture.hints().farOut() ? List.of() : picture.jaws();
    }

    /** What these marks take outside the ring. */
    static double around(RunOutPicture picture, Frame frame) {
        boolean jawsStandFurtherOut = !gripping(picture).isEmpty();
        return picture.hints().way().isEmpty() || jawsStandFurtherOut ? 0 : GAP + WAY * scale(frame);
    }

    /**
     * The greatest reach with which the arrow of the mallet stays within {@code across} and {@code down} of the centre.
     */
    static double greatestReach(RunOutPicture.Tap tap, Frame frame, double across, double down) {
        double angle = Math.toRadians(tap.at().doubleValue());
        double length = TAP * scale(frame);
        double half = SHAFT / 2 + 1;
        double sin = Math.abs(Math.sin(angle));
        double cos = Math.abs(Math.cos(angle));
        double greatest = Math.min(across, down);
        greatest = Math.min(greatest, cos < 0.01 ? greatest : (down - half * sin) / cos - length);
        return Math.min(greatest, sin < 0.01 ? greatest : (across - half * cos) / sin - length);
    }

    /** What they take inside it. */
    static double inside(RunOutPicture picture, Frame frame) {
        return picture.hints().farOut() && !picture.jaws().isEmpty() ? NUMBER * frame.textScale() : 0;
    }

    /**
     * @return whether every word that stands {@code around} found room, and so the numbers of the jaws where words
     *     stand there; the rest is left out once one has none
     */
    boolean draw(RunOutPicture.Around around) {
        gripping(picture).forEach(this::jaw);
        boolean complete = gripping(picture).stream()
                        .filter(jaw -> around.figures
                                && !jaw.words().isEmpty()
                                && (around.loosening || jaw.in().signum() > 0))
                        .allMatch(this::move)
                && (numbers() || !around.figures)
                && picture.hints().tap().map(tap -> tap(tap, around.figures)).orElse(true);
        picture.hints().way().ifPresent(way -> way(way, around.notes));
        return complete;
    }

    private boolean numbers() {
        boolean numbered =
                !picture.hints().farOut() || picture.jaws().isEmpty() || inner >= drawing.lettered(LEAST_INNER);
        if (picture.hints().farOut() && numbered) {
            picture.jaws().forEach(this::number);
        }
        return numbered;
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
        return centre.polar(reach + JAW_GAP + JAW * scale / 2, jaw.at().doubleValue());
    }

    /** Narrower towards the work. */
    private List<Point> outline(RunOutPicture.Jaw jaw) {
        double degrees = jaw.at().doubleValue();
        Point at = middleOf(jaw);
        double depth = JAW * scale / 2;
        double wide = WIDE * scale;
        double narrow = NARROW * scale;
        return List.of(
                at.polar(depth, degrees).polar(-wide, degrees + 90),
                at.polar(depth, degrees).polar(wide, degrees + 90),
                at.polar(-depth, degrees).polar(narrow, degrees + 90),
                at.polar(-depth, degrees).polar(-narrow, degrees + 90));
    }

    /**
     * An arrow the way the jaw goes, and how far, beside the jaw; where a line has no room there, how far stands under
     * the rest of it.
     */
    private boolean move(RunOutPicture.Jaw jaw) {
        Role role = jaw.in().signum() > 0 ? Role.ACCENT : Role.INK;
        List<String> apart = List.of(jaw.words().split(" "));
        List<String> underArrow = apart.size() > 1 ? apart : List.of("", jaw.words());
        return move(jaw, List.of(jaw.words()), role, false)
                || move(jaw, underArrow, role, false)
                || move(jaw, List.of(jaw.words()), role, true)
                || move(jaw, underArrow, role, true);
    }

    /**
     * Only where no other jaw is nearer to any of the words: a word read at the wrong jaw moves it.
     *
     * @param anywhere not just beside the jaw
     */
    private boolean move(RunOutPicture.Jaw jaw, List<String> lines, Role role, boolean anywhere) {
        List<Label> labels =
                lines.stream().map(line -> Label.of(line, 20, role).bold()).toList();
        double arrow = ARROW * scale;
        double line = drawing.lettered(LINE);
        double first = Math.max(arrow, line);
        double width =
                Math.max(arrow + 6 + drawing.width(labels.get(0)), drawing.width(labels.get(labels.size() - 1))) + 2;
        double height = first + (labels.size() - 1) * line;
        Predicate<Box> isItsOwn = box -> IntStream.range(0, labels.size())
                .filter(i -> !lines.get(i).isEmpty())
                .mapToObj(i -> word(box, labels.get(i), i))
                .allMatch(word -> isNearestTo(jaw, word));
        Optional<Box> found = anywhere
                ? room.nearest(width, height, middleOf(jaw), isItsOwn)
                : room.place(width, height, beside(jaw, width, height).stream(), isItsOwn);
        found.ifPresent(box -> {
            Point middleOfArrow = new Point(box.left() + arrow / 2, box.top() + first / 2);
            double towards = jaw.at().doubleValue() + (jaw.in().signum() > 0 ? 180 : 0);
            Point tip = middleOfArrow.polar(arrow / 2, towards);
            Point tail = middleOfArrow.polar(-arrow / 2, towards);
            drawing.line(tail, tail.towards(tip, 0.6), new Stroke(SHAFT, List.of()), role);
            drawing.head(tail, tip, arrow * 0.5, arrow * 0.62, role);
            for (int i = 0; i < labels.size(); i++) {
                Box word = word(box, labels.get(i), i);
                drawing.text(labels.get(i), new Point(word.left(), word.centreY()), Anchor.LEFT);
            }
        });
        return found.isPresent();
    }

    /** Where in the room of a move a line of its words stands: the first beside the arrow, the others under it. */
    private Box word(Box move, Label label, int which) {
        double arrow = ARROW * scale;
        double line = drawing.lettered(LINE);
        double first = Math.max(arrow, line);
        double left = move.left() + (which == 0 ? arrow + 6 : 1);
        double middle = move.top() + (which == 0 ? first / 2 : first + (which - 0.5) * line);
        double half = drawing.lettered(label.size()) * TextMetrics.CAPITAL / 2;
        return new Box(left, middle - half, left + drawing.width(label), middle + half);
    }

    /** Both by its middle and by the end that reaches furthest. */
    private boolean isNearestTo(RunOutPicture.Jaw jaw, Box word) {
        Point own = middleOf(jaw);
        return picture.jaws().stream()
                .map(this::middleOf)
                .noneMatch(other -> word.distanceTo(other) < word.distanceTo(own)
                        || word.centre().distanceTo(other) < word.centre().distanceTo(own));
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

    private void number(RunOutPicture.Jaw jaw) {
        drawing.text(
                Label.of(jaw.number(), WORDS, Role.INK2).bold().onGround(),
                centre.polar(inner - drawing.lettered(NUMBER / 2), jaw.at().doubleValue()),
                Anchor.CENTRE);
    }

    /** An arrow against the work, from outside. */
    private boolean tap(RunOutPicture.Tap tap, boolean inWords) {
        double at = tap.at().doubleValue();
        double length = TAP * scale;
        Point tail = centre.polar(reach + length, at);
        Point tip = centre.polar(reach, at);
        drawing.line(tail, tail.towards(tip, 0.6), new Stroke(SHAFT, List.of()), Role.ACCENT);
        drawing.head(tail, tip, length * 0.55, length * 0.68, Role.ACCENT);
        room.take(new Shape.Polyline(List.of(tail, tip), false).bounds().grown(length * TAP_WIDE));
        Label label = Label.of(tap.words(), 20, Role.ACCENT).bold();
        return !inWords || placed(label, tail, box -> true);
    }

    /** A bow with a head, as far as jaws leave room for it. */
    private void way(RunOutPicture.Way way, boolean inWords) {
        double radius = reach + WAY * scale / 2;
        double clear = picture.jaws().isEmpty() || picture.hints().farOut() ? 6 : halfAngle(drawing.frame(), reach) + 3;
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
            placed(label, middle, box -> box.centre().distanceTo(middle) < drawing.width(label));
        }
    }

    private boolean placed(Label label, Point wanted, Predicate<Box> allowed) {
        return room.nearest(drawing.width(label), drawing.lettered(LINE), wanted, allowed)
                .map(box -> drawing.text(label, box))
                .isPresent();
    }
}
