package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.run.Disposition;

class ShowMattersTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));

    @TempDir
    private Path folder;

    @Test
    void whatIsOpenIsARowEachWithTheRunItIsOf() throws Exception {
        Path store = folder.resolve("shop.db");
        try (Ledger ledger = new SqliteStores().open(store)) {
            RunSession session = new Runs(ledger, CLOCK)
                    .begin(new RunHeader(
                            InventedPlans.inMillimetres(
                                    """
                                    [[step]]
                                    number = 1
                                    operation = 10
                                    kind = "look"
                                    name = "=Edges"
                                    what = "Broken."
                                    """),
                            "001",
                            "L-1",
                            "Lathe 4",
                            "Setter 1"));
            session.answer(Answer.NO);
            session.dispose(Disposition.USE_AS_IS, "as agreed", "Inspector 1", "C-12");
        }
        Typed typed = Typed.line("matters", "--store", store);
        assertEquals(0, typed.exit(), typed.err()::toString);
        assertEquals(
                List.of(
                        "matter,part,revision,serial,lot,machine,run,check,about,document-number,person,since,"
                                + "settled-by,settled-at,settled-words,settled-document-number",
                        "concession,T-1,A,001,L-1,Lathe 4,T-1-A-001,1,'=Edges,C-12,Inspector 1,"
                                + "2026-11-25T07:31:00+01:00,,,,",
                        "run-not-complete,T-1,A,001,L-1,Lathe 4,T-1-A-001,,,,Setter 1,2026-11-25T07:31:00+01:00,,,,"),
                typed.out());
        assertEquals(
                2,
                Typed.line("matters", "--store", store, "--person", "Setter 1")
                        .out()
                        .size());
    }
}
