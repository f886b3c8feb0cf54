package org.tenthwise.app.bundle;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/**
 * How a bundle is laid out. It is walked from its first byte, header by header; each header, and the directory behind
 * them all, must be to the byte what would be written for the name, size and sum it names. So nothing stands before,
 * between or behind, and no two readers can see two different things in it.
 */
final class Layout {

    private static final int MOST_FILES = 60_000;
    private static final int FIRST = 0x04034b50;
    private static final int OF_THE_DIRECTORY = 0x02014b50;

    private final FileChannel channel;
    private final long length;

    Layout(FileChannel channel) throws IOException {
        this.channel = channel;
        this.length = channel.size();
    }

    /** The files in it, in their order. */
    List<Packed> files() throws IOException, NotABundle {
        if (length < Packed.LOCAL || header(0).getInt(0) != FIRST) {
            throw NotABundle.somethingElse();
        }
        if (length > BundleFile.MOST) {
            throw NotABundle.because("bundle.too-large", BundleFile.MOST >> 20);
        }
        List<Packed> files = new ArrayList<>();
        Set<String> names = new TreeSet<>();
        long place = 0;
        ByteBuffer header = header(place);
        while (header.getInt(0) == FIRST) {
            Packed file = file(header, place);
            if (files.size() == MOST_FILES) {
                throw NotABundle.because("bundle.too-many", MOST_FILES);
            }
            if (!names.add(file.name().toLowerCase(Locale.ROOT))) {
                throw NotABundle.because("bundle.twice", file.name());
            }
            files.add(file);
            place += file.length();
            header = header(place);
        }
        if (header.getInt(0) != OF_THE_DIRECTORY) {
            throw NotABundle.because("bundle.header", place);
        }
        byte[] due = Packed.directory(files);
        if (length - place < due.length) {
            throw NotABundle.because("bundle.cut-off");
        }
        if (!Arrays.equals(due, BundleFile.read(channel, place, due.length))) {
            throw NotABundle.because("bundle.directory");
        }
        if (length - place > due.length) {
            throw NotABundle.because("bundle.behind", length - place - due.length);
        }
        return files;
    }

    private Packed file(ByteBuffer header, long place) throws IOException, NotABundle {
        int called = Short.toUnsignedInt(header.getShort(26));
        String name = shown(BundleFile.name(BundleFile.read(channel, place + Packed.LOCAL, called)));
        if (!Packed.isSafe(name)) {
            throw NotABundle.because("bundle.name", name);
        }
        if (header.getShort(8) != 0 || header.getShort(6) != 0) {
            throw NotABundle.because("bundle.compressed", name);
        }
        long size = Integer.toUnsignedLong(header.getInt(22));
        if (size > BundleFile.MOST_OF_A_FILE) {
            throw NotABundle.because("bundle.file-too-large", name, BundleFile.MOST_OF_A_FILE >> 20);
        }
        Packed file = new Packed(name, size, header.getInt(14));
        if (place + file.length() > length) {
            throw NotABundle.because("bundle.cut-off");
        }
        byte[] due = file.local();
        if (!Arrays.equals(due, BundleFile.read(channel, place, due.length))) {
            throw NotABundle.because("bundle.header", place);
        }
        return file;
    }

    /** As much of it as may be shown to a person. */
    private static String shown(String name) {
        return name.replaceAll("[^ -~]", "?");
    }

    private ByteBuffer header(long place) throws IOException, NotABundle {
        if (length - place < Packed.LOCAL) {
            throw NotABundle.because("bundle.cut-off");
        }
        return ByteBuffer.wrap(BundleFile.read(channel, place, Packed.LOCAL)).order(ByteOrder.LITTLE_ENDIAN);
    }
}
