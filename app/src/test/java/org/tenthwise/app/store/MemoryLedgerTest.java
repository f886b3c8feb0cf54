package org.tenthwise.app.store;

class MemoryLedgerTest extends LedgerContract {

    @Override
    protected Ledger empty() {
        return new MemoryLedger();
    }
}
