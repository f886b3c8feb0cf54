package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.checklists.format.Spot;
import org.tenthwise.model.plan.Signs;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/**
 * One table as it is read: hands out the value of each key asked for, notes a problem where it is missing or of the
 * wrong kind, and knows in the end which keys nobody asked for. An empty answer to a key that must be there has always
 * been noted.
 */
final class TableKeys {

    /** What holds it, and which sign. */
    static final String HIDDEN = "%s has the sign %s in it, which nobody sees; write it without";

    private final String subject;
    private final RawTable table;
    private final Problems problems;
    private final int problemsBefore;
    private final Set<String> asked = new LinkedHashSet<>();

    /** @param subject what the table is about, put before every problem: "check 7"; empty for the file itself */
    TableKeys(String subject, RawTable table, Problems problems) {
        this.subject = subject;
        this.table = table;
        this.problems = problems;
        this.problemsBefore = problems.count();
    }

    /** A table inside this one. */
    TableKeys inside(String part, RawTable inner) {
        return new TableKeys(subject.isEmpty() ? part : subject + ", " + part, inner, problems);
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
    TableKeys about(String newSubject) {
        TableKeys keys = new TableKeys(newSubject, table, problems);
        keys.asked.addAll(asked);
        return keys;
    }

    void problem(String key, String words) {
        problem(spot(key), words);
    }

    void problem(Spot spot, String words) {
        problems.add(spot, subject.isEmpty() ? words : subject + ": " + words);
    }

    /** As {@link #problem(Spot, String)}, but the plan kept with a run begun earlier stays readable. */
    void problemUnlessKept(Spot spot, String words) {
        problems.addUnlessKept(spot, subject.isEmpty() ? words : subject + ": " + words);
    }

    void problemUnlessKept(String key, String words) {
        problemUnlessKept(spot(key), words);
    }

    /** Problems of the whole file so far. */
    int problemCount() {
        return problems.count();
    }

    Optional<RawValue> any(String key) {
        asked.add(key);
        Optional<RawValue> value = Optional.ofNullable(table.values().get(key));
        if (value.isEmpty()) {
            problem(table.spot(), "\"%s\" is missing".formatted(key));
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
                return wrong(key, value, "text in quotes");
            }
            if (text.text().isBlank()) {
                problem(key, "\"%s\" is blank".formatted(key));
                return Optional.empty();
            }
            String stripped = text.text().strip();
            hidden.apply(stripped)
                    .ifPresent(sign -> problemUnlessKept(key, HIDDEN.formatted("\"%s\"".formatted(key), sign)));
            return Optional.of(stripped);
        });
    }

    Optional<BigDecimal> number(String key) {
        return any(key).flatMap(value -> value instanceof RawValue.Number number
                ? Optional.of(number.figure())
                : wrong(key, value, "a plain decimal number of at most ten places"));
    }

    Optional<Integer> whole(String key) {
        return any(key).flatMap(value -> value instanceof RawValue.Number number
                        && number.figure().scale() == 0
                        && number.figure().precision() <= 9
                ? Optional.of(number.figure().intValueExact())
                : wrong(key, value, "a whole number"));
    }

    Optional<Boolean> truth(String key) {
        return any(key).flatMap(value -> value instanceof RawValue.Truth truth
                ? Optional.of(truth.truth())
                : wrong(key, value, "true or false"));
    }

    Optional<Written> figure(String key, Unit unit) {
        return number(key).map(figure -> Written.of(figure, unit));
    }

    /** A figure of more than zero. */
    Optional<Written> size(String key, Unit unit) {
        Optional<Written> figure = figure(key, unit);
        if (figure.isPresent() && figure.get().figure().signum() <= 0) {
            problem(key, "\"%s\" must be more than nought, not %s".formatted(key, figure.get()));
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
                List<String> known = things.stream().map(words).toList();
                problem(
                        key,
                        "\"%s\" cannot be \"%s\"; %s"
                                .formatted(
                                        key,
                                        written,
                                        NearestWord.to(written, known)
                                                .map("did you mean \"%s\"?"::formatted)
                                                .orElse("it is one of " + listed(known))));
            }
            return meant;
        });
    }

    Optional<RawList> list(String key) {
        return any(key).flatMap(value -> {
            if (!(value instanceof RawList list)) {
                return wrong(key, value, "a list in square brackets");
            }
            if (list.items().isEmpty()) {
                problem(key, "\"%s\" is empty".formatted(key));
                return Optional.empty();
            }
            return Optional.of(list);
        });
    }

    Optional<RawTable> table(String key) {
        return any(key).flatMap(
                        value -> value instanceof RawTable inner ? Optional.of(inner) : wrong(key, value, "a table"));
    }

    /** The tables of {@code [[key]]}; those that are none are noted and left out. */
    List<RawTable> tables(String key) {
        List<RawTable> tables = new ArrayList<>();
        for (RawValue item : list(key).map(RawList::items).orElse(List.of())) {
            if (item instanceof RawTable inner) {
                tables.add(inner);
            } else {
                problem(item.spot(), "\"%s\" must hold tables, not %s".formatted(key, item.what()));
            }
        }
        return tables;
    }

    /** Notes every key nobody asked for. */
    void finish() {
        table.values().forEach((key, value) -> {
            if (!asked.contains(key)) {
                problem(value.spot(), "unknown key \"%s\"%s".formatted(key, NearestWord.question(key, asked)));
            }
        });
    }

    /** What {@code make} comes to; a sentence of its own about what makes no sense is noted at {@code key}. */
    <T> Optional<T> sensible(String key, Supplier<T> make) {
        try {
            return Optional.of(make.get());
        } catch (IllegalArgumentException e) {
            problem(key, begunSmall(e.getMessage()));
            return Optional.empty();
        }
    }

    /** A sentence as it goes on behind a colon; a sign or a name of one letter stays as it is. */
    private static String begunSmall(String sentence) {
        boolean word = sentence.length() > 1 && Character.isLowerCase(sentence.charAt(1));
        return word ? sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1) : sentence;
    }

    /** What {@code build} makes of the answers, if no problem was noted since this table was begun. */
    <T> Optional<T> built(Supplier<T> build) {
        return problems.count() == problemsBefore ? Optional.of(build.get()) : Optional.empty();
    }

    private <T> Optional<T> wrong(String key, RawValue value, String wanted) {
        problem(key, "\"%s\" must be %s, not %s".formatted(key, wanted, value.what()));
        return Optional.empty();
    }

    static String listed(List<String> words) {
        return words.stream().map(word -> '"' + word + '"').collect(Collectors.joining(", "));
    }
}
