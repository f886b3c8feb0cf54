package org.tenthwise.app.bundle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.JsonRecord;
import org.tenthwise.app.export.RecordCheck;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.checklists.catalogue.DemoPart;

/**
 * One byte of a bundle or of a record changed, at random: each change is found, or what is read is proven to be the
 * same. 2,000 of a bundle of tables in each build, and 400 of one with the printed record and the one by QIF in it;
 * 10,000 of each with {@code -Plong}. The figures are left in {@code target}.
 */
class ChangedBytesTest {

    private static final int CHANGES = Integer.getInteger("hostile.bytes", 2_000);
    private static final int IN_WHOLE = Integer.getInteger("hostile.bytes", 400);
    private static final int IN_RECORDS = CHANGES / 10;
    private static final long SEED = 12;

    @TempDir
    private Path folder;

    @Test
    void everyChangedByteOfABundleOfTablesIsFound() throws Exception {
        everyOneIsFound("bundle", Invented.MAKING, CHANGES, List.of("csv", "json"));
    }

    @Test
    void everyChangedByteOfABundleWithThePrintedRecordAndTheOneByQifIsFound() throws Exception {
        everyOneIsFound("whole-bundle", Invented.WHOLE, IN_WHOLE, List.of("pdf", "csv", "json", "qif"));
    }

    private void everyOneIsFound(String name, Making making, int changes, List<String> inside) throws Exception {
        byte[] good = Invented.bundle(
                making,
                Records.whole(DemoPart.SCREW_CARRIER, Records.passing(DemoPart.SCREW_CARRIER)),
                new KeyFile(folder.resolve("k.p12")).make());
        Path path = Files.write(folder.resolve("b.tenthwise"), good);
        Random random = new Random(SEED);
        Map<String, Integer> found = new TreeMap<>();
        List<Integer> survived = new ArrayList<>();
        try (FileChannel file = FileChannel.open(path, StandardOpenOption.WRITE)) {
            for (int i = 0; i < changes; i++) {
                int at = random.nextInt(good.length);
                put(file, at, (byte) (good[at] ^ 1 + random.nextInt(255)));
                try (BundleFile bundle = BundleFile.open(path)) {
                    new BundleCheck(making)
                            .check(bundle)
                            .fault()
                            .ifPresentOrElse(why -> found.merge(why.key(), 1, Integer::sum), () -> survived.add(at));
                } catch (NotABundle e) {
                    found.merge(e.why().key(), 1, Integer::sum);
                }
                put(file, at, good[at]);
            }
        }
        say(
                name,
                "%d bytes of a bundle of %d changed, one at a time: %s found, %d not"
                        .formatted(changes, good.length, found, survived.size()));
        assertEquals(List.of(), survived);
        assertEquals(
                changes, found.values().stream().mapToInt(Integer::intValue).sum());
        try (BundleFile bundle = BundleFile.open(path)) {
            Manifest.OfRun run = bundle.manifest().runs().get(0);
            String stem = run.file(Manifest.RECORD);
            assertEquals(
                    inside,
                    bundle.manifest().files().stream()
                            .map(Manifest.OfFile::name)
                            .filter(file -> file.startsWith(stem))
                            .map(file -> file.substring(stem.length()))
                            .toList());
            assertTrue(new BundleCheck(making).check(bundle).fault().isEmpty(), "as it was, it is whole");
        }
    }

    /** The figures, to be read after the build. */
    private static void say(String of, String figures) throws IOException {
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target", "changed-bytes-of-a-%s.txt".formatted(of)), figures + "\n");
    }

    private static void put(FileChannel file, int at, byte value) throws IOException {
        file.write(ByteBuffer.wrap(new byte[] {value}), at);
    }

    /** What is between the words of JSON means nothing: such a change leaves every word as it was. */
    @Test
    void everyChangedByteOfARecordIsFoundOrMeansNothing() throws Exception {
        Evidence evidence = Records.whole(DemoPart.WINCH_BARREL_END, Records.passing(DemoPart.WINCH_BARREL_END));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new JsonRecord().write(evidence, out);
        byte[] good = out.toByteArray();
        JsonMapper json = JsonMapper.builder()
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .build();
        JsonNode meant = json.readTree(good);
        Random random = new Random(SEED);
        int found = 0;
        int harmless = 0;
        for (int i = 0; i < IN_RECORDS; i++) {
            byte[] changed = good.clone();
            int at = random.nextInt(good.length);
            changed[at] ^= (byte) (1 + random.nextInt(255));
            if (new RecordCheck()
                    .check(new ByteArrayInputStream(changed))
                    .found()
                    .fault()
                    .isPresent()) {
                found++;
            } else {
                assertEquals(meant, json.readTree(changed), "byte " + at);
                harmless++;
            }
        }
        say(
                "record",
                "%d bytes of a record of %d changed, one at a time: %d found, %d harmless"
                        .formatted(IN_RECORDS, good.length, found, harmless));
        assertEquals(IN_RECORDS, found + harmless);
    }
}
