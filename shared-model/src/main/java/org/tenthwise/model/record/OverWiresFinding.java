package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.thread.ClearingWire;
import org.tenthwise.model.compute.thread.WireSizes;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.verdict.Verdict;

/**
 * Pitch diameter over three wires.
 *
 * @param readings in slot order; their values are pitch diameters by the exact solution
 * @param wire certified diameter of the wires; absent until they are set
 * @param sizes best, least and greatest wire for the thread
 * @param leadAngle degrees, at the basic pitch diameter
 * @param rootClearance least room between wire and root over the readings; absent where no minor diameter is known
 * @param basicClearance the same over the basic root, where the plan gives no root: whether the wire rests on the one
 *     that was cut cannot be told then
 * @param rootAwaited whether another step is still to measure the root: until then no reading proves anything
 * @param grooveOver the step whose depth would be over its upper limit by any cut that could be taken here; absent
 *     where it would not. No cut is offered then
 * @param rootUnder how far the next cut would take the root under its own lower limit, after what was cut over wires
 *     since it was measured; absent where it would not. No cut is offered then
 * @param rootCutSince whether anything was cut over wires after the root was measured: what is known of it is of before
 * @param rootStale whether the root must be measured anew before a cut is offered: it would go under by what came off
 *     since it was measured, or nobody can tell how much did
 * @param bottoms whether a wire touches the root: then the readings are too large, a thread to size or under would seem
 *     too big, and the pitch diameter is unproven
 */
public record OverWiresFinding(
        Step step,
        OverWiresCheck check,
        List<OverWiresReading> readings,
        Optional<Length> wire,
        WireSizes sizes,
        BigDecimal leadAngle,
        Optional<Length> rootClearance,
        Optional<Length> basicClearance,
        boolean rootAwaited,
        boolean bottoms,
        Optional<Length> value,
        Optional<Measured> deciding,
        Optional<Measured> past,
        Optional<Proposal> proposal,
        Optional<Integer> grooveOver,
        Optional<Length> rootUnder,
        boolean rootCutSince,
        boolean rootStale,
        Verdict verdict,
        int missing,
        Optional<TemperatureEffect> warmth)
        implements Finding {

    /**
     * One reading over wires.
     *
     * @param measured its value is the pitch diameter by the exact solution
     * @param over what was read, at 20 °C where that is asked, as the root is
     * @param wire the wires it was read over, seen with the part at 20 °C in the same way; those of two readings can
     *     differ
     * @param simple the same as the value without lead angle
     * @param corrected the same by the usual lead-angle term
     */
    public record OverWiresReading(Measured measured, Length over, Length wire, Length simple, Length corrected) {

        /** The diameter under the wires: what is room above the root. */
        Length under() {
            return over.minus(wire.plus(wire));
        }
    }

    public OverWiresFinding {
        readings = List.copyOf(readings);
    }

    @Override
    public OverWiresFinding proposing(Optional<Proposal> proposed) {
        return new OverWiresFinding(
                step,
                check,
                readings,
                wire,
                sizes,
                leadAngle,
                rootClearance,
                basicClearance,
                rootAwaited,
                bottoms,
                value,
                deciding,
                past,
                proposed,
                grooveOver,
                rootUnder,
                rootCutSince,
                rootStale,
                verdict,
                missing,
                warmth);
    }

    @Override
    public Optional<Verdict> alone(Measured reading) {
        return ByItself.of(
                check,
                reading,
                rootAwaited || warmth.filter(heat -> heat.missing() > 0).isPresent(),
                mayLieOnRoot(),
                Plausible.spoils(this));
    }

    /** Whether the wire is so small, or the root so flat, that even the basic root could touch it. */
    public boolean mayBottom() {
        return basicClearance.filter(room -> room.signum() <= 0).isPresent();
    }

    /** Whether the wires lie on the root, or nobody can tell that they do not: then no reading proves anything. */
    public boolean mayLieOnRoot() {
        return bottoms || mayBottom();
    }

    @Override
    public List<Measured> measured() {
        return readings.stream().map(OverWiresReading::measured).toList();
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
    public boolean showsSizes() {
        return !rootAwaited && !mayLieOnRoot();
    }

    @Override
    public boolean awaitsAnother() {
        return rootAwaited;
    }

    @Override
    public Optional<Length> overWires(Measured measured) {
        return Optional.of(measured.raw().minus(measured.uncorrected()));
    }

    /** The root or the groove lets none be taken. */
    @Override
    public boolean forbidsCutting() {
        return rootUnder.isPresent() || rootStale || grooveOver.isPresent();
    }

    @Override
    public Optional<Integer> measuredFirst() {
        return rootStale ? check.minorStep() : Optional.empty();
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.overWires(this);
    }

    /**
     * The least wire that clears the root of a thread in the middle of its limits: the root measured, or the basic one
     * where none is known. Absent before the first reading, and where no wire that fits clears it. In a smaller thread
     * it may rest on the root all the same, and is found to.
     */
    public Optional<Length> clearingWire() {
        return rootClearance.or(() -> basicClearance).flatMap(room -> readings.stream()
                .map(OverWiresReading::under)
                .min(Comparator.naturalOrder())
                .map(lowest -> lowest.minus(room.plus(room)))
                .flatMap(root -> ClearingWire.of(
                        check.thread(),
                        check.pitchDiameter().middle(),
                        root,
                        check.pitchDiameter().unit())));
    }
}
