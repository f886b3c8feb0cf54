package org.tenthwise.app.key;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The half of a station's key that anybody may have: Ed25519 (RFC 8032), as a SubjectPublicKeyInfo (RFC 8410).
 *
 * @param text its 44 bytes in Base64, on one line: how entries of the ledger have it
 */
public record PublicKeyOfStation(String text) {

    /** What stands before the 32 bytes of every Ed25519 key, RFC 8410 section 10.3. */
    private static final byte[] BEFORE = HexFormat.of().parseHex("302a300506032b6570032100");

    private static final int KEY = 32;
    private static final int DIGITS_OF_SHORT = 16;
    private static final String FIRST = "-----BEGIN PUBLIC KEY-----\n";
    private static final String LAST = "\n-----END PUBLIC KEY-----\n";
    private static final Pattern GROUPS = Pattern.compile("(?<=\\G.{4})(?=.)");

    /** @throws IllegalArgumentException if the text is no such key */
    public PublicKeyOfStation {
        byte[] bytes = Base64.getDecoder().decode(text);
        if (bytes.length != BEFORE.length + KEY
                || !Arrays.equals(bytes, 0, BEFORE.length, BEFORE, 0, BEFORE.length)
                || !Base64.getEncoder().encodeToString(bytes).equals(text)) {
            throw new IllegalArgumentException("No Ed25519 key in Base64: " + text);
        }
    }

    static PublicKeyOfStation of(PublicKey key) {
        return new PublicKeyOfStation(Base64.getEncoder().encodeToString(key.getEncoded()));
    }

    /** Absent where the text is no such key. */
    public static Optional<PublicKeyOfStation> ofText(String text) {
        try {
            return Optional.of(new PublicKeyOfStation(text));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** From a file as {@link #pem()} makes it, byte for byte; absent for any other. */
    public static Optional<PublicKeyOfStation> ofPem(byte[] file) {
        String pem = new String(file, US_ASCII);
        if (!pem.startsWith(FIRST) || !pem.endsWith(LAST) || pem.length() < FIRST.length() + LAST.length()) {
            return Optional.empty();
        }
        return ofText(pem.substring(FIRST.length(), pem.length() - LAST.length()))
                .filter(key -> Arrays.equals(key.pem(), file));
    }

    /** As a file that general tools read: PEM, RFC 7468 section 13. */
    public byte[] pem() {
        return (FIRST + text + LAST).getBytes(US_ASCII);
    }

    /** What the key is known by: SHA-256 over its bytes, 64 small hex digits. */
    public String fingerprint() {
        return Sha256.of(bytes());
    }

    /** Enough of the fingerprint to compare by eye, in groups of four. */
    public String shortFingerprint() {
        return shortened(fingerprint());
    }

    /** Enough of a fingerprint to compare by eye, in groups of four. */
    public static String shortened(String fingerprint) {
        return inGroups(fingerprint.substring(0, Math.min(DIGITS_OF_SHORT, fingerprint.length())));
    }

    /** Hex digits in groups of four. */
    public static String inGroups(String digits) {
        return GROUPS.matcher(digits).replaceAll(" ");
    }

    /** Whether the other half of this key signed exactly these bytes. */
    public boolean signed(byte[] said, byte[] signature) {
        try {
            Signature check = Signature.getInstance(StationKey.ALGORITHM);
            check.initVerify(
                    KeyFactory.getInstance(StationKey.ALGORITHM).generatePublic(new X509EncodedKeySpec(bytes())));
            check.update(said);
            return check.verify(signature);
        } catch (GeneralSecurityException e) {
            return false; // no point of the curve, or no signature
        }
    }

    private byte[] bytes() {
        return Base64.getDecoder().decode(text);
    }
}
