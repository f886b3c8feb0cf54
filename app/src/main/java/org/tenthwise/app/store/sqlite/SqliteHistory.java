package org.tenthwise.app.store.sqlite;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.LastPart;
import org.tenthwise.app.history.LastPartQuery;
import org.tenthwise.app.history.MatterKind;
import org.tenthwise.app.history.NameUse;
import org.tenthwise.app.history.Plans;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunQuery;
import org.tenthwise.app.history.RunSummary;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.ToolChange;
import org.tenthwise.app.store.EntryText;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.UnreadableEntry;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Purpose;

/** Reads the drawn tables. */
final class SqliteHistory implements History {

    /** Where the places of this store's own entries end: those of entries that came in lie behind, by their origin. */
    static final String OWN = "< " + KeptEntries.MOST_ENTRIES;

    private final Query.Answering store;
    private final Plans plans;

    /** @param store its connections have the drawn tables, up to date */
    SqliteHistory(Query.Answering store, Plans plans) {
        this.store = store;
        this.plans = plans;
    }

    @Override
    public List<RunSummary> runs(RunQuery query) {
        return ask(statements -> {
            List<RunSummary> page = new ArrayList<>();
            for (RunFacts run : new RunPage(statements, query).runs()) {
                page.add(summary(statements, run));
            }
            return page;
        });
    }

    private RunSummary summary(Statements statements, RunFacts run) throws SQLException {
        return new RunSummary(
                run,
                plan(statements, run),
                statements.all(
                        DrawnRows.STEP + "FROM drawn_characteristic c WHERE c.run = ? ORDER BY c.place",
                        List.of(run.begun()),
                        DrawnRows::step));
    }

    private Optional<Plan> plan(Statements statements, RunFacts run) {
        return run.stand().isEmpty()
                ? Optional.empty()
                : plans.of(run.planHash(), () -> planText(statements, run.begun()));
    }

    private static String planText(Statements statements, long begun) {
        try {
            byte[] body = statements
                    .all(
                            begun < KeptEntries.MOST_ENTRIES
                                    ? "SELECT body FROM ledger WHERE seq = ?"
                                    : "SELECT body FROM imported WHERE station = ? / %1$d AND seq = ?1 %% %1$d"
                                            .formatted(KeptEntries.MOST_ENTRIES),
                            List.of(begun),
                            row -> row.getString(1).getBytes(UTF_8))
                    .get(0);
            return ((Event.Begun) EntryText.read(begun, body).event()).plan().text();
        } catch (SQLException | UnreadableEntry e) {
            throw new IllegalStateException("Entry %s was drawn from and cannot be read".formatted(begun), e);
        }
    }

    @Override
    public Optional<RunFacts> last() {
        // open and not open apart: so each is one look into an index, however many runs there are
        return first(
                """
                WHERE open IN (0, 1) AND last = (SELECT max(last) FROM (
                    SELECT max(last) AS last FROM drawn_run WHERE open = 1
                    UNION ALL SELECT max(last) FROM drawn_run WHERE open = 0 AND last %s))
                """
                        .formatted(OWN),
                List.of());
    }

    @Override
    public List<RunFacts> runsOf(PartId part, String serial) {
        return found(
                "WHERE part = ? AND revision = ? AND serial = ? ORDER BY begun",
                List.of(part.number(), part.revision(), serial.strip()));
    }

    @Override
    public Optional<RunFacts> lastOf(PartId part) {
        return first(
                "WHERE part = ? AND revision = ? AND outcome IS NOT ? AND begun " + OWN
                        + " ORDER BY begun DESC LIMIT 1",
                List.of(part.number(), part.revision(), Outcome.PUT_AWAY.name()));
    }

    @Override
    public Optional<RunSummary> openOf(PartId part, String serial) {
        return ask(statements -> {
            List<RunFacts> open = statements.all(
                    DrawnRows.RUN
                            + """
                            FROM drawn_run r WHERE part = ? AND revision = ? AND serial = ? AND open = 1
                            ORDER BY last DESC LIMIT 1
                            """,
                    List.of(part.number(), part.revision(), serial.strip()),
                    DrawnRows::run);
            return open.isEmpty() ? Optional.empty() : Optional.of(summary(statements, open.get(0)));
        });
    }

    @Override
    public List<RunFacts> accepted(String part, int most) {
        return found(
                """
                WHERE part = ? AND closed_by IS NOT NULL AND outcome <> ? AND contested = 0 AND purpose NOT IN (%2$s)
                    AND NOT EXISTS (SELECT 1 FROM drawn_matter m WHERE m.run = r.begun AND m.kind = ?)
                    AND (purpose IN (%3$s)
                        OR NOT EXISTS (SELECT 1 FROM drawn_characteristic c WHERE c.run = r.begun AND NOT c.asked))
                ORDER BY last %1$s DESC, CASE WHEN last %1$s THEN last ELSE worked END DESC, last DESC LIMIT ?
                """
                        .formatted(
                                OWN,
                                purposes(purpose -> !purpose.canBeLookedBackTo()),
                                purposes(Purpose::speaksForThePart)),
                List.of(part, Outcome.PUT_AWAY.name(), MatterKind.SIGNATURE_MISSING.name(), most));
    }

    private static String purposes(Predicate<Purpose> which) {
        return Arrays.stream(Purpose.values())
                .filter(which)
                .map(purpose -> "'" + purpose.name() + "'")
                .collect(Collectors.joining(", "));
    }

    @Override
    public List<RunFacts> openOn(String machine) {
        return found("WHERE open = 1 AND machine = ? ORDER BY begun", List.of(machine));
    }

