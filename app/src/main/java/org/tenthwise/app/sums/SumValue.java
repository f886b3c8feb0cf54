package org.tenthwise.app.sums;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Something typed under a key of a sum, before anyone has asked what it is. */
public sealed interface SumValue {

    /** A figure or a word, with nothing taken off or added. */
    record Plain(String text) implements SumValue {}

    /** Several, in their order. */
    record Many(List<SumValue> values) implements SumValue {

        public Many {
            values = List.copyOf(values);
        }
    }

    /** Several under names of their own, in the order they were typed. */
    record Table(Map<String, SumValue> values) implements SumValue {

        public Table {
            values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        }
    }

    /** Something that is there but is no figure, no word and no list: true, false, nothing. */
    record Neither(String text) implements SumValue {}
}
