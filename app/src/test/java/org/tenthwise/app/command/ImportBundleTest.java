package org.tenthwise.app.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.bundle.BundleFile;
import org.tenthwise.app.bundle.Manifest;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.sqlite.SqliteStores;

/** Runs of two stations with the same name, taken in at a desk by command. */
class ImportBundleTest extends Walking {

    private static final String RUN = "LG-2207-C-014";

    private Path desk;
    private Path mill;

    @BeforeEach
    void walked() {
        desk = folder.resolve("desk.db");
        mill = folder.resolve("mill.db");
        walk("LG-2207", "LG-2207-pass");
        Typed.line("walk", "WB-118", "--readings", "WB-118-pass", "--store", mill, "--out", out);
        Typed.line("walk", "LG-2207", "--readings", "LG-2207-pass", "--store", mill, "--out", out);
    }

    private Path bundle(Path of, String... which) {
        Typed typed = Typed.line(words(
                List.of("export", "--store", of, "--as", "bundle", "--out", folder.resolve(of.getFileName() + ".out")),
                (Object[]) which));
        assertEquals(0, typed.exit(), typed::toString);
        return Path.of(typed.out().get(0));
    }

    private Typed take(Path bundle, Object... options) {
        return Typed.line(words(List.of("import", bundle, "--store", desk, "--by", "Inspector 1"), options));
    }

    private static Object[] words(List<Object> first, Object... more) {
        return Stream.concat(first.stream(), Stream.of(more)).toArray();
    }

    private static String sign(Path store) throws Exception {
        return KeyFile.beside(store).open().shown().fingerprint().substring(0, 8);
    }

    @Test
    void runsOfTwoStationsWithOneNameComeInSideBySide() throws Exception {
        Typed first = take(bundle(store, "--run", RUN));
        Typed second = take(bundle(mill, "--part", "LG-2207"));

        assertEquals(0, first.exit(), first::toString);
        assertEquals(0, second.exit(), second::toString);
        assertEquals("1 new run, none that went on since.", second.out().get(2));
        try (KeptEntries kept = new SqliteStores().openToRead(desk);
                KeptEntries lathe = new SqliteStores().openToRead(store);
                KeptEntries other = new SqliteStores().openToRead(mill)) {
            assertEquals(List.of(RUN + "@" + sign(store), RUN + "@" + sign(mill)), kept.runs());
            assertEquals(lathe.stored(RUN), kept.stored(RUN + "@" + sign(store)));
            assertEquals(other.stored(RUN), kept.stored(RUN + "@" + sign(mill)));
        }
        Typed verified = Typed.line("verify", desk);
        assertEquals(0, verified.exit(), verified::toString);
        assertTrue(
                verified.out().get(verified.out().size() - 1).startsWith("Runs came in from the station with the key "),
                verified::toString);
    }

    @Test
    void aDeskIsTrustedWhenEveryStationOfItsRunsIs() throws Exception {
        take(bundle(store, "--run", RUN));
        take(bundle(mill, "--run", RUN));
        String lathe = KeyFile.beside(store).open().shown().fingerprint();
        String other = KeyFile.beside(mill).open().shown().fingerprint();
        Typed both = Typed.line("verify", desk, "--trust", lathe, "--trust", other);
        assertEquals(0, both.exit(), both::toString);
        Typed one = Typed.line("verify", desk, "--trust", lathe);
        assertEquals(1, one.exit(), one::toString);
        assertTrue(one.out().get(one.out().size() - 1).startsWith("Not trusted: runs came in"), one::toString);
    }

    @Test
    void theSameBundleASecondTimeAddsNothingAndSaysSo() throws Exception {
        Path bundle = bundle(store, "--run", RUN);
        take(bundle);
        byte[] before = Files.readAllBytes(desk);

        Typed again = take(bundle);

        assertEquals(0, again.exit());
        assertEquals(
                List.of("Run LG-2207-C-014: here already.", "Nothing new: all of it was here."),
                again.out().subList(1, 3));
        assertArrayEquals(before, Files.readAllBytes(desk));
    }

    @Test
    void recordsOfARunThatCameInAreByteForByteThoseInItsBundle() throws Exception {
        Path bundle = bundle(store, "--run", RUN);
        take(bundle);
        Path records = folder.resolve("records");

        Typed exported = Typed.line(
                "export", "--store", desk, "--run", RUN + "@" + sign(store), "--as", "csv,json", "--out", records);

        assertEquals(0, exported.exit(), exported::toString);
        try (BundleFile opened = BundleFile.open(bundle)) {
            Manifest.OfRun run = opened.manifest().runs().get(0);
            assertEquals(2, Typed.files(records).size());
            for (Path file : Typed.files(records)) {
                String name = file.getFileName().toString();
                assertArrayEquals(
                        opened.bytes(run.folder() + "/record." + name.substring(name.lastIndexOf('.') + 1)),
                        Files.readAllBytes(file),
                        name);
                assertEquals(run.folder(), "runs/" + name.substring(0, name.lastIndexOf('.')));
            }
        }
        assertEquals(0, Typed.line("verify", Typed.files(records).get(1)).exit());
    }

