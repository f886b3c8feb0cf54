package org.tenthwise.app.sums;

import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

/** What a sum comes to in one respect. */
public record OutputValue<T>(Output<T> output, T value) {

    public OutputValue {
        if (value instanceof Double figure && !Double.isFinite(figure)) {
            throw new CannotAnswer(Message.of("found.no-number", output));
        }
    }

    /** It written down, a length in {@code unit}. */
    SumValue written(Unit unit) {
        return output.writer().write(value, unit);
    }

    /** The figure or the word it is written down as; empty for a list. */
    public String text(Unit unit) {
        return written(unit) instanceof SumValue.Text written ? written.text() : "";
    }

    /** Whether this is the value of {@code other}. */
    boolean isOf(Output<?> other) {
        return output.key().equals(other.key());
    }
}
