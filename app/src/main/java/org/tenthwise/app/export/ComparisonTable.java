package org.tenthwise.app.export;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tenthwise.model.compare.CharacteristicChange;
import org.tenthwise.model.compare.PlanComparison;
import org.tenthwise.model.compare.PlanDifference;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.words.Word;

/**
 * Two plans compared, as a table for a spreadsheet: RFC 4180, a row for each thing that is otherwise; what is otherwise
 * of the whole part has no number. Texts are made safe as in {@link CsvRecord}.
 */
public final class ComparisonTable {

    private static final List<String> HEAD = List.of(
            "balloon",
            "number_before",
            "number_after",
            "characteristic",
            "change",
            "aspect",
            "before",
            "after",
            "check_again");

    private final CSVPrinter printer;

    /** Writes the names of the columns. */
    public ComparisonTable(Appendable out) throws IOException {
        this.printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord(HEAD);
    }

    public void write(PlanComparison comparison) throws IOException {
        for (PlanDifference one : comparison.head()) {
            difference("", "", "", "", one, one.kind().asksForACheck());
        }
        for (CharacteristicChange change : comparison.changes()) {
            write(change, comparison.proposes(change));
        }
    }

    private void write(CharacteristicChange change, boolean again) throws IOException {
        String balloon = change.balloon().map(Object::toString).orElse("");
        String before = number(change.before());
        String after = number(change.after());
        String name = change.step().name();
        for (PlanDifference one : change.differences()) {
            difference(balloon, before, after, name, one, again);
        }
        if (change.isNew() || change.isGone()) {
            row(balloon, before, after, name, change.isNew() ? "new" : "gone", "", "", "", again);
        }
        if (!change.restsOn().isEmpty()) {
            row(balloon, before, after, name, "rests-on", "", "", String.join("; ", change.restsOn()), again);
        }
    }

    private void difference(String balloon, String before, String after, String name, PlanDifference one, boolean again)
            throws IOException {
        row(balloon, before, after, name, Word.of(one.kind()), Word.of(one.aspect()), one.before(), one.after(), again);
    }

    private void row(
            String balloon,
            String before,
            String after,
            String name,
            String change,
            String aspect,
            String was,
            String is,
            boolean again)
            throws IOException {
        printer.printRecord(
                CsvText.safe(balloon),
                before,
                after,
                CsvText.safe(name),
                change,
                aspect,
                CsvText.safe(was),
                CsvText.safe(is),
                again ? "yes" : "");
    }

    private static String number(Optional<Step> step) {
        return step.map(of -> String.valueOf(of.number())).orElse("");
    }
}
