package org.tenthwise.app.store.sqlite;

import java.sql.SQLException;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.tenthwise.app.history.GaugeUse;
import org.tenthwise.app.history.Matter;
import org.tenthwise.app.history.NameUse;
import org.tenthwise.app.history.ReadingSummary;
import org.tenthwise.app.history.ReadingSummary.GaugeMark;
import org.tenthwise.app.history.RunDigest;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunFacts.Closing;
import org.tenthwise.app.history.RunFacts.Stand;
import org.tenthwise.app.history.SizeSummary;
import org.tenthwise.app.history.StepSummary;
import org.tenthwise.app.history.StepSummary.Disposed;
import org.tenthwise.app.history.StepSummary.Found;
import org.tenthwise.app.history.ToolChange;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Verdict.Margin;

/** Writes digests into the drawn tables: of a run drawn before only what differs. */
final class DigestRows {

    private final Statements statements;

    DigestRows(Statements statements) {
        this.statements = statements;
    }

    /**
     * @param before what is there of the run
     * @param again whether it was the run drawn last as well, so that its names are the latest already
     */
    void write(RunDigest now, Optional<RunDigest> before, boolean again) throws SQLException {
        write(now, before, again, 0);
    }

    /**
     * A run that came in, all of it anew.
     *
     * @param behind what the places of its entries are counted from
     */
    void writeImported(RunDigest now, long behind) throws SQLException {
        long run = now.run().begun();
        for (String table : List.of(
                "drawn_characteristic", "drawn_size", "drawn_tool", "drawn_matter", "drawn_reading", "drawn_gauge")) {
            statements.run("DELETE FROM " + table + " WHERE run = ?", List.of(run));
        }
        write(now, Optional.empty(), false, behind);
    }

    private void write(RunDigest now, Optional<RunDigest> before, boolean again, long behind) throws SQLException {
        if (!before.map(RunDigest::run).equals(Optional.of(now.run()))) {
            write(now.run());
        }
        long run = now.run().begun();
        if (now.steps().isEmpty()
                && before.filter(there -> !there.steps().isEmpty()).isPresent()) {
            statements.run("DELETE FROM drawn_characteristic WHERE run = ?", List.of(run));
            statements.run("DELETE FROM drawn_reading WHERE run = ?", List.of(run));
            statements.run("DELETE FROM drawn_size WHERE run = ?", List.of(run));
            statements.run("DELETE FROM drawn_tool WHERE run = ?", List.of(run));
        }
        for (int place = 0; place < now.steps().size(); place++) {
            int at = place;
            Optional<RunDigest.OfStep> earlier = before.filter(
                            there -> at < there.steps().size())
                    .map(there -> there.steps().get(at));
            write(run, place, now.steps().get(place), earlier, behind);
        }
        Set<GaugeUse> gauges = new HashSet<>(before.map(RunDigest::gauges).orElse(List.of()));
        for (GaugeUse gauge : now.gauges()) {
            if (!gauges.contains(gauge)) {
                put(
                        "drawn_gauge",
                        behind + gauge.seq(),
                        run,
                        gauge.step(),
                        gauge.kind().key(),
                        gauge.mark(),
                        gauge.reference());
            }
        }
        Set<ToolChange> tools = new HashSet<>(before.map(RunDigest::tools).orElse(List.of()));
        for (ToolChange tool : now.tools()) {
            if (!tools.contains(tool)) {
                put("drawn_tool", behind + tool.seq(), run, tool.operation(), tool.words());
            }
        }
        if (!before.map(RunDigest::matters).orElse(List.of()).equals(now.matters())) {
            write(run, now.matters());
        }
        Set<NameUse> names = new HashSet<>(
                before.filter(there -> again).map(RunDigest::names).orElse(List.of()));
        for (NameUse name : now.names()) {
            if (run >= KeptEntries.MOST_ENTRIES) {
                offer(run, name);
            } else if (!names.contains(name)) {
                put("drawn_name", name.kind(), name.of(), name.name(), run, name.place());
            }
        }
    }

    /** What was open and is not any more goes. */
    private void write(long run, List<Matter> matters) throws SQLException {
        statements.run("DELETE FROM drawn_matter WHERE run = ?", List.of(run));
        for (int place = 0; place < matters.size(); place++) {
            Matter matter = matters.get(place);
            put(
                    "drawn_matter",
                    run,
                    place,
                    matter.kind(),
                    matter.check(),
                    matter.about(),
                    matter.number(),
                    matter.by(),
                    matter.since());
        }
    }

    /** A name of a run that came in, where no run of this store has it: in whatever order they came, the same stays. */
    private void offer(long run, NameUse name) throws SQLException {
        statements.run(
                """
                INSERT INTO drawn_name VALUES (?, ?, ?, ?, ?)
                ON CONFLICT DO UPDATE SET run = excluded.run, place = excluded.place
                WHERE run >= %s AND run <= excluded.run
                """
                        .formatted(KeptEntries.MOST_ENTRIES),
                List.of(name.kind(), name.of(), name.name(), run, name.place()));
    }

