package org.tenthwise.model.record;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.compute.roundness.CircleFit;
import org.tenthwise.model.compute.roundness.FullIndicatorMovement;
import org.tenthwise.model.compute.roundness.UnfitAngles;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.SectionSlots;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Judge;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * Run-out: the movement against its limit, and where the readings allow it the circle.
 *
 * <p>The highest and the lowest over a full turn speak for all of it. Points can show that a movement is over its
 * limit, wherever they are taken. That it is within the limit they show only where they go all round, and where twice
 * the eccentricity of their circle and what it leaves are within it too ({@link AtSection#wholeTurn}); elsewhere the
 * check stays unproven. Nor is anything within the limit by a figure that is far off: two that are far off alike differ
 * by nothing.
 */
final class RunOutAssessment {

    private final RunOutCheck check;
    private final Map<String, Pass.Reading> standing;
    private final Judge judge;
    private final boolean sound;

    private RunOutAssessment(RunOutCheck check, Pass pass) {
        this.check = check;
        this.standing = pass.standing();
        this.judge = new Judge(Limits.atMost(check.limit()), Length.ZERO, Optional.empty());
        this.sound = !Plausible.spoils(
                check,
                check.bySection().stream()
                        .flatMap(at -> Stream.concat(read(at.sweep()), read(at.byAngle())))
                        .toList(),
                Optional.empty());
    }

    static RunOutFinding of(Step step, RunOutCheck check, Pass pass) {
        return new RunOutAssessment(check, pass).of(step);
    }

    private RunOutFinding of(Step step) {
        List<AtSection> sections = check.bySection().stream().map(this::at).toList();
        Optional<Length> movement =
                sections.stream().flatMap(at -> at.movement().stream()).max(Comparator.naturalOrder());
        return new RunOutFinding(
                step,
                check,
                sections,
                movement,
                verdict(sections, movement),
                sections.stream().mapToInt(this::missing).sum());
    }

    private AtSection at(SectionSlots slots) {
        List<Measured> swept = read(slots.sweep()).toList();
        List<Measured> byAngle = read(slots.byAngle()).toList();
        boolean whole = byAngle.size() == check.angles().size() && sound;
        Optional<UnfitAngles> refusal = whole ? CircleFit.refusal(check.angles()) : Optional.empty();
        Optional<CircleFit> fit = whole && refusal.isEmpty()
                ? Optional.of(CircleFit.of(
                        check.angles(), byAngle.stream().map(Measured::value).toList()))
                : Optional.empty();
        return new AtSection(slots.section(), swept, byAngle, movement(swept), movement(byAngle), fit, refusal);
    }

    /**
     * What stands in these slots, of the gauge that was read last: figures of another differ from its by nothing of the
     * work.
     */
    private Stream<Measured> read(List<Slot> slots) {
        Optional<Optional<Setting>> last = slots.stream()
                .filter(slot -> standing.containsKey(slot.key()))
                .map(slot -> standing.get(slot.key()))
                .max(Comparator.comparingLong(reading -> reading.entry().seq()))
                .map(Pass.Reading::setting);
        return slots.stream()
                .filter(slot -> standing.containsKey(slot.key()))
                .map(slot -> new Measured(
                        standing.get(slot.key()),
                        slot,
                        standing.get(slot.key()).typed().length()))
                .filter(measured ->
                        last.filter(measured.reading().setting()::equals).isPresent());
    }

    private static Optional<Length> movement(List<Measured> read) {
        return read.size() < 2
                ? Optional.empty()
                : Optional.of(FullIndicatorMovement.of(
                        read.stream().map(Measured::value).toList()));
    }

    /** Where nothing was read, the sweep; it is the shorter way, and the one that is judged. */
    private int missing(AtSection at) {
        boolean sweeping = !at.swept().isEmpty() || at.byAngle().isEmpty();
        return sweeping
                ? 2 - at.swept().size()
                : check.angles().size() - at.byAngle().size();
    }

    /** A movement over the limit settles the check before the last reading: further readings can only add to it. */
    private Verdict verdict(List<AtSection> sections, Optional<Length> movement) {
        List<VerdictKind> standings = sections.stream().map(this::standing).toList();
        if (standings.contains(VerdictKind.FAIL) || standings.stream().allMatch(VerdictKind.PASS::equals)) {
            return judge.of(movement.orElseThrow());
        }
        return Verdict.plain(standings.contains(VerdictKind.OPEN) ? VerdictKind.OPEN : VerdictKind.UNPROVEN);
    }

    private VerdictKind standing(AtSection at) {
        if (at.movement().filter(this::isOver).isPresent()) {
            return VerdictKind.FAIL;
        }
        if (missing(at) > 0) {
            return VerdictKind.OPEN;
        }
        boolean proven =
                at.isSwept() || at.wholeTurn().filter(turn -> !isOver(turn)).isPresent();
        return proven && sound ? VerdictKind.PASS : VerdictKind.UNPROVEN;
    }

    private boolean isOver(Length movement) {
        return movement.isAbove(check.limit().length());
    }
}
