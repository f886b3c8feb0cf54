package org.tenthwise.app.store.sqlite;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.OffsetDateTime;
import java.util.function.UnaryOperator;
import org.tenthwise.app.store.Chain;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/** Invented entries, and a way past the ledger to its file. */
public final class Sample {

    public static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T07:15:00+01:00");

    private Sample() {}

    public static Entry begin(Ledger ledger, String run) throws CouldNotSave {
        return ledger.append(
                run,
                AT,
                "A. Turner",
                new Event.Begun(
                        new PartId("LG-2207", "C"),
                        "0041",
                        "lot 9",
                        "Lathe 3",
                        new PlanSource("[part]\n", "ab".repeat(32))));
    }

    static Entry read(Ledger ledger, String run, String figure) throws CouldNotSave {
        return ledger.append(run, AT, "A. Turner", reading(figure));
    }

    static Event reading(String figure) {
        return new StepEvent.ReadingTaken(3, "1.1", new Written(figure, Unit.MILLIMETRE));
    }

    /** Adds an entry of a kind this release does not know, tied as a newer one would tie it. */
    public static void photograph(Path store, String run) throws SQLException {
        addAsANewerRelease(store, run, "photo-taken", note -> note.replace("note-made", "photo-taken")
                .replaceFirst("\"event\":.*", "\"event\":{\"of\":\"step 3\"}}"));
    }

    /** Adds a note that says more than this release knows of, and so takes a format this release does not know. */
    static void noteOfANewerFormat(Path store, String run, String event) throws SQLException {
        addAsANewerRelease(store, run, "note-made", note -> note.replaceFirst("\\{", "{\"format\":99,\"drawn\":[],")
                .replaceFirst("\"event\":.*", event));
    }

    private static void addAsANewerRelease(Path store, String run, String kind, UnaryOperator<String> text)
            throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + store)) {
            LedgerTable table = new LedgerTable(connection);
            StoredEntry note = StoredEntry.behind(
                    table.head(),
                    table.runHead(run),
                    new NewEntry(run, AT, "A. Turner", new StepEvent.NoteMade(3, "")));
            String body = text.apply(note.body());
            table.add(new StoredEntry(
                    note.seq(),
                    run,
                    kind,
                    note.at(),
                    note.by(),
                    body,
                    note.previous(),
                    Chain.hash(note.previous(), body.getBytes(UTF_8))));
        }
    }

    public static Entry note(Ledger ledger, String run) throws CouldNotSave {
        return ledger.append(run, AT, "A. Turner", new StepEvent.NoteMade(3, "seen"));
    }

    /** Changes the text of an entry, past what guards it, and leaves everything else as it is. */
    public static void tamper(Path store, long seq) throws SQLException {
        change(store, "body = body || ' ' WHERE seq = " + seq);
    }

    /** Changes entries, past what guards them. */
    static void change(Path store, String what) throws SQLException {
        String guard = "CREATE TRIGGER ledger_is_never_changed BEFORE UPDATE ON ledger\nBEGIN\n"
                + "    SELECT RAISE(ABORT, 'an entry of the ledger is never changed');\nEND";
        behindItsBack(store, "DROP TRIGGER ledger_is_never_changed", "UPDATE ledger SET " + what, guard);
    }

    /** Runs statements on a store's file as any other program could. */
    public static void behindItsBack(Path store, String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + store);
                Statement statement = connection.createStatement()) {
            for (String one : statements) {
                statement.executeUpdate(one);
            }
        }
    }
}
