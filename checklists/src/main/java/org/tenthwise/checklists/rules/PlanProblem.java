package org.tenthwise.checklists.rules;

import java.util.Comparator;

/**
 * One thing wrong with a plan file or a readings file.
 *
 * @param line from 1
 * @param column from 1
 * @param words for the person who wrote the file: "check 7: upper limit 30.000 mm is below lower limit 30.021 mm"
 */
public record PlanProblem(int line, int column, String words) implements Comparable<PlanProblem> {

    private static final Comparator<PlanProblem> ORDER = Comparator.comparingInt(PlanProblem::line)
            .thenComparingInt(PlanProblem::column)
            .thenComparing(PlanProblem::words);

    @Override
    public int compareTo(PlanProblem other) {
        return ORDER.compare(this, other);
    }

    /** {@code line:column: words}. */
    @Override
    public String toString() {
        return "%d:%d: %s".formatted(line, column, words);
    }
}
