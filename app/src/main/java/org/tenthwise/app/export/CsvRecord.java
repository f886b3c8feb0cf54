package org.tenthwise.app.export;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * The record as a table for a spreadsheet: RFC 4180, UTF-8, one row for each reading, each temperature and each answer,
 * struck-out ones too, one row for each characteristic without any, and one for each disposition, each doubt and each
 * note.
 *
 * <p>Sizes are plain decimals with a point, in the unit of their row. A reading that does not count has no value, so
 * that no sum over the column takes it in. A text that a spreadsheet would run as a formula gets an apostrophe before
 * it ({@link CsvText}), so this is a file to read: the record to keep is the JSON one.
 */
public final class CsvRecord implements RecordFormat {

    @Override
    public String extension() {
        return "csv";
    }

    @Override
    public String mediaType() {
        return "text/csv";
    }

    @Override
    public void write(Evidence evidence, OutputStream out) throws IOException {
        Writer writer = new OutputStreamWriter(out, UTF_8);
        CSVPrinter printer = new CSVPrinter(writer, CSVFormat.RFC4180);
        printer.printRecord((Object[]) CsvColumn.names());
        for (CsvRow row : CsvRows.of(evidence)) {
            printer.printRecord(row.cells());
        }
        printer.flush();
    }
}
