package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.checklists.format.Spot;
import org.tenthwise.checklists.format.TomlReading;
import org.tenthwise.model.plan.Signs;
import org.tenthwise.model.words.Message;

/**
 * The problems of one file, as they are found. Signs that nobody sees are written out in them, and what is endless is
 * cut short.
 */
final class Problems {

    /** What no person writes: a word of so many letters, a text as long as a page. */
    private static final Pattern ENDLESS = Pattern.compile("(?s)\\A.{300,}\\z|\\S{118,}");

    private static final int SHORT = 59;

    private final List<PlanProblem> found = new ArrayList<>();
    private final boolean kept;

    Problems() {
        this(false);
    }

    /** @param kept whether the file is one that a run was begun with */
    Problems(boolean kept) {
        this.kept = kept;
    }

    void add(Spot spot, Message what) {
        found.add(new PlanProblem(spot.line(), spot.column(), shown(what)));
    }

    /** As {@link #add}, where earlier releases began runs with such a file: those runs can still be opened. */
    void addUnlessKept(Spot spot, Message what) {
        if (!kept) {
            add(spot, what);
        }
    }

    private static Message shown(Message what) {
        Map<String, Object> values = new HashMap<>();
        what.values().forEach((name, value) -> values.put(name, shown(value)));
        return new Message(what.key(), values);
    }

    /** A figure stays as it is written in the file, with its point. */
    private static Object shown(Object value) {
        if (value instanceof Message message) {
            return shown(message);
        }
        if (value instanceof Collection<?> several) {
            return several.stream().map(Problems::shown).toList();
        }
        if (value instanceof Integer || value instanceof Long || value instanceof Enum<?>) {
            return value;
        }
        String text = Signs.shown(value instanceof BigDecimal figure ? figure.toPlainString() : value.toString());
        return ENDLESS.matcher(text)
                .replaceAll(found -> Matcher.quoteReplacement(found.group().substring(0, SHORT) + "…"));
    }

    int count() {
        return found.size();
    }

    /** In the order of the file, none twice. */
    List<PlanProblem> sorted() {
        return found.stream().distinct().sorted().toList();
    }

    static List<PlanProblem> of(TomlReading.Unreadable unreadable) {
        Problems problems = new Problems();
        unreadable.flaws().forEach(flaw -> problems.add(flaw.spot(), flaw.what()));
        return problems.sorted();
    }
}
