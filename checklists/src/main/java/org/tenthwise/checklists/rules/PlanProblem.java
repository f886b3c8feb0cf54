package org.tenthwise.checklists.rules;

import java.util.Comparator;
import org.tenthwise.model.words.Message;

/**
 * One thing wrong with a plan file or a readings file.
 *
 * @param line from 1
 * @param column from 1
 * @param what for the person who wrote the file: "check 7: upper limit 30.000 mm is below lower limit 30.021 mm"
 */
public record PlanProblem(int line, int column, Message what) implements Comparable<PlanProblem> {

    private static final Comparator<PlanProblem> ORDER = Comparator.comparingInt(PlanProblem::line)
            .thenComparingInt(PlanProblem::column)
            .thenComparing(problem -> problem.what().toString());

    /** Of a whole file. */
    public static PlanProblem ofFile(Message what) {
        return new PlanProblem(1, 1, what);
    }

    @Override
    public int compareTo(PlanProblem other) {
        return ORDER.compare(this, other);
    }

    /** {@code line:column: what}, in English. */
    @Override
    public String toString() {
        return "%s:%s: %s".formatted(line, column, what);
    }
}
