package org.tenthwise.app.bundle;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.tenthwise.app.key.Sha256;
import org.tenthwise.model.words.Message;

/** Where the files of a bundle wait until the manifest that stands before them can be written. */
final class Spool implements AutoCloseable {

    private final Path path = Files.createTempFile("tenthwise-", ".spool");
    private final FileChannel channel = FileChannel.open(
            path, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.DELETE_ON_CLOSE);
    private final List<Packed> packed = new ArrayList<>();
    private final List<Manifest.OfFile> files = new ArrayList<>();
    private long total;

    Spool() throws IOException {}

    /** A file that stands before the others. */
    record Ahead(String name, byte[] bytes) {
        Packed packed() {
            return Spool.packed(name, bytes);
        }
    }

    void add(String name, byte[] bytes) throws IOException {
        total += bytes.length;
        if (total > BundleFile.MOST || bytes.length > BundleFile.MOST_OF_A_FILE) {
            throw new CannotBeMade(Message.of("bundle.would-be-too-large", BundleFile.MOST >> 20));
        }
        packed.add(packed(name, bytes));
        files.add(new Manifest.OfFile(name, bytes.length, Sha256.of(bytes)));
        ByteBuffer left = ByteBuffer.wrap(bytes);
        while (left.hasRemaining()) {
            channel.write(left);
        }
    }

    List<Manifest.OfFile> files() {
        return List.copyOf(files);
    }

    void write(List<Ahead> ahead, OutputStream out) throws IOException {
        for (Ahead file : ahead) {
            out.write(file.packed().local());
            out.write(file.bytes());
        }
        channel.position(0);
        for (Packed file : packed) {
            out.write(file.local());
            byte[] bytes = Channels.newInputStream(channel).readNBytes((int) file.size());
            out.write(bytes);
        }
        out.write(Packed.directory(Stream.concat(ahead.stream().map(Ahead::packed), packed.stream())
                .toList()));
    }

    private static Packed packed(String name, byte[] bytes) {
        CRC32 crc = new CRC32();
        crc.update(bytes);
        return new Packed(name, bytes.length, (int) crc.getValue());
    }

    @Override
    public void close() throws IOException {
        channel.close();
        Files.deleteIfExists(path);
    }
}
