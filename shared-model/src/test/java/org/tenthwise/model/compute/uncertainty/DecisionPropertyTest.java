package org.tenthwise.model.compute.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Judge;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/** What holds for every size, every limit and every uncertainty. */
class DecisionPropertyTest {

    /** Both limits, or one of them alone; sizes below, on, between and above. */
    @Property
    void inchAndMillimetreGiveOneVerdict(
            @ForAll @BigRange(min = "-20", max = "20") @Scale(4) BigDecimal lower,
            @ForAll @BigRange(min = "0.001", max = "1") @Scale(4) BigDecimal tolerance,
            @ForAll @BigRange(min = "-0.5", max = "1.5") @Scale(3) BigDecimal along,
            @ForAll @BigRange(min = "0", max = "0.5") @Scale(3) BigDecimal share,
            @ForAll Sides sides) {
        BigDecimal size = lower.add(tolerance.multiply(along));
        BigDecimal band = tolerance.multiply(share);
        Verdict inInches = new Judge(
                        limits(sides, lower, lower.add(tolerance), Unit.INCH),
                        Length.of(band, Unit.INCH),
                        Optional.empty())
                .of(Length.of(size, Unit.INCH));
        Verdict inMillimetres = new Judge(
                        limits(sides, metric(lower), metric(lower.add(tolerance)), Unit.MILLIMETRE),
                        new Length(metric(band)),
                        Optional.empty())
                .of(new Length(metric(size)));
        assertEquals(inInches, inMillimetres);
    }

    enum Sides {
        BOTH,
        LOWER,
        UPPER
    }

    private static Limits limits(Sides sides, BigDecimal lower, BigDecimal upper, Unit unit) {
        Optional<Written> least = sides == Sides.UPPER ? Optional.empty() : Optional.of(Written.of(lower, unit));
        Optional<Written> most = sides == Sides.LOWER ? Optional.empty() : Optional.of(Written.of(upper, unit));
        return new Limits(least, most);
    }

    @Property
    void theVerdictGetsNoBetterFurtherFromTheMiddle(
            @ForAll @BigRange(min = "0", max = "1") @Scale(4) BigDecimal off,
            @ForAll @BigRange(min = "0", max = "1") @Scale(4) BigDecimal more,
            @ForAll @BigRange(min = "0", max = "0.25") @Scale(4) BigDecimal band) {
        Judge judge = judge(band);
        Length middle = new Length(new BigDecimal("10.25"));
        assertTrue(rank(judge, middle.plus(new Length(off.add(more)))) >= rank(judge, middle.plus(new Length(off))));
        assertTrue(rank(judge, middle.minus(new Length(off.add(more)))) >= rank(judge, middle.minus(new Length(off))));
    }

    @Property
    void aWiderGuardBandOnlyMakesMoreUnproven(
            @ForAll @BigRange(min = "9", max = "11") @Scale(4) BigDecimal size,
            @ForAll @BigRange(min = "0", max = "0.25") @Scale(4) BigDecimal one,
            @ForAll @BigRange(min = "0", max = "0.25") @Scale(4) BigDecimal other) {
        VerdictKind wide = judge(one.max(other)).of(new Length(size)).standing();
        VerdictKind narrow = judge(one.min(other)).of(new Length(size)).standing();
        assertTrue(wide == narrow || wide == VerdictKind.UNPROVEN, narrow + " became " + wide);
    }

    @Property
    void aProbabilityLiesWithinZeroAndOneAndFallsAwayFromTheMiddle(
            @ForAll @BigRange(min = "0", max = "5") @Scale(4) BigDecimal off,
            @ForAll @BigRange(min = "0.0001", max = "2") @Scale(4) BigDecimal u) {
        Limits limits = limits();
        Length middle = new Length(new BigDecimal("10.25"));
        double there = Conformance.probability(limits, middle.plus(new Length(off)), new Length(u));
        double nearer = Conformance.probability(limits, middle.plus(new Length(off).half()), new Length(u));
        assertTrue(there >= 0 && there <= 1, "probability " + there);
        assertTrue(there <= nearer + 1e-12, there + " above " + nearer);
    }

    /**
     * What is accepted is what conforms, less what is rejected of it, with what is accepted besides: a closed formula.
     */
    @Property(tries = 200)
    void risksMakeUpTheDifferenceBetweenWhatConformsAndWhatIsAccepted(
            @ForAll @DoubleRange(min = -1, max = 2) double mean,
            @ForAll @DoubleRange(min = 0.01, max = 2) double deviation,
            @ForAll @DoubleRange(min = 0.01, max = 2) double u,
            @ForAll @DoubleRange(min = 0, max = 0.5) double band) {
        GlobalRisk risk = GlobalRisk.of(new GlobalRisk.Zone(0, 1, band), mean, deviation, u);
        double conforming = within(mean, deviation, 0, 1);
        double accepted = within(mean, Math.hypot(deviation, u), band, 1 - band);
        assertEquals(accepted - conforming, risk.consumer() - risk.producer(), 1e-9);
        assertTrue(risk.consumer() >= 0
                && risk.consumer() <= accepted + 1e-9
                && risk.producer() >= 0
                && risk.producer() <= conforming + 1e-9);
    }

    @Property
    void aValueWithNoMorePlacesThanItsLimitsIsTheSameByBothMethods(
            @ForAll @BigRange(min = "9", max = "11") @Scale(3) BigDecimal value,
            @ForAll @BigRange(min = "9", max = "10") @Scale(3) BigDecimal lower,
            @ForAll @BigRange(min = "10", max = "11") @Scale(3) BigDecimal upper) {
        RoundingMethod found = RoundingMethod.of(
                value, Optional.of(lower.setScale(3)), Optional.of(upper.setScale(3)), Optional.empty());
        assertEquals(found.absolute(), found.byRounding());
        assertEquals(0, value.compareTo(found.rounded()));
    }

    @Property
    void whatConformsAsItStandsConformsRoundedToThePlacesOfTheLimits(
            @ForAll @BigRange(min = "9", max = "11") @Scale(6) BigDecimal value,
            @ForAll @BigRange(min = "9", max = "10") @Scale(3) BigDecimal lower,
            @ForAll @BigRange(min = "10", max = "11") @Scale(3) BigDecimal upper) {
        RoundingMethod found = RoundingMethod.of(
                value, Optional.of(lower.setScale(3)), Optional.of(upper.setScale(3)), Optional.empty());
        assertTrue(found.byRounding() || !found.absolute());
    }

    private static BigDecimal metric(BigDecimal inches) {
        return inches.multiply(new BigDecimal("25.4"));
    }

    private static Limits limits() {
        return Limits.between(new Written("10.0", Unit.MILLIMETRE), new Written("10.5", Unit.MILLIMETRE));
    }

    private static Judge judge(BigDecimal band) {
        return new Judge(limits(), new Length(band), Optional.empty());
    }

    private static int rank(Judge judge, Length size) {
        VerdictKind standing = judge.of(size).standing();
        return standing == VerdictKind.PASS ? 0 : standing == VerdictKind.UNPROVEN ? 1 : 2;
    }

    private static double within(double mean, double deviation, double from, double to) {
        return from >= to ? 0 : NormalDistribution.of(mean, deviation).probability(from, to);
    }
}
