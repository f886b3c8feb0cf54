package org.tenthwise.app.store.sqlite;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.tenthwise.app.store.CouldNotCopy;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.Salvage;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.store.Verification;

/** Stores that are a SQLite file each. */
public final class SqliteStores implements Stores {

    @Override
    public Ledger open(Path path) throws CouldNotOpen {
        return open(path, Head.OF_NOTHING);
    }

    @Override
    public Ledger open(Path path, Head checked) throws CouldNotOpen {
        StoreFile file = file(path);
        if (file.exists()) {
            return openExisting(file, checked);
        }
        try {
            Durable.folders(file.path().getParent());
        } catch (IOException e) {
            throw new StoreErrors(file).readOnly(e);
        }
        return Opening.of(file(path));
    }

    /** Opens a store to write to, if its chain is whole. Makes none. */
    SqliteLedger openExisting(Path path) throws CouldNotOpen {
        return openExisting(file(path), Head.OF_NOTHING);
    }

    /** What is drawn from the entries is no evidence: where it was changed, it is drawn anew. */
    private static SqliteLedger openExisting(StoreFile file, Head checked) throws CouldNotOpen {
        boolean asDrawn;
        try (SqliteReading kept = SqliteReading.open(file)) {
            Verification found = kept.verifyBehind(checked);
            if (found.fault().isPresent()) {
                throw new StoreErrors(file).notWhole(found.fault().get());
            }
            asDrawn = !checked.equals(Head.OF_NOTHING) || kept.drawnFault().isEmpty();
        }
        return Opening.of(file, asDrawn);
    }

    @Override
    public Head makeSure(Path path) throws CouldNotOpen {
        StoreFile file = file(path);
        try (SqliteReading kept = SqliteReading.open(file)) {
            Verification found = kept.verifyEntries();
            if (found.fault().isPresent()) {
                throw new StoreErrors(file).foundNotWhole(found.fault().get());
            }
            Optional<Verification.Fault> drawn = kept.drawnFault();
            if (drawn.isPresent()) {
                throw new StoreErrors(file).drawnChanged(drawn.get());
            }
            return found.head();
        }
    }

    @Override
    public Verification copy(Path path, Path to) throws CouldNotOpen, CouldNotCopy {
        return new StoreCopy(file(to)).of(file(path));
    }

    @Override
    public Salvage salvage(Path damaged, Path to) throws CouldNotOpen, CouldNotCopy {
        return Salvaging.from(file(damaged), file(to));
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
