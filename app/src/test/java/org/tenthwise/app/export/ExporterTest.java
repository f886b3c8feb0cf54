package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.export.CouldNotExport.Reason;
import org.tenthwise.checklists.catalogue.DemoPart;

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
    void filesAreCalledAfterTheRun() throws Exception {
        List<Path> files = exporter.export(evidence, List.of(new CsvRecord(), new JsonRecord()), folder.resolve("new/er"));
        assertEquals(List.of("LG-2207-C-014.csv", "LG-2207-C-014.json"),
                files.stream().map(file -> file.getFileName().toString()).toList());
        assertEquals(2, count(folder.resolve("new/er")));
    }

    @Test
    void aFileOfTheSameNameIsReplacedByTheWholeNewOne() throws Exception {
        Files.writeString(folder.resolve("LG-2207-C-014.csv"), "old");
        exporter.export(evidence, List.of(new CsvRecord()), folder);
        assertTrue(Files.size(folder.resolve("LG-2207-C-014.csv")) > 1000);
        assertEquals(1, count(folder));
    }

    @Test
    void aFullDiskLeavesWhatWasThere() throws IOException {
        Files.writeString(folder.resolve("LG-2207-C-014.csv"), "old");
        CouldNotExport trouble = assertThrows(CouldNotExport.class, () -> exporter.export(evidence,
                List.of(new JsonRecord(), new Failing("No space left on device")), folder));
        assertEquals(Reason.DISK_FULL, trouble.reason());
        assertEquals(("The record was not written: there is no room left in %s. The run is safe in the store. Free some space, "
                + "then export again.").formatted(folder), trouble.getMessage());
        assertEquals("old", Files.readString(folder.resolve("LG-2207-C-014.csv")));
        assertEquals(1, count(folder));
    }

    @Test
    void aReadOnlyDiskIsCalledSo() {
        CouldNotExport trouble = assertThrows(CouldNotExport.class,
                () -> exporter.export(evidence, List.of(new Failing("Read-only file system")), folder));
        assertEquals(Reason.NOT_ALLOWED, trouble.reason());
    }

    @Test
    void anyOtherTroubleIsSaidWithoutItsTechnicalName() {
        CouldNotExport trouble = assertThrows(CouldNotExport.class,
                () -> exporter.export(evidence, List.of(new Failing("Input/output error")), folder));
        assertEquals(Reason.OTHER, trouble.reason());
        assertTrue(trouble.getMessage().startsWith("The record was not written: " + folder), trouble.getMessage());
    }

    @Test
    void aFileInPlaceOfTheFolderIsNamed() throws IOException {
        Path file = Files.writeString(folder.resolve("out"), "a file");
        for (Path place : List.of(file, file.resolve("deeper"))) {
            CouldNotExport trouble = assertThrows(CouldNotExport.class,
                    () -> exporter.export(evidence, List.of(new CsvRecord()), place));
            assertEquals(Reason.NOT_A_FOLDER, trouble.reason());
            assertTrue(trouble.getMessage().contains(file.toString()), trouble.getMessage());
        }
        assertEquals("a file", Files.readString(file));
    }

    @Test
    void aFolderInPlaceOfTheFileIsNamed() throws IOException {
        Path inTheWay = Files.createDirectory(folder.resolve("LG-2207-C-014.csv"));
        CouldNotExport trouble = assertThrows(CouldNotExport.class,
                () -> exporter.export(evidence, List.of(new CsvRecord()), folder));
        assertEquals("The record was not written: %s is in the way. The run is safe in the store. Name another folder."
                .formatted(inTheWay), trouble.getMessage());
        assertEquals(1, count(folder));
    }

    private static long count(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.count();
        }
    }
}
