package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.verdict.VerdictKind;

/** A run of one plan, begun anew for each test in a store on the disk, and worked without a screen. */
abstract class RunBegun {

    private final Plan plan;

    @TempDir
    private Path dir;

    Ledger ledger;
    RunSession session;

    RunBegun(Plan plan) {
        this.plan = plan;
    }

    @BeforeEach
    void beginARun() throws Exception {
        ledger = new SqliteStores().open(store());
        Clock clock = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));
        session = new Runs(ledger, clock).begin(new RunHeader(plan, "1", "", "", "Setter 2"));
    }

    final Path store() {
        return dir.resolve("s.db");
    }

    @AfterEach
    void letGo() {
        ledger.close();
    }

    /** Enters figures to which nothing is objected. */
    final void enter(String... figures) throws Exception {
        for (String figure : figures) {
            assertEquals(Optional.empty(), session.enter(figure).objection(), figure);
        }
    }

    static void taken(Reply reply) {
        assertEquals(Optional.empty(), reply.objection());
    }

    static Objection.Kind refused(Reply reply) {
        return reply.objection().orElseThrow().kind();
    }

    final Finding finding() {
        return session.state().line().finding();
    }

    final VerdictKind standing() {
        return finding().verdict().standing();
    }
}
