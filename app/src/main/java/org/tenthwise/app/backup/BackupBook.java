package org.tenthwise.app.backup;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import java.util.Properties;
import org.tenthwise.app.kept.SmallFile;

/**
 * Settings of the backups, and for each store how they went, in a small file. One that cannot be read gives the usual
 * settings and no state.
 */
public final class BackupBook {

    /** Usual name of the file. */
    public static final String FILE = "backup.properties";

    private static final String FOLDER = "folder";
    private static final String KEPT = "kept";
    private static final String MADE = "made";
    private static final String FAILURE = "failure";

    private final SmallFile file;

    public BackupBook(Path file) {
        this.file = new SmallFile(file);
    }

    public synchronized BackupSettings settings() {
        Properties kept = file.read();
        try {
            return new BackupSettings(
                    Optional.ofNullable(kept.getProperty(FOLDER)).map(Path::of),
                    Optional.ofNullable(kept.getProperty(KEPT))
                            .map(Integer::parseInt)
                            .orElse(BackupSettings.USUAL.kept()));
        } catch (IllegalArgumentException e) {
            return BackupSettings.USUAL;
        }
    }

    public synchronized void settings(BackupSettings settings) {
        Properties kept = file.read();
        set(kept, FOLDER, settings.folder().map(Path::toString));
        kept.setProperty(KEPT, Integer.toString(settings.kept()));
        file.write(kept);
    }

    /** How it went with a store: what was made of another is no backup of it. */
    public synchronized BackupState state(Path store) {
        Properties kept = file.read();
        try {
            return new BackupState(
                    Optional.ofNullable(kept.getProperty(of(MADE, store))).map(Instant::parse),
                    Optional.ofNullable(kept.getProperty(of(FAILURE, store))));
        } catch (DateTimeException e) {
            return BackupState.NONE;
        }
    }

    synchronized void state(Path store, BackupState state) {
        Properties kept = file.read();
        set(kept, of(MADE, store), state.made().map(Instant::toString));
        set(kept, of(FAILURE, store), state.failure());
        file.write(kept);
    }

    private static String of(String what, Path store) {
        return what + " " + store.toAbsolutePath().normalize();
    }

    private static void set(Properties kept, String key, Optional<String> value) {
        value.ifPresentOrElse(there -> kept.setProperty(key, there), () -> kept.remove(key));
    }
}
