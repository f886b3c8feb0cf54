package org.tenthwise.app.session;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;

/** The same, asked of the tables that a store draws from its entries. */
class EarlierRunsInAStoreTest extends EarlierRunsTest {

    @TempDir
    private Path folder;

    @Override
    Ledger opened() throws Exception {
        return new SqliteStores().open(folder.resolve("s.db"));
    }
}
