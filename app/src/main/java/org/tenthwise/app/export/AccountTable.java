package org.tenthwise.app.export;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.record.DrawingAccount;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Word;

/**
 * The drawing accounted for, as a table for a spreadsheet: RFC 4180, UTF-8, a row for each requirement in the order of
 * the drawing's numbers, whatever the order of work. Sizes are plain decimals with a point. Texts are made safe as in
 * {@link CsvRecord}.
 */
public final class AccountTable implements RecordFormat {

    private static final List<String> HEAD = List.of(
            "balloon",
            "sheet",
            "drawing-zone",
            "designator",
            "requirement",
            "count",
            "instances",
            "number",
            "characteristic",
            "lower-limit",
            "upper-limit",
            "unit",
            "least",
            "greatest",
            "judged",
            "verdict",
            "disposition",
            "disposition-number",
            "gauge");

    @Override
    public String extension() {
        return "drawing.csv";
    }

    @Override
    public boolean isWhole() {
        return false;
    }

    @Override
    public void write(Evidence evidence, OutputStream out) throws IOException {
        CSVPrinter printer = new CSVPrinter(new OutputStreamWriter(out, UTF_8), CSVFormat.RFC4180);
        printer.printRecord(HEAD);
        for (AccountLine line : DrawingAccount.of(evidence.sheet()).lines()) {
            printer.printRecord(cells(line).stream().map(CsvText::safe).toList());
        }
        printer.flush();
    }

    private static List<String> cells(AccountLine line) {
        OnDrawing drawing = line.drawing();
        List<String> cells = new ArrayList<>(List.of(
                line.balloon().map(Object::toString).orElse(""),
                drawing.sheet().orElse(""),
                drawing.zone().orElse(""),
                drawing.designator().orElse(""),
                drawing.requirement(),
                String.valueOf(drawing.instances().count())));
        cells.addAll(line.match(new AccountLine.Cases<List<String>>() {
            @Override
            public List<String> checked(AccountLine.Checked checked) {
                return AccountTable.checked(checked);
            }

            @Override
            public List<String> unanswered(AccountLine.Unanswered unanswered) {
                return List.of("", "", "", "", "", "", "", "", "", Word.of(unanswered.standing()), "", "", "");
            }
        }));
        return cells;
    }

    private static List<String> checked(AccountLine.Checked line) {
        Finding finding = line.line().finding();
        Optional<Limits> limits = finding.step().limits();
        List<String> cells = new ArrayList<>(List.of(
                line.instances().stream().map(String::valueOf).collect(Collectors.joining(" ")),
                String.valueOf(finding.step().number()),
                finding.step().name(),
                figure(limits.flatMap(Limits::lower)),
                figure(limits.flatMap(Limits::upper)),
                limits.map(of -> of.unit().symbol()).orElse("")));
        cells.addAll(limits.map(of -> sizes(line, finding, of.unit())).orElse(List.of("", "", "")));
        Optional<StepEvent.DispositionSigned> disposed = line.line().disposed();
        cells.addAll(List.of(
                Word.of(line.standing()),
                disposed.map(of -> Word.of(of.disposition())).orElse(""),
                disposed.flatMap(StepEvent.DispositionSigned::document).orElse(""),
                gauges(line)));
        return cells;
    }

    /** Least and greatest where each reading is judged; else the one size that is. */
    private static List<String> sizes(AccountLine.Checked line, Finding finding, Unit unit) {
        boolean each = finding.check()
                .asDimension()
                .filter(read -> read.combine() == Combine.EACH)
                .isPresent();
        return each
                ? List.of(size(line.least(), unit), size(line.greatest(), unit), "")
                : List.of(
                        "",
                        "",
                        finding.value()
                                .map(value -> WorkedOut.figure(
                                        value, unit, StepFigures.of(finding).places()))
                                .orElse(""));
    }

    private static String size(Optional<Measured> measured, Unit unit) {
        return measured.map(of -> WorkedOut.figure(of.value(), unit, WorkedOut.known(of, unit)))
                .orElse("");
    }

    private static String figure(Optional<Written> written) {
        return written.map(of -> of.unit().text(of.figure())).orElse("");
    }

    private static String gauges(AccountLine.Checked line) {
        return line.measured().stream()
                .flatMap(measured -> measured.reading().setting().stream())
                .map(Setting::gauge)
                .map(gauge -> gauge.id())
                .distinct()
                .collect(Collectors.joining(" "));
    }
}
