package org.tenthwise.app.seal;

import java.nio.file.Path;
import java.util.Optional;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.key.NoKey;
import org.tenthwise.app.key.StationKey;
import org.tenthwise.app.store.CouldNotCopy;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Salvage;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.words.Message;

/**
 * Stores in which closed runs are signed by the key of their station.
 *
 * <p>The key is made when a store is first opened to be written to. One that is missing or damaged where runs were
 * signed before is not replaced by itself: what is written then is not signed until somebody makes another.
 */
public final class SealedStores implements Stores {

    private final Stores stores;

    public SealedStores(Stores stores) {
        this.stores = stores;
    }

    @Override
    public Optional<Message> unsealed(Path store) {
        try {
            KeyFile.beside(store).open();
            return Optional.empty();
        } catch (NoKey e) {
            return Optional.of(e.why());
        }
    }

    @Override
    public Ledger open(Path store) throws CouldNotOpen {
        return sealing(store, stores.open(store));
    }

    @Override
    public Ledger open(Path store, Head checked) throws CouldNotOpen {
        return sealing(store, stores.open(store, checked));
    }

    /** The ledger is open, so that no other process is about to make a key for it. */
    private static Ledger sealing(Path store, Ledger ledger) {
        KeyFile file = KeyFile.beside(store);
        try {
            StationKey key = file.isThere() || ledger.isSealed() ? file.open() : file.make();
            return new SealingLedger(ledger, file, Optional.of(key));
        } catch (NoKey e) {
            return new SealingLedger(ledger, file, Optional.empty());
        }
    }

    @Override
    public Head makeSure(Path store) throws CouldNotOpen {
        return stores.makeSure(store);
    }

    @Override
    public Verification copy(Path store, Path to) throws CouldNotOpen, CouldNotCopy {
        return stores.copy(store, to);
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
