package org.tenthwise.app.export.qif;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.UUID;

/**
 * An identifier that is made of what it stands for: the same thing has the same one wherever it is asked for, anything
 * else another.
 *
 * <p>Source: RFC 9562, 5.5 (UUID version 5): the first 16 bytes of SHA-1 over a name space and a name, with the bits of
 * version and variant set.
 */
final class PersistentId {

    /** The name space of names that are no addresses of any kind; made once, for this program. */
    private static final UUID NAME_SPACE = UUID.fromString("6f2d1c0e-58f7-4a53-9d0c-3b8f61d2a7e4");

    private static final int BYTES = 16;
    private static final int VERSION_AT = 6;
    private static final int VARIANT_AT = 8;

    private PersistentId() {}

    /** @param parts of the name, in their order; what stands where in them makes a difference */
    static String of(String... parts) {
        ByteBuffer space = ByteBuffer.allocate(BYTES)
                .putLong(NAME_SPACE.getMostSignificantBits())
                .putLong(NAME_SPACE.getLeastSignificantBits());
        byte[] hash = sha1(space.array(), String.join("\n", parts).getBytes(UTF_8));
        hash[VERSION_AT] = (byte) (hash[VERSION_AT] & 0x0F | 0x50);
        hash[VARIANT_AT] = (byte) (hash[VARIANT_AT] & 0x3F | 0x80);
        ByteBuffer made = ByteBuffer.wrap(hash);
        return new UUID(made.getLong(), made.getLong()).toString();
    }

    private static byte[] sha1(byte[] space, byte[] name) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-1");
            digest.update(space);
            return digest.digest(name);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-1", e);
        }
    }
}
