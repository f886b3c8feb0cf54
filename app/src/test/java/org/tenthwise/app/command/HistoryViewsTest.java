package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.series.MadeParts.JOURNAL;
import static org.tenthwise.app.series.MadeParts.RELIEF;
import static org.tenthwise.app.series.MadeParts.SEAT;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.series.MadeParts;
import org.tenthwise.model.run.Event;

/** The views of a history as tables, of parts that were made for it. */
class HistoryViewsTest {

    @TempDir
    private Path folder;

    private Path store;

    @BeforeEach
    void make() throws Exception {
        store = folder.resolve("shop.db");
        try (MadeParts shop = new MadeParts(folder)) {
            shop.journals(
                    "29.980", "29.982", "29.981", "29.984", "29.985", "29.987", "29.986", "29.988", "29.990", "29.991");
            shop.part(MadeParts.PLAN, "011", "L-1", "Lathe 5")
                    .by("=1+1")
                    .reads(JOURNAL, "29.990")
                    .reads(SEAT, "39.980", "39.990")
                    .reads(RELIEF, "28.1");
            shop.part("012").reads(JOURNAL, "29.991").did(new Event.PutAway("Foreman 1", "begun by mistake"));
            shop.part(MadeParts.PLAN, "013", "L-2", "Lathe 5")
                    .reads(JOURNAL, "29.970")
                    .closed();
        }
    }

    private List<CSVRecord> view(Object... more) throws Exception {
        return HistoryRows.of(store, more);
    }

    private static List<String> column(List<CSVRecord> rows, String name) {
        return rows.stream().map(row -> row.get(name)).toList();
    }

    @Test
    void aSeriesHasARowForEachPartInItsOrderAndOneForWhatIsLeftOut() throws Exception {
        List<CSVRecord> rows = view("--view", "series", "--part", "T-1", "--balloon", "7");
        assertEquals(13, rows.size());
        assertEquals("29.980", rows.get(0).get("as_cut"));
        assertEquals("29.980", rows.get(0).get("final"));
        assertEquals("-100", rows.get(0).get("percent_final"));
        assertEquals("between-limits", rows.get(0).get("percent_of"));
        assertEquals("machine person", rows.get(10).get("break"));
        assertEquals("lot person", rows.get(11).get("break"));
        assertEquals("put-away", rows.get(12).get("left_out"));
        assertEquals("", rows.get(12).get("final"));
    }

    @Test
    void aTextThatASpreadsheetWouldRunIsMadeSafe() throws Exception {
        assertTrue(column(view("--view", "series"), "persons").contains("'=1+1"));
    }

    @Test
    void inPerCentOfToleranceACharacteristicIsARowAndAPartAColumn() throws Exception {
        List<CSVRecord> rows = view("--view", "tolerance", "--part", "T-1");
        assertEquals(List.of("Journal", "Seat", "Relief"), column(rows, "characteristic"));
        assertEquals("-100", rows.get(0).get("001"));
        assertEquals("-200", rows.get(0).get("013"));
        // 39.980 lies nearer to 39.975 than 39.990 to 40.000: it decides
        assertEquals("-60", rows.get(1).get("011"));
        assertEquals("", rows.get(2).get("011"), "one limit has no middle");
        assertEquals("1", rows.get(2).get("parts"));
    }

    @Test
    void sumsStandBetweenBreaksAsTheBatchWritesThem() throws Exception {
        List<CSVRecord> rows = view("--view", "sums", "--balloon", "7");
        assertEquals(List.of("10", "1", "1"), column(rows, "counted"));
        assertEquals(List.of("", "machine person", "lot person"), column(rows, "since"));
        CSVRecord first = rows.get(0);
        assertEquals("29.98540000", first.get("mean"));
        assertEquals("shown", first.get("drift"));
        assertEquals("drifting", first.get("capability"));
        assertEquals("trial", first.get("chart_standing"));
        assertTrue(Integer.parseInt(first.get("measure_before")) > 10);
        assertEquals("too-few", rows.get(1).get("drift"));
        assertEquals("", rows.get(1).get("mean"));
        assertEquals("1", rows.get(2).get("rejects"));
        List<CSVRecord> across = view("--view", "sums", "--balloon", "7", "--across", "machine,person,lot");
        assertEquals(List.of("12"), column(across, "counted"));
    }

    @Test
    void differentSizesStandOnOneChartByTheirDeviation() throws Exception {
        List<CSVRecord> rows = view("--view", "deviation");
        assertEquals(13, rows.size());
        assertEquals("29.990", rows.get(0).get("target"));
        assertEquals("-0.01", rows.get(0).get("deviation"));
        assertEquals("-1", rows.get(0).get("standardised"));
    }

