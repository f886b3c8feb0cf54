package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;

/**
 * What one of the cuts so far took off a size or a thread, by the places that were read before it and after it.
 *
 * @param number 1 for the first cut of the step
 * @param asked what was offered before it, on the size, more than zero; absent where nothing was
 * @param atMost the most that might come off, where nothing was offered and that much could be cut, on the size; absent
 *     otherwise
 * @param cameOff mean of what came off, on the size; less than zero where the size went the other way
 * @param said how the register was said to count when it was asked for; absent where nobody said, and for what no
 *     register counts across the axis
 */
public record CutSoFar(
        int number, Optional<Length> asked, Optional<Length> atMost, Length cameOff, Optional<Register> said) {

    /** So many times as much: no tool springs by that. */
    private static final BigDecimal TWICE_FROM = new BigDecimal("1.8");

    private static final BigDecimal TWICE_TO = new BigDecimal("2.2");

    /** Less than this tells nothing of how a register counts: the tool gives way by as much. */
    private static final Length TELLING = Length.of("0.05", Unit.MILLIMETRE);

    /**
     * In the order they were made; where the work was measured again after a cut and before anything else was done to
     * it, by what was read last. A cut without a place that was read before it and after it is left out, and so is one
     * beside a figure that is far off, one of a size that may lie on either side of its metal, or where a temperature,
     * how the gauge touched or the root under the wires is still to be told: nobody can tell what it took off. So is
     * every cut before a range.
     */
    public static List<CutSoFar> of(Line line) {
        return of(line, line.pass());
    }

    private static List<CutSoFar> of(Line line, Pass upTo) {
        List<CutSoFar> cuts = new ArrayList<>();
        Optional<Finding> last = Optional.empty();
        Optional<Finding> before = Optional.empty();
        for (Pass pass : line.passes().subList(0, upTo.number())) {
            Optional<Finding> here = line.found(pass);
            if (pass.isAfterACut()) {
                before = last;
            } else if (pass.why()
                    .filter(StepEvent.PassBegun.Why.MEASURED_AGAIN::equals)
                    .isEmpty()) {
                before = Optional.empty();
            }
            between(line.cutsBefore(pass), before, here).ifPresent(cut -> {
                cuts.removeIf(told -> told.number() == cut.number());
                cuts.add(cut);
            });
            last = here.map(found -> contradicted(cuts, line, pass) ? found.proposing(Optional.empty()) : found);
        }
        return List.copyOf(cuts);
    }

    /** What the cut took off that a pass was begun for; absent where it was begun for none, or nobody can tell. */
    public static Optional<CutSoFar> before(Pass pass, Line line) {
        return pass.isAfterACut()
                ? of(line).stream()
                        .filter(cut -> cut.number() == line.cutsBefore(pass))
                        .findFirst()
                : Optional.empty();
    }

    private static Optional<CutSoFar> between(int number, Optional<Finding> before, Optional<Finding> after) {
        Map<Slot, Length> then = before.map(CutSoFar::sizes).orElse(Map.of());
        Map<Slot, Length> now = after.map(CutSoFar::sizes).orElse(Map.of());
        List<Slot> both = then.keySet().stream().filter(now::containsKey).toList();
        Optional<Feature.Side> side = after.flatMap(
                        found -> found.step().check().asSize())
                .flatMap(size -> size.feature().side());
        if (both.isEmpty() || side.isEmpty()) {
            return Optional.empty();
        }
        Length was = Length.mean(both.stream().map(then::get).toList());
        Length is = Length.mean(both.stream().map(now::get).toList());
        Length off = side.get() == Feature.Side.OUTSIDE ? was.minus(is) : is.minus(was);
        Optional<Proposal> proposed = before.orElseThrow().proposal();
        return Optional.of(new CutSoFar(
                number,
                proposed.flatMap(Proposal::change).map(Length::abs),
                proposed.flatMap(
                        proposal -> proposal.atMost(size(before.orElseThrow().step()))),
                off,
                proposed.flatMap(Proposal::register)));
    }

    /**
     * What the last cut of a step took off; absent where nobody can tell, and where anything but measuring was done to
     * the work since.
     */
    public static Optional<CutSoFar> last(Line line) {
        return last(of(line), line, line.pass());
    }

    private static Optional<CutSoFar> last(List<CutSoFar> cuts, Line line, Pass in) {
        int number = line.cutsBefore(in);
        boolean doneSince = line.passes().stream()
                .limit(in.number())
                .filter(pass -> line.cutsBefore(pass) == number && !pass.isAfterACut())
                .flatMap(pass -> pass.why().stream())
                .anyMatch(why -> why != StepEvent.PassBegun.Why.MEASURED_AGAIN
                        && why != StepEvent.PassBegun.Why.RESTED_ON_CHANGED);
        return doneSince
                ? Optional.empty()
                : cuts.stream().filter(cut -> cut.number() == number).findFirst();
    }

    /**
     * Whether the last cut of a step is said to have left more metal than there was, by more than half the tolerance.
     * No cut does, and no gauge is that far out: what was read before it or after it is wrong, and nothing can be cut
     * by it.
     */
    public static boolean contradicted(Line line) {
        return contradicted(line, line.pass());
    }

    /**
     * The same as it stood at the end of one of the passes: what would have been proposed in that one was told to
     * nobody.
     */
    public static boolean contradicted(Line line, Pass in) {
        return contradicted(of(line, in), line, in);
    }

    private static boolean contradicted(List<CutSoFar> cuts, Line line, Pass in) {
        return last(cuts, line, in)
                .filter(cut -> cut.leftMoreThanThereWas(size(line.step()).limits()))
                .isPresent();
    }

    /** The same of one cut; never where one limit is, for then nothing tells how much is much. */
    public boolean leftMoreThanThereWas(Limits limits) {
        return limits.width()
                .filter(width -> cameOff.negated().isAbove(width.half()))
                .isPresent();
    }

    /**
     * Whether hardly anything came off of what was asked, or might come off: no more than a tenth of it, which two
     * readings of a work that nothing was cut from can differ by as well. The edge rubbed, or there was no cut; what
     * was typed into the control then is still to come off, all of it, so this is told of the smallest cut too.
     *
     * <p>Source: common practice.
     */
    public boolean tookNothing() {
        return asked.or(() -> atMost)
                .filter(wanted -> !cameOff.times(BigDecimal.TEN).isAbove(wanted))
                .isPresent();
    }

    /** How much of what was asked still stands; absent where nothing was asked, zero where as much came off or more. */
    Optional<Length> leftStanding() {
        return asked.map(wanted -> wanted.minus(cameOff)).map(left -> left.signum() > 0 ? left : Length.ZERO);
    }

    /**
     * How the register seems to count, not as it was said: half of what was asked came off where it was said to count
     * radii, twice as much, or twice the most, where it was said to count diameters. Absent where nothing tells so.
     */
    public Optional<Register> countsRather() {
        return said.flatMap(register -> register == Register.RADIUS
                ? asked.filter(CutSoFar::isTelling)
                        .filter(typed -> isTwice(typed, cameOff))
                        .map(half -> Register.DIAMETER)
                : asked.or(() -> atMost)
                        .filter(CutSoFar::isTelling)
                        .filter(typed -> isTwice(cameOff, typed))
                        .map(twice -> Register.RADIUS));
    }

    private static boolean isTelling(Length typed) {
        return !typed.isBelow(TELLING);
    }

    private static boolean isTwice(Length more, Length less) {
        return !more.isBelow(less.times(TWICE_FROM)) && !more.isAbove(less.times(TWICE_TO));
    }

    /** Of a step with sizes before and after a cut. */
    private static CheckOfSize size(Step step) {
        return step.check().asSize().orElseThrow();
    }

    /** None where they say nothing. */
    private static Map<Slot, Length> sizes(Finding finding) {
        boolean telling = finding.showsSizes()
                && !Plausible.spoils(finding)
                && finding.warmth().filter(heat -> heat.missing() > 0).isEmpty();
        return telling
                ? finding.measured().stream().collect(Collectors.toMap(Measured::slot, Measured::value))
                : Map.of();
    }
}
