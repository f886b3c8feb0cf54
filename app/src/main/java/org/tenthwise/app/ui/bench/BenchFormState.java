package org.tenthwise.app.ui.bench;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.bench.ResultRow;
import org.tenthwise.app.picture.Picture;

/**
 * What the form of a bench sum shows at one moment, in words.
 *
 * @param unit what the key for the unit reads
 * @param decimals what the key for the decimals reads
 * @param next what the key that leads on reads
 * @param note what the key for the note reads
 */
public record BenchFormState(
        String title,
        String formula,
        List<FieldShown> fields,
        Hand hand,
        Found found,
        Optional<Picture> picture,
        KeyShown unit,
        KeyShown decimals,
        KeyShown next,
        KeyShown note) {

    public BenchFormState {
        fields = List.copyOf(fields);
    }

    /**
     * Something asked.
     *
     * @param value as typed or chosen, or that nothing is
     * @param remark why it is refused, or what was typed before the unit was changed; else empty
     * @param spoken all of it
     * @param several whether figures are asked one after another
     */
    public record FieldShown(
            String id,
            String name,
            String value,
            String remark,
            String spoken,
            boolean inHand,
            boolean empty,
            boolean several,
            boolean refused) {}

    /** What lies under the hand. */
    public sealed interface Hand {

        /** Figures are typed. */
        record Pad(String asked, String figure, String unit, String line) implements Hand {}

        /** Something is chosen. */
        record Choose(String asked, List<Option> options) implements Hand {
            public Choose {
                options = List.copyOf(options);
            }
        }
    }

    /** Something to choose. */
    public record Option(String choice, String label, boolean chosen) {}

    /**
     * What comes of it.
     *
     * @param sentence what is still to be typed, or why there is no answer; empty with an answer
     * @param typed the fields filled in so far; none with an answer
     * @param cautions what to heed before the headline is used
     * @param rows the headline first
     */
    public record Found(
            String sentence,
            boolean refused,
            List<FieldShown> typed,
            List<String> cautions,
            List<ResultRow> rows,
            List<String> notes,
            String basis) {
        public Found {
            typed = List.copyOf(typed);
            cautions = List.copyOf(cautions);
            rows = List.copyOf(rows);
            notes = List.copyOf(notes);
        }
    }

    /** A key: its word, a line under it, and whether it can be pressed. */
    public record KeyShown(String word, String line, boolean ready) {}
}
