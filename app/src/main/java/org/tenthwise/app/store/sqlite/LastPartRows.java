package org.tenthwise.app.store.sqlite;

import java.sql.SQLException;
import java.util.List;
import org.tenthwise.app.history.LastPartQuery;
import org.tenthwise.app.history.ReadingSummary;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.StepSummary;

/** Looks for the part before among the last runs on a part number, so that it takes no longer for many runs. */
final class LastPartRows {

    /** Among so many runs; of a part that was begun more often without this step nothing is said. */
    private static final int RUNS = 60;

    /** Runs of the revision come first; the latest measured of them, or where nothing is measured the latest begun. */
    private static final String FROM =
            """
            , coalesce((SELECT max(d.seq) FROM drawn_reading d WHERE d.run = c.run AND d.step = c.step), r.begun) AS taken
            FROM (SELECT * FROM drawn_run WHERE part = ? AND begun < ? AND begun %s ORDER BY begun DESC LIMIT %s) r
                JOIN drawn_characteristic c ON c.run = r.begun AND c.step = ?
            WHERE r.serial <> ? COLLATE NOCASE AND c.name = ? AND c."by" IS NOT NULL AND c.verdict <> 'OPEN'
                AND r.outcome IS NOT 'PUT_AWAY'
                AND taken < ?
            ORDER BY r.revision = ? DESC, taken DESC
            """
                    .formatted(SqliteHistory.OWN, RUNS);

    private static final String READINGS = "SELECT d.step, c.unit AS step_unit" + DrawnRows.AND_READING
            + "FROM drawn_reading d JOIN drawn_characteristic c ON c.run = d.run AND c.step = d.step "
            + "WHERE d.run = ? AND d.step = ? ORDER BY d.seq";

    private final Statements statements;

    LastPartRows(Statements statements) {
        this.statements = statements;
    }

    /** A run in which it was measured, and what it came to. */
    record Candidate(RunFacts run, StepSummary step) {}

    /** The likeliest first. */
    List<Candidate> candidates(LastPartQuery query) throws SQLException {
        return statements.all(
                DrawnRows.RUN_AND_STEP + FROM,
                List.of(
                        query.part().number(),
                        query.before(),
                        query.step().number(),
                        query.serial().strip(),
                        query.step().name(),
                        query.before(),
                        query.part().revision()),
                row -> new Candidate(DrawnRows.run(row), DrawnRows.step(row)));
    }

    List<ReadingSummary> readings(Candidate of) throws SQLException {
        return statements.all(READINGS, List.of(of.run().begun(), of.step().number()), DrawnRows::reading);
    }
}
