package org.tenthwise.app.export;

import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tenthwise.app.history.Matter;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.matters.OpenMatter;
import org.tenthwise.model.run.MatterSettled;
import org.tenthwise.model.words.Word;

/** Open matters as a table for a spreadsheet: RFC 4180, a row a matter. Texts are made safe as in {@link CsvRecord}. */
public final class MattersTable {

    private static final List<String> HEAD = List.of(
            "matter",
            "part",
            "revision",
            "serial",
            "lot",
            "machine",
            "run",
            "check",
            "about",
            "document-number",
            "person",
            "since",
            "settled-by",
            "settled-at",
            "settled-words",
            "settled-document-number");

    private final CSVPrinter printer;

    /** Writes the names of the columns. */
    public MattersTable(Appendable out) throws IOException {
        this.printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord(HEAD);
    }

    public void write(OpenMatter open) throws IOException {
        Matter matter = open.matter();
        printer.printRecord(
                Word.of(matter.kind()),
                ofRun(open, RunFacts::part),
                ofRun(open, RunFacts::revision),
                ofRun(open, RunFacts::serial),
                ofRun(open, RunFacts::lot),
                ofRun(open, RunFacts::machine),
                ofRun(open, RunFacts::id),
                matter.check() > 0 ? String.valueOf(matter.check()) : "",
                CsvText.safe(matter.about()),
                CsvText.safe(matter.number()),
                CsvText.safe(matter.by()),
                CsvRow.said(matter.since()),
                settled(open, MatterSettled::signedBy),
                open.settled().map(entry -> CsvRow.said(entry.at())).orElse(""),
                settled(open, MatterSettled::words),
                settled(open, MatterSettled::document));
    }

    private static String settled(OpenMatter matter, Function<MatterSettled, String> what) {
        return CsvText.safe(matter.settled()
                .flatMap(entry -> entry.event().as(MatterSettled.class))
                .map(what)
                .orElse(""));
    }

    private static String ofRun(OpenMatter matter, Function<RunFacts, String> what) {
        return CsvText.safe(matter.run().map(what).orElse(""));
    }
}
