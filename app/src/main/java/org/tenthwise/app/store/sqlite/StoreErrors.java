package org.tenthwise.app.store.sqlite;

import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Verification;
import org.tenthwise.model.words.Message;

/** Says what went wrong with a store: what happened, what is safe, what to do next. */
final class StoreErrors {

    /** The low byte of an error says what it is; the rest says where in SQLite it came up. */
    private static final int WHAT = 0xFF;

    private final StoreFile file;
    private final String name;

    /** @param file the store it is about */
    StoreErrors(StoreFile file) {
        this.file = file;
        this.name = file.name();
    }

    /** The plain error code; 0 if it did not come from SQLite. */
    static int code(SQLException e) {
        return e instanceof SQLiteException own ? own.getResultCode().code & WHAT : 0;
    }

    /** Whether an entry was left unfinished that could not be taken back, for the file cannot be written to. */
    static boolean isUnfinished(SQLException e) {
        return e instanceof SQLiteException own && own.getResultCode() == SQLiteErrorCode.SQLITE_READONLY_ROLLBACK;
    }

    CouldNotSave saving(SQLException e) {
        if (e instanceof NotKept) {
            return new CouldNotSave(CouldNotSave.Reason.DAMAGED, Message.of("store.not-saved.not-kept", name), e);
        }
        if (e instanceof MadeByNewer newer) {
            return madeByNewer(newer);
        }
        if (e instanceof MadeElsewhere elsewhere) {
            return new CouldNotSave(
                    CouldNotSave.Reason.IMPORTED, Message.of("store.not-saved.imported", elsewhere.run()), e);
        }
        if (isForWantOfRoom(e)) {
            return new CouldNotSave(CouldNotSave.Reason.DISK_FULL, Message.of("store.not-saved.disk-full"), e);
        }
        if (is(e, SQLiteErrorCode.SQLITE_READONLY)) {
            return new CouldNotSave(CouldNotSave.Reason.READ_ONLY, Message.of("store.not-saved.read-only", name), e);
        }
        if (is(e, SQLiteErrorCode.SQLITE_CORRUPT) || is(e, SQLiteErrorCode.SQLITE_NOTADB)) {
            return new CouldNotSave(CouldNotSave.Reason.DAMAGED, Message.of("store.not-saved.damaged", name), e);
        }
        if (is(e, SQLiteErrorCode.SQLITE_BUSY) || is(e, SQLiteErrorCode.SQLITE_LOCKED)) {
            return new CouldNotSave(CouldNotSave.Reason.BUSY, Message.of("store.not-saved.busy", name), e);
        }
        return new CouldNotSave(CouldNotSave.Reason.OTHER, Message.of("store.not-saved.other"), e);
    }

    CouldNotOpen opening(SQLException e) {
        if (is(e, SQLiteErrorCode.SQLITE_NOTADB)) {
            return notAStore();
        }
        if (isForWantOfRoom(e) && !file.exists()) {
            return new CouldNotOpen(CouldNotOpen.Reason.DISK_FULL, Message.of("store.not-made.disk-full", name), e);
        }
        if (isForWantOfRoom(e)) {
            return new CouldNotOpen(CouldNotOpen.Reason.DISK_FULL, Message.of("store.not-opened.disk-full", name), e);
        }
        if (isUnfinished(e)) {
            return unfinished(e);
        }
        if (is(e, SQLiteErrorCode.SQLITE_READONLY)) {
            return readOnly(e);
        }
        if (is(e, SQLiteErrorCode.SQLITE_BUSY)) {
            return new CouldNotOpen(
                    CouldNotOpen.Reason.HELD_BY_ANOTHER, Message.of("store.not-opened.being-read", name), e);
        }
        if (is(e, SQLiteErrorCode.SQLITE_CORRUPT) || e instanceof NotKept) {
            return new CouldNotOpen(CouldNotOpen.Reason.DAMAGED, Message.of("store.not-opened.damaged", name), e);
        }
        return unreadable(e);
    }

    CouldNotOpen notWhole(Verification.Fault fault) {
        return new CouldNotOpen(
                CouldNotOpen.Reason.DAMAGED, Message.of("store.not-opened.not-whole", name, fault.why()));
    }

    /** Of a store that is open. */
    CouldNotOpen foundNotWhole(Verification.Fault fault) {
        return new CouldNotOpen(CouldNotOpen.Reason.DAMAGED, Message.of("store.closed-not-whole", name, fault.why()));
    }

    /** Of a store that is open: its entries are whole, what lists are read from is not what they come to. */
    CouldNotOpen drawnChanged(Verification.Fault fault) {
        return new CouldNotOpen(CouldNotOpen.Reason.DAMAGED, Message.of("store.closed-drawn", name, fault.why()));
    }

    CouldNotOpen notWholeToCopy(Verification.Fault fault) {
        return new CouldNotOpen(
                CouldNotOpen.Reason.DAMAGED, Message.of("store.not-copied.not-whole", name, fault.why()));
    }

    private CouldNotSave madeByNewer(MadeByNewer e) {
        return new CouldNotSave(CouldNotSave.Reason.NEWER, Message.of("store.not-saved.newer", e.run()), e);
    }

    CouldNotOpen notFound() {
        return new CouldNotOpen(CouldNotOpen.Reason.NOT_FOUND, Message.of("store.not-found", name));
    }

    CouldNotOpen notAStore() {
        return new CouldNotOpen(CouldNotOpen.Reason.NOT_A_STORE, Message.of("store.no-store", name));
    }

    CouldNotOpen newer(int step) {
        return new CouldNotOpen(
                CouldNotOpen.Reason.NEWER, Message.of("store.newer.version", name, step, Schema.NEWEST));
    }

    CouldNotOpen heldByAnother() {
        return new CouldNotOpen(CouldNotOpen.Reason.HELD_BY_ANOTHER, Message.of("store.held-by-another", name));
    }

    CouldNotOpen readOnly() {
        return new CouldNotOpen(CouldNotOpen.Reason.READ_ONLY, Message.of("store.read-only", name));
    }

    CouldNotOpen readOnly(Exception e) {
        return new CouldNotOpen(CouldNotOpen.Reason.READ_ONLY, Message.of("store.read-only", name), e);
    }

    private CouldNotOpen unfinished(SQLException e) {
        return new CouldNotOpen(CouldNotOpen.Reason.READ_ONLY, Message.of("store.unfinished", name), e);
    }

    CouldNotOpen unsafe() {
        return new CouldNotOpen(CouldNotOpen.Reason.UNREADABLE, Message.of("store.unsafe", name));
    }

    CouldNotOpen unreadable(Exception e) {
        return new CouldNotOpen(CouldNotOpen.Reason.UNREADABLE, Message.of("store.unreadable", name), e);
    }

    CouldNotRead reading(Exception e) {
        return new CouldNotRead(Message.of("store.not-read", name), e);
    }

    /**
     * A full disk also shows as a shared index beside the log that cannot grow; seen on a small disk filled to the
     * brim.
     */
    static boolean isForWantOfRoom(SQLException e) {
        return is(e, SQLiteErrorCode.SQLITE_FULL)
                || e instanceof SQLiteException own && own.getResultCode() == SQLiteErrorCode.SQLITE_IOERR_SHMSIZE;
    }

    private static boolean is(SQLException e, SQLiteErrorCode what) {
        return code(e) == what.code;
    }
}
