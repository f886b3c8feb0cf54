package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;

/**
 * An entry as it is stored.
 *
 * @param run as the body says it, drawn out for searching; so are {@code kind}, {@code at} and {@code by}
 * @param at as the body says it, in UTC
 * @param body the text that is hashed; says all there is to the entry but its place
 * @param previous hash of the entry before, {@link Chain#START} for the first
 * @param hash {@link Chain#hash} of {@code previous} and {@code body}
 */
public record StoredEntry(
        long seq, String run, String kind, String at, String by, String body, String previous, String hash) {

    /**
     * An entry as it will be stored, tied to what it comes behind.
     *
     * @param ledger head of the ledger before it
     * @param run head of its run before it
     */
    public static StoredEntry behind(Head ledger, RunHead run, NewEntry entry) {
        String body = EntryText.write(entry, Before.after(run));
        return new StoredEntry(
                ledger.seq() + 1,
                entry.run(),
                EntryText.kind(entry.event()),
                entry.at().toInstant().toString(),
                entry.by(),
                body,
                ledger.hash(),
                Chain.hash(ledger.hash(), body.getBytes(UTF_8)));
    }

    /** The head of the ledger with this entry for its last. */
    public Head asHead() {
        return new Head(seq, hash);
    }
}
