package org.tenthwise.app.store.sqlite;

import java.io.IOException;
import java.nio.file.Path;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.store.Verification;

/** Stores that are a SQLite file each. */
public final class SqliteStores implements Stores {

    @Override
    public Ledger open(Path path) throws CouldNotOpen {
        StoreFile file = file(path);
        if (file.exists()) {
            return openExisting(path);
        }
        try {
            Durable.folders(file.path().getParent());
        } catch (IOException e) {
            throw new StoreErrors(file).readOnly(e);
        }
        return Opening.of(file(path));
    }

    /** Opens a store to write to, if its chain is whole and all of it is understood. Makes none. */
    SqliteLedger openExisting(Path path) throws CouldNotOpen {
        StoreFile file = file(path);
        try (KeptEntries kept = SqliteReading.open(file)) {
            Verification found = kept.verify();
            if (found.fault().isPresent()) {
                throw new StoreErrors(file).notWhole(found.fault().get());
            }
            if (found.madeByNewer().isPresent()) {
                throw new StoreErrors(file).newer(found.madeByNewer().get());
            }
        }
        return Opening.of(file);
    }

    @Override
    public KeptEntries openToRead(Path path) throws CouldNotOpen {
        return SqliteReading.open(file(path));
    }

    private static StoreFile file(Path path) throws CouldNotOpen {
        try {
            return StoreFile.of(path);
        } catch (IOException e) {
            throw new StoreErrors(new StoreFile(path.toAbsolutePath())).unreadable(e);
        }
    }
}
