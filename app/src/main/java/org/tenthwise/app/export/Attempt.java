package org.tenthwise.app.export;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.TemperatureEffect;
import org.tenthwise.model.record.Touch;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * One pass of a characteristic, with what it came to.
 *
 * @param finding absent for an earlier pass in which nothing was read or answered; without a proposal where its
 *     readings contradict the cut before
 * @param cut what the cut it was begun for took off; absent where it was begun for none, or nobody can tell
 */
public record Attempt(Run run, Step step, Run.Pass pass, Optional<Finding> finding, Optional<CutSoFar> cut) {

    /** The passes of {@code line} in their order, the one in hand last. */
    public static List<Attempt> of(Run run, Line line) {
        return line.passes().stream()
                .map(pass -> new Attempt(run, line.step(), pass, found(pass, line), CutSoFar.before(pass, line)))
                .toList();
    }

    private static Optional<Finding> found(Run.Pass pass, Line line) {
        return line.found(pass)
                .map(found -> CutSoFar.contradicted(line, pass) ? found.proposing(Optional.empty()) : found);
    }

    /** Whether a reading is one of those the pass is judged by: neither struck out nor taken again. */
    public boolean counts(Run.Reading reading) {
        return counting(reading).isPresent();
    }

    /**
     * Whether an answer is one of those the pass is judged by: neither struck out nor given again, nor read on after it
     * was given for all readings.
     */
    public boolean counts(Run.Answering answering) {
        return pass.answering(answering.question().today())
                .filter(answering::equals)
                .isPresent();
    }

    /**
     * The verdict on a reading by itself; absent for one that does not count, and where the check judges several
     * together.
     */
    Optional<VerdictKind> standing(Run.Reading reading) {
        return counting(reading)
                .flatMap(measured -> finding.flatMap(of -> of.alone(measured)))
                .map(Verdict::standing);
    }

    /**
     * What a reading came to, or would have come to if it counted; absent for one over wires that does not, as the
     * wires on it were never reckoned with.
     */
    public Optional<Measured> measured(Run.Reading reading) {
        Optional<Measured> alone =
                step.check().underWires().isPresent() ? Optional.empty() : Optional.of(alone(reading));
        return counting(reading).or(() -> alone);
    }

    /**
     * What wires make a reading bigger than the pitch diameter; absent for one that does not count, and without wires.
     */
    Optional<Length> overWires(Run.Reading reading) {
        return counting(reading).flatMap(measured -> finding.flatMap(of -> of.overWires(measured)));
    }

    private Measured alone(Run.Reading reading) {
        Measured read = Measured.of(reading, slot(reading));
        Measured atTwenty = warmth().flatMap(TemperatureEffect::correction)
                .map(read::corrected)
                .orElse(read);
        return step.check()
                .asSize()
                .map(size -> atTwenty.corrected(Touch.of(size, pass)))
                .orElse(atTwenty);
    }

    /** What heat means to it; absent where the plan says nothing of heat. */
    Optional<TemperatureEffect> warmth() {
        return finding.flatMap(Finding::warmth);
    }

    /** Whether a temperature is one of those the pass is corrected by: neither struck out nor taken again. */
    public boolean counts(Run.Temperature temperature) {
        return pass.taking(temperature.of()).filter(temperature::equals).isPresent();
    }

    private Optional<Measured> counting(Run.Reading reading) {
        return finding.stream()
                .flatMap(of -> of.measured().stream())
                .filter(measured ->
                        measured.reading().entry().seq() == reading.entry().seq())
                .findFirst();
    }

    /**
     * How what the cuts took off is counted; absent where the machine's register is not known, and for what it does not
     * count.
     */
    Optional<Register> register() {
        return run.register().filter(any -> step.check().isTurned());
    }

    /** Where a reading was taken. */
    public Slot slot(Run.Reading reading) {
        return step.check()
                .slot(reading.slot())
                .orElseGet(() -> new Slot(reading.slot(), Place.named(reading.slot()), 1));
    }

    /** The gauge an answer was found with; absent for what is answered without one. */
    public Optional<Setting> setting(Run.Answering answering) {
        return run.entries().stream()
                .filter(entry -> entry.seq() < answering.entry().seq())
                .flatMap(entry -> entry.event().as(Event.GaugeSet.class).stream())
                .filter(set -> set.step() == step.number())
                .map(Event.GaugeSet::setting)
                .reduce((earlier, later) -> later);
    }
}
