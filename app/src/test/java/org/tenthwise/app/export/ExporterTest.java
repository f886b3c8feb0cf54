package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.export.CouldNotExport.Reason;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.run.StepEvent;

class ExporterTest {

    private static final DemoPart PART = DemoPart.SCREW_CARRIER;

    private final Evidence evidence = Records.whole(PART, Records.passing(PART));
    private final Exporter exporter = new Exporter();

    @TempDir
    Path folder;

    /** Writes some bytes and then fails as a disk does. */
    private record Failing(String message) implements RecordFormat {

        @Override
        public String extension() {
            return "csv";
        }

        @Override
        public void write(Evidence evidence, OutputStream out) throws IOException {
            out.write(new byte[1000]);
            throw new IOException(message);
        }
    }

    @Test
    void filesAreCalledAfterTheRunItsEntriesAndTheirHash() throws Exception {
        List<Path> files =
                exporter.export(evidence, List.of(new CsvRecord(), new JsonRecord()), folder.resolve("new/er"));
        String name = "LG-2207-C-014-%d-%s"
                .formatted(evidence.entries().size(), evidence.head().hash().substring(0, 8));
        assertEquals(
                List.of(name + ".csv", name + ".json"),
                files.stream().map(file -> file.getFileName().toString()).toList());
        assertEquals(2, count(folder.resolve("new/er")));
    }

    @Test
    void theSameRunAfterTheSameEntryLeavesOneFile() throws Exception {
        List<Path> first = exporter.export(evidence, List.of(new CsvRecord(), new JsonRecord()), folder);
        assertEquals(first, exporter.export(evidence, List.of(new CsvRecord(), new JsonRecord()), folder));
        assertEquals(2, count(folder));
    }

    @Test
    void anotherFileOfTheSameNameIsNeverReplaced() throws Exception {
        Path theirs = Files.writeString(csv(), "theirs");
        List<Path> files = exporter.export(evidence, List.of(new CsvRecord()), folder);
        assertEquals("theirs", Files.readString(theirs));
        assertEquals(List.of(folder.resolve(name() + "-2.csv")), files);
        assertTrue(Files.size(files.get(0)) > 1000);
        assertEquals(files, exporter.export(evidence, List.of(new CsvRecord()), folder));
        assertEquals(2, count(folder));
    }

    @Test
    void aFolderOfTheSameNameIsLeftAlone() throws Exception {
        Files.createDirectory(csv());
        assertEquals(
                List.of(folder.resolve(name() + "-2.csv")),
                exporter.export(evidence, List.of(new CsvRecord()), folder));
    }

    @Test
    void theSameRunAfterOneMoreEntryIsAnotherFile() throws Exception {
        Records.Walk walk = Records.walk(PART, Records.passing(PART), 12);
        List<Path> before = exporter.export(walk.evidence(), List.of(new JsonRecord()), folder);
        byte[] bytes = Files.readAllBytes(before.get(0));
        exporter.export(
                walk.add(new StepEvent.NoteMade(0, "Went on after dinner.")).evidence(),
                List.of(new JsonRecord()),
                folder);
        assertArrayEquals(bytes, Files.readAllBytes(before.get(0)));
        assertEquals(2, count(folder));
    }

    /**
     * Names that are one and the same once they are cut, or once signs that no system takes are gone, and names that
     * some systems keep.
     */
    @Test
    void anyNamesGiveDistinctFilesThatEverySystemTakes() throws Exception {
        String long300 = "A".repeat(300);
        List<String> runs = List.of(
                "LG-2207-C-014",
                "lg-2207-c-014",
                "LG-2207-C-0/4",
                "LG-2207-C-0?4",
                long300 + "1",
                long300 + "2",
                "..",
                "../../x",
                "/etc/passwd",
                "C:\\x",
                "CON",
                "con",
                "NUL.",
                "AUX.json",
                "COM1",
                "\uD83D\uDD27",
                "\uD83D\uDE00",
                "...",
                "x.",
                "x..",
                "",
                " ",
                ".hidden",
                "a\u202Eb",
                "a\nb",
                "-rf");
        Set<String> names = new HashSet<>();
        for (String run : runs) {
            String name = RecordName.of(
                    run,
                    Records.walk(run, PART, Records.passing(PART), 3).evidence().head());
            assertTrue(name.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,110}"), name);
            assertTrue(name.matches(".*-[1-4]-[0-9a-f]{8}"), name);
            assertTrue(names.add(name.toLowerCase(Locale.ROOT)), name + " stands for two runs");
            assertEquals(folder, folder.resolve(name + ".json").normalize().getParent());
        }
    }

