package org.tenthwise.app.picture;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The sizes at the right of a strip too low for them to stand at their lines: one under another, the greatest on top,
 * each led to its own.
 */
final class BareLane {

    private static final double SIZE_TEXT = 24;
    private static final double GAP = 5;

    private record Written(String figures, double line, Role role) {}

    private final SizePicture picture;
    private final Drawing drawing;
    private final StripScale scale;
    private final Box lane;

    BareLane(SizePicture picture, Drawing drawing, StripScale scale, Box lane) {
        this.picture = picture;
        this.drawing = drawing;
        this.scale = scale;
        this.lane = lane;
    }

    void draw() {
        List<Written> sizes = Stream.of(
                        picture.upper().map(limit -> written(limit, Role.INK)),
                        picture.judged().map(size -> written(size, Role.ACCENT)),
                        picture.lower().map(limit -> written(limit, Role.INK)))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(Written::line))
                .toList();
        double each = lane.height() / sizes.size();
        for (int i = 0; i < sizes.size(); i++) {
            Written size = sizes.get(i);
            Label label = Label.of(size.figures(), SIZE_TEXT, size.role()).bold();
            Point at = new Point(lane.right(), lane.top() + (i + 0.5) * each);
            drawing.text(label, at, Anchor.RIGHT);
            drawing.line(
                    new Point(lane.left(), size.line()),
                    new Point(at.x() - drawing.width(label) - GAP, at.y()),
                    Stroke.THIN,
                    size.role());
        }
    }

    private Written written(SizePicture.Sized size, Role role) {
        return new Written(size.figures(), scale.clamped(size.size()), role);
    }
}
