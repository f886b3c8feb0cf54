package org.tenthwise.app.sums;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;

/** Figures and words as they are written down, in lists and under keys: what a sum is given, and what it comes to. */
public sealed interface SumValue {

    /** Absent for anything but a figure or a word. */
    default Optional<Text> asText() {
        return Optional.empty();
    }

    /**
     * A figure or a word, with nothing taken off or added.
     *
     * @param unit of a length that is not in the unit of all others; absent for one that is, and for anything else
     */
    record Text(String text, Optional<Unit> unit) implements SumValue {

        public Text(String text) {
            this(text, Optional.empty());
        }

        @Override
        public Optional<Text> asText() {
            return Optional.of(this);
        }

        /** As it stands in a sentence. */
        String said() {
            return unit.map(own -> text + " " + own.symbol()).orElse(text);
        }
    }

    /** Several, in their order. */
    record Many(List<SumValue> values) implements SumValue {

        public Many {
            values = List.copyOf(values);
        }

        /** Texts in their order. */
        public static Many of(List<String> texts) {
            return new Many(texts.stream().<SumValue>map(Text::new).toList());
        }
    }

    /** Several under keys of their own; as they were written, so in a map that keeps its order. */
    record Fields(Map<String, SumValue> values) implements SumValue {}

    /** Something that is there but is no figure, no word and no list: true, false, nothing. */
    record Neither(String text) implements SumValue {}
}
