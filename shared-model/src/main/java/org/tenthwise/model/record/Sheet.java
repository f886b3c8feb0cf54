package org.tenthwise.model.record;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.verdict.Standing;

/**
 * The whole of a run against its plan: a line for every characteristic, measured or not.
 *
 * @param lines in plan order
 */
public record Sheet(Plan plan, Run run, List<Line> lines) {

    public Sheet {
        lines = List.copyOf(lines);
    }

    public static Sheet of(Plan plan, Run run) {
        Map<Integer, Finding> found = Assessment.of(plan, run);
        Set<Integer> settled = new HashSet<>();
        Set<Integer> waitingFor = new LinkedHashSet<>();
        List<Line> lines = new ArrayList<>();
        for (Step step : plan.steps()) {
            Line line = new Line(step, found.get(step.number()), Assessment.earlier(plan, step, run),
                    run.passes(step), run.dispositions(step), List.copyOf(waitingFor));
            lines.add(line);
            if (line.settled()) {
                settled.add(step.number());
            }
            step.hold().stream().filter(number -> !settled.contains(number)).forEach(waitingFor::add);
        }
        return new Sheet(plan, run, lines);
    }

    /** @throws NoSuchElementException if the plan has no such step */
    public Line line(int step) {
        return lines.stream().filter(line -> line.step().number() == step).findFirst()
                .orElseThrow(() -> new NoSuchElementException("The plan has no step " + step));
    }

    public long count(Standing standing) {
        return lines.stream().filter(line -> line.finding().verdict().standing() == standing).count();
    }

    public long concessions() {
        return lines.stream().filter(line -> line.conceded() && !line.finding().verdict().passed()).count();
    }

    public boolean allPassed() {
        return lines.stream().allMatch(line -> line.finding().verdict().passed());
    }

    /** The first step that is neither settled nor held. */
    public Optional<Step> firstOpen() {
        return lines.stream().filter(line -> !line.settled() && !line.held()).map(Line::step).findFirst();
    }

    public boolean scrapped() {
        return lines.stream().map(Line::disposed).flatMap(Optional::stream)
                .anyMatch(disposed -> disposed.disposition() == Disposition.SCRAP);
    }

    public Outcome outcome() {
        Optional<Event.Closed> closed = run.closed();
        if (closed.isEmpty()) {
            return Outcome.UNFINISHED;
        }
        if (scrapped()) {
            return Outcome.SCRAPPED;
        }
        if (allPassed()) {
            return Outcome.RELEASED;
        }
        return lines.stream().allMatch(Line::settled) ? Outcome.RELEASED_WITH_CONCESSION : Outcome.NOT_RELEASED;
    }
}
