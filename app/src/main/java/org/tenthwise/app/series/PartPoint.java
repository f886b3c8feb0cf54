package org.tenthwise.app.series;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.history.PartSize;
import org.tenthwise.app.history.ReadingSummary.GaugeMark;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.SizeSummary;
import org.tenthwise.app.history.SizeSummary.Bounds;
import org.tenthwise.app.history.StepSummary;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * One part of a series.
 *
 * @param run the last in which it was measured
 * @param step what it came to there
 * @param found how that was found
 * @param asCut as it was cut, in the first run in which it was measured against the same limits
 * @param finish as it was left
 * @param at when the size as it was cut was read: its place in the order
 * @param entry place in the ledger of the last reading behind that
 * @param timesMeasured in how many runs
 * @param outBefore whether it was found out in an earlier run
 */
public record PartPoint(
        RunFacts run,
        StepSummary step,
        SizeSummary found,
        PartSize asCut,
        PartSize finish,
        OffsetDateTime at,
        long entry,
        int timesMeasured,
        boolean outBefore) {

    /** In force when it was judged last. */
    public Limits limits() {
        return step.limits().orElseThrow();
    }

    /** Of its limits and sizes. */
    public Unit unit() {
        return limits().unit();
    }

    /** With how many decimals its size is written. */
    public int places() {
        return step.places();
    }

    /** As it was cut, or as it was left. */
    public PartSize size(SizeOf which) {
        return which == SizeOf.AS_CUT ? asCut : finish;
    }

    /** In the last run in which it was measured. */
    public VerdictKind verdict() {
        return step.verdict().standing();
    }

    /** What became of it, dispositions counted. */
    public PartStanding standing() {
        return PartStanding.of(run, verdict(), found.conceded());
    }

    /** Whether it counts against the parts, now or when it was measured before. */
    public boolean isReject() {
        return outBefore || standing().isReject();
    }

    /** What it was read with in that run. */
    public List<GaugeMark> gauges() {
        return found.gauges();
    }

    /** Who read it there. */
    public List<String> people() {
        return found.people();
    }

    /** How often metal came off after it was first measured. */
    public int cuts() {
        return found.cuts();
    }

    /** Whether its run can still change it. */
    public boolean open() {
        return !run.closed();
    }

    /** Where the size judged lies in the tolerance; absent where no such place can be told. */
    public Optional<TolerancePlace> place(SizeOf which) {
        return place(size(which).judged());
    }

    /** The same of any size of it. */
    public Optional<TolerancePlace> place(Length size) {
        return TolerancePlace.of(size, limits(), found.bounds());
    }

    /** Whether its limits are those of every part, and none of them is only where sizes end by nature. */
    boolean isIndexed() {
        return found.bounds() == Bounds.PLAIN;
    }

    /** In the unit of the limits. */
    BigDecimal figure(Length size) {
        return size.in(unit());
    }
}
