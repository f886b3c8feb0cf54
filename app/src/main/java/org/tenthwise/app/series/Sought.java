package org.tenthwise.app.series;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.history.PointQuery;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Word;

/**
 * What is looked for, as a person says it: each by its text, a day as ISO 8601 writes it, a verdict and the kind of a
 * run by their {@link Word}.
 */
public record Sought(Map<SoughtBy, String> by) {

    /** Everything. */
    public static final Sought ALL = new Sought(Map.of());

    private static final Set<SoughtBy> OF_EVERY_PART =
            EnumSet.of(SoughtBy.PART_NUMBER, SoughtBy.DESIGNATOR, SoughtBy.BALLOON, SoughtBy.CHARACTERISTIC);

    public Sought {
        Map<SoughtBy, String> ordered = new EnumMap<>(SoughtBy.class);
        ordered.putAll(by);
        by = Collections.unmodifiableMap(ordered);
    }

    /** The same as a query says it. */
    public static Sought of(PointQuery query) {
        return ALL.with(SoughtBy.PART_NUMBER, query.part().orElse(""))
                .with(SoughtBy.SERIAL, query.serial().orElse(""))
                .with(SoughtBy.LOT, query.lot().orElse(""))
                .with(SoughtBy.MACHINE, query.machine().orElse(""))
                .with(SoughtBy.PERSON, query.person().orElse(""))
                .with(SoughtBy.GAUGE, query.gauge().orElse(""))
                .with(SoughtBy.FROM, query.from().map(LocalDate::toString).orElse(""))
                .with(SoughtBy.TO, query.to().map(LocalDate::toString).orElse(""))
                .with(SoughtBy.VERDICT, query.verdict().map(Word::of).orElse(""))
                .with(SoughtBy.KIND, query.kind().map(Word::of).orElse(""))
                .with(SoughtBy.CHARACTERISTIC, query.characteristic().orElse(""))
                .with(SoughtBy.BALLOON, query.balloon().orElse(""))
                .with(SoughtBy.DESIGNATOR, query.designator().orElse(""));
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

    /**
     * Whether every part that was made is among what is found: nothing but part number and characteristic narrows it.
     */
    public boolean isWhole() {
        return by.containsKey(SoughtBy.PART_NUMBER) && OF_EVERY_PART.containsAll(by.keySet());
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
                of(SoughtBy.KIND).map(word -> Word.find(Purpose.class, word).orElseThrow()),
                of(SoughtBy.CHARACTERISTIC),
                of(SoughtBy.BALLOON),
                of(SoughtBy.DESIGNATOR));
    }
}
