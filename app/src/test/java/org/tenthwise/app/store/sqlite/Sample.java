package org.tenthwise.app.store.sqlite;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.OffsetDateTime;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/** Invented entries, and a way past the ledger to its file. */
final class Sample {

    static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-02T07:15:00+01:00");

    private Sample() {
    }

    static Entry begin(Ledger ledger, String run) throws CouldNotSave {
        return ledger.append(run, AT, "A. Turner", new Event.Begun(new PartId("LG-2207", "C"), "0041", "lot 9", "Lathe 3",
                new PlanSource("[part]\n", "ab".repeat(32))));
    }

    static Entry read(Ledger ledger, String run, String figure) throws CouldNotSave {
        return ledger.append(run, AT, "A. Turner", reading(figure));
    }

    static Event reading(String figure) {
        return new Event.ReadingTaken(3, "1.1", new Written(figure, Unit.MILLIMETRE));
    }

    /** Runs statements on a store's file as any other program could. */
    static void behindItsBack(Path store, String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + store);
                Statement statement = connection.createStatement()) {
            for (String one : statements) {
                statement.executeUpdate(one);
            }
        }
    }
}
