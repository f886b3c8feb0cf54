package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.position.PolarPlace;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * Where axes lie to their true places.
 *
 * @param measured readings that count, in slot order
 * @param points the axes of which both coordinates are read, hole by hole
 * @param decidingPoint the one with the least room, or furthest outside; absent before there is one
 * @param size what the step that measures the size came to; absent without a modifier, and while that can still change
 */
public record PositionFinding(
        Step step,
        PositionCheck check,
        List<Measured> measured,
        List<AtPoint> points,
        Optional<AtPoint> decidingPoint,
        Optional<VerdictKind> size,
        Verdict verdict,
        int missing)
        implements Finding {

    public PositionFinding {
        measured = List.copyOf(measured);
        points = List.copyOf(points);
    }

    /** The deviation of the point that decides. */
    @Override
    public Optional<Length> value() {
        return decidingPoint.map(point -> point.deviation().diameter());
    }

    /** With a bonus, by the size of the feature as well. */
    @Override
    public boolean isOfOneSize() {
        return !check.hasBonus();
    }

    @Override
    public List<Measured> farOff() {
        return Coordinates.farOff(check, measured);
    }

    @Override
    public Optional<Length> allowed() {
        return decidingPoint.filter(point -> size.isPresent()).map(AtPoint::allowed);
    }

    /** What the uncertainty of a direction comes to at the axis that decides, across its radius; a length. */
    public Optional<Length> directionMayMove() {
        return check.ofDirection()
                .flatMap(sure -> decidingPoint.map(point -> new PolarPlace(
                                point.first().value(), point.second().value())
                        .across(sure.expanded().length())));
    }

    /** A root has no end in the places of the readings, but for the few that have one. */
    @Override
    public int placesMore() {
        Unit unit = check.zone().unit();
        int read = Decimals.read(measured, unit);
        return value().filter(size -> size.in(unit).stripTrailingZeros().scale() > read)
                        .isPresent()
                ? 1
                : 0;
    }

    @Override
    public boolean awaitsAnother() {
        return check.hasBonus() && size.isEmpty();
    }

    /** Whether the size is outside its limits, so that no place is right. */
    public boolean sizeFailed() {
        return size.filter(VerdictKind.FAIL::equals).isPresent();
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.position(this);
    }
}
