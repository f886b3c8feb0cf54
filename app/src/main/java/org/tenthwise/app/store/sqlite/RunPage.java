package org.tenthwise.app.store.sqlite;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunQuery;
import org.tenthwise.app.store.KeptEntries;

/**
 * One page of a list of runs. It is asked for behind the last run of the page before, so that no page takes longer than
 * the first and a run begun meanwhile shifts nothing.
 */
final class RunPage {

    private final Statements statements;
    private final RunQuery query;

    RunPage(Statements statements, RunQuery query) {
        this.statements = statements;
        this.query = query;
    }

    List<RunFacts> runs() throws SQLException {
        if (query.machine().isEmpty()) {
            return page("", List.of(), query.after(), query.most());
        }
        String machine = query.machine().get();
        boolean pastIts =
                query.after().filter(last -> !last.machine().equals(machine)).isPresent();
        List<RunFacts> runs = new ArrayList<>(
                pastIts ? List.of() : page("AND machine = ? ", List.of(machine), query.after(), query.most()));
        if (runs.size() < query.most()) {
            Optional<RunFacts> after = pastIts ? query.after() : Optional.empty();
            runs.addAll(page("AND machine <> ? ", List.of(machine), after, query.most() - runs.size()));
        }
        return runs;
    }

    private String lies() {
        return switch (query.shelf()) {
            case OPEN -> "open = 1 ";
            case CLOSED -> "open = 0 AND closed_by IS NOT NULL ";
            case PUT_AWAY -> "open = 0 AND closed_by IS NULL ";
        };
    }

    /** Those of this store first, then those that came in, whose places say nothing of when they were worked on. */
    private List<RunFacts> page(String which, List<String> of, Optional<RunFacts> after, int most) throws SQLException {
        boolean pastOwn = after.filter(RunFacts::isImported).isPresent();
        List<RunFacts> runs = new ArrayList<>(
                pastOwn
                        ? List.of()
                        : page(
                                which + "AND last " + SqliteHistory.OWN,
                                of,
                                after.map(last -> new Behind("AND last < ? ", List.of(last.last()))),
                                "last DESC",
                                most));
        if (runs.size() < most) {
            runs.addAll(page(
                    which + "AND last >= " + KeptEntries.MOST_ENTRIES,
                    of,
                    after.filter(last -> pastOwn)
                            .map(last -> new Behind(
                                    "AND (worked, last) < (?, ?) ",
                                    List.of(last.lastAt().toEpochSecond(), last.last()))),
                    "worked DESC, last DESC",
                    most - runs.size()));
        }
        return runs;
    }

    /** What lies behind the last run of the page before. */
    private record Behind(String which, List<Long> values) {}

    private List<RunFacts> page(String which, List<String> of, Optional<Behind> behind, String order, int most)
            throws SQLException {
        StringBuilder sql = new StringBuilder(DrawnRows.RUN)
                .append("FROM drawn_run r WHERE ")
                .append(lies())
                .append(which)
                .append(' ');
        List<Object> values = new ArrayList<>(of);
        behind.ifPresent(past -> {
            sql.append(past.which());
            values.addAll(past.values());
        });
        for (String word : query.words().strip().split("\\s+")) {
            if (!word.isEmpty()) {
                sql.append(
                        "AND part || char(10) || serial || char(10) || lot || char(10) || people LIKE ? ESCAPE '\\' ");
                values.add("%" + word.replaceAll("[\\\\%_]", "\\\\$0") + "%");
            }
        }
        values.add(most);
        return statements.all(
                sql.append("ORDER BY ").append(order).append(" LIMIT ?").toString(), values, DrawnRows::run);
    }
}
