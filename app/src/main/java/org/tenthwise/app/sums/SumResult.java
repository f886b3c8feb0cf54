package org.tenthwise.app.sums;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/**
 * What a sum comes to.
 *
 * @param results in the order they are read
 * @param basis the standard and clause the sum rests on, or <em>common practice</em>
 * @param notes what the one who asked should know, a sentence each; may be empty
 */
public record SumResult(List<Result> results, String basis, List<String> notes) implements SumReply {

    public SumResult {
        results = List.copyOf(results);
        notes = List.copyOf(notes);
    }

    /** What stands under {@code key}; absent if the sum did not give it. */
    public Optional<OutputValue> at(String key) {
        return results.stream()
                .filter(result -> result.key().equals(key))
                .map(Result::value)
                .findFirst();
    }

    /** One result under its name. */
    public record Result(String key, OutputValue value) {}

    /** Something worked out. */
    public sealed interface OutputValue {

        /** A plain decimal or a word. */
        record Plain(String text) implements OutputValue {}

        /** Several, in their order. */
        record Many(List<OutputValue> values) implements OutputValue {

            public Many {
                values = List.copyOf(values);
            }
        }

        /** Several under names of their own. */
        record Table(List<Result> values) implements OutputValue {

            public Table {
                values = List.copyOf(values);
            }
        }
    }

    /** Begins an answer whose lengths come out in {@code unit}. */
    public static Writing in(Unit unit) {
        return new Writing(unit);
    }

    /** An answer being written down, result by result. */
    public static final class Writing {

        /** Where no standard sets the places: a nanometre, and a hundredth of a millionth of an inch. */
        private static final int PLACES_OF_A_MILLIMETRE = 6;

        private static final int PLACES_OF_AN_INCH = 8;
        private static final int FIGURES = 12;
        /** Leaves eight figures of a chance of 1e-32; what is less is nought in any shop. */
        private static final int MOST_PLACES = 40;

        private final Unit unit;
        private final List<Result> results = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();

        private Writing(Unit unit) {
            this.unit = unit;
        }

        /** A length to 1e-6 mm or 1e-8 in, half-even. */
        public Writing length(String key, Length length) {
            return put(key, plain(length));
        }

        /** A length to the places a standard prints. */
        public Writing length(String key, Length length, int places) {
            return put(
                    key,
                    new OutputValue.Plain(length.in(unit)
                            .setScale(places, RoundingMode.HALF_EVEN)
                            .toPlainString()));
        }

        /** Lengths in their order, each to 1e-6 mm or 1e-8 in. */
        public Writing lengths(String key, List<Length> lengths) {
            return put(
                    key,
                    new OutputValue.Many(
                            lengths.stream().<OutputValue>map(this::plain).toList()));
        }

        /** A decimal just as it is. */
        public Writing exact(String key, BigDecimal figure) {
            return put(key, new OutputValue.Plain(figure.toPlainString()));
        }

        /** A whole number. */
        public Writing whole(String key, long figure) {
            return put(key, new OutputValue.Plain(Long.toString(figure)));
        }

        /**
         * A number from a sum with roots, to twelve figures, and to forty places at most.
         *
         * @throws CannotAnswer if the sum did not come to a number
         */
        public Writing figure(String key, double figure) {
            if (!Double.isFinite(figure)) {
                throw new CannotAnswer("%s does not come to a number with the figures given".formatted(key));
            }
            BigDecimal rounded = new BigDecimal(figure).round(new MathContext(FIGURES, RoundingMode.HALF_EVEN));
            int places = Math.min(MOST_PLACES, Math.max(rounded.scale(), PLACES_OF_AN_INCH));
            return put(
                    key,
                    new OutputValue.Plain(
                            rounded.setScale(places, RoundingMode.HALF_EVEN).toPlainString()));
        }

        /** A word from a closed list of the sum's own. */
        public Writing word(String key, String word) {
            return put(key, new OutputValue.Plain(word));
        }

        /** Anything else: lists of tables, lists of lists. */
        public Writing put(String key, OutputValue value) {
            results.add(new Result(key, value));
            return this;
        }

        /** Something the one who asked should know, as a sentence. */
        public Writing note(String sentence) {
            notes.add(sentence);
            return this;
        }

        /** @param basis the standard and clause, or <em>common practice</em> */
        public SumResult on(String basis) {
            return new SumResult(results, basis, notes);
        }

        private OutputValue.Plain plain(Length length) {
            int places = unit == Unit.INCH ? PLACES_OF_AN_INCH : PLACES_OF_A_MILLIMETRE;
            return new OutputValue.Plain(
                    length.in(unit).setScale(places, RoundingMode.HALF_EVEN).toPlainString());
        }
    }
}
