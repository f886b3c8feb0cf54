package org.tenthwise.checklists.format;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.tenthwise.model.words.Message;

/** A table, its keys in the order of the text. */
public record RawTable(Spot spot, Map<String, RawValue> values) implements RawValue {

    public RawTable {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    @Override
    public Message what() {
        return Message.of("toml.table");
    }
}
