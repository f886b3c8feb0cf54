package org.tenthwise.app.store;

import java.nio.file.Path;

class MemoryLedgerImportTest extends ImportContract {

    @Override
    protected Ledger empty(Path folder) {
        return new MemoryLedger();
    }
}
