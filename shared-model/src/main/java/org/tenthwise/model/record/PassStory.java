package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * One pass of a step in full: everything that was taken in it, struck out or not, each with whether it counts, and what
 * it came to. Records and files for programs are renderings of this.
 *
 * @param found absent for an earlier pass in which nothing was taken
 * @param register how what the cuts took off is counted; absent where the machine's register is not known, and for what
 *     it does not count
 * @param readings in the order they were taken, as temperatures, answers and papers
 */
public record PassStory(
        Line line,
        Pass pass,
        Optional<Finding> found,
        Optional<Register> register,
        List<Taken<Pass.Reading>> readings,
        List<Taken<Pass.Temperature>> temperatures,
        List<Taken<Pass.Answering>> answers,
        List<Taken<Pass.Giving>> documents) {

    /** The passes of {@code line} in their order, the one in hand last. */
    public static List<PassStory> of(Run run, Line line) {
        return line.passes().stream().map(pass -> of(run, line, pass)).toList();
    }

    private static PassStory of(Run run, Line line, Pass pass) {
        Step step = line.step();
        Optional<Finding> found = line.found(pass);
        return new PassStory(
                line,
                pass,
                found,
                run.register().filter(any -> step.check().isTurned()),
                pass.readings().stream()
                        .map(reading -> new Taken<>(
                                reading.entry(),
                                reading,
                                reading.setting(),
                                reading.setting().flatMap(set -> Calibrated.of(run, step, reading.entry())),
                                reading.struck(),
                                counting(found, reading).isPresent()))
                        .toList(),
                pass.temperatures().stream()
                        .map(temperature -> new Taken<>(
                                temperature.entry(),
                                temperature,
                                Optional.empty(),
                                Optional.empty(),
                                temperature.struck(),
                                pass.taking(temperature.of()).equals(Optional.of(temperature))))
                        .toList(),
                pass.answers().stream()
                        .map(answering -> new Taken<>(
                                answering.entry(),
                                answering,
                                run.gauges().settingBefore(answering.entry(), step),
                                Calibrated.of(run, step, answering.entry()),
                                answering.struck(),
                                pass.answering(answering.question().today()).equals(Optional.of(answering))))
                        .toList(),
                pass.documents().stream()
                        .map(giving -> new Taken<>(
                                giving.entry(),
                                giving,
                                Optional.empty(),
                                Optional.empty(),
                                giving.struck(),
                                pass.giving().equals(Optional.of(giving))))
                        .toList());
    }

    public Step step() {
        return line.step();
    }

    /** What was found, without a proposal where its readings contradict the cut before. */
    public Optional<Finding> finding() {
        return found.map(finding -> CutSoFar.contradicted(line, pass) ? finding.proposing(Optional.empty()) : finding);
    }

    /** What the cut it was begun for took off; absent where it was begun for none, or nobody can tell. */
    public Optional<CutSoFar> cut() {
        return CutSoFar.before(pass, line);
    }

    /**
     * The verdict on a reading by itself; absent for one that does not count, and where the check judges several
     * together.
     */
    public Optional<VerdictKind> standing(Pass.Reading reading) {
        return counting(reading)
                .flatMap(measured -> found.flatMap(of -> of.alone(measured)))
                .map(Verdict::standing);
    }

    /**
     * What a reading came to, or would have come to if it counted; absent for one over wires that does not, as the
     * wires on it were never reckoned with, and for one that comes to nothing without others.
     */
    public Optional<Measured> measured(Pass.Reading reading) {
        Check check = step().check();
        Optional<Measured> alone =
                check.underWires().isPresent() || check.asWorked().isPresent()
                        ? Optional.empty()
                        : Optional.of(alone(reading));
        return counting(reading).or(() -> alone);
    }

    /**
     * What wires make a reading bigger than the pitch diameter; absent for one that does not count, and without wires.
     */
    public Optional<Length> overWires(Pass.Reading reading) {
        return counting(reading).flatMap(measured -> found.flatMap(of -> of.overWires(measured)));
    }

    private Measured alone(Pass.Reading reading) {
        Measured read = Measured.of(reading, slot(reading));
        Measured atTwenty = warmth().flatMap(TemperatureEffect::correction)
                .map(read::corrected)
                .orElse(read);
        return step().check()
                .asSize()
                .map(size -> atTwenty.corrected(Touch.of(size, pass)))
                .orElse(atTwenty);
    }

    /** What heat means to it; absent where the plan says nothing of heat. */
    public Optional<TemperatureEffect> warmth() {
        return found.flatMap(Finding::warmth);
    }

    private Optional<Measured> counting(Pass.Reading reading) {
        return counting(found, reading);
    }

    private static Optional<Measured> counting(Optional<Finding> finding, Pass.Reading reading) {
        return finding.stream()
                .flatMap(of -> of.measured().stream())
                .filter(measured ->
                        measured.reading().entry().seq() == reading.entry().seq())
                .findFirst();
    }

    /** Where a reading was taken. */
    public Slot slot(Pass.Reading reading) {
        return step().check()
                .slot(reading.slot())
                .orElseGet(() -> new Slot(reading.slot(), Place.named(reading.slot()), 1));
    }
}
