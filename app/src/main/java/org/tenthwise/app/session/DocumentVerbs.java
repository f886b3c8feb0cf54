package org.tenthwise.app.session;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.StepEvent;

/**
 * What a paper says of the step in hand. One that says something is corrected by striking it out, with a reason; only
 * one that was not there yet is followed by another as it is.
 */
public final class DocumentVerbs {

    private final RunSession session;
    private final RunBook book;

    DocumentVerbs(RunSession session, RunBook book) {
        this.session = session;
        this.book = book;
    }

    /**
     * Enters a paper.
     *
     * @param number may be blank only while it is not there yet
     * @param figures one an instance, or none
     */
    public Reply give(String number, LocalDate dated, Document.Says says, String by, List<Written> figures)
            throws CouldNotSave {
        Step step = session.state().inHand();
        Optional<Objection> against = against(step, number, dated, says, by, figures);
        return against.isPresent()
                ? session.replied(against)
                : session.kept(new StepEvent.DocumentGiven(
                        step.number(), new Document(number.strip(), dated, says, by.strip(), figures)));
    }

    /**
     * Enters a report with the figures of every check it proves, all of them or none.
     *
     * @param figures by number of the check, one an instance
     */
    public Reply give(FiguresReport report, Map<Integer, List<Written>> figures) throws CouldNotSave {
        Optional<Objection> against = proven(figures)
                .flatMap(step -> against(step, report, figures).stream())
                .findFirst();
        if (against.isEmpty()) {
            book.add(book.happening(given(proven(figures), report, figures)));
        }
        return session.replied(against);
    }

    /** What it would come to; nothing is entered. */
    public Foreseen foresee(FiguresReport report, Map<Integer, List<Written>> figures) {
        Map<Integer, Objection> against = new HashMap<>();
        proven(figures)
                .forEach(step -> against(step, report, figures).ifPresent(why -> against.put(step.number(), why)));
        return new Foreseen(
                book.foresee(book.happening(
                        given(proven(figures).filter(step -> !against.containsKey(step.number())), report, figures))),
                against);
    }

    private Stream<Step> proven(Map<Integer, List<Written>> figures) {
        return book.plan().steps().stream().filter(step -> figures.containsKey(step.number()));
    }

    private static List<StepEvent.DocumentGiven> given(
            Stream<Step> steps, FiguresReport report, Map<Integer, List<Written>> figures) {
        return steps.map(step -> new StepEvent.DocumentGiven(step.number(), report.giving(figures.get(step.number()))))
                .toList();
    }

    private Optional<Objection> against(Step step, FiguresReport report, Map<Integer, List<Written>> figures) {
        return against(
                step, report.number(), report.dated(), Document.Says.FIGURES, report.by(), figures.get(step.number()));
    }

    private Optional<Objection> against(
            Step step, String number, LocalDate dated, Document.Says says, String by, List<Written> figures) {
        return Shut.step(book.sheet(), step)
                .or(() -> Objection.where(step.check().asDocument().isEmpty(), Objection.Kind.NOT_ASKED_HERE))
                .or(() -> Objection.where(isThere(step), Objection.Kind.DOCUMENT_THERE))
                .or(() -> Objection.where(
                        by.isBlank() || number.isBlank() && says != Document.Says.NOT_YET, Objection.Kind.BLANK))
                .or(() -> Signing.inName(number))
                .or(() -> Signing.inName(by))
                .or(() -> Objection.where(dated.isAfter(book.now().toLocalDate()), Objection.Kind.DATED_AHEAD))
                .or(() -> figures(step, says, figures));
    }

    private boolean isThere(Step step) {
        return book.run()
                .pass(step)
                .giving()
                .filter(given -> given.document().says() != Document.Says.NOT_YET)
                .isPresent();
    }

    /** Figures are judged only against limits, all of them of that kind, and one for every instance. */
    private static Optional<Objection> figures(Step step, Document.Says says, List<Written> figures) {
        DocumentCheck check = step.check().asDocument().orElseThrow();
        if (says == Document.Says.FIGURES && figures.isEmpty()) {
            return Optional.of(Objection.of(Objection.Kind.BLANK));
        }
        boolean unjudged = says == Document.Says.FIGURES && check.limits().isEmpty();
        boolean ofAnotherKind = check.limits()
                .filter(limits -> figures.stream()
                        .anyMatch(
                                figure -> figure.unit().kind() != limits.unit().kind()))
                .isPresent();
        boolean tooFewOrMany = !figures.isEmpty()
                && figures.size() != step.drawing().instances().lookedAfter();
        return Objection.where(unjudged || ofAnotherKind || tooFewOrMany, Objection.Kind.FIGURES_UNLIKE);
    }
}
