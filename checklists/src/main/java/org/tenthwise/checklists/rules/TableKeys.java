package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.checklists.format.Spot;
import org.tenthwise.model.plan.Signs;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/**
 * One table as it is read: hands out the value of each key asked for, notes a problem where it is missing or of the
 * wrong kind, and knows in the end which keys nobody asked for. An empty answer to a key that must be there has always
 * been noted.
 */
final class TableKeys {

    private final Optional<Message> subject;
    private final RawTable table;
    private final Problems problems;
    private final int problemsBefore;
    private final Set<String> asked = new LinkedHashSet<>();

    /** Of the file itself. */
    TableKeys(RawTable table, Problems problems) {
        this(Optional.empty(), table, problems);
    }

    /** @param subject what the table is about, put before every problem: "check 7" */
    private TableKeys(Optional<Message> subject, RawTable table, Problems problems) {
        this.subject = subject;
        this.table = table;
        this.problems = problems;
        this.problemsBefore = problems.count();
    }

    /** A table inside this one, under a key of the file or one of {@code plan.in}. */
    TableKeys inside(String key, RawTable inner) {
        return inside(Message.of("as-said", key), inner);
    }

    /** A table inside this one that is called {@code part}. */
    TableKeys inside(Message part, RawTable inner) {
        return new TableKeys(
                subject.map(outer -> Message.of("plan.part-of", outer, part)).or(() -> Optional.of(part)),
                inner,
                problems);
    }

    boolean has(String key) {
        return table.values().containsKey(key);
    }

    /** Whether {@code key} is the first of the table. */
    boolean isFirst(String key) {
        return table.values().keySet().iterator().next().equals(key);
    }

    Spot spot() {
        return table.spot();
    }

    Spot spot(String key) {
        return Optional.ofNullable(table.values().get(key)).map(RawValue::spot).orElse(table.spot());
    }

    /** The same table under a name found out meanwhile; what was asked for stays asked for. */
    TableKeys about(Message newSubject) {
        TableKeys keys = new TableKeys(Optional.of(newSubject), table, problems);
        keys.asked.addAll(asked);
        return keys;
    }

    /** Notes the text {@code what}, its gaps filled in order, where {@code key} stands. */
    void problem(String key, String what, Object... values) {
        problem(spot(key), what, values);
    }

    void problem(Spot spot, String what, Object... values) {
        problems.add(spot, about(what, values));
    }

    /** As {@link #problem(Spot, String, Object...)}, but the plan kept with a run begun earlier stays readable. */
    void problemUnlessKept(Spot spot, String what, Object... values) {
        problems.addUnlessKept(spot, about(what, values));
    }

    void problemUnlessKept(String key, String what, Object... values) {
        problemUnlessKept(spot(key), what, values);
    }

    private Message about(String what, Object... values) {
        Message message = Message.of(what, values);
        return subject.map(about -> Message.of("plan.about", about, message)).orElse(message);
    }

    /** Problems of the whole file so far. */
    int problemCount() {
        return problems.count();
    }

    Optional<RawValue> any(String key) {
        asked.add(key);
        Optional<RawValue> value = Optional.ofNullable(table.values().get(key));
        if (value.isEmpty()) {
            problem(table.spot(), "plan.key.missing", key);
        }
        return value;
    }

    /** Asks with {@code read} only if the key is there. */
    <T> Optional<T> ifAny(String key, Function<String, Optional<T>> read) {
        asked.add(key);
        return has(key) ? read.apply(key) : Optional.empty();
    }

    /** Whether text stands under {@code key}, whatever it says. */
    boolean isText(String key) {
        return table.values().get(key) instanceof RawValue.Text;
    }

    /** Whether text with the mark of degrees stands under {@code key}. */
    boolean isAngle(String key) {
        return table.values().get(key) instanceof RawValue.Text text
                && text.text().contains(Unit.DEGREE.symbol());
    }

    /** Text that is not blank, on one line and with nothing in it that nobody sees. */
    Optional<String> text(String key) {
        return text(key, Signs::hiddenIn);
    }

    /** As {@link #text(String)}, on one line or on several. */
    Optional<String> prose(String key) {
        return text(key, Signs::hiddenInProse);
    }

    private Optional<String> text(String key, Function<String, Optional<String>> hidden) {
        return any(key).flatMap(value -> {
            if (!(value instanceof RawValue.Text text)) {
                return wrong(key, value, "plan.key.text");
            }
            if (text.text().isBlank()) {
                problem(key, "plan.key.blank", key);
                return Optional.empty();
            }
            String stripped = text.text().strip();
            hidden.apply(stripped).ifPresent(sign -> problemUnlessKept(key, "plan.key.hidden", key, sign));
            return Optional.of(stripped);
        });
    }

    Optional<BigDecimal> number(String key) {
        return any(key).flatMap(value -> value instanceof RawValue.Number number
                ? Optional.of(number.figure())
                : wrong(key, value, "plan.key.number"));
    }

    Optional<Integer> whole(String key) {
        return any(key).flatMap(value -> value instanceof RawValue.Number number && isWhole(number)
                ? Optional.of(number.figure().intValueExact())
                : wrong(key, value, "plan.key.whole"));
    }

