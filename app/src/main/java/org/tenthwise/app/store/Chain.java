package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

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
        MessageDigest digest = sha256();
        digest.update(previous.getBytes(US_ASCII));
        digest.update(body);
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}
