package org.tenthwise.app.store.sqlite;

import java.nio.file.Path;
import org.tenthwise.app.store.ImportContract;
import org.tenthwise.app.store.Ledger;

class SqliteImportTest extends ImportContract {

    @Override
    protected Ledger empty(Path folder) throws Exception {
        return new SqliteStores().open(folder.resolve("desk.db"));
    }
}
