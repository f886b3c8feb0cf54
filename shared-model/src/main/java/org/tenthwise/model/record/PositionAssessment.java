package org.tenthwise.model.record;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.position.PolarPlace;
import org.tenthwise.model.compute.position.PositionBonus;
import org.tenthwise.model.compute.position.PositionDeviation;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.TruePlace;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.MaterialModifier;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * Positions: every axis against its zone, with what its size adds. One that is out settles the check; it passes only
 * with all of them read and inside. With a modifier it stays open until the size is known for good: read in full, with
 * nothing far off, and not to be cut again. A size outside its limits fails the position too; one that is unproven
 * proves none. Nothing passes by a figure that is far off.
 */
final class PositionAssessment {

    private final PositionCheck check;
    private final Optional<SizeFinding> size;

    private PositionAssessment(PositionCheck check, Optional<SizeFinding> size) {
        this.check = check;
        this.size = size;
    }

    /**
     * @param found what the step that measures the size came to; absent without a modifier, and while that is still to
     *     be cut
     */
    static PositionFinding of(Step step, PositionCheck check, Pass pass, Optional<SizeFinding> found) {
        PositionAssessment assessment = new PositionAssessment(check, found.filter(PositionAssessment::isSettled));
        List<Measured> measured = SizeAssessment.measure(check.slots(), pass);
        List<AtPoint> points = check.points().stream()
                .flatMap(point -> assessment.at(point, measured).stream())
                .toList();
        Optional<AtPoint> deciding =
                points.stream().min(Comparator.comparing(AtPoint::isInside).thenComparing(AtPoint::room));
        int missing = check.slots().size() - measured.size();
        Verdict judged = assessment.verdict(deciding, missing);
        boolean spoilt = !Coordinates.farOff(check, measured).isEmpty();
        return new PositionFinding(
                step,
                check,
                measured,
                points,
                deciding,
                assessment.size.map(PositionAssessment::ofSize),
                spoilt && judged.passed() ? Verdict.plain(VerdictKind.UNPROVEN) : judged,
                missing);
    }

    /** Whether a size will not change any more unless it is read or cut anew. */
    private static boolean isSettled(SizeFinding found) {
        VerdictKind standing = found.verdict().standing();
        return found.missing() == 0 && !Plausible.spoils(found) && standing != VerdictKind.OPEN;
    }

    /** One that could still be cut and is used as it is, is outside as any other. */
    private static VerdictKind ofSize(SizeFinding size) {
        VerdictKind standing = size.verdict().standing();
        return standing == VerdictKind.CUT_AGAIN ? VerdictKind.FAIL : standing;
    }

    private Optional<AtPoint> at(PositionCheck.AxisAt point, List<Measured> measured) {
        return read(measured, point.first().key())
                .flatMap(first -> read(measured, point.second().key()).map(second -> {
                    Length bonus = bonus(point.hole());
                    return new AtPoint(
                            point,
                            first,
                            second,
                            deviation(point, first.value(), second.value()),
                            bonus,
                            check.zone().length().plus(bonus));
                }));
    }

    private static PositionDeviation deviation(PositionCheck.AxisAt point, Length first, Length second) {
        Length x = point.hole().x().length();
        Length y = point.hole().y().length();
        return switch (point.by()) {
            case X_AND_Y -> new PositionDeviation(first.minus(x), second.minus(y));
            case POLAR -> new PolarPlace(first, second).from(x, y);
        };
    }

    private static Optional<Measured> read(List<Measured> measured, String slot) {
        return measured.stream().filter(read -> read.slot().key().equals(slot)).findFirst();
    }

    /**
     * From the size of that very hole where its places go by its name; else from the worst of all, on the safe side.
     * Where places go by the names of other holes, this one was not measured, and nothing is added.
     */
    private Length bonus(TruePlace hole) {
        if (size.isEmpty() || check.modifier() == MaterialModifier.NONE) {
            return Length.ZERO;
        }
        List<Measured> all = size.get().measured();
        List<Length> own = all.stream()
                .filter(read ->
                        hole.name().filter(read.slot().place().name()::equals).isPresent())
                .map(Measured::value)
                .toList();
        if (own.isEmpty() && all.stream().anyMatch(this::isOfAHole)) {
            return Length.ZERO;
        }
        List<Length> sizes = own.isEmpty() ? all.stream().map(Measured::value).toList() : own;
        CheckOfSize sized = size.get().check().asSize().orElseThrow();
        PositionBonus bonus = new PositionBonus(
                check.feature(),
                check.modifier(),
                sized.limits().at(Limit.LOWER).map(Written::length),
                sized.limits().at(Limit.UPPER).map(Written::length));
        return bonus.at(bonus.countsFromLeast() ? Length.least(sizes) : Length.greatest(sizes), Length.ZERO);
    }

    private boolean isOfAHole(Measured read) {
        return check.holes().stream()
                .anyMatch(hole ->
                        hole.name().filter(read.slot().place().name()::equals).isPresent());
    }

    private Verdict verdict(Optional<AtPoint> deciding, int missing) {
        if (check.hasBonus() && size.isEmpty() || deciding.isEmpty()) {
            return Verdict.plain(VerdictKind.OPEN);
        }
        AtPoint worst = deciding.get();
        Optional<Verdict.Margin> margin =
                Optional.of(new Verdict.Margin(worst.room().abs(), Limit.UPPER, worst.isInside()));
        if (!worst.isInside()) {
            return new Verdict(VerdictKind.FAIL, margin);
        }
        if (missing > 0) {
            return Verdict.plain(VerdictKind.OPEN);
        }
        VerdictKind ofSize = size.map(PositionAssessment::ofSize).orElse(VerdictKind.PASS);
        return ofSize == VerdictKind.FAIL ? Verdict.plain(ofSize) : new Verdict(ofSize, margin);
    }
}
