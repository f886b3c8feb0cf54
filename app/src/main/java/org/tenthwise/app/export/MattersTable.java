package org.tenthwise.app.export;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tenthwise.app.matters.OpenMatter;
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
            "since");

    private final CSVPrinter printer;

    /** Writes the names of the columns. */
    public MattersTable(Appendable out) throws IOException {
        this.printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord(HEAD);
    }

    public void write(OpenMatter matter) throws IOException {
        printer.printRecord(
                Word.of(matter.kind()),
                ofRun(matter, OpenMatter.OfRun::part),
                ofRun(matter, OpenMatter.OfRun::revision),
                ofRun(matter, OpenMatter.OfRun::serial),
                ofRun(matter, OpenMatter.OfRun::lot),
                ofRun(matter, OpenMatter.OfRun::machine),
                ofRun(matter, OpenMatter.OfRun::id),
                matter.step()
                        .map(OpenMatter.OfStep::number)
                        .filter(number -> number > 0)
                        .map(String::valueOf)
                        .orElse(""),
                CsvText.safe(matter.step().map(OpenMatter.OfStep::name).orElse("")),
                CsvText.safe(matter.number()),
                CsvText.safe(matter.by()),
                matter.since().map(CsvRow::said).orElse(""));
    }

    private static String ofRun(OpenMatter matter, Function<OpenMatter.OfRun, String> what) {
        Optional<OpenMatter.OfRun> run = matter.run();
        return CsvText.safe(run.map(what).orElse(""));
    }
}
