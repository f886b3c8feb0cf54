package org.tenthwise.app.backup;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What whoever looks after the tablet chose.
 *
 * @param folder where a second copy of each backup goes: a stick, a share; it is not made where it is not there
 * @param kept how many backups stay in each place, at least one
 */
public record BackupSettings(Optional<Path> folder, int kept) {

    public static final BackupSettings USUAL = new BackupSettings(Optional.empty(), 10);

    public BackupSettings {
        if (kept < 1) {
            throw new IllegalArgumentException("at least one backup is kept");
        }
    }
}
