package org.tenthwise.app.batch;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.written.NotJson;
import org.tenthwise.app.sums.written.WrittenObject;

/** What a line asks, read key by key: whose it is is known as soon as it was read, whatever comes behind. */
final class BatchRequest {

    private static final Input<String> ID = Input.name("id");
    private static final Input<String> CALC = Input.name("calc");

    private final Map<String, SumValue> keys = new LinkedHashMap<>();
    private Id id = Id.NONE;

    Id id() {
        return id;
    }

    /** @throws NotJson if it is not one JSON object, or its id is not one that can be given back */
    void read(String line) throws NotJson {
        WrittenObject object = new WrittenObject(line);
        for (Optional<String> key = object.nextKey(); key.isPresent(); key = object.nextKey()) {
            if (key.get().equals(ID.key())) {
                id = id(object);
            } else {
                keys.put(key.get(), object.value());
            }
        }
    }

    /** The name of the sum asked for. */
    String calc() {
        if (!keys.containsKey(CALC.key())) {
            throw new CannotAnswer(CALC, "missing");
        }
        return new SumInput(Optional.empty(), keys).get(CALC);
    }

    /** All else that was written. */
    SumInput given() {
        Map<String, SumValue> rest = new LinkedHashMap<>(keys);
        rest.remove(CALC.key());
        return SumInput.written(rest);
    }

    private static Id id(WrittenObject object) throws NotJson {
        boolean number = object.isNumber();
        SumValue value = object.value();
        if (value instanceof SumValue.Text written) {
            return number ? new Id.Number(written.text()) : new Id.Text(written.text());
        }
        if (value instanceof SumValue.Neither neither && neither.text().equals("null")) {
            return Id.NONE;
        }
        throw new CannotAnswer(ID, "unfit");
    }
}