    void drawnUpTo(String form, Head head) throws SQLException {
        put("drawn_form (rowid, form, seq, hash)", 1, form, head.seq(), head.hash());
    }

    private void write(RunFacts run) throws SQLException {
        put(
                "drawn_run",
                run.begun(),
                run.id(),
                run.part(),
                run.revision(),
                run.serial(),
                run.lot(),
                run.machine(),
                run.planHash(),
                run.begunAt(),
                run.by(),
                String.join("\n", run.people()),
                run.last(),
                run.lastAt(),
                run.lastAt().toEpochSecond(),
                run.stand().map(Stand::issue),
                run.stand().map(Stand::inHand),
                run.stand().map(Stand::outcome),
                run.stand().map(Stand::concessions),
                run.stand().map(Stand::contested),
                run.open(),
                run.closing().map(Closing::signedBy),
                run.closing().map(Closing::meaning),
                run.kind().purpose(),
                run.kind().piece());
    }

    private void write(long run, int place, RunDigest.OfStep now, Optional<RunDigest.OfStep> before, long behind)
            throws SQLException {
        if (before.filter(there -> there == now).isPresent()) {
            return;
        }
        if (!before.map(RunDigest.OfStep::step).equals(Optional.of(now.step()))) {
            write(run, place, now.step());
        }
        Optional<SizeSummary> size = before.flatMap(RunDigest.OfStep::size);
        if (!size.equals(now.size())) {
            write(run, now.step().number(), now.size(), behind);
        }
        Set<ReadingSummary> readings =
                new HashSet<>(before.map(RunDigest.OfStep::readings).orElse(List.of()));
        for (ReadingSummary reading : now.readings()) {
            if (!readings.contains(reading)) {
                write(run, reading, behind);
            }
        }
    }

    private void write(long run, int place, StepSummary step) throws SQLException {
        Optional<Margin> margin = step.verdict().margin();
        put(
                "drawn_characteristic",
                run,
                step.number(),
                place,
                step.name(),
                step.balloon(),
                step.designator(),
                step.stepClass(),
                step.limits().flatMap(Limits::lower).map(Written::text),
                step.limits().flatMap(Limits::upper).map(Written::text),
                step.limits().map(limits -> limits.unit().symbol()),
                step.places(),
                step.verdict().standing(),
                margin.map(Margin::distance).map(DigestRows::figure),
                margin.map(Margin::limit),
                margin.map(Margin::inside),
                step.value().map(DigestRows::figure),
                step.disposed().map(Disposed::disposition),
                step.disposed().map(Disposed::signedBy),
                step.found().map(Found::by),
                step.found().map(Found::at),
                step.found().flatMap(Found::gauge).map(GaugeMark::kind),
                step.found().flatMap(Found::gauge).map(GaugeMark::mark),
                step.asked());
    }

    /** What is worked out of others can be gone again. */
    private void write(long run, int step, Optional<SizeSummary> size, long behind) throws SQLException {
        if (size.isPresent()) {
            SizeRows.write(statements, run, step, size.get(), behind);
        } else {
            statements.run("DELETE FROM drawn_size WHERE run = ? AND step = ?", List.of(run, step));
        }
    }

    private void write(long run, ReadingSummary reading, long behind) throws SQLException {
        put(
                "drawn_reading",
                behind + reading.seq(),
                run,
                reading.step(),
                reading.pass(),
                reading.replaced(),
                reading.place(),
                reading.repeat(),
                reading.typed().text(),
                reading.typed().unit().symbol(),
                reading.value().map(DigestRows::read),
                reading.places(),
                reading.alone(),
                reading.gauge().map(GaugeMark::kind),
                reading.gauge().map(GaugeMark::mark),
                reading.by(),
                reading.at(),
                reading.struck());
    }

    /** The same, and an angle with its mark: it may be read beside limits of a length. */
    private static String read(Length value) {
        return value.kind().equals(QuantityKind.ANGLE) ? figure(value) + DrawnRows.SECONDS : figure(value);
    }

    /** In millimetres or seconds of arc, exact. */
    static String figure(Length length) {
        return length.base().toPlainString();
    }

    private void put(String table, Object... values) throws SQLException {
        put(statements, table, values);
    }

    static void put(Statements statements, String table, Object... values) throws SQLException {
        statements.run(
                "INSERT OR REPLACE INTO %s VALUES (%s)"
                        .formatted(
                                table,
                                Collections.nCopies(values.length, "?").stream().collect(Collectors.joining(", "))),
                List.of(values));
    }
}
