package org.tenthwise.app.batch;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Given;
import org.tenthwise.app.sums.Typed;
import org.tenthwise.app.sums.written.Unreadable;
import org.tenthwise.app.sums.written.WrittenObject;

/** What a line asks, read key by key: whose it is is known as soon as it was read, whatever comes behind. */
final class Question {

    private final Map<String, Typed> keys = new LinkedHashMap<>();
    private Id id = Id.NONE;

    Id id() {
        return id;
    }

    /** @throws Unreadable if it is not one JSON object, or its id is not one that can be given back */
    void read(String line) throws Unreadable {
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
        Typed calc = keys.get("calc");
        if (calc == null) {
            throw new CannotAnswer("calc", "calc is missing: it names the sum");
        }
        return new Given(Optional.empty(), Map.of("calc", calc)).text("calc");
    }

    /** All else that was written. */
    Given given() {
        Map<String, Typed> rest = new LinkedHashMap<>(keys);
        rest.remove("calc");
        return Given.written(rest);
    }

    private static Id id(WrittenObject object) throws Unreadable {
        boolean number = object.isNumber();
        Typed value = object.value();
        if (value instanceof Typed.Plain plain) {
            return number ? new Id.Number(plain.text()) : new Id.Text(plain.text());
        }
        if (value instanceof Typed.Neither neither && neither.text().equals("null")) {
            return Id.NONE;
        }
        throw new CannotAnswer("id", "id is neither a text nor a number: it cannot be given back");
    }
}
