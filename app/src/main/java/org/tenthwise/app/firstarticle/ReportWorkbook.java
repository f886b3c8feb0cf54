package org.tenthwise.app.firstarticle;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.tenthwise.model.words.Words;

/**
 * The three forms as sheets of a workbook (ISO/IEC 29500-1). Every cell is text, in the format for text: figures keep
 * their last noughts, and nothing is ever worked out as a formula.
 */
public final class ReportWorkbook implements ReportFormat {

    private static final String TEXT = "@";
    /** A workbook says when it was made; two of the same report say the same. */
    private static final String MADE = "(<dcterms:created[^>]*>)[^<]*(<)";

    private static final String PARTICULARS = "docProps/core.xml";
    /** The first day a zip file can tell. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private static final double LEAST_WIDTH = 10;
    private static final double MOST_WIDTH = 44;

    private final Words words;

    public ReportWorkbook(Words words) {
        this.words = words;
    }

    @Override
    public String extension() {
        return "xlsx";
    }

    @Override
    public void write(ArticleReport report, OutputStream out) throws IOException {
        ByteArrayOutputStream made = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(made, "Tenthwise", null)) {
            PartForm part = new PartForm(report, words);
            sheet(workbook, 1, report, part.table());
            sheet(workbook, 2, report, new ProductForm(report.article(), words).table());
            sheet(workbook, 3, report, new CharacteristicForm(report.article(), words).whole());
        }
        Instant drawnUp =
                report.kept().map(kept -> kept.drawnUp().at().toInstant()).orElse(Instant.EPOCH);
        settled(made.toByteArray(), drawnUp, out);
    }

    private void sheet(Workbook workbook, int form, ArticleReport report, FormTable table) {
        Worksheet sheet = workbook.newWorksheet(words.say("report.form", form));
        sheet.pageOrientation("landscape");
        ReportWords said = new ReportWords(words);
        int row = 0;
        for (String line : List.of(
                words.say("report.title", form, said.arranged(report.article())),
                said.noRelease(),
                said.state(report.article()))) {
            cell(sheet, row++, 0, line, true);
        }
        PartForm part = new PartForm(report, words);
        List<PartForm.Filled> fields = new ArrayList<>(part.head());
        fields.addAll(part.signedAtFoot(form));
        for (PartForm.Filled filled : fields) {
            cell(sheet, row, 0, filled.field().head(words), true);
            cell(sheet, row++, 1, filled.value(), false);
        }
        row++;
        for (int column = 0; column < table.heads().size(); column++) {
            cell(sheet, row, column, table.heads().get(column), true);
            sheet.width(column, width(table, column));
        }
        sheet.repeatRows(row);
        for (List<String> cells : table.rows()) {
            row++;
            for (int column = 0; column < cells.size(); column++) {
                cell(sheet, row, column, cells.get(column), false);
            }
        }
    }

    private static double width(FormTable table, int column) {
        int longest = table.rows().stream()
                .mapToInt(row -> row.get(column).length())
                .reduce(table.heads().get(column).length(), Math::max);
        return Math.max(LEAST_WIDTH, Math.min(MOST_WIDTH, longest + 2.0));
    }

    private static void cell(Worksheet sheet, int row, int column, String text, boolean head) {
        sheet.value(row, column, text);
        if (head) {
            sheet.style(row, column).format(TEXT).bold().set();
        } else {
            sheet.style(row, column)
                    .format(TEXT)
                    .wrapText(true)
                    .verticalAlignment("top")
                    .set();
        }
    }

    /** The same file without the times at which it happened to be written. */
    private static void settled(byte[] workbook, Instant made, OutputStream out) throws IOException {
        ZipOutputStream again = new ZipOutputStream(out);
        try (ZipFile parts = ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(workbook))
                .get()) {
            for (ZipArchiveEntry part : Collections.list(parts.getEntriesInPhysicalOrder())) {
                byte[] bytes = parts.getInputStream(part).readAllBytes();
                ZipEntry entry = new ZipEntry(part.getName());
                entry.setTimeLocal(NO_TIME);
                again.putNextEntry(entry);
                again.write(
                        part.getName().equals(PARTICULARS)
                                ? new String(bytes, UTF_8)
                                        .replaceAll(MADE, "$1" + made + "$2")
                                        .getBytes(UTF_8)
                                : bytes);
                again.closeEntry();
            }
        }
        again.finish();
    }
}
