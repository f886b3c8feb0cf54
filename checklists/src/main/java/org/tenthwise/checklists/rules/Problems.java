package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.checklists.format.Spot;
import org.tenthwise.checklists.format.TomlReading;

/** The problems of one file, as they are found. */
final class Problems {

    private final List<PlanProblem> found = new ArrayList<>();

    void add(Spot spot, String words) {
        found.add(new PlanProblem(spot.line(), spot.column(), words));
    }

    int count() {
        return found.size();
    }

    boolean none() {
        return found.isEmpty();
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
