package org.tenthwise.app.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.ReadingSummary;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.StepSummary;
import org.tenthwise.app.text.ReadingPlace;
import org.tenthwise.model.plan.Instances;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Word;
import org.tenthwise.model.words.Words;

/**
 * Readings and answers of many runs as a table for a spreadsheet: RFC 4180, a row for each reading, struck-out ones
 * too, and one for each step that was only answered or is worked out of others. Sizes are plain decimals with a point,
 * in the unit of the limits. A reading that does not count has no size. Texts are made safe as in {@link CsvRecord}.
 */
public final class HistoryTable implements History.HistoryRow {

    private static final List<String> HEAD = List.of(
            "part",
            "revision",
            "serial",
            "lot",
            "machine",
            "run",
            "purpose",
            "piece",
            "number",
            "characteristic",
            "balloon",
            "sheet",
            "drawing_zone",
            "designator",
            "count",
            "instance",
            "requirement",
            "class",
            "lower_limit",
            "upper_limit",
            "unit",
            "verdict",
            "judged",
            "pass",
            "pass_counts",
            "place",
            "repeat",
            "reading",
            "reading_unit",
            "size",
            "place_verdict",
            "gauge_kind",
            "gauge",
            "person",
            "time",
            "struck_out",
            "entry");

    /** Of a sweep the place says which of its readings it is, as that of a turn does. */
    private static final ReadingPlace SAID = new ReadingPlace(Words.ENGLISH);

    private final CSVPrinter printer;
    private final Function<RunFacts, Optional<Plan>> plans;

    /**
     * Writes the names of the columns.
     *
     * @param plans the plan a run was begun with; absent where this release cannot read it
     */
    public HistoryTable(Appendable out, Function<RunFacts, Optional<Plan>> plans) throws IOException {
        this.plans = plans;
        this.printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord(HEAD);
    }

    @Override
    public void take(RunFacts run, StepSummary step, Optional<ReadingSummary> reading) {
        List<String> cells = new ArrayList<>();
        for (String text : List.of(run.part(), run.revision(), run.serial(), run.lot(), run.machine(), run.id())) {
            cells.add(CsvText.safe(text));
        }
        cells.add(Word.of(run.kind().purpose()));
        cells.add(run.kind().piece().map(String::valueOf).orElse(""));
        cells.add(String.valueOf(step.number()));
        cells.add(CsvText.safe(step.name()));
        Optional<Step> asked = asked(plans.apply(run), step);
        drawing(cells, asked, step);
        cells.add(Word.of(step.stepClass()));
        cells.add(figure(step.limits().flatMap(Limits::lower)));
        cells.add(figure(step.limits().flatMap(Limits::upper)));
        cells.add(step.limits().map(limits -> limits.unit().symbol()).orElse(""));
        cells.add(Word.of(step.verdict().standing()));
        cells.add(size(step, step.value(), step.places()));
        reading.ifPresentOrElse(taken -> reading(cells, asked, step, taken), () -> answer(cells, step));
        try {
            printer.printRecord(cells);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<Step> asked(Optional<Plan> plan, StepSummary summary) {
        return plan.flatMap(of -> of.steps().stream()
                .filter(any -> any.number() == summary.number())
                .findFirst());
    }

    /** Where the characteristic stands on the drawing. */
    private static void drawing(List<String> cells, Optional<Step> step, StepSummary summary) {
        Optional<OnDrawing> drawing = step.map(Step::drawing);
        Optional<Instances> several = drawing.map(OnDrawing::instances).filter(instances -> instances.count() > 1);
        Stream.of(
                        summary.balloon(),
                        drawing.flatMap(OnDrawing::sheet),
                        drawing.flatMap(OnDrawing::zone),
                        summary.designator(),
                        several.map(Instances::count).map(String::valueOf),
                        several.flatMap(Instances::one).map(String::valueOf),
                        drawing.map(OnDrawing::requirement))
                .forEach(text -> cells.add(CsvText.safe(text.orElse(""))));
    }

    private static void reading(List<String> cells, Optional<Step> asked, StepSummary step, ReadingSummary reading) {
        cells.add(String.valueOf(reading.pass()));
        cells.add(reading.replaced() ? "replaced" : "yes");
        cells.add(CsvText.safe(asked.flatMap(of -> SAID.ofSweep(of.check(), reading.place(), reading.repeat()))
                .orElse(reading.place())));
        cells.add(String.valueOf(reading.repeat()));
        cells.add(figure(Optional.of(reading.typed())));
        cells.add(reading.typed().unit().symbol());
        cells.add(
                isOfAnotherKind(step, reading)
                        ? figure(Optional.of(reading.typed()))
                        : size(step, reading.value(), reading.places()));
        cells.add(reading.alone().map(Word::of).orElse(""));
        gauge(cells, reading.gauge());
        cells.add(CsvText.safe(reading.by()));
        cells.add(CsvRow.said(reading.at()));
        cells.add(CsvText.safe(reading.struck().orElse("")));
        cells.add(String.valueOf(reading.seq()));
    }

    /** An angle that was read with a length; its unit stands with the reading. */
    private static boolean isOfAnotherKind(StepSummary step, ReadingSummary reading) {
        return step.limits()
                .map(limits -> limits.unit().kind())
                .filter(kind -> reading.value()
                        .filter(value -> !value.kind().equals(kind))
                        .isPresent())
                .isPresent();
    }

    private static void answer(List<String> cells, StepSummary step) {
        StepSummary.Found found = step.found().orElseThrow();
        while (cells.size() < HEAD.indexOf("gauge_kind")) {
            cells.add("");
        }
        gauge(cells, found.gauge());
        cells.addAll(List.of(CsvText.safe(found.by()), CsvRow.said(found.at()), "", ""));
    }

    private static void gauge(List<String> cells, Optional<ReadingSummary.GaugeMark> gauge) {
        cells.add(CsvText.safe(gauge.map(ReadingSummary.GaugeMark::kind).orElse("")));
        cells.add(CsvText.safe(gauge.map(ReadingSummary.GaugeMark::mark).orElse("")));
    }

    private static String figure(Optional<Written> written) {
        return written.map(of -> of.unit().text(of.figure())).orElse("");
    }

    private static String size(StepSummary step, Optional<Length> size, int places) {
        Unit unit = step.limits().map(Limits::unit).orElse(Unit.MILLIMETRE);
        return size.map(length -> WorkedOut.figure(length, unit, places)).orElse("");
    }
}
