package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.tolerance.Limits;

/**
 * A place of a size that was read again and came out otherwise by more than measuring can, though by the ledger nothing
 * was done to the work between: one of the two readings is wrong, or a cut was not entered.
 *
 * @param before of an earlier round
 * @param now of the round in hand, at the same place
 */
public record ReadOtherwise(Measured before, Measured now) {

    private static final BigDecimal TENTH = new BigDecimal("0.1");

    /**
     * The place that differs most from the latest earlier round with one; absent where none does. Rounds are told apart
     * only as far back as each was begun by reading again, and never over anything that was cut or moved between two
     * readings, at whatever check. Struck-out readings are none, and neither is a round with a figure that is far off,
     * or by which the last cut left more metal than there was: of that one it is known.
     *
     * <p>Two readings of one size may differ by as much as both together may lie from it: each by the expanded
     * uncertainty of the plan, with that of a correction for warmth. Where the plan names none, a tenth of the
     * tolerance stands for it, which a gauge is usually allowed to be wrong by (the rule of ten, common practice).
     * Warmth that nobody takes off comes on top.
     *
     * <p>Source: JCGM 100:2008 (GUM), 6.2.1: a size lies within its expanded uncertainty of what was measured; so two
     * such ranges about one size overlap.
     */
    public static Optional<ReadOtherwise> of(Line line, Run run) {
        List<Pass> passes = line.passes();
        Finding now = line.finding();
        for (int i = passes.size() - 1; i > 0 && isReadAgain(passes.get(i)); i--) {
            Pass earlier = passes.get(i - 1);
            Optional<ReadOtherwise> otherwise = line.found(earlier)
                    .filter(before -> !CutSoFar.contradicted(line, earlier))
                    .flatMap(before -> greatest(before, now, run));
            if (otherwise.isPresent()) {
                return otherwise;
            }
        }
        return Optional.empty();
    }

    /** How far the two are apart. */
    private Length apart() {
        return now.value().minus(before.value()).abs();
    }

    private static boolean isReadAgain(Pass pass) {
        return pass.why().filter(Why.MEASURED_AGAIN::equals).isPresent();
    }

    private static Optional<ReadOtherwise> greatest(Finding before, Finding now, Run run) {
        if (!tells(before) || !tells(now)) {
            return Optional.empty();
        }
        Map<Slot, Measured> then =
                before.measured().stream().collect(Collectors.toMap(Measured::slot, measured -> measured));
        return now.measured().stream()
                .filter(measured -> then.containsKey(measured.slot()))
                .map(measured -> new ReadOtherwise(then.get(measured.slot()), measured))
                .filter(pair -> pair.isMoreThanMeasuring(before, now) && !pair.isWorkedOnBetween(run))
                .max(Comparator.comparing(ReadOtherwise::apart));
    }

    /** Whether its readings are sizes as they are. */
    private static boolean tells(Finding finding) {
        return finding.check().asSize().isPresent()
                && finding.showsSizes()
                && !Plausible.spoils(finding)
                && finding.warmth().filter(heat -> heat.missing() > 0).isEmpty();
    }

    private boolean isMoreThanMeasuring(Finding earlier, Finding later) {
        return mayBeOff(before, earlier)
                .flatMap(then -> mayBeOff(now, later).map(then::plus))
                .filter(apart()::isAbove)
                .isPresent();
    }

    /** How far a reading may lie from the size; absent where nothing tells. */
    private static Optional<Length> mayBeOff(Measured measured, Finding finding) {
        Length ofCorrection = finding.warmth()
                .map(heat -> heat.correctionUncertainty(measured.value()))
                .orElse(Length.ZERO);
        Length uncorrected = finding.warmth()
                .filter(heat -> !heat.needed())
                .map(heat -> heat.worst().worst())
                .orElse(Length.ZERO);
        return finding.check()
                .means()
                .flatMap(Check.Means::uncertainty)
                .map(uncertainty -> uncertainty.expandedWith(ofCorrection))
                .or(() -> tolerance(finding).map(width -> width.times(TENTH)))
                .map(off -> off.plus(uncorrected));
    }

    private static Optional<Length> tolerance(Finding finding) {
        return finding.check().asSize().flatMap(CheckOfSize::limitsOfASize).flatMap(Limits::width);
    }

    private boolean isWorkedOnBetween(Run run) {
        long from = before.reading().entry().seq();
        long to = now.reading().entry().seq();
        return run.entries().stream()
                .filter(entry -> entry.seq() > from && entry.seq() < to)
                .map(Entry::event)
                .anyMatch(event -> event.takesMetal()
                        || event.as(StepEvent.PassBegun.class)
                                .filter(begun -> begun.why() == Why.MOVED)
                                .isPresent());
    }
}
