package org.tenthwise.app.backup;

import java.time.Instant;
import java.util.Optional;

/**
 * How it went.
 *
 * @param made when the last backup was made in every place that is wanted
 * @param failure why the last one was not, a sentence; absent if it was
 */
public record BackupState(Optional<Instant> made, Optional<String> failure) {

    static final BackupState NONE = new BackupState(Optional.empty(), Optional.empty());
}
