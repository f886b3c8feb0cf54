package org.tenthwise.app.bundle;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A file in a bundle as the headers around it tell it: a ZIP (APPNOTE 6.3) in its plainest form, files one behind the
 * other, none compressed, all of one time, nothing said that need not be. So there is one way only to write a bundle,
 * and any byte that is another is found.
 *
 * @param name letters, digits, point, hyphen and underline, in folders with a stroke between
 * @param size in bytes
 * @param crc CRC-32
 */
record Packed(String name, long size, int crc) {

    /** Of a local header without its name. */
    static final int LOCAL = 30;
    /** Of the end of the directory. */
    static final int END = 22;

    private static final int CENTRAL = 46;
    private static final int LOCAL_SIGN = 0x04034b50;
    private static final int CENTRAL_SIGN = 0x02014b50;
    private static final int END_SIGN = 0x06054b50;
    private static final short PLAIN = 10;
    /** 1980-01-01, the first day there is. */
    private static final short DAY = 0x21;

    private static final int LONGEST = 200;
    private static final Pattern NAME =
            Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*(?:/[A-Za-z0-9][A-Za-z0-9._-]*){0,3}");
    private static final Pattern ENDS_BADLY = Pattern.compile("\\.(?:/|$)");
    private static final Set<String> OF_SYSTEMS = Set.of(
            "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8", "com9", "lpt1",
            "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

    /** Whether a name leads to the same place below any folder on every system. */
    static boolean isSafe(String name) {
        return name.length() <= LONGEST
                && NAME.matcher(name).matches()
                && !ENDS_BADLY.matcher(name).find()
                && List.of(name.split("/")).stream()
                        .noneMatch(part -> OF_SYSTEMS.contains(part.split("\\.")[0].toLowerCase(Locale.ROOT)));
    }

    /** What stands before its content. */
    byte[] local() {
        byte[] called = name.getBytes(US_ASCII);
        ByteBuffer header = little(LOCAL + called.length).putInt(LOCAL_SIGN).putShort(PLAIN);
        return sizes(header)
                .putShort((short) called.length)
                .putShort((short) 0)
                .put(called)
                .array();
    }

    /** How many bytes it takes, header and content. */
    long length() {
        return LOCAL + name.length() + size;
    }

    /** What the directory says of it. */
    private void central(ByteBuffer to, long offset) {
        byte[] called = name.getBytes(US_ASCII);
        sizes(to.putInt(CENTRAL_SIGN).putShort(PLAIN).putShort(PLAIN))
                .putShort((short) called.length)
                .put(new byte[CENTRAL - 34])
                .putInt((int) offset)
                .put(called);
    }

    private ByteBuffer sizes(ByteBuffer to) {
        return to.putInt(0) // no flags, not compressed
                .putShort((short) 0)
                .putShort(DAY)
                .putInt(crc)
                .putInt((int) size)
                .putInt((int) size);
    }

    /** The directory of them all, and its end. */
    static byte[] directory(List<Packed> files) {
        int length =
                files.stream().mapToInt(file -> CENTRAL + file.name().length()).sum();
        ByteBuffer to = little(length + END);
        long offset = 0;
        for (Packed file : files) {
            file.central(to, offset);
            offset += file.length();
        }
        return to.putInt(END_SIGN)
                .putInt(0)
                .putShort((short) files.size())
                .putShort((short) files.size())
                .putInt(length)
                .putInt((int) offset)
                .putShort((short) 0)
                .array();
    }

    static ByteBuffer little(int length) {
        return ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    }
}
