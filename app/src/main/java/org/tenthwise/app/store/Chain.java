package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.US_ASCII;

import org.tenthwise.app.key.Sha256;

/** The sum that ties each entry to the one before: SHA-256 (FIPS 180-4), written as 64 small hex digits. */
public final class Chain {

    /** What the first entry has in place of a hash before it: the hash of the words below, which no entry can have. */
    public static final String START = hash("", "Tenthwise ledger, first page".getBytes(US_ASCII));

    private Chain() {}

    /**
     * @param previous hash of the entry before, its hex digits taken as ASCII bytes
     * @param body the stored bytes of the entry's text
     */
    public static String hash(String previous, byte[] body) {
        return Sha256.of(previous.getBytes(US_ASCII), body);
    }
}
