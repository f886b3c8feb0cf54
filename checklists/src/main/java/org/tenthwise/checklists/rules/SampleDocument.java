package org.tenthwise.checklists.rules;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Word;

/** A paper of a readings file: in the table of its step, or in one of its own among the signatures. */
final class SampleDocument {

    static final String DOCUMENT = "document";
    private static final String DATED = "dated";
    private static final String SAYS = "says";
    private static final String FIGURES = "figures";
    private static final List<Document.Says> SAID =
            List.of(Document.Says.CONFORMS, Document.Says.DOES_NOT_CONFORM, Document.Says.NOT_YET);

    private final Plan plan;
    private final Step step;

    SampleDocument(Plan plan, Step step) {
        this.plan = plan;
        this.step = step;
    }

    /** One, or several in a list of which all but the last were struck out or not there yet. */
    void readIn(TableKeys pass, SampleEvents events) {
        pass.ifAny(DOCUMENT, pass::any).ifPresent(value -> {
            for (RawValue item : value instanceof RawList list ? list.items() : List.of(value)) {
                if (item instanceof RawTable table) {
                    TableKeys keys = pass.inside(DOCUMENT, table);
                    read(keys).ifPresent(given -> events.add(given));
                    Optional<String> struck = keys.ifAny("struck", keys::prose);
                    struck.ifPresent(events::strikeLast);
                    keys.finish();
                } else {
                    pass.problem(item.spot(), "plan.key.table", DOCUMENT, item.what());
                }
            }
        });
    }

    /** Without {@code says} it is judged by its figures. */
    Optional<StepEvent.DocumentGiven> read(TableKeys keys) {
        Document.Says says = keys.has(FIGURES) && !keys.has(SAYS)
                ? Document.Says.FIGURES
                : keys.word(SAYS, SAID, Word::spaced).orElse(Document.Says.NOT_YET);
        Optional<String> number =
                says == Document.Says.NOT_YET ? keys.ifAny("number", keys::text) : keys.text("number");
        Optional<LocalDate> dated = keys.text(DATED).flatMap(text -> date(keys, text));
        Optional<String> by = keys.text("by");
        List<Written> figures = figures(keys);
        return keys.built(() -> new StepEvent.DocumentGiven(
                step.number(), new Document(number.orElse(""), dated.orElseThrow(), says, by.orElseThrow(), figures)));
    }

    /** What all figures of one table have alike. */
    record Report(String number, LocalDate dated, String by) {

        StepEvent.DocumentGiven giving(int step, List<Written> figures) {
            return new StepEvent.DocumentGiven(step, new Document(number, dated, Document.Says.FIGURES, by, figures));
        }
    }

    /** Absent where a problem was noted. */
    static Optional<Report> report(TableKeys keys) {
        Optional<String> number = keys.text("number");
        Optional<LocalDate> dated = keys.text(DATED).flatMap(text -> date(keys, text));
        Optional<String> by = keys.text("by");
        return number.flatMap(n -> dated.flatMap(d -> by.map(b -> new Report(n, d, b))));
    }

    private static Optional<LocalDate> date(TableKeys keys, String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            keys.problem(DATED, "readings.document.dated", text);
            return Optional.empty();
        }
    }

    private List<Written> figures(TableKeys keys) {
        List<Written> figures = new ArrayList<>();
        keys.ifAny(FIGURES, keys::list)
                .map(RawList::items)
                .ifPresent(items -> items.forEach(item -> {
                    if (item instanceof RawTable table) {
                        TableKeys figure = keys.inside(FIGURES, table);
                        QuotedFigures.figure(figure, "reading", QuotedFigures.unit(figure, plan.unit(step)))
                                .ifPresent(figures::add);
                        figure.finish();
                    } else {
                        QuotedFigures.figure(keys, item, plan.unit(step)).ifPresent(figures::add);
                    }
                }));
        return figures;
    }
}