    @Test
    void twoStoresWithTheSameRunGiveTwoFiles() throws Exception {
        Evidence here = new Records.Walk(PART.plan(), "Setter 1")
                .add(Records.passing(PART).begun())
                .evidence();
        Evidence there = new Records.Walk(PART.plan(), "Setter 2")
                .add(Records.passing(PART).begun())
                .evidence();
        assertEquals(here.sheet().run().id(), there.sheet().run().id());
        exporter.export(here, List.of(new JsonRecord()), folder);
        exporter.export(there, List.of(new JsonRecord()), folder);
        assertEquals(2, count(folder));
    }

    @Test
    void whatAKilledExportLeftIsTakenAwayAndNothingElse() throws Exception {
        Files.writeString(folder.resolve(".tenthwise-LG-2207-C-013-9-0badcafe.pdf.new"), "half a re");
        Path mine = Files.writeString(folder.resolve(".mine.new"), "mine");
        exporter.export(evidence, List.of(new CsvRecord()), folder);
        assertEquals("mine", Files.readString(mine));
        assertEquals(2, count(folder));
    }

    @Test
    void whatAnotherIsWritingAtThisMomentIsLeftToIt() throws Exception {
        Path making = folder.resolve(".tenthwise-" + name() + ".csv.new");
        try (FileChannel other = FileChannel.open(making, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock lock = other.lock()) {
            CouldNotExport trouble = assertThrows(
                    CouldNotExport.class, () -> exporter.export(evidence, List.of(new CsvRecord()), folder));
            assertEquals(
                    ("The record was not saved: another is writing the same record into %s at this moment. "
                                    + "The run is safe in the store. Export again.")
                            .formatted(folder),
                    trouble.getMessage());
            assertTrue(Files.exists(making) && lock.isValid());
        }
    }

    @Test
    void aFullDiskLeavesWhatWasThere() throws IOException {
        Files.writeString(csv(), "old");
        CouldNotExport trouble = assertThrows(
                CouldNotExport.class,
                () -> exporter.export(
                        evidence, List.of(new JsonRecord(), new Failing("No space left on device")), folder));
        assertEquals(Reason.DISK_FULL, trouble.reason());
        assertEquals(
                ("The record was not saved: there is no room left in %s. The run is safe in the store. Free some "
                                + "space, "
                                + "then export again.")
                        .formatted(folder),
                trouble.getMessage());
        assertEquals("old", Files.readString(csv()));
        assertEquals(1, count(folder));
    }

    @Test
    void aReadOnlyDiskIsCalledSo() {
        CouldNotExport trouble = assertThrows(
                CouldNotExport.class,
                () -> exporter.export(evidence, List.of(new Failing("Read-only file system")), folder));
        assertEquals(Reason.NOT_ALLOWED, trouble.reason());
    }

    @Test
    void anyOtherTroubleIsSaidWithoutItsTechnicalName() {
        CouldNotExport trouble = assertThrows(
                CouldNotExport.class,
                () -> exporter.export(evidence, List.of(new Failing("Input/output error")), folder));
        assertEquals(Reason.OTHER, trouble.reason());
        assertTrue(trouble.getMessage().startsWith("The record was not saved: " + folder), trouble.getMessage());
    }

    @Test
    void aFileInPlaceOfTheFolderIsNamed() throws IOException {
        Path file = Files.writeString(folder.resolve("out"), "a file");
        for (Path place : List.of(file, file.resolve("deeper"))) {
            CouldNotExport trouble = assertThrows(
                    CouldNotExport.class, () -> exporter.export(evidence, List.of(new CsvRecord()), place));
            assertEquals(Reason.NOT_A_FOLDER, trouble.reason());
            assertTrue(trouble.getMessage().contains(file.toString()), trouble.getMessage());
        }
        assertEquals("a file", Files.readString(file));
    }

    private String name() {
        return RecordName.of(evidence.sheet().run().id(), evidence.head());
    }

    private Path csv() {
        return folder.resolve(name() + ".csv");
    }

    private static long count(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.count();
        }
    }
}
