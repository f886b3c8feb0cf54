package org.tenthwise.app.backup;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What is wished of the backups from now on; what is absent stays as it is.
 *
 * @param folder for second copies
 * @param kept how many stay in each place
 */
public record BackupWish(Optional<Path> folder, Optional<Integer> kept) {

    public void keepIn(BackupBook book) {
        if (folder.isPresent() || kept.isPresent()) {
            BackupSettings before = book.settings();
            book.settings(new BackupSettings(
                    folder.map(Path::toAbsolutePath).or(before::folder), kept.orElse(before.kept())));
        }
    }
}
