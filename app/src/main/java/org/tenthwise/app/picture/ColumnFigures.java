package org.tenthwise.app.picture;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;

/**
 * Sizes written into the columns of a strip that are wide enough for them, at their surfaces: what earlier cuts came
 * to, and the readings that do not decide. The one that decides stands beside the strip.
 */
final class ColumnFigures {

    private static final double TEXT = 18;
    private static final double OFF = 5;
    private static final double STEP = 2;

    private final SizePicture picture;
    private final Drawing drawing;
    private final StripScale scale;
    private final FreeRoom free;

    /** @param lines what no figure may touch: limits, aims, bands */
    ColumnFigures(SizePicture picture, Drawing drawing, StripScale scale, Box strip, List<Box> lines) {
        this.picture = picture;
        this.drawing = drawing;
        this.scale = scale;
        this.free = new FreeRoom(strip);
        lines.forEach(free::take);
    }

    static Label label(SizePicture.ReadingColumn column) {
        return Label.of(column.size().map(SizePicture.Sized::figures).orElse(""), TEXT, Role.INK);
    }

    void draw(List<SizePicture.ReadingColumn> columns, List<Box> boxes) {
        for (int i = 0; i < columns.size(); i++) {
            SizePicture.ReadingColumn column = columns.get(i);
            boolean told = column.kind() == SizePicture.Kind.EARLIER
                    || column.kind() == SizePicture.Kind.TAKEN && !column.decides();
            if (told && drawing.width(label(column)) <= boxes.get(i).width() - OFF) {
                figure(column, boxes.get(i));
            }
        }
    }

    /**
     * In the air before the surface where there is room, otherwise in the metal; beyond a limit that the size does not
     * pass, never.
     */
    private void figure(SizePicture.ReadingColumn column, Box box) {
        Label label = label(column);
        double height = drawing.height(label);
        Length size = column.size().orElseThrow().size();
        boolean broken = scale.isAbove(size) || scale.isBelow(size);
        double surface = scale.isAbove(size)
                ? box.top() + Strip.BREAK
                : scale.isBelow(size) ? box.bottom() - Strip.BREAK : scale.y(size);
        int air = picture.metalAbove() ? 1 : -1;
        double first = height / 2 + OFF * Math.max(0.7, drawing.frame().textScale()) + (broken ? OFF : 0);
        double end = height / 2 + 2;
        DoubleStream overTheBreak = broken
                ? DoubleStream.of(scale.isAbove(size) ? box.top() + end : box.bottom() - end)
                : DoubleStream.of();
        Stream<Point> places = DoubleStream.concat(
                        DoubleStream.of(air, -air).flatMap(side -> DoubleStream.iterate(
                                        first, off -> off < box.height(), off -> off + STEP)
                                .map(off -> surface + side * off)),
                        overTheBreak)
                .mapToObj(y -> new Point(box.centreX(), y));
        free.place(
                        drawing.width(label),
                        height + 4,
                        places.filter(place -> isInside(place, box, height) && isOnTheSideOf(size, place)))
                .ifPresent(at -> drawing.text(
                        label.onGround(), new Point(at.centreX(), at.centreY()), Anchor.CENTRE, under(at.centreY())));
    }

    private static boolean isInside(Point place, Box box, double height) {
        return place.y() - height / 2 - 2 >= box.top() && place.y() + height / 2 + 2 <= box.bottom();
    }

    private boolean isOnTheSideOf(Length size, Point place) {
        return picture.limits().stream()
                .noneMatch(limit -> size.compareTo(limit.size()) * (place.y() - scale.y(limit.size())) > 0);
    }

    private Role under(double y) {
        boolean tooBig =
                picture.upper().filter(limit -> y < scale.y(limit.size())).isPresent();
        boolean tooSmall =
                picture.lower().filter(limit -> y > scale.y(limit.size())).isPresent();
        return tooBig || tooSmall ? drawing.frame().ground() : Role.ZONE;
    }
}
