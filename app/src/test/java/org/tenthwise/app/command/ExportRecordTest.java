package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.PdfRecord;
import org.tenthwise.app.export.pdf.RecordLayout;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.Sample;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.words.Words;

class ExportRecordTest {

    @TempDir
    private Path folder;

    private Path store;
    private Path walked;
    private Path out;

    @BeforeEach
    void walk() {
        store = folder.resolve("s.db");
        walked = folder.resolve("walked");
        out = folder.resolve("out");
        Typed.line("walk", "WB-118", "--readings", "WB-118-pass", "--store", store, "--out", walked);
    }

    private String run() throws Exception {
        try (var kept = new SqliteStores().openToRead(store)) {
            return kept.runs().get(0);
        }
    }

    @Test
    void theRecordIsTheSameAgain() throws Exception {
        Typed typed = Typed.line("export", "--store", store, "--run", run(), "--as", "csv,json", "--out", out);
        assertEquals(0, typed.exit());
        List<Path> again = Typed.files(out);
        assertEquals(again.stream().map(Path::toString).toList(), typed.out());
        assertEquals(2, again.size());
        for (Path file : again) {
            assertTrue(file.getFileName().toString().startsWith(run() + "-"), file::toString);
            assertArrayEquals(Files.readAllBytes(walked.resolve(file.getFileName())), Files.readAllBytes(file));
        }
    }

    @Test
    void aStoreThatIsOpenElsewhereIsReadAllTheSame() throws Exception {
        String run = run();
        try (Ledger held = new SqliteStores().open(store)) {
            assertEquals(
                    0,
                    Typed.line("export", "--store", store, "--run", run, "--as", "csv", "--out", out)
                            .exit(),
                    held::toString);
        }
    }

    @Test
    void anUnknownRunNamesTheKnownOnes() throws Exception {
        assertEquals(
                "There is no run \"WB\" in %s. It has %s.".formatted(store, run()),
                Typed.line("export", "--store", store, "--run", "WB", "--as", "csv", "--out", out)
                        .trouble());
        assertFalse(Files.exists(out));
    }

    @Test
    void anUnknownFormatNamesTheKnownOnes() throws Exception {
        assertEquals(
                "There is no format \"xml\". The formats are csv, json.",
                Typed.line("export", "--store", store, "--run", run(), "--as", "csv,xml", "--out", out)
                        .trouble());
        assertFalse(Files.exists(out));
    }

    @Test
    void aMissingStoreIsNotMade() throws Exception {
        Path nowhere = folder.resolve("nowhere.db");
        assertEquals(
                "There is no nowhere.db. Nothing was made in its place. Give the path of a store.",
                Typed.line("export", "--store", nowhere, "--run", "r", "--as", "csv", "--out", out)
                        .trouble());
        assertFalse(Files.exists(nowhere));
    }

    @Test
    void aFileInTheWayOfTheFolderIsNamed() throws Exception {
        Files.writeString(out, "mine");
        assertEquals(
                out + " is a file. Give a folder to write into; it is made where there is none.",
                Typed.line("export", "--store", store, "--run", run(), "--as", "csv", "--out", out)
                        .trouble());
        assertEquals("mine", Files.readString(out));
    }

    @Test
    void anEntryOfANewerReleaseStandsInTheRecordForWhatItIs() throws Exception {
        String run = run();
        Sample.photograph(store, run);
        Typed typed = Typed.line("export", "--store", store, "--run", run, "--as", "csv,json", "--out", out);
        assertEquals(0, typed.exit());
        assertTrue(Files.readString(Path.of(typed.out().get(1))).contains("\"photo-taken\""));
        try (KeptEntries kept = new SqliteStores().openToRead(store)) {
            ByteArrayOutputStream printed = new ByteArrayOutputStream();
            new PdfRecord(new RecordLayout(Words.ENGLISH, Paper.A4, Records.DATA))
                    .write(Evidence.of(kept, run, "0.1.0"), printed);
            try (PDDocument document = Loader.loadPDF(printed.toByteArray())) {
                String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
                assertTrue(text.contains("of a kind this one does not know (photo-taken)."), text);
            }
        }
    }
}