    @Test
    void runsAreFoundByMachineLotVerdictAndGauge() throws Exception {
        assertEquals(List.of("011", "013"), column(view("--view", "runs", "--machine", "lathe 5"), "serial"));
        assertEquals(List.of("013"), column(view("--view", "runs", "--lot", "L-2"), "serial"));
        assertEquals(List.of("013"), column(view("--view", "runs", "--verdict", "fail"), "serial"));
        assertEquals(List.of("011"), column(view("--view", "runs", "--gauge", "MC-2"), "serial"));
        assertEquals(List.of("013"), column(view("--lot", "L-2", "--verdict", "fail"), "serial"));
        assertEquals(List.of(), view("--view", "runs", "--kind", "first-piece"));
        assertEquals(13, view("--view", "runs", "--kind", "not-stated").size());
        assertEquals(List.of(), view("--kind", "last-piece"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"sums", "deviation"})
    void nothingIsWorkedOutOfPartsPickedByWhatTheyCameTo(String view) {
        Typed typed = Typed.line("history", "--store", store, "--view", view, "--verdict", "pass");
        assertEquals(2, typed.exit());
        assertTrue(typed.err().get(0).contains("picked by what they came to"), () -> typed.err()
                .toString());
    }

    @ParameterizedTest
    @CsvSource({
        "--view, chart",
        "--verdict, good",
        "--size, any",
        "--across, weather",
        "--across, limits",
        "--as, pdf",
        "--required, 0",
        "--required, much"
    })
    void whatIsNoChoiceIsRefusedInOneLine(String option, String value) {
        Typed typed = Typed.line("history", "--store", store, option, value);
        assertEquals(2, typed.exit());
        assertEquals(1, typed.err().size(), () -> typed.err().toString());
        assertTrue(typed.err().get(0).contains(value), () -> typed.err().toString());
    }

    /** As the tablet hands them out, one for each characteristic. */
    @Test
    void viewsAreWrittenAsFilesAndNamed() throws Exception {
        Path out = folder.resolve("views");
        Typed one = Typed.line(
                "history", "--store", store, "--view", "series", "--balloon", "7", "--as", "pdf", "--out", out);
        assertEquals(0, one.exit(), () -> String.join("\n", one.err()));
        assertEquals(List.of(out.resolve("history-course-T-1-7.pdf").toString()), one.out());
        assertEquals(
                "%PDF",
                Files.readString(Path.of(one.out().get(0)), StandardCharsets.ISO_8859_1)
                        .substring(0, 4));
        Typed all = Typed.line("history", "--store", store, "--view", "tolerance", "--as", "csv", "--out", out);
        assertTrue(all.out().get(0).endsWith("history-shares.csv"), all.out()::toString);
        Typed again = Typed.line("history", "--store", store, "--view", "tolerance", "--as", "csv", "--out", out);
        assertEquals(all.out(), again.out());
    }

    @Test
    void aFileWithoutAFolderIsRefused() {
        assertTrue(Typed.line("history", "--store", store, "--view", "series", "--as", "pdf")
                .trouble()
                .contains("--out"));
        assertTrue(Typed.line("history", "--store", store, "--as", "csv", "--out", folder)
                .trouble()
                .contains("readings"));
    }

    /** A file that held what was found against another index would mislead unnoticed. */
    @ParameterizedTest
    @CsvSource({
        "sums, pdf, --required, 1.67, A file holds what the parts show against the index 1.33",
        "sums, csv, --size, final, The view \"sums\" goes to standard output as CSV"
    })
    void whatAFileCannotSayIsRefusedAndNoFileIsWritten(String view, String as, String option, String value, String why)
            throws Exception {
        Path out = folder.resolve("refused");
        Typed typed = Typed.line(
                "history", "--store", store, "--view", view, "--as", as, "--out", out, "--balloon", "7", option, value);
        assertEquals(2, typed.exit(), typed::toString);
        assertTrue(typed.trouble().startsWith(why), typed::toString);
        assertTrue(Files.notExists(out));
    }

    /** The same breaks as the table, and the page says which. */
    @Test
    void aFileLooksAcrossTheBreaksThatAreNamedAndNoOther() throws Exception {
        Path out = folder.resolve("across");
        Typed typed = Typed.line(
                "history",
                "--store",
                store,
                "--view",
                "sums",
                "--as",
                "pdf",
                "--out",
                out,
                "--balloon",
                "7",
                "--across",
                "machine,person");
        assertEquals(0, typed.exit(), typed::toString);
        assertEquals(1, typed.out().size());
        try (PDDocument document = Loader.loadPDF(Path.of(typed.out().get(0)).toFile())) {
            String page = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertTrue(page.contains("Counted across changes of machine, person."), page);
            assertTrue(page.contains("Since the last change: 1 part, serial 013"), page);
        }
    }

    @Test
    void everyTableSaysWhichSizesItIsOf() throws Exception {
        for (String table : List.of("tolerance", "deviation", "sums")) {
            assertEquals(Set.of("as-cut"), Set.copyOf(column(view("--view", table), "size")));
            assertEquals(Set.of("final"), Set.copyOf(column(view("--view", table, "--size", "final"), "size")));
        }
    }
}
