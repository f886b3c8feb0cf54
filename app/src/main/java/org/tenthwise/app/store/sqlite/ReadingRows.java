package org.tenthwise.app.store.sqlite;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.ReadingSummary;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.StepSummary;

/**
 * The rows of a history, run by run in the order they were begun, some runs at a time: who reads them holds up nobody
 * who writes, and what is asked once more because somebody wrote is not handed out twice.
 */
final class ReadingRows {

    private static final String FROM =
            """
            FROM drawn_run r JOIN drawn_characteristic c ON c.run = r.begun
                LEFT JOIN drawn_reading d ON d.run = c.run AND d.step = c.step
            WHERE (d.seq IS NOT NULL OR c."by" IS NOT NULL)
            """;

    private static final int RUNS = 20;

    /** The rows of the next runs. @param last begun last of them */
    record ReadingPage(long last, List<ReadingRow> rows) {}

    /** What {@link History.HistoryRow} takes. */
    record ReadingRow(RunFacts run, StepSummary step, Optional<ReadingSummary> reading) {}

    private final Statements statements;
    private final Narrowing narrowed;

    ReadingRows(Statements statements, Sought sought) {
        this.statements = statements;
        narrowed = Narrowing.ofReadings(sought);
    }

    /** @return the runs begun behind that entry of the ledger; absent where there are no more */
    Optional<ReadingPage> behind(long begun) throws SQLException {
        List<Long> runs = statements.all(
                "SELECT begun FROM drawn_run WHERE begun > ? ORDER BY begun LIMIT " + RUNS,
                List.of(begun),
                row -> row.getLong(1));
        if (runs.isEmpty()) {
            return Optional.empty();
        }
        long last = runs.get(runs.size() - 1);
        List<Object> values = new ArrayList<>(narrowed.values());
        values.addAll(List.of(begun, last));
        return Optional.of(new ReadingPage(
                last,
                statements.all(
                        DrawnRows.RUN_AND_STEP
                                + DrawnRows.AND_READING
                                + FROM
                                + narrowed.sql()
                                + "AND r.begun > ? AND r.begun <= ? ORDER BY r.begun, c.place, d.seq",
                        values,
                        row -> new ReadingRow(DrawnRows.run(row), DrawnRows.step(row), reading(row)))));
    }

    private static Optional<ReadingSummary> reading(ResultSet row) throws SQLException {
        row.getLong("seq");
        return row.wasNull() ? Optional.empty() : Optional.of(DrawnRows.reading(row));
    }
}
