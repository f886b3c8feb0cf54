package org.tenthwise.app.store.sqlite;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.history.PointQuery;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.SizeSummary;
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
    private final StringBuilder ofRuns = new StringBuilder();
    private final List<Object> runValues = new ArrayList<>();
    private final StringBuilder ofSteps = new StringBuilder();
    private final List<Object> stepValues = new ArrayList<>();

    PointRows(Statements statements, PointQuery query) {
        this.statements = statements;
        query.part().ifPresent(part -> narrowRuns("r.part = ?", part));
        query.serial().ifPresent(serial -> narrowRuns("r.serial = ? COLLATE NOCASE", serial));
        query.lot().ifPresent(lot -> narrowRuns("r.lot = ? COLLATE NOCASE", lot));
        query.machine().ifPresent(machine -> narrowRuns("r.machine = ? COLLATE NOCASE", machine));
        query.kind().ifPresent(kind -> narrowRuns("r.purpose = ?", kind));
        query.person().ifPresent(person -> narrow("c.\"by\" = ? COLLATE NOCASE", person));
        query.gauge()
                .ifPresent(mark -> narrow(
                        "(c.gauge = ? OR EXISTS (SELECT 1 FROM drawn_reading d WHERE d.run = c.run AND d.step = c.step"
                                + " AND d.gauge = ? AND d.struck IS NULL))",
                        mark,
                        mark));
        query.from().ifPresent(day -> narrow("substr(c.at, 1, 10) >= ?", day));
        query.to().ifPresent(day -> narrow("substr(c.at, 1, 10) <= ?", day));
        query.verdict().ifPresent(verdict -> narrow("c.verdict = ?", verdict));
        query.characteristic()
                .ifPresent(which -> narrow("(c.step || '' = ? OR c.name = ? COLLATE NOCASE)", which, which));
        query.balloon().ifPresent(balloon -> narrow("c.balloon = ? COLLATE NOCASE", balloon));
        query.designator().ifPresent(designator -> narrow("c.designator = ? COLLATE NOCASE", designator));
    }

    private void narrowRuns(String condition, Object value) {
        ofRuns.append("AND ").append(condition).append(' ');
        runValues.add(value);
    }

    private void narrow(String condition, Object... values) {
        ofSteps.append("AND ").append(condition).append(' ');
        stepValues.addAll(List.of(values));
    }

    List<RunFacts> runs() throws SQLException {
        List<Object> values = new ArrayList<>(runValues);
        values.addAll(stepValues);
        return statements.all(
                DrawnRows.RUN + "FROM drawn_run r WHERE TRUE " + ofRuns
                        + "AND EXISTS (SELECT 1 FROM drawn_characteristic c WHERE c.run = r.begun "
                        + "AND c.\"by\" IS NOT NULL "
                        + ofSteps + ") ORDER BY r.begun",
                values,
                DrawnRows::run);
    }

    /** @return absent where there are no more runs behind that entry of the ledger */
    Optional<PointPage> behind(long begun) throws SQLException {
        Map<Long, RunFacts> runs = new HashMap<>();
        List<Object> values = new ArrayList<>(runValues);
        values.add(begun);
        List<RunFacts> page = statements.all(
                DrawnRows.RUN + "FROM drawn_run r WHERE TRUE " + ofRuns + "AND r.begun > ? ORDER BY r.begun LIMIT "
                        + RUNS,
                values,
                DrawnRows::run);
        if (page.isEmpty()) {
            return Optional.empty();
        }
        page.forEach(run -> runs.put(run.begun(), run));
        PointReader reader = new PointReader();
        long last = page.get(page.size() - 1).begun();
        values.addAll(List.of(last));
        values.addAll(stepValues);
        return Optional.of(new PointPage(
                last,
                statements.all(
                        "SELECT r.begun, " + PointReader.COLUMNS + FOUND
                                + "JOIN drawn_size s ON s.run = c.run AND s.step = c.step WHERE TRUE " + ofRuns
                                + "AND r.begun > ? AND r.begun <= ? " + ofSteps + "ORDER BY r.begun, c.place",
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
