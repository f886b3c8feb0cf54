package org.tenthwise.app.reference;

import java.util.List;

/**
 * What came of all the cases of a topic.
 *
 * @param cases run
 * @param rows one for each figure published, case by case
 */
public record TopicResult(Topic topic, int cases, List<ComparedFigure> rows) {

    public TopicResult {
        rows = List.copyOf(rows);
    }

    /** How many figures stand so to the ones published. */
    public long count(Agreement agreement) {
        return rows(agreement).size();
    }

    public List<ComparedFigure> rows(Agreement agreement) {
        return rows.stream().filter(row -> row.agreement() == agreement).toList();
    }
}
