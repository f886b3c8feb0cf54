package org.tenthwise.app.picture;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What {@link RunOutPicture} says where words find no room round a ring: the movement, its limit, which jaw goes in,
 * and how far to tap.
 */
final class RunOutWords {

    private static final double LINE = 30;
    private static final double GAP = 24;

    private final RunOutPicture picture;
    private final Drawing drawing;

    RunOutWords(RunOutPicture picture, Drawing drawing) {
        this.picture = picture;
        this.drawing = drawing;
    }

    /**
     * How many kinds of words find room, one kind after the other: of the moves all or none, for some of them alone
     * would be the wrong work.
     */
    int fitting() {
        List<List<Label>> kinds = kinds();
        Drawing dry = drawing.rehearsal();
        return IntStream.rangeClosed(0, kinds.size())
                .filter(count -> draw(dry, count) <= drawing.frame().height())
                .max()
                .orElse(0);
    }

    /** The first so many kinds, in lines where they do not fit beside one another. */
    void draw(int kinds) {
        draw(drawing, kinds);
    }

    /** How wide a column of the first so many kinds is. */
    double column(int kinds) {
        return kinds().subList(0, kinds).stream()
                .flatMap(List::stream)
                .mapToDouble(drawing::width)
                .max()
                .orElse(0);
    }

    /** How far down the first so many kinds reach. */
    double height(int kinds) {
        return draw(drawing.rehearsal(), kinds);
    }

    /** Further than anything where one is too wide. */
    private double draw(Drawing on, int kinds) {
        double left = 0;
        double top = 0;
        for (Label label :
                kinds().subList(0, kinds).stream().flatMap(List::stream).toList()) {
            double width = on.width(label);
            if (width > on.frame().width()) {
                return Double.MAX_VALUE;
            }
            if (left > 0 && left + width > on.frame().width()) {
                left = 0;
                top += on.lettered(LINE);
            }
            on.text(label, new Point(left, top + on.lettered(LINE / 2)), Anchor.LEFT);
            left += width + on.lettered(GAP);
        }
        return left == 0 ? 0 : top + on.lettered(LINE);
    }

    private List<List<Label>> kinds() {
        Stream<Label> moves = picture.jaws().stream()
                .filter(jaw -> jaw.in().signum() > 0)
                .map(jaw -> Label.of(jaw.told(), 20, Role.ACCENT).bold());
        Stream<Label> tap = picture.hints().tap().stream()
                .map(found -> Label.of(found.words(), 20, Role.ACCENT).bold());
        return List.of(
                picture
                        .movement()
                        .map(found -> Label.of(found.words(), 20, Role.ACCENT).bold())
                        .stream()
                        .toList(),
                List.of(Label.of(picture.limit().words(), 20, Role.INK).bold()),
                Stream.concat(moves, tap).toList());
    }
}
