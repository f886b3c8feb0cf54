package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.checklists.format.Spot;
import org.tenthwise.checklists.format.TomlReading;
import org.tenthwise.model.plan.Signs;

/**
 * The problems of one file, as they are found. Signs that nobody sees are written out in them, and what is endless is
 * cut short.
 */
final class Problems {

    private static final int LONGEST = 120;
    private static final Pattern QUOTED_OR_ENDLESS = Pattern.compile("\"[^\"]*\"?|\\S{%d,}".formatted(LONGEST));

    private final List<PlanProblem> found = new ArrayList<>();
    private final boolean kept;

    Problems() {
        this(false);
    }

    /** @param kept whether the file is one that a run was begun with */
    Problems(boolean kept) {
        this.kept = kept;
    }

    void add(Spot spot, String words) {
        found.add(new PlanProblem(spot.line(), spot.column(), shown(words)));
    }

    /** As {@link #add}, where earlier releases began runs with such a file: those runs can still be opened. */
    void addUnlessKept(Spot spot, String words) {
        if (!kept) {
            add(spot, words);
        }
    }

    private static String shown(String words) {
        return QUOTED_OR_ENDLESS
                .matcher(Signs.shown(words))
                .replaceAll(found -> Matcher.quoteReplacement(
                        found.group().length() < LONGEST ? found.group() : cutShort(found.group())));
    }

    private static String cutShort(String word) {
        return word.substring(0, LONGEST / 2) + "…" + (word.endsWith("\"") ? "\"" : "");
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
        unreadable.flaws().forEach(flaw -> problems.add(flaw.spot(), flaw.words()));
        return problems.sorted();
    }
}
