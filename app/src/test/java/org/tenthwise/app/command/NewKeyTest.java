package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.key.KeyFile;

/** A station that got another key between two runs: what the old one sealed stands, and is not the new one's. */
class NewKeyTest extends Walking {

    private String old;
    private String now;
    private Path before;
    private Path bundle;

    @BeforeEach
    void aRunByEachOfTwoKeys() throws Exception {
        assertEquals(0, walk("LG-2207", "LG-2207-pass").exit());
        before = bundle("before");
        old = key();
        assertEquals(0, Typed.line("key", "--store", store, "--new").exit());
        now = key();
        assertNotEquals(old, now);
        assertEquals(0, walk("WB-118", "WB-118-pass").exit());
        bundle = bundle("after");
    }

    private String key() throws Exception {
        return KeyFile.beside(store).open().shown().fingerprint();
    }

    private Path bundle(String folder) {
        Path to = this.folder.resolve(folder);
        Typed made = Typed.line("export", "--store", store, "--part", "LG-2207", "--as", "bundle", "--out", to);
        assertEquals(0, made.exit(), made::toString);
        return Path.of(made.out().get(0));
    }

    private static Typed verify(Path file, String... trusted) {
        List<Object> line = new ArrayList<>(List.of("verify", file));
        Stream.of(trusted).forEach(key -> line.addAll(List.of("--trust", key)));
        return Typed.line(line.toArray());
    }

    private static void isTrusted(Path file, String... trusted) {
        Typed typed = verify(file, trusted);
        assertEquals(0, typed.exit(), typed::toString);
    }

    private static void isNotTrustedFor(String key, Path file, String... trusted) {
        Typed typed = verify(file, trusted);
        assertEquals(1, typed.exit(), typed::toString);
        assertTrue(
                typed.out().stream().anyMatch(line -> line.startsWith("Not trusted: ") && line.contains(key)),
                typed::toString);
    }

    @Test
    void aStoreIsIntactAndTrustedByBothKeysTogetherAlone() {
        isTrusted(store);
        isTrusted(store, old, now);
        isNotTrustedFor(now, store, old);
        isNotTrustedFor(old, store, now);
    }

    @Test
    void aRecordIsTrustedByTheKeyItsRunWasSealedWith() throws Exception {
        for (Path file : Typed.files(out)) {
            if (file.toString().endsWith(".json")) {
                boolean first = Files.readString(file).contains("\"LG-2207\"");
                isTrusted(file, first ? old : now);
                isNotTrustedFor(first ? old : now, file, first ? now : old);
            }
        }
    }

    @Test
    void aBundleMadeBeforeStandsAndOneMadeSinceOfTheSameRunNeedsBoth() {
        isTrusted(before, old);
        isNotTrustedFor(old, before, now);
        isTrusted(bundle, old, now);
        isNotTrustedFor(now, bundle, old);
        isNotTrustedFor(old, bundle, now);
    }

    @Test
    void aKeyPutBackInItsPlaceSealsNothingThatIsTakenForTheOthers() throws Exception {
        Path aside = Typed.files(folder).stream()
                .filter(file ->
                        isKey(file) && !file.equals(KeyFile.beside(store).path()))
                .findFirst()
                .orElseThrow();
        Files.copy(aside, folder.resolve("copy"));
        Files.delete(KeyFile.beside(store).path());
        Files.copy(aside, KeyFile.beside(store).path());
        assertEquals(old, key());
        isTrusted(bundle("again"), old);
        isTrusted(store, old, now);
    }

    private static boolean isKey(Path file) {
        return file.getFileName().toString().contains("key");
    }
}