    @Test
    void theirReadingsAreInTheHistory() throws Exception {
        take(bundle(store, "--run", RUN));
        Typed history = Typed.line("history", "--store", desk);
        assertEquals(0, history.exit(), history::toString);
        List<String> there = Typed.line("history", "--store", store).out();
        assertTrue(there.size() > 50);
        assertEquals(
                there,
                history.out().stream()
                        .map(line -> line.replace("@" + sign8(), ""))
                        .toList());
    }

    private String sign8() {
        try {
            return sign(store);
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void aSignerIsToldAsNotKnownUnlessItIsNamed() throws Exception {
        Path bundle = bundle(store, "--run", RUN);
        assertTrue(take(bundle).out().get(0).contains("which is not known here"));
        assertTrue(take(bundle, "--trust", KeyFile.beside(store).open().shown().fingerprint())
                .out()
                .get(0)
                .endsWith("which is known here."));
    }

    /** Whoever signs the bundle hands on what another sealed. */
    @Test
    void aRunSealedByAKeyThatIsNotTrustedIsRefusedUnderASignerThatIs() throws Exception {
        String before = KeyFile.beside(store).open().shown().fingerprint();
        assertEquals(0, Typed.line("key", "--store", store, "--new").exit());
        String now = KeyFile.beside(store).open().shown().fingerprint();
        Path bundle = bundle(store, "--run", RUN);

        Typed refused = take(bundle, "--trust", now);

        assertEquals(1, refused.exit());
        assertTrue(refused.out().get(0).contains("a run in it is sealed by another"), refused::toString);
        assertTrue(refused.out().get(0).contains(before), refused::toString);
        assertEquals(0, take(bundle, "--trust", now, "--trust", before).exit());
    }

    @Test
    void whereStationsAreListedOthersAreRefused() throws Exception {
        Path list = desk.resolveSibling("desk.db.trusted");
        Files.writeString(
                list,
                "# stations of the shop\n\n"
                        + KeyFile.beside(mill).open().shown().fingerprint() + " # mill 2\n");

        Typed refused = take(bundle(store, "--run", RUN));

        assertEquals(1, refused.exit());
        assertTrue(refused.out().get(0).contains("which is not among those trusted here"), refused::toString);
        try (KeptEntries kept = new SqliteStores().openToRead(desk)) {
            assertEquals(List.of(), kept.runs());
            assertEquals(0, kept.head().seq());
        }
        assertEquals(0, take(bundle(mill, "--run", RUN)).exit());
        Files.writeString(list, "no key at all\n");
        assertEquals(1, take(bundle(mill, "--run", RUN)).exit(), "a list that cannot be read trusts nobody");
    }

    @Test
    void whateverByteOfABundleIsChangedNothingComesIn() throws Exception {
        Path bundle = bundle(store, "--run", RUN);
        new SqliteStores().open(desk).close();
        byte[] good = Files.readAllBytes(bundle);
        byte[] empty = Files.readAllBytes(desk);
        Path changed = folder.resolve("changed.tenthwise");
        Random random = new Random(20261201);
        for (int i = 0; i < 60; i++) {
            byte[] bad = good.clone();
            int at = random.nextInt(bad.length);
            bad[at] ^= (byte) (1 + random.nextInt(255));
            Files.write(changed, bad);
            Typed refused = take(changed);
            assertEquals(1, refused.exit(), () -> "byte " + at);
            assertTrue(refused.out().get(0).startsWith("changed.tenthwise was refused and nothing was changed: "));
        }
        assertArrayEquals(empty, Files.readAllBytes(desk));
        Files.write(changed, Arrays.copyOf(good, good.length / 2));
        assertEquals(1, take(changed).exit());
        Files.write(changed, "no bundle".getBytes(UTF_8));
        assertEquals(1, take(changed).exit());
        assertEquals(1, take(folder.resolve("nowhere.tenthwise")).exit());
        assertArrayEquals(empty, Files.readAllBytes(desk));
    }

    @Test
    void aDeskHandsOnNoBundleOfWhatItsStationSignsFor() throws Exception {
        take(bundle(store, "--run", RUN));
        Typed again = Typed.line("export", "--store", desk, "--part", "LG-2207", "--as", "bundle", "--out", out);
        assertEquals(2, again.exit());
        Typed one =
                Typed.line("export", "--store", desk, "--run", RUN + "@" + sign(store), "--as", "bundle", "--out", out);
        assertEquals(2, one.exit());
        assertFalse(one.err().isEmpty());
    }
}
