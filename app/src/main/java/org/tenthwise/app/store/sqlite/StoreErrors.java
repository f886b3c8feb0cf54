package org.tenthwise.app.store.sqlite;

import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Verification;

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
            return new CouldNotSave(
                    CouldNotSave.Reason.DAMAGED,
                    "The entry was not saved: %s did not keep it as it was given. ".formatted(name)
                            + "Do not go on with it. Keep a copy of the file, verify it, and start a new store.",
                    e);
        }
        if (e instanceof MadeByNewer newer) {
            return madeByNewer(newer);
        }
        if (isForWantOfRoom(e)) {
            return new CouldNotSave(
                    CouldNotSave.Reason.DISK_FULL,
                    "The entry was not saved: the disk is full. "
                            + "Everything saved before is safe. Free some space, then save again.",
                    e);
        }
        if (is(e, SQLiteErrorCode.SQLITE_READONLY)) {
            return new CouldNotSave(
                    CouldNotSave.Reason.READ_ONLY,
                    "The entry was not saved: %s cannot be written to. ".formatted(name)
                            + "Everything saved before is safe. Allow writing to it, then save again.",
                    e);
        }
        if (is(e, SQLiteErrorCode.SQLITE_CORRUPT) || is(e, SQLiteErrorCode.SQLITE_NOTADB)) {
            return new CouldNotSave(
                    CouldNotSave.Reason.DAMAGED,
                    "The entry was not saved: %s is damaged. ".formatted(name)
                            + "Do not go on with it. Keep a copy of the file, verify it, and start a new store.",
                    e);
        }
        if (is(e, SQLiteErrorCode.SQLITE_BUSY) || is(e, SQLiteErrorCode.SQLITE_LOCKED)) {
            return new CouldNotSave(
                    CouldNotSave.Reason.BUSY,
                    "The entry was not saved: another program keeps %s busy. ".formatted(name)
                            + "Everything saved before is safe. Close that program, then save again.",
                    e);
        }
        return new CouldNotSave(
                CouldNotSave.Reason.OTHER,
                "The entry was not saved: the disk did not take it. "
                        + "Everything saved before is safe. See to the disk, then save again.",
                e);
    }

    CouldNotOpen opening(SQLException e) {
        if (is(e, SQLiteErrorCode.SQLITE_NOTADB)) {
            return notAStore();
        }
        if (isForWantOfRoom(e) && !file.exists()) {
            return new CouldNotOpen(
                    CouldNotOpen.Reason.DISK_FULL,
                    "%s was not made: the disk is full. ".formatted(name)
                            + "Nothing is kept yet. Free some space, then open it again.",
                    e);
        }
        if (isForWantOfRoom(e)) {
            return new CouldNotOpen(
                    CouldNotOpen.Reason.DISK_FULL,
                    "%s was not opened: the disk is full. ".formatted(name)
                            + "What is in it is safe. Free some space, then open it again.",
                    e);
        }
        if (isUnfinished(e)) {
            return unfinished(e);
        }
        if (is(e, SQLiteErrorCode.SQLITE_READONLY)) {
            return readOnly(e);
        }
        if (is(e, SQLiteErrorCode.SQLITE_BUSY)) {
            return new CouldNotOpen(
                    CouldNotOpen.Reason.HELD_BY_ANOTHER,
                    ("%s was not opened: another program is reading it. "
                                    + "It was left as it is. Close that program, then open it again.")
                            .formatted(name),
                    e);
        }
        if (is(e, SQLiteErrorCode.SQLITE_CORRUPT) || e instanceof NotKept) {
            return new CouldNotOpen(
                    CouldNotOpen.Reason.DAMAGED,
                    "%s was not opened: it is damaged. ".formatted(name)
                            + "It was left as it is. Take a copy of it from before, or start a new store.",
                    e);
        }
        return unreadable(e);
    }

    CouldNotOpen notWhole(Verification.Fault fault) {
        return new CouldNotOpen(
                CouldNotOpen.Reason.DAMAGED,
                ("%s was not opened: it is not whole. %s It was left as it is. "
                                + "Take a copy of it from before, or start a new store.")
                        .formatted(name, fault.why()));
    }

    /** Of a store that is open. */
    CouldNotOpen foundNotWhole(Verification.Fault fault) {
        return new CouldNotOpen(
                CouldNotOpen.Reason.DAMAGED,
                ("%s was closed: it is not whole. %s Nothing more is written to it. Take a copy of it from before, or "
                                + "start a new store.")
                        .formatted(name, fault.why()));
    }

    CouldNotOpen notWholeToCopy(Verification.Fault fault) {
        return new CouldNotOpen(
                CouldNotOpen.Reason.DAMAGED,
                ("%s was not copied: it is not whole. %s It was left as it is. What still chains can be taken out of "
                                + "it with the command \"salvage\".")
                        .formatted(name, fault.why()));
    }

    private CouldNotSave madeByNewer(MadeByNewer e) {
        return new CouldNotSave(
                CouldNotSave.Reason.NEWER,
                ("The entry was not saved: run %s holds entries made by a newer release of Tenthwise. It was left as "
                                + "it is. Go on with it in the newer release.")
                        .formatted(e.run()),
                e);
    }

    CouldNotOpen notFound() {
        return new CouldNotOpen(
                CouldNotOpen.Reason.NOT_FOUND,
                "There is no %s. Nothing was made in its place. Give the path of a store.".formatted(name));
    }

    CouldNotOpen notAStore() {
        return new CouldNotOpen(
                CouldNotOpen.Reason.NOT_A_STORE,
                "%s is not a Tenthwise store. It was left as it is. Give the path of a store.".formatted(name));
    }

    CouldNotOpen newer(int step) {
        return new CouldNotOpen(
                CouldNotOpen.Reason.NEWER,
                ("%s was made by a newer release of Tenthwise (store version "
                                + "%d, this release knows %d). It was left as it is. Open it with the newer release.")
                        .formatted(name, step, Schema.NEWEST));
    }

    CouldNotOpen heldByAnother() {
        return new CouldNotOpen(
                CouldNotOpen.Reason.HELD_BY_ANOTHER,
                ("%s is in use by another Tenthwise. Nothing was "
                                + "written to it from here. Close the other one, then open it again.")
                        .formatted(name));
    }

    CouldNotOpen readOnly() {
        return new CouldNotOpen(
                CouldNotOpen.Reason.READ_ONLY,
                ("%s cannot be written to. It was left as it is. Allow "
                                + "writing to it and to its folder, or give another path.")
                        .formatted(name));
    }

    CouldNotOpen readOnly(Exception e) {
        CouldNotOpen refusal = readOnly();
        refusal.initCause(e);
        return refusal;
    }

    private CouldNotOpen unfinished(SQLException e) {
        return new CouldNotOpen(
                CouldNotOpen.Reason.READ_ONLY,
                ("%1$s holds an entry that was never finished, and it cannot "
                                + "be written to, so the entry cannot be taken back. It was left as it is. Allow "
                                + "writing to it, or copy it to "
                                + "where it can be written to, %1$s-journal with it, and open the copy.")
                        .formatted(name),
                e);
    }

    CouldNotOpen unsafe() {
        return new CouldNotOpen(
                CouldNotOpen.Reason.UNREADABLE,
                ("%s lies where entries cannot be kept safely. Nothing "
                                + "was added to it. Put it on a disk of this device.")
                        .formatted(name));
    }

    CouldNotOpen unreadable(Exception e) {
        return new CouldNotOpen(
                CouldNotOpen.Reason.UNREADABLE,
                ("%s cannot be read. It was left as it is. See that it and "
                                + "its folder may be used, then open it again.")
                        .formatted(name),
                e);
    }

    CouldNotRead reading(Exception e) {
        return new CouldNotRead(
                ("%s cannot be read any more. What is saved was not changed. See to the disk, then open "
                                + "the store again; verify it if this stays.")
                        .formatted(name),
                e);
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
