package org.tenthwise.app.batch;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.written.NotJson;
import org.tenthwise.app.sums.written.WrittenObject;

/** What a line asks, read key by key: whose it is is known as soon as it was read, whatever comes behind. */
final class BatchRequest {

    private final Map<String, SumValue> keys = new LinkedHashMap<>();
    private Id id = Id.NONE;

    Id id() {
        return id;
    }

    /** @throws NotJson if it is not one JSON object, or its id is not one that can be given back */
    void read(String line) throws NotJson {
        WrittenObject object = new WrittenObject(line);
        for (Optional<String> key = object.nextKey(); key.isPresent(); key = object.nextKey()) {
            if (key.get().equals("id")) {
                id = id(object);
            } else {
                keys.put(key.get(), object.value());
            }
        }
    }

    /** The name of the sum asked for. */
    String calc() {
        SumValue calc = keys.get("calc");
        if (calc == null) {
            throw new CannotAnswer("calc", "calc is missing: it names the sum");
        }
        return new SumInput(Optional.empty(), Map.of("calc", calc)).text("calc");
    }

    /** All else that was written. */
    SumInput given() {
        Map<String, SumValue> rest = new LinkedHashMap<>(keys);
        rest.remove("calc");
        return SumInput.written(rest);
    }

    private static Id id(WrittenObject object) throws NotJson {
        boolean number = object.isNumber();
        SumValue value = object.value();
        if (value instanceof SumValue.Plain plain) {
            return number ? new Id.Number(plain.text()) : new Id.Text(plain.text());
        }
        if (value instanceof SumValue.Neither neither && neither.text().equals("null")) {
            return Id.NONE;
        }
        throw new CannotAnswer("id", "id is neither a text nor a number: it cannot be given back");
    }
}
