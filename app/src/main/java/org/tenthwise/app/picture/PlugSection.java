package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * The bore of a {@link PlugPicture} cut open, the plug lying on its lower wall, so that all the play shows above it:
 * between the thickest of the plug and the narrowest of the bore the least, between the thinnest and the widest the
 * most. The plug has gone as far as the hand found it to go.
 */
final class PlugSection {

    private static final double TEXT = 18;
    private static final double SIZE_TEXT = 22;
    private static final double LINE = 25;
    /** Pixels of the widest play. */
    private static final double GAP = 44;

    private static final int MOST_LINES = 3;
    /** How far in the tip is, of the length of the bore. */
    private static final double FREELY_IN = 0.86;

    private static final double DRAGGED_IN = 0.6;
    private static final double OFFERED = -0.16;

    private final PlugPicture picture;
    private final Drawing drawing;
    private final Box room;
    private final List<Label> words;
    private final double left;
    private final double mouth;
    private final double top;
    private final double bottom;
    private final double thickness;
    private final double perMillimetre;
    private final double plugTop;

    PlugSection(PlugPicture picture, Drawing drawing, Box room) {
        this.picture = picture;
        this.drawing = drawing;
        this.room = room;
        this.words = words();
        this.left = room.left() + 4;
        this.mouth = left + (room.width() - 8) * 0.66;
        this.top = room.top() + drawing.lettered(30);
        this.bottom = room.bottom() - 8 - drawing.lettered(LINE) * words.size();
        this.thickness = (bottom - top) * 0.2;
        Length most = Length.greatest(Stream.concat(
                        Stream.of(picture.widest()),
                        Stream.of(picture.least(), picture.most())
                                .flatMap(column -> column.size().stream())
                                .map(sized -> sized.size().abs()))
                .toList());
        double gap = Math.min(GAP, (bottom - top) * 0.13);
        this.perMillimetre = gap / Nanometres.of(most);
        this.plugTop = top + thickness + gap;
    }

    /** Height of the bore's upper wall when there is so much play over the thickest of the plug. */
    private double wall(Length play) {
        return plugTop - Nanometres.of(play) * perMillimetre;
    }

    void draw() {
        Length play = picture.least().size().map(SizePicture.Sized::size).orElse(picture.wanted());
        walls(wall(play));
        plug();
        drawing.across((plugTop + bottom - thickness) / 2, left, room.right() - 4, Stroke.CENTRE, Role.LINE);
        Box beside = new Box(room.left(), top - drawing.lettered(28), room.right(), bottom - thickness - 4);
        FreeRoom clear = new FreeRoom(beside);
        List.of(wall(play), plugTop, top).forEach(y -> clear.take(new Box(room.left(), y - 3, room.right(), y + 3)));
        List.of(tip(), mouth).forEach(x -> clear.take(new Box(x - 3, top, x + 3, bottom)));
        List<FreeRoom> free = List.of(clear, new FreeRoom(beside));
        if (picture.least().size().isPresent() && picture.most().size().isPresent()) {
            double thinnest = plugTop + spreadOfPlug() * perMillimetre;
            double widest = wall(play.plus(picture.boreSpread()));
            thin(widest, left + 14, mouth);
            thin(plugTop, left + 14, Math.max(mouth, tip()));
            thin(thinnest, left + 14, room.right() - 26);
            double leastAt = left + (mouth - left) * 0.3;
            double mostAt = left + (mouth - left) * 0.7;
            dimension(picture.least(), leastAt, plugTop, wall(play), free);
            dimension(picture.most(), mostAt, thinnest, widest, free);
            figures(picture.least(), leastAt, Math.min(wall(play), plugTop), free);
            figures(picture.most(), mostAt, Math.min(widest, thinnest), free);
        }
        double y = room.bottom() - drawing.lettered(LINE) * (words.size() - 0.5) - 2;
        for (Label line : words) {
            drawing.text(line, new Point(room.left(), y), Anchor.LEFT);
            y += drawing.lettered(LINE);
        }
    }

    private double spreadOfPlug() {
        Length found = picture.most()
                .size()
                .orElseThrow()
                .size()
                .minus(picture.least().size().orElseThrow().size());
        return Nanometres.of(found.minus(picture.boreSpread()));
    }

