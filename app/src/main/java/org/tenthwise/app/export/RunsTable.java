package org.tenthwise.app.export;

import java.io.IOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.model.words.Word;

/** Runs that were looked for, as a table for a spreadsheet: RFC 4180, a row for each, texts made safe. */
public final class RunsTable {

    private static final List<String> HEAD = List.of(
            "part",
            "revision",
            "serial",
            "lot",
            "machine",
            "run",
            "issue",
            "begun",
            "last",
            "persons",
            "outcome",
            "concessions",
            "signed_by",
            "signed_as");

    private final CSVPrinter printer;

    /** Writes the names of the columns. */
    public RunsTable(Appendable out) throws IOException {
        this.printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord(HEAD);
    }

    public void write(List<RunFacts> runs) throws IOException {
        for (RunFacts run : runs) {
            new ViewRow()
                    .text(run.part())
                    .text(run.revision())
                    .run(run)
                    .text(run.stand().map(RunFacts.Stand::issue))
                    .time(run.begunAt())
                    .time(run.lastAt())
                    .texts(run.people())
                    .plain(run.stand().map(stand -> Word.of(stand.outcome())).orElse(""))
                    .plain(run.stand()
                            .map(stand -> String.valueOf(stand.concessions()))
                            .orElse(""))
                    .text(run.closing().map(RunFacts.Closing::signedBy))
                    .text(run.closing().map(RunFacts.Closing::meaning))
                    .print(printer);
        }
    }
}
