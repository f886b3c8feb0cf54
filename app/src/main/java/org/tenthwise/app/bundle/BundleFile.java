package org.tenthwise.app.bundle;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.zip.CRC32;
import org.tenthwise.app.key.PublicKeyOfStation;
import org.tenthwise.app.key.Sha256;
import org.tenthwise.app.store.StoredEntry;

/**
 * A bundle that was opened: every byte of it is accounted for. Its layout is the only one there is for what it holds,
 * its manifest is signed by the key that lies in it, and every file is the one the manifest names. What its entries and
 * records say, {@link BundleCheck} looks at.
 *
 * <p>Nothing is ever unpacked onto a disk, and nothing in it is compressed, so it cannot grow; how large it may be is
 * bounded before anything is read.
 */
public final class BundleFile implements AutoCloseable {

    /** Ending of its name. */
    public static final String ENDING = "tenthwise";

    /** In bytes. */
    static final long MOST = 1L << 30;
    /** Of one file in it: a hundred times the record of a long run. */
    static final long MOST_OF_A_FILE = 64L << 20;

    private final FileChannel channel;
    private final Map<String, Long> places = new LinkedHashMap<>();
    private final Map<String, Packed> packed = new LinkedHashMap<>();
    private final PublicKeyOfStation signer;
    private final Manifest manifest;

    private BundleFile(FileChannel channel) throws IOException, NotABundle {
        this.channel = channel;
        long place = 0;
        for (Packed file : new Layout(channel).files()) {
            packed.put(file.name(), file);
            places.put(file.name(), place + Packed.LOCAL + file.name().length());
            place += file.length();
        }
        for (String name : packed.keySet()) {
            at(name);
        }
        byte[] text = at(Manifest.FILE);
        this.signer = PublicKeyOfStation.ofPem(at(Manifest.KEY)).orElseThrow(() -> NotABundle.because("bundle.key"));
        if (!signer.signed(text, at(Manifest.SIGNATURE))) {
            throw NotABundle.because("bundle.signature", signer.shortFingerprint());
        }
        this.manifest = ManifestJson.read(text);
        if (!manifest.station().equals(signer.fingerprint())) {
            throw NotABundle.because("bundle.station");
        }
        new Contents(manifest, List.copyOf(packed.keySet())).check();
        for (Manifest.OfFile file : manifest.files()) {
            byte[] bytes = at(file.name());
            if (bytes.length != file.bytes() || !Sha256.of(bytes).equals(file.sha256())) {
                throw NotABundle.because("bundle.file", file.name());
            }
        }
    }

    /**
     * Opens a bundle and looks at every byte of it.
     *
     * @throws NotABundle with the first thing that is wrong
     * @throws IOException if it cannot be read
     */
    public static BundleFile open(Path path) throws IOException, NotABundle {
        FileChannel channel = FileChannel.open(path, StandardOpenOption.READ);
        try {
            return new BundleFile(channel);
        } catch (IOException | NotABundle | RuntimeException e) {
            channel.close();
            throw e;
        }
    }

    /** What it says of itself; signed, once the check finds nothing. */
    public Manifest manifest() {
        return manifest;
    }

    /** Whose key signed it. That it is the key of whom one thinks, the bundle cannot prove. */
    public PublicKeyOfStation signer() {
        return signer;
    }

    /** The entries of a run in it, in order; that they chain is not said with that. */
    public List<StoredEntry> entries(Manifest.OfRun run) throws IOException, NotABundle {
        String name = run.file(Manifest.ENTRIES);
        return EntryLines.read(at(name), name);
    }

    /**
     * What a file in it holds.
     *
     * @throws NoSuchElementException if there is none of that name
     */
    public byte[] bytes(String name) throws IOException, NotABundle {
        if (!packed.containsKey(name)) {
            throw new NoSuchElementException(name);
        }
        return at(name);
    }

    private byte[] at(String name) throws IOException, NotABundle {
        Packed file =
                Optional.ofNullable(packed.get(name)).orElseThrow(() -> NotABundle.because("bundle.missing", name));
        byte[] bytes = read(channel, places.get(name), (int) file.size());
        CRC32 crc = new CRC32();
        crc.update(bytes);
        if ((int) crc.getValue() != file.crc()) {
            throw NotABundle.because("bundle.file", name);
        }
        return bytes;
    }

    static byte[] read(FileChannel channel, long place, int length) throws IOException, NotABundle {
        ByteBuffer bytes = ByteBuffer.allocate(length);
        while (bytes.hasRemaining()) {
            if (channel.read(bytes, place + bytes.position()) < 0) {
                throw NotABundle.because("bundle.cut-off");
            }
        }
        return bytes.array();
    }

    /** A name as it stands in a file, whatever bytes it is of. */
    static String name(byte[] bytes) {
        return new String(bytes, ISO_8859_1);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
