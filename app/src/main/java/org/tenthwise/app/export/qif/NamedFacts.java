package org.tenthwise.app.export.qif;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.run.Entry;

/** Several facts in one text, each with its name: {@code reading=20.011 mm; by=Setter 1}. */
final class NamedFacts {

    /** Farther from Greenwich no time of an XML document may be. */
    private static final int FARTHEST_HOURS = 14;

    private final List<String> facts = new ArrayList<>();

    /** @param of what they are facts of */
    NamedFacts(String of) {
        facts.add(of);
    }

    NamedFacts() {}

    /** Nothing where there is nothing to say. */
    NamedFacts and(String name, String value) {
        if (!value.isBlank()) {
            facts.add(name + "=" + value.strip());
        }
        return this;
    }

    NamedFacts and(String name, Optional<String> value) {
        return and(name, value.orElse(""));
    }

    /** All of another, behind them. */
    NamedFacts and(NamedFacts other) {
        facts.addAll(other.facts);
        return this;
    }

    /** Where it stands in the ledger, by whom and when. */
    NamedFacts and(Entry entry) {
        return and("entry", String.valueOf(entry.seq())).and("by", entry.by()).and("at", time(entry.at()));
    }

    String text() {
        return String.join("; ", facts);
    }

    /** A moment as XML has it, which knows no seconds of an offset. */
    static String time(OffsetDateTime at) {
        ZoneOffset offset = at.getOffset();
        boolean plain =
                offset.getTotalSeconds() % 60 == 0 && Math.abs(offset.getTotalSeconds()) <= FARTHEST_HOURS * 3600;
        return (plain ? at : at.withOffsetSameInstant(ZoneOffset.UTC)).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }
}
