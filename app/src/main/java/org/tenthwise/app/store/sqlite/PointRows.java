package org.tenthwise.app.store.sqlite;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.SizeSummary;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.StepSummary;
import org.tenthwise.app.history.ToolChange;

/** Looks for characteristics in all runs: which runs have them, and what they came to. */
final class PointRows {

    /** So many runs are read at a time, so that nobody who writes waits for long. */
    static final int RUNS = 250;

    private static final String FOUND = "FROM drawn_run r JOIN drawn_characteristic c ON c.run = r.begun ";

    /** What was found of a characteristic in a run. */
    record PointOfRun(RunFacts run, StepSummary step, SizeSummary size) {}

    /** The rows of the next runs. @param last begun last of them */
    record PointPage(long last, List<PointOfRun> rows) {}

    private final Statements statements;
    private final Narrowing ofRuns;
    private final Narrowing ofSteps;

    PointRows(Statements statements, Sought sought) {
        this.statements = statements;
        ofRuns = Narrowing.ofRuns(sought);
        ofSteps = Narrowing.ofCharacteristics(sought);
    }

    List<RunFacts> runs() throws SQLException {
        List<Object> values = new ArrayList<>(ofRuns.values());
        values.addAll(ofSteps.values());
        return statements.all(
                DrawnRows.RUN + "FROM drawn_run r WHERE TRUE " + ofRuns.sql()
                        + "AND EXISTS (SELECT 1 FROM drawn_characteristic c WHERE c.run = r.begun "
                        + "AND c.\"by\" IS NOT NULL "
                        + ofSteps.sql() + ") ORDER BY r.begun",
                values,
                DrawnRows::run);
    }

    /** @return absent where there are no more runs behind that entry of the ledger */
    Optional<PointPage> behind(long begun) throws SQLException {
        Map<Long, RunFacts> runs = new HashMap<>();
        List<Object> values = new ArrayList<>(ofRuns.values());
        values.add(begun);
        List<RunFacts> page = statements.all(
                DrawnRows.RUN + "FROM drawn_run r WHERE TRUE " + ofRuns.sql()
                        + "AND r.begun > ? ORDER BY r.begun LIMIT " + RUNS,
                values,
                DrawnRows::run);
        if (page.isEmpty()) {
            return Optional.empty();
        }
        page.forEach(run -> runs.put(run.begun(), run));
        PointReader reader = new PointReader();
        long last = page.get(page.size() - 1).begun();
        values.add(last);
        values.addAll(ofSteps.values());
        return Optional.of(new PointPage(
                last,
                statements.all(
                        "SELECT r.begun, " + PointReader.COLUMNS + FOUND
                                + "JOIN drawn_size s ON s.run = c.run AND s.step = c.step WHERE TRUE " + ofRuns.sql()
                                + "AND r.begun > ? AND r.begun <= ? " + ofSteps.sql() + "ORDER BY r.begun, c.place",
                        values,
                        row -> {
                            PointReader.StepAndSize found = reader.read(row, 1);
                            return new PointOfRun(runs.get(row.getLong(1)), found.step(), found.size());
                        })));
    }

    /** By the beginning of their run. */
    static Map<Long, List<ToolChange>> toolChanges(Statements statements, Optional<String> part) throws SQLException {
        Map<Long, List<ToolChange>> changes = new HashMap<>();
        statements.each(
                "SELECT t.run, t.seq, t.operation, t.words FROM drawn_tool t JOIN drawn_run r ON r.begun = t.run"
                        + " WHERE ? IS NULL OR r.part = ? ORDER BY t.seq",
                List.of(part, part),
                row -> changes.computeIfAbsent(row.getLong(1), run -> new ArrayList<>())
                        .add(new ToolChange(row.getLong(2), row.getInt(3), row.getString(4))));
        return changes;
    }
}
