package org.tenthwise.app.session;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.SectionSlots;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.record.AtSection;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * What of a run-out is read next: a full turn at every section first. Where that is inside nothing more is asked; where
 * it is over, the readings by angle, section by section, which tell to which side. Read by angle first, they come
 * first; where they cannot prove it, a full turn is asked then. What is not asked by itself can be asked for.
 */
final class RunOutOrder {

    /**
     * The readings of one kind at one section.
     *
     * @param taken those of {@code slots} that count
     */
    private record Group(List<Slot> slots, List<Measured> taken) {

        boolean isWhole() {
            return taken.size() == slots.size();
        }

        boolean isHalfDone() {
            return !taken.isEmpty() && !isWhole();
        }

        boolean has(Slot slot) {
            return slots.contains(slot);
        }

        /** Round the turn from the one read last, so that nobody turns the work back. */
        Slot next() {
            int after = taken.stream()
                    .max(Comparator.comparingLong(read -> read.reading().entry().seq()))
                    .map(last -> slots.indexOf(last.slot()) + 1)
                    .orElse(0);
            return IntStream.range(after, after + slots.size())
                    .mapToObj(i -> slots.get(i % slots.size()))
                    .filter(slot -> taken.stream().noneMatch(read -> read.slot().equals(slot)))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private final RunOutFinding finding;
    private final List<Group> sweeps;
    private final List<Group> byAngle;

    RunOutOrder(RunOutFinding finding) {
        this.finding = finding;
        List<SectionSlots> slots = finding.check().bySection();
        List<AtSection> read = finding.sections();
        this.sweeps = IntStream.range(0, slots.size())
                .mapToObj(i -> new Group(slots.get(i).sweep(), read.get(i).swept()))
                .toList();
        this.byAngle = IntStream.range(0, slots.size())
                .mapToObj(i -> new Group(slots.get(i).byAngle(), read.get(i).byAngle()))
                .toList();
    }

    /** @param sweep whether a full turn was asked for, or readings by angle; absent where neither was */
    Optional<Prompt.Reading> next(Optional<Boolean> sweep) {
        Optional<Group> wanted =
                sweep.flatMap(turn -> missing(turn ? sweeps : byAngle)).or(this::byItself);
        return wanted.map(group -> new Prompt.Reading(
                group.next(), group.taken().size(), group.slots().size()));
    }

    private Optional<Group> byItself() {
        VerdictKind standing = finding.verdict().standing();
        if (standing == VerdictKind.PASS) {
            return Optional.empty();
        }
        boolean pointsFirst = !finding.swept()
                && byAngle.stream().anyMatch(group -> !group.taken().isEmpty());
        Optional<Group> points = missing(byAngle);
        if (pointsFirst && points.isPresent()) {
            return points;
        }
        if (standing == VerdictKind.FAIL && pointsFirst) {
            return Optional.empty();
        }
        return missing(sweeps).or(() -> points.filter(group -> standing == VerdictKind.FAIL));
    }

    private static Optional<Group> missing(List<Group> groups) {
        return groups.stream().filter(group -> !group.isWhole()).findFirst();
    }

    /** Whether that way can be asked for now: something of it is missing, and no turn is swept by half. */
    boolean canTurnTo(boolean sweep) {
        return sweep
                ? missing(sweeps).isPresent()
                : missing(byAngle).isPresent() && sweeps.stream().noneMatch(Group::isHalfDone);
    }

    static boolean isOfATurn(RunOutCheck check, Slot slot) {
        return check.bySection().stream().anyMatch(at -> at.sweep().contains(slot));
    }

    /** The reading by angle that stands alone at its section, the last of all: it can be put to another place. */
    Optional<Measured> alone() {
        return Stream.concat(sweeps.stream(), byAngle.stream())
                .flatMap(group -> group.taken().stream())
                .max(Comparator.comparingLong(read -> read.reading().entry().seq()))
                .filter(last ->
                        group(last).filter(group -> group.taken().size() == 1).isPresent());
    }

    /** Where the reading that stands alone can have been taken instead. */
    List<Slot> otherPlaces(Measured alone) {
        return group(alone).orElseThrow().slots().stream()
                .filter(slot -> !slot.equals(alone.slot()))
                .toList();
    }

    private Optional<Group> group(Measured byAngleRead) {
        return byAngle.stream().filter(group -> group.has(byAngleRead.slot())).findFirst();
    }
}
