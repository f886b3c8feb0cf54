package org.tenthwise.app.backup;

import java.nio.file.Path;
import org.tenthwise.app.store.CouldNotCopy;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Salvage;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.store.Verification;

/** Stores as they are, and something that happens when a copy is about to be made, or a store to be verified. */
record StoresWithAHitch(Stores stores, Runnable beforeCopy, Runnable beforeVerifying) implements Stores {

    static StoresWithAHitch beforeCopying(Stores stores, Runnable hitch) {
        return new StoresWithAHitch(stores, hitch, () -> {});
    }

    static StoresWithAHitch beforeVerifying(Stores stores, Runnable hitch) {
        return new StoresWithAHitch(stores, () -> {}, hitch);
    }

    @Override
    public Verification copy(Path store, Path to) throws CouldNotOpen, CouldNotCopy {
        beforeCopy.run();
        return stores.copy(store, to);
    }

    @Override
    public Ledger open(Path store) throws CouldNotOpen {
        return stores.open(store);
    }

    @Override
    public Ledger open(Path store, Head checked) throws CouldNotOpen {
        return stores.open(store, checked);
    }

    @Override
    public Head makeSure(Path store) throws CouldNotOpen {
        beforeVerifying.run();
        return stores.makeSure(store);
    }

    @Override
    public Salvage salvage(Path damaged, Path to) throws CouldNotOpen, CouldNotCopy {
        return stores.salvage(damaged, to);
    }

    @Override
    public KeptEntries openToRead(Path store) throws CouldNotOpen {
        return stores.openToRead(store);
    }
}
