package org.tenthwise.model.record;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.form.WallForm;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.IndicatedCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.verdict.Verdict;

/**
 * A bore, a width, an outside diameter or a depth, or another dimension that is read and judged so.
 *
 * @param measured readings that count, in slot order
 * @param value the size judged; absent before the first reading
 * @param deciding the reading that decides, where one does (not for a mean or a range)
 * @param past a place past size while the size judged still has metal left: no cut puts that right. Never where the
 *     drawing makes one size of all readings
 * @param proposal what may be cut next; absent until every place is read or someone signed to cut on what is there, and
 *     where there is nothing to cut
 * @param flanks of the thread whose groove or root it is; absent for anything else, and where nothing may come off
 * @param form what the readings say about the wall
 * @param warmth absent where the plan says nothing of heat, and for a range
 */
public record SizeFinding(
        Step step,
        CheckOfDimension check,
        List<Measured> measured,
        Optional<Length> value,
        Optional<Measured> deciding,
        Optional<Measured> past,
        Optional<Proposal> proposal,
        Optional<Flanks> flanks,
        WallForm form,
        Verdict verdict,
        int missing,
        Optional<TemperatureEffect> warmth)
        implements Finding {

    public SizeFinding {
        measured = List.copyOf(measured);
    }

    @Override
    public SizeFinding proposing(Optional<Proposal> proposed) {
        return new SizeFinding(
                step, check, measured, value, deciding, past, proposed, flanks, form, verdict, missing, warmth);
    }

    /** The flanks let none be taken. */
    @Override
    public boolean forbidsCutting() {
        return flanks.filter(Flanks::forbidCutting).isPresent();
    }

    @Override
    public Optional<Integer> measuredFirst() {
        return flanks.filter(thread -> thread.how() == Flanks.How.UNKNOWN).map(Flanks::step);
    }

    @Override
    public boolean isOfOneSize() {
        return true;
    }

    @Override
    public List<Measured> farOff() {
        return Plausible.farOff(check, measured);
    }

    @Override
    public boolean showsSizes() {
        return check.asSize().isPresent() && check.combine() != Combine.RANGE && !touchUnsaid();
    }

    @Override
    public Optional<Measured> greatestBesideDeciding() {
        return deciding.filter(one -> check.combine() == Combine.SIXTEEN_PERCENT)
                .flatMap(one -> measured.stream()
                        .max(Comparator.comparing(Measured::value))
                        .filter(greatest -> greatest.value().isAbove(one.value())));
    }

    /** By the 16 % rule no more is measured than it takes. */
    @Override
    public int readingsInAll() {
        return check.combine() == Combine.SIXTEEN_PERCENT
                ? measured.size() + missing
                : check.slots().size();
    }

    @Override
    public boolean awaitsAnother() {
        return false;
    }

    @Override
    public boolean provenByAnotherTry() {
        return check.asIndicated().map(IndicatedCheck::isOfItsDatum).orElse(true);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.size(this);
    }

    /** Whether nobody has said yet how the gauge touched the work, though the size hangs on it. */
    boolean touchUnsaid() {
        return !check.questions().isEmpty()
                && measured.stream().anyMatch(read -> read.forContact().isEmpty());
    }

    @Override
    public Optional<Verdict> alone(Measured reading) {
        return ByItself.of(
                check,
                reading,
                warmth.filter(heat -> heat.missing() > 0).isPresent() || touchUnsaid(),
                false,
                Plausible.spoils(this));
    }
}
