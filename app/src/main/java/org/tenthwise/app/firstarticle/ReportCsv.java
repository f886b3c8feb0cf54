package org.tenthwise.app.firstarticle;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tenthwise.app.export.CsvText;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Words;

/**
 * One of the forms as a table for a spreadsheet: RFC 4180, UTF-8, in English whatever is spoken. Each head begins with
 * the number of the field in the standard. A figure stands as it was typed; other texts are made safe as in
 * {@link CsvText}.
 */
public final class ReportCsv implements ReportFormat {

    private final String extension;
    private final Function<ArticleReport, FormTable> form;

    private ReportCsv(String extension, Function<ArticleReport, FormTable> form) {
        this.extension = extension;
        this.form = form;
    }

    /** The three of them, in their order. */
    public static List<ReportFormat> all() {
        return List.of(
                new ReportCsv("form-1.csv", report -> new PartForm(report, Words.ENGLISH).table()),
                new ReportCsv(
                        "form-2.csv",
                        report -> signed(report, 2, new ProductForm(report.article(), Words.ENGLISH).table())),
                new ReportCsv(
                        "form-3.csv",
                        report -> signed(report, 3, new CharacteristicForm(report.article(), Words.ENGLISH).whole())));
    }

    /**
     * The fields that the earlier edition has at the foot of a form, as columns where their numbers have their place.
     */
    private static FormTable signed(ArticleReport report, int form, FormTable table) {
        List<PartForm.Filled> foot = new PartForm(report, Words.ENGLISH).signedAtFoot(form);
        return foot.isEmpty()
                ? table
                : table.with(
                        foot.stream()
                                .map(filled -> filled.field().head(Words.ENGLISH))
                                .toList(),
                        foot.stream().map(PartForm.Filled::value).toList());
    }

    @Override
    public String extension() {
        return extension;
    }

    @Override
    public void write(ArticleReport report, OutputStream out) throws IOException {
        CSVPrinter printer = new CSVPrinter(new OutputStreamWriter(out, UTF_8), CSVFormat.RFC4180);
        FormTable table = form.apply(report);
        printer.printRecord(table.heads());
        for (List<String> row : table.rows()) {
            printer.printRecord(row.stream().map(ReportCsv::safe).toList());
        }
        printer.flush();
    }

    private static String safe(String text) {
        return Written.isPlainDecimal(text) ? text : CsvText.safe(text);
    }
}
