package org.tenthwise.app.export;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVPrinter;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Word;

/** A row of a view of the history in the making, cell by cell in the order of its head. */
final class ViewRow {

    private final List<String> cells = new ArrayList<>();

    /** Text that a spreadsheet will not run. */
    ViewRow text(String text) {
        cells.add(CsvText.safe(text));
        return this;
    }

    ViewRow text(Optional<String> text) {
        return text(text.orElse(""));
    }

    ViewRow texts(List<String> texts) {
        return text(String.join("; ", texts));
    }

    /** A word of ours, or a figure: nothing in it comes from a person. */
    ViewRow plain(Object plain) {
        cells.add(String.valueOf(plain));
        return this;
    }

    ViewRow word(Enum<?> choice) {
        return plain(Word.of(choice));
    }

    ViewRow figure(Optional<BigDecimal> figure) {
        return plain(figure.map(BigDecimal::toPlainString).orElse(""));
    }

    ViewRow size(Length size, Unit unit, int places) {
        return plain(WorkedOut.figure(size, unit, places));
    }

    ViewRow time(OffsetDateTime time) {
        return plain(CsvRow.said(time));
    }

    ViewRow limits(Limits limits) {
        return plain(limits.unit().symbol()).limit(limits.lower()).limit(limits.upper());
    }

    private ViewRow limit(Optional<Written> limit) {
        return plain(limit.map(of -> of.unit().text(of.figure())).orElse(""));
    }

    ViewRow empty(int howMany) {
        for (int i = 0; i < howMany; i++) {
            cells.add("");
        }
        return this;
    }

    /** Part, number, name and designator. */
    ViewRow characteristic(Characteristic one) {
        return text(one.part()).text(one.number()).text(one.name()).text(one.designator());
    }

    /** Serial, lot, machine and run. */
    ViewRow run(RunFacts run) {
        return text(run.serial()).text(run.lot()).text(run.machine()).text(run.id());
    }

    void print(CSVPrinter to) throws IOException {
        to.printRecord(cells);
    }
}
