package org.tenthwise.app.sums;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/**
 * What a sum comes to.
 *
 * @param unit the lengths are written down in
 * @param values in the order in which they are read
 * @param basis the standard and clause the sum rests on, or <em>common practice</em>
 * @param notes what the one who asked should know, a sentence each; may be empty
 */
public record SumResult(Unit unit, OutputValues values, String basis, List<String> notes) implements SumReply {

    public SumResult {
        notes = List.copyOf(notes);
    }

    /** The value of {@code output}; absent if the sum did not give it. */
    public <T> Optional<T> find(Output<T> output) {
        return values.find(output);
    }

    /** All values written down. */
    public SumValue.Fields written() {
        return values.written(unit);
    }

    /** A result being written down, value by value. */
    public static final class Writing {

        private final Unit unit;
        private final String basis;
        private final OutputValues values = new OutputValues();
        private final List<String> notes = new ArrayList<>();

        Writing(Unit unit, String basis) {
            this.unit = unit;
            this.basis = basis;
        }

        /** @throws CannotAnswer if it should be a number and is none */
        public <T> Writing put(Output<T> output, T value) {
            values.put(output, value);
            return this;
        }

        /** A length to the places a standard prints. */
        public Writing put(Output<Length> output, Length length, int places) {
            return put(Output.to(places, output), length);
        }

        /** Something the one who asked should know, as a sentence. */
        public Writing note(String sentence) {
            notes.add(sentence);
            return this;
        }

        /** Resting on what the description says first. */
        public SumResult done() {
            return on(basis);
        }

        /** @param other what it rests on with these inputs */
        public SumResult on(String other) {
            return new SumResult(unit, values, other, notes);
        }
    }
}
