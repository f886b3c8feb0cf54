package org.tenthwise.app.picture.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Label;
import org.tenthwise.app.picture.Role;

/**
 * The upright lines of a course and what stands at their heads: the reason of each break, or a letter where there is
 * little room, and what is done at the line of a drift.
 *
 * @param marks the breaks in their order, behind them the line of a drift
 */
record BreakHeads(List<Flags.Flag> marks, Flags flags, Naming naming) {

    /** What stands at the heads; the rest stands in the key. */
    enum Naming {
        WORDS,
        LETTERS,
        LETTERS_ALONE,
        NOTHING
    }

    private static final double TEXT = 18;
    private static final int LANES = 3;

    static BreakHeads of(CoursePicture course, PartPlaces columns, Drawing drawing) {
        return Stream.of(Naming.values())
                .flatMap(naming -> with(naming, course, columns, drawing).stream())
                .findFirst()
                .orElseThrow();
    }

    private static Optional<BreakHeads> with(Naming naming, CoursePicture course, PartPlaces columns, Drawing drawing) {
        List<Flags.Flag> marks = new ArrayList<>();
        for (int i = 0; i < course.breaks().size(); i++) {
            BreakMark mark = course.breaks().get(i);
            String words = naming == Naming.WORDS ? mark.reason() : CourseKey.letter(i);
            marks.add(new Flags.Flag(columns.before(mark.before()), Label.of(words, TEXT, Role.INK)));
        }
        course.drift()
                .filter(drift -> drift.before().isPresent())
                .ifPresent(drift -> marks.add(new Flags.Flag(
                        columns.before(drift.before().getAsInt()),
                        Label.of(drift.again(), TEXT, Role.CUT).bold())));
        int named =
                switch (naming) {
                    case WORDS, LETTERS -> marks.size();
                    case LETTERS_ALONE -> course.breaks().size();
                    case NOTHING -> 0;
                };
        List<Flags.Flag> flagged = marks.subList(0, named).stream()
                .sorted(Comparator.comparingDouble(Flags.Flag::x))
                .toList();
        return Flags.of(flagged, LANES, 2, drawing.frame().width() - 2, drawing)
                .map(flags -> new BreakHeads(marks, flags, naming));
    }
}
