package org.tenthwise.app.series;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.history.PointQuery;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Word;

/**
 * What is looked for, as a person says it: each by its text, a day as ISO 8601 writes it, a verdict by its
 * {@link Word}.
 */
public record Sought(Map<SoughtBy, String> by) {

    /** Everything. */
    public static final Sought ALL = new Sought(Map.of());

    public Sought {
        Map<SoughtBy, String> ordered = new EnumMap<>(SoughtBy.class);
        ordered.putAll(by);
        by = Collections.unmodifiableMap(ordered);
    }

    /** @param text empty for whatever */
    public Sought with(SoughtBy what, String text) {
        Map<SoughtBy, String> other = new EnumMap<>(SoughtBy.class);
        other.putAll(by);
        if (text.isBlank()) {
            other.remove(what);
        } else {
            other.put(what, text.strip());
        }
        return new Sought(other);
    }

    public Sought without(SoughtBy what) {
        return with(what, "");
    }

    public Optional<String> of(SoughtBy what) {
        return Optional.ofNullable(by.get(what));
    }

    public PointQuery query() {
        return new PointQuery(
                of(SoughtBy.PART_NUMBER),
                of(SoughtBy.SERIAL),
                of(SoughtBy.LOT),
                of(SoughtBy.MACHINE),
                of(SoughtBy.PERSON),
                of(SoughtBy.GAUGE),
                of(SoughtBy.FROM).map(LocalDate::parse),
                of(SoughtBy.TO).map(LocalDate::parse),
                of(SoughtBy.VERDICT)
                        .map(word -> Word.find(VerdictKind.class, word).orElseThrow()),
                Optional.empty(),
                Optional.empty(),
                of(SoughtBy.DESIGNATOR));
    }
}
