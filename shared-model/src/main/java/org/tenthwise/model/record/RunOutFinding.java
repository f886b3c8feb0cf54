package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.compute.roundness.ShiftAndTilt;
import org.tenthwise.model.compute.roundness.TruingUp;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.verdict.Verdict;

/**
 * A run-out check.
 *
 * @param sections what was read at each, the one nearest to the jaws first; at least one
 * @param movement the greatest full indicator movement at any section, over a turn or by points; absent before there is
 *     one
 * @param missing readings still to come for a verdict
 */
public record RunOutFinding(
        Step step, RunOutCheck check, List<AtSection> sections, Optional<Length> movement, Verdict verdict, int missing)
        implements Finding {

    public RunOutFinding {
        sections = List.copyOf(sections);
    }

    /** Section by section, the sweep before the readings by angle. */
    @Override
    public List<Measured> measured() {
        return sections.stream()
                .flatMap(at -> Stream.concat(at.swept().stream(), at.byAngle().stream()))
                .toList();
    }

    /** The movement. */
    @Override
    public Optional<Length> value() {
        return movement;
    }

    @Override
    public boolean isOfOneSize() {
        return true;
    }

    @Override
    public List<Measured> farOff() {
        return Plausible.farOff(check, measured());
    }

    @Override
    public boolean awaitsAnother() {
        return false;
    }

    @Override
    public Optional<RunOutFinding> asTurn() {
        return Optional.of(this);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.runOut(this);
    }

    /** The section nearest to the jaws. */
    public AtSection near() {
        return sections.get(0);
    }

    /** How the axis of the work lies, by the circles at two sections; absent where there is not a circle at both. */
    public Optional<ShiftAndTilt> shiftAndTilt() {
        if (sections.size() < 2) {
            return Optional.empty();
        }
        AtSection far = sections.get(1);
        return near().fit().flatMap(close -> far.fit()
                .map(away -> new ShiftAndTilt(
                        near().section().orElseThrow().at().length(),
                        close.centre(),
                        far.section().orElseThrow().at().length(),
                        away.centre())));
    }

    /** Whether a section alone is over the limit. */
    public boolean isOver(AtSection at) {
        return at.movement()
                .filter(movement -> movement.isAbove(check.limit().length()))
                .isPresent();
    }

    /**
     * What to do about it. Absent where nothing is over; where a figure is far off; and where there is no circle at the
     * section nearest to the jaws. While anything is still to be read, only that nothing is to be moved, for form or
     * for a contradiction at the near section: a jaw moved between two readings leaves those before it of no use.
     */
    public Optional<TruingUp> truingUp() {
        return TruingUpAssessment.of(this);
    }

    /**
     * What is to be read before the work is moved, in the order of the hand: the rest of the full turns where one was
     * begun, and the rest of the readings by angle, section by section.
     */
    public List<Slot> stillToRead() {
        List<Slot> read = measured().stream().map(Measured::slot).toList();
        Stream<Slot> turns = check.bySection().stream().filter(at -> swept()).flatMap(at -> at.sweep().stream());
        return Stream.concat(turns, check.bySection().stream().flatMap(at -> at.byAngle().stream()))
                .filter(slot -> !read.contains(slot))
                .toList();
    }

    /** Whether a full turn was begun or swept at any section. */
    public boolean swept() {
        return sections.stream().anyMatch(at -> !at.swept().isEmpty());
    }
}
