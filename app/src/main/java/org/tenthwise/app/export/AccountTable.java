package org.tenthwise.app.export;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.record.DrawingAccount;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.run.Run;
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
            "part",
            "revision",
            "serial",
            "run",
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
            "allowed",
            "answers",
            "document",
            "verdict",
            "disposition",
            "disposition-number",
            "gauge",
            "gauge-kind");

    @Override
    public String extension() {
        return "drawing.csv";
    }

    @Override
    public boolean isWhole() {
        return false;
    }

    @Override
    public String mediaType() {
        return "text/csv";
    }

    @Override
    public void write(Evidence evidence, OutputStream out) throws IOException {
        CSVPrinter printer = new CSVPrinter(new OutputStreamWriter(out, UTF_8), CSVFormat.RFC4180);
        printer.printRecord(HEAD);
        Sheet sheet = evidence.sheet();
        for (AccountLine line : DrawingAccount.of(sheet).lines()) {
            printer.printRecord(cells(line, sheet).stream().map(CsvText::safe).toList());
        }
        printer.flush();
    }

    private static List<String> cells(AccountLine line, Sheet sheet) {
        OnDrawing drawing = line.drawing();
        List<String> cells = new ArrayList<>(List.of(
                sheet.plan().part().number(),
                sheet.plan().part().revision(),
                sheet.run().begun().serial(),
                sheet.run().id(),
                line.balloon().map(Object::toString).orElse(""),
                drawing.sheet().orElse(""),
                drawing.zone().orElse(""),
                drawing.designator().orElse(""),
                drawing.requirement(),
                String.valueOf(drawing.instances().count())));
        cells.addAll(line.match(new AccountLine.Cases<List<String>>() {
            @Override
            public List<String> checked(AccountLine.Checked checked) {
                return AccountTable.checked(checked, sheet.run());
            }

            @Override
            public List<String> unanswered(AccountLine.Unanswered unanswered) {
                return List.of(
                        "", "", "", "", "", "", "", "", "", "", "", "", Word.of(unanswered.standing()), "", "", "", "");
            }

            @Override
            public List<String> notInThisRun(AccountLine.NotInThisRun left) {
                return AccountTable.notInThisRun(left.line().step());
            }
        }));
        return cells;
    }

    /** No figure but those of the drawing: none of an earlier run is ever copied in. */
    private static List<String> notInThisRun(Step step) {
        Optional<Limits> limits = step.limits();
        return List.of(
                "",
                String.valueOf(step.number()),
                step.name(),
                figure(limits.flatMap(Limits::lower)),
                figure(limits.flatMap(Limits::upper)),
                limits.map(of -> of.unit().symbol()).orElse(""),
                "",
                "",
                "",
                "",
                "",
                "",
                JsonOccasion.NOT_IN_THIS_RUN,
                "",
                "",
                "",
                "");
    }

    private static List<String> checked(AccountLine.Checked line, Run run) {
        Finding finding = line.line().finding();
        Optional<Limits> limits = finding.step().limits();
        List<String> cells = new ArrayList<>(List.of(
                line.instances().stream().map(String::valueOf).collect(Collectors.joining(" ")),
                String.valueOf(finding.step().number()),
                finding.step().name(),
                figure(limits.flatMap(Limits::lower)),
                figure(limits.flatMap(Limits::upper)),
                limits.map(of -> of.unit().symbol()).orElse("")));
        cells.addAll(limits.map(of -> sizes(line, finding, of)).orElse(List.of("", "", "", "")));
        PassStory story = last(PassStory.of(run, line.line()));
        Optional<StepEvent.DispositionSigned> disposed = line.line().disposed();
        List<Gauge> gauges = gauges(line, story);
        cells.addAll(List.of(
                joined(counting(story.answers()).map(of -> Word.of(of.question()) + " " + Word.of(of.answer())), "; "),
                joined(counting(story.documents()).map(of -> of.document().number()), "; "),
                Word.of(line.standing()),
                disposed.map(of -> Word.of(of.disposition())).orElse(""),
                disposed.flatMap(StepEvent.DispositionSigned::document).orElse(""),
                joined(gauges.stream().map(Gauge::id), " "),
                joined(gauges.stream().map(gauge -> gauge.kind().key()), "; ")));
        return cells;
    }

    private static PassStory last(List<PassStory> stories) {
        return stories.get(stories.size() - 1);
    }

    private static <T> Stream<T> counting(List<Taken<T>> taken) {
        return taken.stream().filter(Taken::counts).map(Taken::what);
    }

    private static String joined(Stream<String> texts, String between) {
        return texts.distinct().collect(Collectors.joining(between));
    }

    /** Least and greatest where each reading is judged; else the one size that is, and what it may be with a bonus. */
    private static List<String> sizes(AccountLine.Checked line, Finding finding, Limits limits) {
        Unit unit = limits.unit();
        boolean each = finding.check()
                .asDimension()
                .filter(read -> read.combine() == Combine.EACH)
                .isPresent();
        int places = StepFigures.of(finding).places();
        return each
                ? List.of(size(line.least(), unit), size(line.greatest(), unit), "", "")
                : List.of(
                        "",
                        "",
                        finding.value()
                                .map(value -> WorkedOut.figure(value, unit, places))
                                .orElse(""),
                        finding.allowed()
                                .map(allowed -> WorkedOut.figure(allowed, unit, places))
                                .orElse(""));
    }

    private static String size(Optional<Measured> measured, Unit unit) {
        return measured.map(of -> WorkedOut.figure(of.value(), unit, WorkedOut.known(of, unit)))
                .orElse("");
    }

    private static String figure(Optional<Written> written) {
        return written.map(of -> of.unit().text(of.figure())).orElse("");
    }

    /** Those the readings were made with, or what was answered was tried with. */
    private static List<Gauge> gauges(AccountLine.Checked line, PassStory story) {
        return Stream.concat(
                        line.measured().stream().flatMap(measured -> measured.reading().setting().stream()),
                        story.answers().stream().filter(Taken::counts).flatMap(taken -> taken.setting().stream()))
                .map(Setting::gauge)
                .distinct()
                .toList();
    }
}
