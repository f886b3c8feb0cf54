package org.tenthwise.checklists.format;

import java.util.List;
import org.tenthwise.model.words.Message;

/** A list, each item with a spot of its own. */
public record RawList(Spot spot, List<RawValue> items) implements RawValue {

    public RawList {
        items = List.copyOf(items);
    }

    @Override
    public Message what() {
        return Message.of("toml.list");
    }
}
