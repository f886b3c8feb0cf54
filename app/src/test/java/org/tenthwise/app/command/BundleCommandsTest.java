package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.bundle.BundleFile;
import org.tenthwise.app.bundle.Manifest;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.key.NoKey;
import org.tenthwise.app.key.PublicKeyOfStation;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.checklists.catalogue.DemoPart;

/** Bundles asked for and checked by command, as a shop and its quality department do it. */
class BundleCommandsTest extends Walking {

    @BeforeEach
    void walked() {
        walk("LG-2207", "LG-2207-pass");
        walk("WB-118", "WB-118-pass");
    }

    private Path bundle(String folder, Object... which) {
        Typed typed = asked(this.folder.resolve(folder), which);
        assertEquals(0, typed.exit(), typed::toString);
        return Path.of(typed.out().get(0));
    }

    private PublicKeyOfStation key() {
        try {
            return KeyFile.beside(store).open().shown();
        } catch (NoKey e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void twoBundlesOfOneStateAreEqualByteForByte() throws Exception {
        Path first = bundle("a", "--run", "LG-2207-C-014");
        Path second = bundle("b", "--run", "LG-2207-C-014");
        assertEquals(first.getFileName(), second.getFileName());
        assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(second));
    }

    @Test
    void aBundleHoldsRecordsEntriesAndPlan() throws Exception {
        try (BundleFile bundle = BundleFile.open(bundle("a", "--run", "LG-2207-C-014"));
                KeptEntries kept = new SqliteStores().openToRead(store)) {
            Manifest manifest = bundle.manifest();
            Manifest.OfRun run = manifest.runs().get(0);
            assertEquals(kept.runHead("LG-2207-C-014"), run.head());
            assertEquals(
                    List.of(
                            run.folder() + "/entries.jsonl",
                            run.folder() + "/plan.toml",
                            run.folder() + "/record.csv",
                            run.folder() + "/record.json"),
                    manifest.files().stream().map(Manifest.OfFile::name).toList());
            assertEquals(kept.stored("LG-2207-C-014"), bundle.entries(run));
            assertEquals(kept.headAt(1).orElseThrow().hash(), manifest.origin());
            assertEquals(key(), bundle.signer());
            for (Path file : Typed.files(out)) {
                String name = file.getFileName().toString();
                if (name.startsWith("LG-2207-C-014-")) {
                    assertArrayEquals(
                            Files.readAllBytes(file),
                            bundle.bytes(run.folder() + "/record." + name.substring(name.lastIndexOf('.') + 1)));
                }
            }
        }
    }

    @Test
    void runsAreTakenByPartNumberAndByTheDayTheyWereClosed() throws Exception {
        assertEquals(List.of("WB-118-B-003"), runs("--part", "WB-118"));
        assertEquals(List.of("LG-2207-C-014", "WB-118-B-003"), runs("--from", "2026-03-02", "--to", "2026-03-02"));
        assertEquals(List.of("LG-2207-C-014"), runs("--from", "2026-03-02", "--part", "LG-2207"));
        String none =
                "%s has no such runs. --from and --to take those that were closed on these days.".formatted(store);
        assertEquals(none, refused("--part", "XX-1"));
        assertEquals(none, refused("--to", "2026-03-01"));
        assertEquals(none, refused("--from", "2026-03-03"));
    }

    private List<String> runs(Object... which) throws Exception {
        try (BundleFile bundle = BundleFile.open(bundle("a", which))) {
            return bundle.manifest().runs().stream().map(Manifest.OfRun::run).toList();
        }
    }

    private String refused(Object... which) {
        return asked(out, which).trouble();
    }

    private Typed asked(Path to, Object... which) {
        return Typed.line(
                Stream.concat(Stream.of("export", "--store", store, "--as", "bundle", "--out", to), Stream.of(which))
                        .toArray());
    }

    @Test
    void whatIsMeantByMoreThanOneRunIsAsked() {
        String which = "Say which runs: either --run, or --part, --from and --to, alone or together.";
        assertEquals(which, refused());
        assertEquals(which, refused("--run", "LG-2207-C-014", "--part", "LG-2207"));
        assertEquals(
                "More than one run can only be written as a bundle: --as bundle.",
                Typed.line("export", "--store", store, "--part", "LG-2207", "--as", "csv", "--out", out)
                        .trouble());
    }

    @Test
    void aBundleIsSaidToBeIntactAndByWhichKeyItIsSealed() throws Exception {
        Path bundle = bundle("a", "--part", "LG-2207");
        Typed typed = Typed.line("verify", bundle);
        assertEquals(0, typed.exit());
        assertEquals(
                List.of(
                        ("%s is intact: one run in 4 files, made by Tenthwise 0.1.0-test. The records were made again "
                                        + "from the entries and are the same.")
                                .formatted(bundle),
                        "Sealed as a whole with the key %s. Its whole fingerprint: %s"
                                .formatted(key().shortFingerprint(), key().fingerprint()),
                        "The seal proves that nothing in it was changed since that key sealed it. Whose key it is, it "
                                + "does not prove: --trust KEY compares it with one you were given another way.",
                        "One closed run is sealed with the key %s. Its whole fingerprint: %s"
                                .formatted(key().shortFingerprint(), key().fingerprint())),
                typed.out());
    }

    @Test
    void aKeyThatIsTrustedIsEnoughAndAnotherIsNot() throws Exception {
        Path bundle = bundle("a", "--part", "LG-2207");
        Typed trusted = Typed.line("verify", bundle, "--trust", key().fingerprint());
        assertEquals(0, trusted.exit());
        assertEquals("That is a key you trust.", trusted.out().get(2));
        String other = new KeyFile(folder.resolve("other.p12")).make().shown().fingerprint();
        Typed typed = Typed.line("verify", bundle, "--trust", other);
        assertEquals(1, typed.exit());
        assertEquals(
                "Not trusted: sealed as a whole with the key %s, which is none of those given."
                        .formatted(key().fingerprint()),
                typed.out().get(2));
    }

    /**
     * RFC 7468, section 2: what stands before or behind the key is passed over. Two keys are none that could be meant.
     */
    @Test
    void whatTheStationPrintedOfItsKeyIsAFileToTrustAndOneWithTwoKeysIsNot() throws Exception {
        Path bundle = bundle("a", "--part", "LG-2207");
        List<String> printed = Typed.line("key", "--store", store).out();
        Path file = Files.write(folder.resolve("station.txt"), printed);
        Typed typed = Typed.line("verify", bundle, "--trust", file);
        assertEquals(0, typed.exit(), typed::toString);
        assertEquals("That is a key you trust.", typed.out().get(2));
        Path two = Files.writeString(
                folder.resolve("two.txt"), String.join("\n", printed) + "\n" + String.join("\n", printed));
        assertEquals(2, Typed.line("verify", bundle, "--trust", two).exit());
    }

    /** All made new by who has the program and no key of the station: readings, chain, seals, bundle. */
    @Test
    void aForgeryThatWasSealedAgainIsRefusedByAKeyThatIsTrustedAndByNothingElse() throws Exception {
        Path real = bundle("a", "--part", "LG-2207");
        String trusted = key().fingerprint();
        store = folder.resolve("forged.db");
        walkReadings(DemoPart.SCREW_CARRIER.passingReadings());
        Path forged = bundle("b", "--part", "LG-2207");
        assertEquals(0, Typed.line("verify", forged).exit());
        for (Path path : List.of(forged, store)) {
            Typed typed = Typed.line("verify", path, "--trust", trusted);
            assertEquals(1, typed.exit(), typed::toString);
            assertTrue(
                    typed.out().stream()
                            .anyMatch(line -> line.startsWith("Not trusted: ") && line.contains(key().fingerprint())),
                    typed::toString);
        }
        assertEquals(0, Typed.line("verify", real, "--trust", trusted).exit());
        Path record = Typed.files(out).stream()
                .filter(file -> file.toString().endsWith(".json")
                        && Typed.line("verify", file, "--trust", trusted).exit() == 1)
                .findFirst()
                .orElseThrow();
        assertTrue(record.getFileName().toString().startsWith("LG-2207"), record::toString);
    }

    @Test
    void withoutAKeyNoBundleIsMade() throws Exception {
        Files.delete(KeyFile.beside(store).path());
        assertTrue(refused("--part", "LG-2207").startsWith("The key "), refused("--part", "LG-2207"));
    }

    @Test
    void aFileInABundleThatWasChangedIsNamed() throws Exception {
        Path bundle = bundle("a", "--part", "LG-2207");
        byte[] bytes = Files.readAllBytes(bundle);
        bytes[bytes.length / 2] ^= 1;
        Files.write(bundle, bytes);
        Typed typed = Typed.line("verify", bundle);
        assertEquals(1, typed.exit());
        assertTrue(
                typed.out().get(0).endsWith("in it is not the one its manifest names: it was changed."),
                typed::toString);
    }
}
