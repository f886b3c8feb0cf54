package org.tenthwise.app.store.sqlite;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.run.Event;

/** A store of many invented runs, chained as a ledger chains them, made in a fraction of the time it would take. */
final class BigStore {

    private static final int ENTRIES_A_RUN = 94;

    private Head ledger = Head.OF_NOTHING;
    private RunHead run = RunHead.OF_NOTHING;

    private BigStore() {}

    /** @return the head of the store, whose tables are drawn */
    static Head make(Path store, int entries) throws Exception {
        Files.deleteIfExists(store);
        new SqliteStores().open(store).close();
        try (Connection connection = Connections.toWrite(StoreFile.of(store).urlToWrite())) {
            LedgerTable table = new LedgerTable(connection);
            BigStore made = new BigStore();
            Transaction.in(connection, () -> {
                for (int i = 0; i < entries; i++) {
                    table.add(made.next(i));
                }
                return entries;
            });
            DrawnTables.bringUpToDate(connection, true);
            return made.ledger;
        }
    }

    private StoredEntry next(int i) {
        String name = "LG-2207-C-%05d".formatted(i / ENTRIES_A_RUN);
        if (i % ENTRIES_A_RUN == 0) {
            run = RunHead.OF_NOTHING;
        }
        StoredEntry entry =
                StoredEntry.behind(ledger, run, new NewEntry(name, Sample.AT.plusSeconds(i), "A. Turner", event(i)));
        ledger = entry.asHead();
        run = run.and(entry);
        return entry;
    }

    private static Event event(int i) {
        return i % ENTRIES_A_RUN == 0
                ? new Event.Begun(
                        new PartId("LG-2207", "C"),
                        Integer.toString(i / ENTRIES_A_RUN),
                        "lot 9",
                        "Lathe 3",
                        new PlanSource("# invented\n".repeat(400), "ab".repeat(32)))
                : Sample.reading("35.%03d".formatted(i % 1000));
    }
}
