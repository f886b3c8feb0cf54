package org.tenthwise.app.key;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.KeyStore;
import java.security.cert.X509Certificate;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeyFileTest {

    private static final byte[] SAID = "what is said".getBytes(UTF_8);

    @TempDir
    private Path folder;

    @Test
    void aKeyThatWasMadeIsTheSameWheneverItIsOpened() throws Exception {
        KeyFile file = KeyFile.beside(folder.resolve("shop.db"));
        StationKey made = file.make();
        StationKey opened = file.open();
        assertEquals(folder.resolve("shop.db-station-key.p12").toAbsolutePath(), file.path());
        assertEquals(made.shown(), opened.shown());
        assertArrayEquals(made.sign(SAID), opened.sign(SAID));
        assertTrue(made.shown().signed(SAID, opened.sign(SAID)));
    }

    @Test
    void nobodyButItsOwnerMayReadIt() throws Exception {
        KeyFile file = new KeyFile(folder.resolve("k.p12"));
        file.make();
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file.path())));
        assertFalse(file.isOpenToOthers());
        Files.setPosixFilePermissions(file.path(), PosixFilePermissions.fromString("rw-r-----"));
        assertTrue(file.isOpenToOthers());
    }

    @Test
    void nothingElseIsLeftBesideIt() throws Exception {
        new KeyFile(folder.resolve("k.p12")).make();
        try (var files = Files.list(folder)) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void noFileIsEverReplaced() throws Exception {
        Path taken = Files.writeString(folder.resolve("k.p12"), "mine");
        NoKey refused = assertThrows(NoKey.class, new KeyFile(taken)::make);
        assertEquals("key.in-the-way", refused.why().key());
        assertEquals("mine", Files.readString(taken));
    }

    @Test
    void oneThatIsNotThereIsSaidToBeMissing() {
        NoKey refused = assertThrows(NoKey.class, new KeyFile(folder.resolve("k.p12"))::open);
        assertEquals("key.missing", refused.why().key());
    }

    /** Either it is refused in words, or it is still the very same key: never another one. */
    @Test
    void noChangedByteMakesAnotherKeyOfIt() throws Exception {
        KeyFile file = new KeyFile(folder.resolve("k.p12"));
        PublicKeyOfStation shown = file.make().shown();
        byte[] good = Files.readAllBytes(file.path());
        Random random = new Random(12);
        int refused = 0;
        for (int i = 0; i < 60; i++) {
            byte[] changed = good.clone();
            changed[random.nextInt(good.length)] ^= (byte) (1 + random.nextInt(255));
            Files.write(file.path(), changed);
            try {
                assertEquals(shown, file.open().shown());
            } catch (NoKey e) {
                assertEquals("key.damaged", e.why().key());
                refused++;
            }
        }
        assertTrue(refused > 50, "refused: " + refused);
    }

    @Test
    void anEmptyFileAFolderAndAnythingLargeAreNoKeys() throws Exception {
        Path path = folder.resolve("k.p12");
        Files.createFile(path);
        assertEquals(
                "key.damaged",
                assertThrows(NoKey.class, new KeyFile(path)::open).why().key());
        Files.write(path, new byte[1 << 20]);
        assertEquals(
                "key.damaged",
                assertThrows(NoKey.class, new KeyFile(path)::open).why().key());
        Files.delete(path);
        Files.createDirectory(path);
        assertEquals(
                "key.damaged",
                assertThrows(NoKey.class, new KeyFile(path)::open).why().key());
    }

    @Test
    void aKeyPutAsideIsStillThere() throws Exception {
        KeyFile file = new KeyFile(folder.resolve("k.p12"));
        PublicKeyOfStation first = file.make().shown();
        Path aside = file.putAside();
        PublicKeyOfStation second = file.make().shown();
        assertEquals(first, new KeyFile(aside).open().shown());
        assertFalse(first.equals(second));
        assertFalse(file.putAside().equals(aside));
    }

    /** RFC 5280: 4.1.2.5 gives the day of what has no end. */
    @Test
    void itsCertificateIsSignedByItself() throws Exception {
        KeyFile file = new KeyFile(folder.resolve("k.p12"));
        file.make();
        KeyStore keys = KeyStore.getInstance(file.path().toFile(), "station".toCharArray());
        X509Certificate certificate = (X509Certificate) keys.getCertificate("station");
        certificate.verify(certificate.getPublicKey());
        assertEquals(
                "9999-12-31T23:59:59Z", certificate.getNotAfter().toInstant().toString());
    }
}