    /** The whole number under {@code key}, if one stands there; nothing is noted, nor the key as asked for. */
    Optional<Integer> wholeIfSound(String key) {
        return Optional.ofNullable(table.values().get(key)).flatMap(TableKeys::whole);
    }

    /** The whole number that stands there, if one does; nothing is noted. */
    static Optional<Integer> whole(RawValue value) {
        return value instanceof RawValue.Number number && isWhole(number)
                ? Optional.of(number.figure().intValueExact())
                : Optional.empty();
    }

    /** What stands on a drawing as a number: text, or a whole number without quotes. */
    Optional<String> mark(String key) {
        return wholeIfSound(key).map(String::valueOf).or(() -> text(key));
    }

    Optional<Boolean> truth(String key) {
        return any(key).flatMap(value -> value instanceof RawValue.Truth truth
                ? Optional.of(truth.truth())
                : wrong(key, value, "plan.key.truth"));
    }

    /** A length in {@code unit}; an angle as a number in degrees, or as text with its marks. */
    Optional<Written> figure(String key, Unit unit) {
        if (!unit.isOfAngle()) {
            return number(key).map(figure -> Written.of(figure, unit));
        }
        return isText(key)
                ? text(key).flatMap(text -> angle(key, text))
                : number(key).map(figure -> Written.of(figure, Unit.DEGREE));
    }

    private Optional<Written> angle(String key, String text) {
        Optional<Written> angle = Written.typed(text, Unit.MINUTE_OF_ARC);
        if (angle.isEmpty()) {
            problem(key, "plan.angle.written", key, text);
        }
        return angle;
    }

    /** A figure of more than zero. */
    Optional<Written> size(String key, Unit unit) {
        Optional<Written> figure = figure(key, unit);
        if (figure.isPresent() && figure.get().figure().signum() <= 0) {
            problem(key, "plan.above-zero", key, figure.get());
            return Optional.empty();
        }
        return figure;
    }

    /** One of {@code words}, each standing for something. */
    <T> Optional<T> word(String key, Collection<T> things, Function<T, String> words) {
        return text(key).flatMap(written -> {
            Optional<T> meant = things.stream()
                    .filter(thing -> words.apply(thing).equals(written))
                    .findFirst();
            if (meant.isEmpty()) {
                unknown(key, "plan.word", written, things.stream().map(words).toList());
            }
            return meant;
        });
    }

    /**
     * Notes that nothing is called {@code written}. Gaps: key, {@code written}, all {@code words}; or in the text that
     * ends in {@code meant} the one it most likely stands for.
     */
    void unknown(String key, String what, String written, Collection<String> words) {
        NearestWord.to(written, words)
                .ifPresentOrElse(
                        meant -> problem(key, what + ".meant", key, written, meant),
                        () -> problem(key, what, key, written, quoted(words)));
    }

    Optional<RawList> list(String key) {
        return any(key).flatMap(value -> {
            if (!(value instanceof RawList list)) {
                return wrong(key, value, "plan.key.list");
            }
            if (list.items().isEmpty()) {
                problem(key, "plan.key.empty", key);
                return Optional.empty();
            }
            return Optional.of(list);
        });
    }

    Optional<RawTable> table(String key) {
        return any(key).flatMap(value ->
                value instanceof RawTable inner ? Optional.of(inner) : wrong(key, value, "plan.key.table"));
    }

    /** The tables of {@code [[key]]}; those that are none are noted and left out. */
    List<RawTable> tables(String key) {
        List<RawTable> tables = new ArrayList<>();
        for (RawValue item : list(key).map(RawList::items).orElse(List.of())) {
            if (item instanceof RawTable inner) {
                tables.add(inner);
            } else {
                problem(item.spot(), "plan.key.no-tables", key, item.what());
            }
        }
        return tables;
    }

    /** Notes every key nobody asked for. */
    void finish() {
        table.values().keySet().stream()
                .filter(key -> !asked.contains(key))
                .forEach(key -> unknown(key, "plan.key.unknown", key, asked));
    }

    /** What {@code make} comes to; a sentence of its own about what makes no sense is noted at {@code key}. */
    <T> Optional<T> sensible(String key, Supplier<T> make) {
        try {
            return Optional.of(make.get());
        } catch (IllegalArgumentException e) {
            problem(key, "plan.sensible", Explained.why(e));
            return Optional.empty();
        }
    }

    /** What {@code build} makes of the answers, if no problem was noted since this table was begun. */
    <T> Optional<T> built(Supplier<T> build) {
        return problems.count() == problemsBefore ? Optional.of(build.get()) : Optional.empty();
    }

    private <T> Optional<T> wrong(String key, RawValue value, String what) {
        problem(key, what, key, value.what());
        return Optional.empty();
    }

    private static boolean isWhole(RawValue.Number number) {
        return number.figure().scale() == 0 && number.figure().precision() <= 9;
    }

    static List<Message> quoted(Collection<?> words) {
        return words.stream().map(word -> Message.of("plan.quoted", word)).toList();
    }
}