    private void walls(double inner) {
        wall(top, inner);
        wall(bottom, bottom - thickness);
    }

    private void wall(double outer, double inner) {
        List<Point> broken = List.of(
                new Point(left + 6, outer),
                new Point(left + 13, outer + (inner - outer) * 0.35),
                new Point(left + 2, outer + (inner - outer) * 0.7),
                new Point(left + 8, inner));
        List<Point> ring = new ArrayList<>(broken);
        ring.add(new Point(mouth, inner));
        ring.add(new Point(mouth, outer));
        drawing.metal(List.of(ring));
        drawing.chain(broken, Stroke.THIN, Role.LINE);
        drawing.chain(
                List.of(broken.get(0), new Point(mouth, outer), new Point(mouth, inner), broken.get(3)),
                Stroke.OUTLINE,
                Role.LINE);
    }

    private double tip() {
        Optional<Answer> feel = picture.hand().map(PlugPicture.Hand::feel);
        double in = feel.map(found -> found == Answer.FREELY ? FREELY_IN : found == Answer.WITH_DRAG ? DRAGGED_IN : 0.0)
                .orElse(OFFERED);
        return mouth - in * (mouth - left) + 3;
    }

    private void plug() {
        Box plug = new Box(tip(), plugTop, room.right() - 6, bottom - thickness);
        double chamfer = Math.min(8, plug.height() * 0.1);
        List<Point> outline = List.of(
                new Point(plug.left(), plug.top() + chamfer),
                new Point(plug.left() + chamfer, plug.top()),
                new Point(plug.right(), plug.top()),
                new Point(plug.right(), plug.bottom()),
                new Point(plug.left() + chamfer, plug.bottom()),
                new Point(plug.left(), plug.bottom() - chamfer));
        drawing.otherMetal(outline);
        drawing.ring(outline, Stroke.OUTLINE, Role.ACCENT);
    }

    private void thin(double y, double from, double to) {
        drawing.across(y, from, to, Stroke.THIN, Role.LINE);
    }

    private void dimension(SizePicture.ReadingColumn column, double x, double plug, double wall, List<FreeRoom> free) {
        if (Math.abs(plug - wall) > 1) {
            Shape.Polyline line = drawing.dimension(
                    new Point(x, plug), new Point(x, wall), column.decides() ? Role.ACCENT : Role.LINE);
            free.forEach(room -> room.take(line.bounds().grown(3)));
        }
    }

    /** @param free clear of the outlines, and where that is full, of figures and dimensions alone */
    private void figures(SizePicture.ReadingColumn column, double x, double over, List<FreeRoom> free) {
        Label figures = Label.of(
                        column.size().orElseThrow().figures(), SIZE_TEXT, column.decides() ? Role.ACCENT : Role.INK)
                .onGround();
        Label label = column.decides() ? figures.bold() : figures;
        double height = drawing.height(label) + 10;
        Point beside = new Point(x, over - 28 - height / 2);
        List<Point> places = List.of(beside, new Point(x, plugTop + 34 + height));
        free.stream()
                .flatMap(room -> room
                        .place(drawing.width(label) + 10, height, places)
                        .or(() -> room.nearest(drawing.width(label) + 10, height, beside))
                        .stream())
                .findFirst()
                .ifPresent(box -> {
                    free.forEach(room -> room.take(box));
                    drawing.text(label, box);
                });
    }

    /** Under the section: what the hand found first, then the sizes as far as there is room. */
    private List<Label> words() {
        List<Label> lines = new ArrayList<>();
        picture.hand().ifPresent(hand -> {
            lines.add(Label.of(hand.words(), TEXT, hand.wrong() ? Role.FAIL : Role.INK)
                    .bold());
            hand.contradiction().ifPresent(contradiction -> TextLines.joined(
                            List.of(contradiction.split(" ")),
                            " ",
                            MOST_LINES,
                            part -> drawing.width(
                                            Label.of(part, TEXT, Role.FAIL).bold())
                                    <= room.width())
                    .forEach(line -> lines.add(Label.of(line, TEXT, Role.FAIL).bold())));
        });
        picture.notes().forEach(note -> lines.add(Label.of(note, TEXT, Role.INK2)));
        return lines.stream()
                .filter(line -> drawing.width(line) <= room.width())
                .toList();
    }
}
