package org.tenthwise.app.backup;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.KeptEntries;

/**
 * The name of a backup: of which store, when, how many entries, and the first signs of the hash of the last of them. So
 * whoever has a ledger can tell without opening the file whether all of it is in that ledger.
 *
 * @param at when it was made, UTC in the name
 * @param signs first signs of the hash
 */
record BackupName(String store, String at, long entries, String signs) {

    private static final int SIGNS = 16;
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss").withZone(ZoneOffset.UTC);
    private static final Pattern NAME = Pattern.compile("(.+)-(\\d{8}-\\d{6})-(\\d{1,18})-([0-9a-f]{16})\\.db");

    /** @param store file name of the store */
    static BackupName of(String store, Instant at, Head head) {
        String plain = store.endsWith(".db") ? store.substring(0, store.length() - 3) : store;
        return new BackupName(plain, TIME.format(at), 0, "").upTo(head);
    }

    static Optional<BackupName> in(String file) {
        Matcher name = NAME.matcher(file);
        return name.matches()
                ? Optional.of(
                        new BackupName(name.group(1), name.group(2), Long.parseLong(name.group(3)), name.group(4)))
                : Optional.empty();
    }

    /** The name of what was made under this one and holds more: the ledger was written to until it was copied. */
    BackupName upTo(Head head) {
        return new BackupName(store, at, head.seq(), head.hash().substring(0, SIGNS));
    }

    String file() {
        return "%s-%s-%s-%s.db".formatted(store, at, entries, signs);
    }

    /** Whether the ledger is, or once was, what this backup holds. */
    boolean isIn(KeptEntries kept) {
        return kept.headAt(entries)
                .filter(head -> head.hash().startsWith(signs))
                .isPresent();
    }

    boolean holdsTheSameAs(BackupName other) {
        return entries == other.entries && signs.equals(other.signs);
    }
}
