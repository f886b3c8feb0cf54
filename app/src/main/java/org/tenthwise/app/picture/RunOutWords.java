package org.tenthwise.app.picture;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What {@link RunOutPicture} says where words find no room round a ring: the movement, its limit, which jaw goes in, and how far to tap. */
final class RunOutWords {

    private static final double LINE = 30;
    private static final double GAP = 24;

    private final RunOutPicture picture;
    private final Drawing drawing;

    RunOutWords(RunOutPicture picture, Drawing drawing) {
        this.picture = picture;
        this.drawing = drawing;
    }

    /** One after the other, in lines where they do not fit beside one another; what finds no room any more is left out. @return how far down they reach */
    double draw() {
        Box frame = drawing.frame().box();
        double left = 0;
        double top = 0;
        for (Label label : labels()) {
            double width = drawing.width(label);
            if (left > 0 && left + width > frame.right()) {
                left = 0;
                top += drawing.lettered(LINE);
            }
            if (width > frame.right() || top + drawing.lettered(LINE) > frame.bottom()) {
                return top;
            }
            drawing.text(label, new Point(left, top + drawing.lettered(LINE / 2)), Anchor.LEFT);
            left += width + drawing.lettered(GAP);
        }
        return top + drawing.lettered(LINE);
    }

    private List<Label> labels() {
        Optional<Label> movement = picture.movement().map(found -> Label.of(found.words(), 20, Role.ACCENT).bold());
        Label limit = Label.of(picture.limit().words(), 20, Role.INK).bold();
        Stream<Label> moves = picture.jaws().stream().filter(jaw -> jaw.in().signum() > 0)
                .map(jaw -> Label.of(jaw.told(), 20, Role.ACCENT).bold());
        Stream<Label> tap = picture.hints().tap().stream().map(found -> Label.of(found.words(), 20, Role.ACCENT).bold());
        return Stream.of(movement.stream(), Stream.of(limit), moves, tap).flatMap(labels -> labels).toList();
    }
}
