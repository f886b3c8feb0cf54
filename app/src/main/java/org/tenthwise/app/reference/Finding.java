package org.tenthwise.app.reference;

import java.util.List;

/**
 * What came of all the cases of a topic.
 *
 * @param cases run
 * @param rows one for each figure published, case by case
 */
public record Finding(Topic topic, int cases, List<Row> rows) {

    public Finding {
        rows = List.copyOf(rows);
    }

    /** How many figures stand so to the ones published. */
    public long count(Agreement agreement) {
        return rows(agreement).size();
    }

    public List<Row> rows(Agreement agreement) {
        return rows.stream().filter(row -> row.agreement() == agreement).toList();
    }
}
