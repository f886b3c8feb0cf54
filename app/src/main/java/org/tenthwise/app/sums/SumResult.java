package org.tenthwise.app.sums;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

/**
 * What a sum comes to.
 *
 * @param unit the lengths are written down in
 * @param values in the order in which they are read
 * @param basis the standard and clause the sum rests on, or <em>common practice</em>
 * @param notes what the one who asked should know, a sentence each; may be empty
 */
public record SumResult(Unit unit, OutputValues values, Message basis, List<Message> notes) implements SumReply {

    public SumResult {
        notes = List.copyOf(notes);
    }

    @Override
    public <T> T match(Function<SumResult, T> answered, Function<Problem, T> refused) {
        return answered.apply(this);
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
        private final SumDescription sum;
        private final OutputValues found = new OutputValues();
        private final List<Message> notes = new ArrayList<>();

        Writing(Unit unit, SumDescription sum) {
            this.unit = unit;
            this.sum = sum;
        }

        /** @throws CannotAnswer if it should be a number and is none */
        public <T> Writing put(Output<T> output, T value) {
            found.put(output, value);
            return this;
        }

        /** A length to the places a standard prints. */
        public Writing put(Output<Length> output, Length length, int places) {
            return put(Output.to(places, output), length);
        }

        /** Something the one who asked should know: the sum's words of that name, their gaps filled in order. */
        public Writing note(String which, Object... values) {
            return note(sum.said(which, values));
        }

        /** The same, in words that several sums share. */
        public Writing note(Message sentence) {
            notes.add(sentence);
            return this;
        }

        /** Resting on what the description says first. */
        public SumResult done() {
            return on(sum.basis().get(0));
        }

        /** @param which words of the sum say what it rests on with these inputs */
        public SumResult on(String which, Object... values) {
            return on(sum.said(which, values));
        }

        /** @param other what it rests on with these inputs */
        public SumResult on(Message other) {
            return new SumResult(unit, found, other, notes);
        }
    }
}
