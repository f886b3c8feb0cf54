package org.tenthwise.app.sums;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;

/** What a sum comes to, each under its key, in the order in which it is read. */
public final class OutputValues {

    private final List<OutputValue<?>> values = new ArrayList<>();

    /**
     * Puts {@code value} behind what is there.
     *
     * @throws CannotAnswer if it should be a number and is none
     */
    public <T> OutputValues put(Output<T> output, T value) {
        values.add(new OutputValue<>(output, value));
        return this;
    }

    /** In their order. */
    public List<OutputValue<?>> all() {
        return List.copyOf(values);
    }

    /** The value of {@code output}; absent if the sum did not give it. */
    @SuppressWarnings("unchecked") // a value is put with its own output only
    public <T> Optional<T> find(Output<T> output) {
        for (OutputValue<?> value : values) {
            if (value.isOf(output)) {
                return Optional.of((T) value.value());
            }
        }
        return Optional.empty();
    }

    /** All of it written down, lengths in {@code unit}. */
    public SumValue.Fields written(Unit unit) {
        Map<String, SumValue> written = new LinkedHashMap<>();
        for (OutputValue<?> value : values) {
            written.put(value.output().key(), value.written(unit));
        }
        return new SumValue.Fields(written);
    }
}
