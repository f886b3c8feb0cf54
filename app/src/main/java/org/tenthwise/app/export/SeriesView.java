package org.tenthwise.app.export;

import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;
import org.tenthwise.app.series.Break;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.series.SizeOf;
import org.tenthwise.model.words.Word;

/**
 * A view over parts that is handed out.
 *
 * @param one the characteristic it is of; absent where it is of all that is looked for
 * @param across breaks that what is told runs across; none where it is of the parts since the last break
 */
public record SeriesView(Kind kind, Sought sought, Optional<Characteristic> one, SizeOf of, Set<Break.Reason> across) {

    public SeriesView {
        across = Break.Reason.ordered(across);
    }

    /** What is drawn. */
    public enum Kind {
        /** All characteristics, by their places in the tolerance. */
        SHARES,
        /** One over the parts. */
        COURSE,
        /** Several by their deviation from target. */
        DEVIATIONS
    }

    /** Whether a series is of the one characteristic. */
    boolean isOf(Series series) {
        return one.filter(series.characteristic()::equals).isPresent();
    }

    /** What a file of it is called, without its ending: letters, digits, point and hyphen. */
    public String name() {
        String part = one.map(Characteristic::part)
                .or(() -> sought.of(SoughtBy.PART_NUMBER))
                .orElse("");
        String number = one.map(Characteristic::number).orElse("");
        return String.join("-", "history", Word.of(kind), part, number)
                .replaceAll("[^A-Za-z0-9.]+", "-")
                .replaceAll("[-.]+$", "");
    }
}
