package org.tenthwise.app.store;

/**
 * An entry as it is stored.
 *
 * @param run      as the body says it, drawn out for searching; so are {@code kind}, {@code at} and {@code by}
 * @param at       as the body says it, in UTC
 * @param body     the text that is hashed; says all there is to the entry but its place
 * @param previous hash of the entry before, {@link Chain#START} for the first
 * @param hash     {@link Chain#hash} of {@code previous} and {@code body}
 */
public record StoredEntry(long seq, String run, String kind, String at, String by, String body, String previous,
                          String hash) {
}
