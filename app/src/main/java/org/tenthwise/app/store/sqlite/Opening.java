package org.tenthwise.app.store.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.Verification;

/** Opens a store to write to: takes the lock, makes the file if there is none, brings its tables up to date. */
final class Opening {

    private final StoreFile file;
    private final StoreErrors trouble;
    private final boolean asDrawn;

    private Opening(StoreFile file, boolean asDrawn) {
        this.file = file;
        this.asDrawn = asDrawn;
        this.trouble = new StoreErrors(file);
    }

    /** @param file a store, or nothing yet, in a folder that is there */
    static SqliteLedger of(StoreFile file) throws CouldNotOpen {
        return of(file, true);
    }

    /** @param asDrawn whether what is drawn from the entries may be what they come to; else it is made anew */
    static SqliteLedger of(StoreFile file, boolean asDrawn) throws CouldNotOpen {
        return new Opening(file, asDrawn).ledger();
    }

    private SqliteLedger ledger() throws CouldNotOpen {
        try {
            if (file.exists() && !Files.isWritable(file.path())) {
                throw trouble.readOnly();
            }
            StoreLock lock = StoreLock.take(file.lock()).orElseThrow(trouble::heldByAnother);
            try {
                if (!file.exists()) {
                    make();
                }
                return new SqliteLedger(file, lock, connection());
            } catch (CouldNotOpen | SQLException | IOException | RuntimeException e) {
                lock.close();
                throw e;
            }
        } catch (SQLException e) {
            throw trouble.opening(e);
        } catch (IOException e) {
            throw trouble.readOnly(e);
        }
    }

    /** Makes the store under another name first: killed half-way, it leaves no half store behind. */
    private void make() throws SQLException, IOException, CouldNotOpen {
        StoreFile half = file.inTheMaking();
        half.discard();
        try {
            try (Connection connection = Connections.toWrite(half.urlToMake())) {
                makeSure(connection);
                Schema.bringUpToDate(connection, OffsetDateTime.now());
            }
            Durable.name(half.path(), file.path());
        } finally {
            half.discard();
        }
    }

    private Connection connection() throws SQLException, CouldNotOpen {
        Connection connection = Connections.toWrite(file.urlToWrite());
        try {
            makeSure(connection);
            Schema.bringUpToDate(connection, OffsetDateTime.now());
            DrawnTables.bringUpToDate(connection, asDrawn);
            return connection;
        } catch (CouldNotRead e) {
            connection.close();
            throw trouble.notWhole(new Verification.Fault(Optional.empty(), e.why()));
        } catch (CouldNotOpen | SQLException | RuntimeException e) {
            connection.close();
            throw e;
        }
    }

    private void makeSure(Connection connection) throws SQLException, CouldNotOpen {
        if (!Connections.keepsSafely(connection)) {
            throw trouble.unsafe();
        }
    }
}
