package org.tenthwise.app.bundle;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.bundle.Invented.Piece;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.key.Sha256;
import org.tenthwise.app.key.StationKey;
import org.tenthwise.checklists.catalogue.DemoPart;

/** Files that would lead a reader astray: each is refused, with the reason. Whoever made them may have signed them. */
class HostileBundlesTest {

    @TempDir
    private Path folder;

    private StationKey key;
    private byte[] good;
    private List<Piece> pieces;

    @BeforeEach
    void bundle() throws Exception {
        key = new KeyFile(folder.resolve("k.p12")).make();
        good = Invented.bundle(
                Records.whole(DemoPart.WINCH_BARREL_END, Records.passing(DemoPart.WINCH_BARREL_END)), key);
        pieces = Invented.pieces(Files.write(folder.resolve("good.tenthwise"), good));
    }

    private String refusal(byte[] bytes) throws Exception {
        return Invented.refusal(folder, bytes);
    }

    private String with(Piece more) throws Exception {
        List<Piece> all = new ArrayList<>(pieces);
        all.add(more);
        return refusal(Invented.laidOut(all));
    }

    /** The pieces with a manifest of one's own, signed. */
    private List<Piece> signed(String insteadOf, String something) {
        String manifest = new String(pieces.get(0).bytes(), UTF_8);
        assertTrue(manifest.contains(insteadOf), manifest);
        byte[] text = manifest.replace(insteadOf, something).getBytes(UTF_8);
        List<Piece> all = new ArrayList<>(pieces);
        all.set(0, new Piece(Manifest.FILE, text));
        all.set(1, new Piece(Manifest.SIGNATURE, key.sign(text)));
        return all;
    }

