package org.tenthwise.model.run;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Refused;

/**
 * A paper that says something of a part, as it was entered.
 *
 * @param number of the paper; may be empty only while it is not there yet
 * @param dated the day that stands on it; while it is not there yet, the day that was said
 * @param by who says so: the house or the person that signed it
 * @param figures what it gives of the characteristic, as typed, one an instance; empty where it gives none
 */
public record Document(String number, LocalDate dated, Says says, String by, List<Written> figures) {

    /** What it says. */
    public enum Says {
        CONFORMS,
        DOES_NOT_CONFORM,
        /** It is not there yet: ordered, sent for. */
        NOT_YET,
        /** Nothing but figures, which are judged against the limits. */
        FIGURES
    }

    public Document {
        figures = List.copyOf(figures);
        if (number.isBlank() && says != Says.NOT_YET) {
            throw new Refused("model.document.number");
        }
        if (by.isBlank()) {
            throw new Refused("model.document.by");
        }
        if (figures.isEmpty() && says == Says.FIGURES) {
            throw new Refused("model.document.figures");
        }
    }

    /** Whether the day on it is still to come when it is entered: a slip of the hand, or no paper at all. */
    public boolean isDatedAfter(OffsetDateTime entered) {
        return dated.isAfter(entered.toLocalDate());
    }
}
