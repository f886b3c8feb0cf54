package org.tenthwise.app.store.sqlite;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import org.tenthwise.app.store.CouldNotCopy;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.words.Message;

/**
 * Makes a store under a name that is free: under another name first, which is synchronised and verified before it is
 * renamed, so that under its own name it is whole or not there.
 */
final class StoreCopy {

    /** What is copied before whoever writes to the store gets a turn; 4 MiB. */
    private static final int PAGES_AT_ONCE = 1_000;

    private static final int PATIENCE_MILLISECONDS = 50;
    private static final int TRIES = 600;

    /** Fills the file that is in the making. */
    interface Filling {
        void into(StoreFile half) throws SQLException, IOException, CouldNotOpen;
    }

    private final StoreFile to;

    StoreCopy(StoreFile to) {
        this.to = to;
    }

    /** Copies all a store holds, also while another process writes to it. */
    Verification of(StoreFile from) throws CouldNotOpen, CouldNotCopy {
        SqliteReading reading = SqliteReading.open(from);
        Verification made = make(half -> reading.ask(connection -> {
            copy(connection, half);
            return half;
        }));
        if (made.fault().isPresent()) {
            throw new StoreErrors(from).notWholeToCopy(made.fault().get());
        }
        return made;
    }

    /** @return what the new store holds; it has no name where that is not whole */
    Verification make(Filling filling) throws CouldNotOpen, CouldNotCopy {
        if (to.exists()) {
            throw alreadyThere();
        }
        try {
            Durable.folders(to.path().getParent());
            StoreFile half = StoreFile.of(to.inTheMaking().path());
            try {
                half.discard();
                filling.into(half);
                synchronise(half.path());
                Verification found = readBack(half);
                if (found.whole()) {
                    name(half);
                }
                return found;
            } finally {
                half.discard();
            }
        } catch (SQLException | IOException e) {
            throw notMade(e);
        }
    }

    /** What cannot be read back, its disk taken away or worn, was not written, whatever the disk said. */
    private Verification readBack(StoreFile half) throws CouldNotCopy {
        try (SqliteReading made = SqliteReading.open(half)) {
            return made.verifyKept();
        } catch (CouldNotOpen | CouldNotRead e) {
            throw notMade(e);
        }
    }

    private void name(StoreFile half) throws IOException, CouldNotCopy {
        if (to.exists()) {
            throw alreadyThere();
        }
        Durable.name(half.path(), to.path());
    }

    private static void copy(Connection from, StoreFile half) throws SQLException {
        discard(half);
        int code = ((SQLiteConnection) from)
                .getDatabase()
                .backup(
                        "main",
                        half.path().toString(),
                        (remaining, all) -> {},
                        PATIENCE_MILLISECONDS,
                        TRIES,
                        PAGES_AT_ONCE);
        if (code != SQLiteErrorCode.SQLITE_OK.code && code != SQLiteErrorCode.SQLITE_DONE.code) {
            throw new SQLiteException("The copy was broken off", SQLiteErrorCode.getErrorCode(code));
        }
    }

    /** Takes away what was begun. */
    static void discard(StoreFile half) throws SQLException {
        try {
            half.discard();
        } catch (IOException e) {
            throw new SQLException("What was begun cannot be taken away", e);
        }
    }

    private static void synchronise(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    private CouldNotCopy alreadyThere() {
        return new CouldNotCopy(
                CouldNotCopy.Reason.ALREADY_THERE, Message.of("store.copy.already-there", to.path()), Optional.empty());
    }

    private CouldNotCopy notMade(Exception e) {
        if (!Files.isDirectory(to.path().getParent())) {
            return new CouldNotCopy(
                    CouldNotCopy.Reason.NOT_WRITABLE, Message.of("store.copy.no-folder", to.path()), Optional.of(e));
        }
        boolean full = e instanceof SQLException sql && StoreErrors.isForWantOfRoom(sql)
                || e instanceof IOException && to.path().getParent().toFile().getUsableSpace() == 0;
        return full
                ? new CouldNotCopy(
                        CouldNotCopy.Reason.DISK_FULL, Message.of("store.copy.disk-full", to.path()), Optional.of(e))
                : new CouldNotCopy(
                        CouldNotCopy.Reason.NOT_WRITABLE,
                        Message.of("store.copy.not-writable", to.path()),
                        Optional.of(e));
    }
}