    @Test
    void layingTheSamePiecesOutAgainGivesTheSameBundle() throws Exception {
        assertTrue(Arrays.equals(good, Invented.laidOut(pieces)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../evil.txt",
                "runs/../../evil.txt",
                "/etc/evil",
                "C:/evil",
                "C:evil.txt",
                "..\\evil.txt",
                "runs\\evil.txt",
                "runs//evil.txt",
                "runs/evil.txt/",
                "./evil.txt",
                "runs/.hidden",
                "runs/evil.",
                "runs/ evil",
                "runs/evil\n.txt",
                "runs/evil\u0000.txt",
                "runs/nul",
                "runs/COM1.txt",
                "runs/a/b/c/d/e",
                ""
            })
    void aNameThatLeadsElsewhereIsRefused(String name) throws Exception {
        assertEquals("bundle.name", with(new Piece(name, new byte[] {1})));
    }

    @Test
    void aNameLongerThanAnyIsRefused() throws Exception {
        assertEquals("bundle.name", with(new Piece("a".repeat(5000), new byte[] {1})));
    }

    @Test
    void aFileThatIsThereTwiceIsRefusedWhateverItsCapitals() throws Exception {
        Piece last = pieces.get(pieces.size() - 1);
        assertEquals("bundle.twice", with(last));
        assertEquals("bundle.twice", with(new Piece(last.name().toUpperCase(Locale.ROOT), last.bytes())));
    }

    @Test
    void oneFileMoreAndOneLessAreNamed() throws Exception {
        assertEquals("bundle.one-more", with(new Piece("runs/readme.txt", new byte[] {1})));
        for (int i = 0; i < pieces.size(); i++) {
            List<Piece> less = new ArrayList<>(pieces);
            less.remove(i);
            assertEquals("bundle.missing", refusal(Invented.laidOut(less)));
        }
    }

    @Test
    void filesInAnotherOrderAreRefused() throws Exception {
        List<Piece> other = new ArrayList<>(pieces);
        other.add(4, other.remove(3));
        assertEquals("bundle.order", refusal(Invented.laidOut(other)));
    }

    /** A small file that would fill a disk: it is not even looked into. */
    @Test
    void whatIsCompressedIsRefused() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry(Manifest.FILE));
            byte[] nothing = new byte[1 << 20];
            for (int i = 0; i < 64; i++) {
                zip.write(nothing);
            }
        }
        assertTrue(out.size() < 100_000);
        assertEquals("bundle.compressed", refusal(out.toByteArray()));
    }

    @Test
    void aFileThatSaysItIsLargerThanAnyIsRefusedBeforeItIsRead() throws Exception {
        byte[] header = new Packed(Manifest.FILE, 1L << 31, 0).local();
        assertEquals("bundle.file-too-large", refusal(header));
        assertEquals("bundle.cut-off", refusal(new Packed(Manifest.FILE, 1L << 20, 0).local()));
    }

    @Test
    void whatIsCutOffAnywhereIsRefused() throws Exception {
        for (int i = 0; i < good.length; i += 1 + good.length / 300) {
            String why = refusal(Arrays.copyOf(good, i));
            assertTrue(List.of("bundle.cut-off", "bundle.something-else").contains(why), i + ": " + why);
        }
        assertEquals("bundle.cut-off", refusal(Arrays.copyOf(good, good.length - 1)));
    }

    @Test
    void bytesBeforeBehindAndInACommentAreRefused() throws Exception {
        byte[] more = Arrays.copyOf(good, good.length + 3);
        assertEquals("bundle.behind", refusal(more));
        byte[] comment = more.clone();
        comment[good.length - 2] = 3;
        assertEquals("bundle.directory", refusal(comment));
        byte[] before = new byte[good.length + 3];
        System.arraycopy(good, 0, before, 3, good.length);
        assertEquals("bundle.something-else", refusal(before));
    }

    /** Two readers would see two things: one goes by the directory, another by the headers. */
    @Test
    void aDirectoryThatDisagreesWithTheHeadersIsRefused() throws Exception {
        List<Packed> other = new ArrayList<>(pieces.stream().map(Piece::packed).toList());
        Packed last = other.remove(other.size() - 1);
        other.add(new Packed("x" + last.name().substring(1), last.size(), last.crc()));
        byte[] directory = Packed.directory(other);
        byte[] changed = good.clone();
        System.arraycopy(directory, 0, changed, changed.length - directory.length, directory.length);
        assertEquals("bundle.directory", refusal(changed));
    }

    /** As a link of a file system is said to be one: by what the directory says besides. */
    @Test
    void aLinkIsRefused() throws Exception {
        byte[] directory = Packed.directory(pieces.stream().map(Piece::packed).toList());
        byte[] changed = good.clone();
        int attributes = good.length - directory.length + 38;
        changed[attributes + 3] = (byte) 0xA1;
        assertEquals("bundle.directory", refusal(changed));
    }

    @Test
    void aManifestThatIsWrittenInAnotherWayIsRefusedThoughItIsSigned() throws Exception {
        assertEquals("bundle.manifest", refusal(Invented.laidOut(signed("{\n", "{ \n"))));
        assertEquals("bundle.manifest", refusal(Invented.laidOut(signed("\"tool\"", "\"tools\""))));
        assertEquals("bundle.manifest", refusal(Invented.laidOut(signed("\"runs\" : [", "\"runs\" : [ 1,"))));
        assertEquals(
                "bundle.another-form", refusal(Invented.laidOut(signed("tenthwise-bundle-1", "tenthwise-bundle-2"))));
    }

    @Test
    void aManifestThatNamesAnotherHashOrSizeIsRefusedThoughItIsSigned() throws Exception {
        String hash = Sha256.of(pieces.get(3).bytes());
        assertEquals("bundle.file", refusal(Invented.laidOut(signed(hash, "0".repeat(64)))));
        String size = "\"bytes\" : " + pieces.get(3).bytes().length;
        assertEquals("bundle.file", refusal(Invented.laidOut(signed(size, size + "0"))));
    }

    @Test
    void aSignatureByAnotherKeyThanTheOneInItIsRefused() throws Exception {
        StationKey other = new KeyFile(folder.resolve("other.p12")).make();
        List<Piece> forged = new ArrayList<>(pieces);
        forged.set(1, new Piece(Manifest.SIGNATURE, other.sign(pieces.get(0).bytes())));
        assertEquals("bundle.signature", refusal(Invented.laidOut(forged)));
        forged.set(2, new Piece(Manifest.KEY, other.shown().pem()));
        assertEquals("bundle.station", refusal(Invented.laidOut(forged)));
        forged.set(2, new Piece(Manifest.KEY, "no key".getBytes(UTF_8)));
        assertEquals("bundle.key", refusal(Invented.laidOut(forged)));
    }

    @Test
    void anyOtherFileIsNoBundle() throws Exception {
        assertEquals("bundle.something-else", refusal(new byte[0]));
        assertEquals("bundle.something-else", refusal("%PDF-1.7 and more than thirty bytes".getBytes(UTF_8)));
        assertEquals("bundle.something-else", refusal(Packed.directory(List.of())));
    }
}
