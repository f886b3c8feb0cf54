package org.tenthwise.model.record;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * The whole of a run against its plan: a line for every step, measured or not.
 *
 * @param lines in plan order
 */
public record Sheet(Plan plan, Run run, List<Line> lines) {

    public Sheet {
        lines = List.copyOf(lines);
    }

    public static Sheet of(Plan plan, Run run) {
        return new Sheet(plan, run, Assessment.of(plan, run));
    }

    /**
     * The same with one more entry behind the last: only the step it belongs to and what rests on that is judged again.
     */
    public Sheet with(Entry entry) {
        Run next = run.with(entry);
        return new Sheet(plan, next, Assessment.after(entry, this, next));
    }

    /** @throws NoSuchElementException if the plan has no such step */
    public Line line(int step) {
        return lines.stream()
                .filter(line -> line.step().number() == step)
                .findFirst()
                .orElseThrow(() -> new NoSuchElementException("The plan has no step " + step));
    }

    /** The characteristics: the steps that are of the drawing and in this run. */
    public List<Line> characteristics() {
        return of(StepClass.DRAWING);
    }

    /** The steps of a class that are in this run, in plan order. */
    public List<Line> of(StepClass wanted) {
        return lines.stream()
                .filter(line -> line.asked() && line.step().stepClass() == wanted)
                .toList();
    }

    /** The steps that are not in this run, in plan order: nothing is known of them here. */
    public List<Line> leftOut() {
        return lines.stream().filter(line -> !line.asked()).toList();
    }

    /** How many characteristics stand so, repaired or not. */
    public long count(VerdictKind standing) {
        return characteristics().stream()
                .filter(line -> line.finding().verdict().standing() == standing)
                .count();
    }

    /**
     * How many characteristics are not as the drawing has them and are used: conceded, or repaired and in by
     * measurement.
     */
    public long concessions() {
        return characteristics().stream().filter(Line::byConcession).count();
    }

    /** How many characteristics passed that were repaired before. */
    public long repaired() {
        return characteristics().stream()
                .filter(line -> line.finding().verdict().passed() && line.repaired())
                .count();
    }

    /** How many steps of a class were gone on with though they did not pass. */
    public long carriedOn(StepClass wanted) {
        return of(wanted).stream().filter(Line::carriedOn).count();
    }

    /** The first step of the order of work that is neither settled nor held. */
    public Optional<Step> firstOpen() {
        return lines.stream()
                .filter(line -> line.step().check().isInOrder() && line.open() && !line.held())
                .map(Line::step)
                .findFirst();
    }

    /** What documents prove and this run asks, in the order of the plan. */
    public List<Line> documents() {
        return lines.stream()
                .filter(line -> line.asked() && line.step().check().asDocument().isPresent())
                .toList();
    }

    public boolean scrapped() {
        return lines.stream()
                .map(Line::disposed)
                .flatMap(Optional::stream)
                .anyMatch(disposed -> disposed.disposition() == Disposition.SCRAP);
    }

    /** What the characteristics come to. A balloon that no check of the drawing answers stays open, so the part too. */
    public Outcome outcome() {
        if (putAway().isPresent() && !scrapped()) {
            return Outcome.PUT_AWAY;
        }
        if (scrapped() || characteristics().stream().anyMatch(this::isOut)) {
            return Outcome.DOES_NOT_CONFORM;
        }
        if (holdsWhatIsNotKnown()
                || characteristics().isEmpty()
                || !DrawingAccount.unansweredBy(plan).isEmpty()
                || lines.stream().anyMatch(Line::open)) {
            return Outcome.NOT_COMPLETE;
        }
        if (!leftOut().isEmpty()) {
            return Outcome.ASKED_CONFORMS;
        }
        return concessions() > 0 ? Outcome.CONFORMS_WITH_CONCESSIONS : Outcome.CONFORMS;
    }

    /** Who put the run away and why; absent where nobody did, or it was taken up again. */
    public Optional<Event.PutAway> putAway() {
        return run.entries().stream()
                .map(Entry::event)
                .filter(event -> event.as(Event.PutAway.class).isPresent()
                        || event.as(Event.TakenUp.class).isPresent())
                .reduce((earlier, later) -> later)
                .flatMap(event -> event.as(Event.PutAway.class));
    }

    /** Whether a newer release wrote entries that may mean anything. */
    public boolean holdsWhatIsNotKnown() {
        return !run.unknown().isEmpty();
    }

    /** Out, with no concession; what could still have been cut is out once nothing more will be cut. */
    public boolean isOut(Line line) {
        VerdictKind standing = line.finding().verdict().standing();
        return !line.conceded()
                && (standing == VerdictKind.FAIL
                        || standing == VerdictKind.CUT_AGAIN && run.closed().isPresent());
    }

    /**
     * Whether it tells of the part as a whole: closed, with every step of the plan in it and found out, conforming or
     * not. Another run can stand on it.
     */
    public boolean isWhole() {
        return run.closed().isPresent()
                && leftOut().isEmpty()
                && lines.stream().noneMatch(line -> line.finding().verdict().standing() == VerdictKind.OPEN)
                && outcome() != Outcome.NOT_COMPLETE
                && outcome() != Outcome.PUT_AWAY;
    }

    /** The signatures that speak against the part, in the order they were given. */
    public List<Signature> against() {
        List<Signature> all = run.signatures();
        return all.stream().filter(signature -> signature.standsAgainst(all)).toList();
    }

    /** Whether every characteristic passed and nobody signed against it: nothing else may look like a pass. */
    public boolean conformsUncontested() {
        return outcome() == Outcome.CONFORMS && against().isEmpty();
    }
}