    @Override
    public Optional<RunFacts> withOtherText(Plan plan) {
        return first(
                "WHERE part = ? AND revision = ? AND issue = ? AND plan <> ? ORDER BY begun DESC LIMIT 1",
                List.of(
                        plan.part().number(),
                        plan.part().revision(),
                        plan.issue(),
                        plan.source().sha256()));
    }

    @Override
    public Optional<LastPart> lastPart(LastPartQuery query) {
        return ask(statements -> {
            LastPartRows rows = new LastPartRows(statements);
            for (LastPartRows.Candidate candidate : rows.candidates(query)) {
                Optional<Step> step = plan(statements, candidate.run())
                        .map(plan -> plan.step(query.step().number()))
                        .filter(query::isOf);
                if (step.isPresent()) {
                    return Optional.of(
                            new LastPart(candidate.run(), step.get(), candidate.step(), rows.readings(candidate)));
                }
            }
            return Optional.empty();
        });
    }

    @Override
    public List<String> names(NameUse.Kind kind, String of) {
        return texts(
                """
                SELECT n.name FROM drawn_name n JOIN drawn_run r ON r.begun = n.run
                WHERE n.what = ? AND n."of" = ? ORDER BY r.last %s DESC, r.last DESC, n.place LIMIT 40
                """
                        .formatted(OWN),
                List.of(kind, of));
    }

    @Override
    public List<String> runsWith(GaugeKind kind, String mark) {
        return texts(
                """
                SELECT run FROM drawn_run WHERE begun IN (SELECT run FROM drawn_gauge WHERE kind = ? AND gauge = ?)
                    AND begun %s
                ORDER BY begun
                """
                        .formatted(OWN),
                List.of(kind.key(), mark));
    }

    @Override
    public List<String> runsSetOn(String reference) {
        return texts(
                """
                SELECT run FROM drawn_run WHERE begun IN (SELECT run FROM drawn_gauge WHERE reference = ?)
                    AND begun %s
                ORDER BY begun
                """
                        .formatted(OWN),
                List.of(reference));
    }

    @Override
    public List<InRun> matters() {
        return ask(statements -> statements.all(
                DrawnRows.RUN
                        + """
                        , m.kind AS matter, m."check", m.about, m.number, m."by" AS matter_by, m.since
                        FROM drawn_matter m JOIN drawn_run r ON r.begun = m.run ORDER BY m.run, m.place
                        """,
                List.of(),
                row -> new InRun(DrawnRows.run(row), DrawnRows.matter(row))));
    }

    @Override
    public int countMatters() {
        return ask(statements -> statements
                .all("SELECT count(*) FROM drawn_matter", List.of(), row -> row.getInt(1))
                .get(0));
    }

    @Override
    public void readings(Sought sought, HistoryRow each) {
        Optional<ReadingRows.ReadingPage> page = readings(sought, 0);
        while (page.isPresent()) {
            page.get().rows().forEach(row -> each.take(row.run(), row.step(), row.reading()));
            page = readings(sought, page.get().last());
        }
    }

    @Override
    public List<RunFacts> runs(Sought sought) {
        return ask(statements -> new PointRows(statements, sought).runs());
    }

    @Override
    public List<String> parts() {
        return texts("SELECT part FROM drawn_run GROUP BY part ORDER BY max(last) DESC", List.of());
    }

    @Override
    public void points(Sought sought, PointRow each) {
        Optional<PointRows.PointPage> page = points(sought, 0);
        while (page.isPresent()) {
            page.get().rows().forEach(row -> each.take(row.run(), row.step(), row.size()));
            page = points(sought, page.get().last());
        }
    }

    private Optional<PointRows.PointPage> points(Sought sought, long behind) {
        return ask(statements -> new PointRows(statements, sought).behind(behind));
    }

    @Override
    public Map<Long, List<ToolChange>> toolChanges(Optional<String> part) {
        return ask(statements -> PointRows.toolChanges(statements, part));
    }

    @Override
    public List<String> unjudged() {
        String judged = " NOT IN (SELECT run FROM drawn_run WHERE outcome IS NOT NULL)";
        List<String> unjudged = new ArrayList<>(
                texts("SELECT DISTINCT run FROM ledger WHERE run <> ? AND run" + judged, List.of(Entry.SHOP)));
        if (store.<Boolean>answer(ImportedTable::isIn)) {
            unjudged.addAll(texts(
                    """
                    SELECT name FROM (SELECT DISTINCT run || '@' || sign AS name FROM imported JOIN imported_from USING (station))
                    WHERE name"""
                            + judged,
                    List.of()));
        }
        return List.copyOf(unjudged);
    }

    private Optional<ReadingRows.ReadingPage> readings(Sought sought, long behind) {
        return ask(statements -> new ReadingRows(statements, sought).behind(behind));
    }

    @Override
    public Optional<Plan> plan(PlanSource source) {
        return plans.of(source);
    }

    @Override
    public Optional<Plan> plan(RunFacts run) {
        return ask(statements -> plan(statements, run));
    }

    /** Something asked in prepared statements. */
    private interface Asked<T> {
        T of(Statements statements) throws SQLException;
    }

    private <T> T ask(Asked<T> asked) {
        return store.answer(connection -> {
            try (Statements statements = new Statements(connection)) {
                return asked.of(statements);
            }
        });
    }

    private List<String> texts(String sql, List<?> values) {
        return ask(statements -> statements.all(sql, values, row -> row.getString(1)));
    }

    private List<RunFacts> found(String which, List<?> values) {
        return ask(statements -> statements.all(DrawnRows.RUN + "FROM drawn_run r " + which, values, DrawnRows::run));
    }

    private Optional<RunFacts> first(String which, List<?> values) {
        return found(which, values).stream().findFirst();
    }
}
