package org.tenthwise.model.compute.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.statistics.Statistics;
import org.tenthwise.model.compute.cutting.EvenCut.NoCut;
import org.tenthwise.model.compute.cutting.EvenCut.Offered;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/** What holds for every wall. Limits 10.000 to 10.020 for an outside; a bore is its image in a mirror. */
class EvenCutPropertyTest {

    private static final Limits OUTSIDE = between("10.000", "10.020");
    private static final Limits MIRRORED = between("-10.020", "-10.000");

    private static Limits between(String lower, String upper) {
        return Limits.between(new Written(lower, Unit.MILLIMETRE), new Written(upper, Unit.MILLIMETRE));
    }

    private static List<Length> lengths(List<BigDecimal> figures) {
        return figures.stream().map(Length::new).toList();
    }

    private static EvenCut outside(List<Length> sizes, Length guardBand, Optional<Length> step) {
        return EvenCut.of(Feature.DIAMETER, OUTSIDE, guardBand, OUTSIDE.middle(), Optional.empty(), step, sizes);
    }

    @Property
    void whatIsOfferedLeavesEverySizeInsideAndIsAStep(
            @ForAll @Size(min = 1, max = 6)
                    List<@BigRange(min = "10.000", max = "10.040") @Scale(4) BigDecimal> figures,
            @ForAll @BigRange(min = "0", max = "0.006") @Scale(4) BigDecimal guard,
            @ForAll @BigRange(min = "0.0001", max = "0.0050") @Scale(4) BigDecimal step) {
        Length guardBand = new Length(guard);
        EvenCut cut = outside(lengths(figures), guardBand, Optional.of(new Length(step)));
        often(cut instanceof Offered);
        if (cut instanceof Offered offered) {
            assertTrue(offered.change().signum() < 0);
            assertEquals(0, offered.change().millimetres().remainder(step).signum());
            for (Length size : lengths(figures)) {
                Length after = size.plus(offered.change());
                assertFalse(after.isBelow(new Length(BigDecimal.TEN).plus(guardBand)), () -> size + " to " + after);
                assertFalse(
                        after.isAbove(Length.of("10.020", Unit.MILLIMETRE).minus(guardBand)),
                        () -> size + " to " + after);
            }
        }
    }

    @Property
    void theSafeCutPassesNoLimitAndOneStepMoreWould(
            @ForAll @Size(min = 1, max = 6)
                    List<@BigRange(min = "10.000", max = "10.060") @Scale(4) BigDecimal> figures,
            @ForAll @BigRange(min = "0.0001", max = "0.0050") @Scale(4) BigDecimal step) {
        EvenCut cut = outside(lengths(figures), Length.ZERO, Optional.of(new Length(step)));
        often(cut instanceof NoCut);
        if (cut instanceof NoCut refused) {
            Length least = Length.least(lengths(figures));
            Length safe = refused.safe().orElseThrow();
            assertFalse(least.minus(safe).isBelow(new Length(BigDecimal.TEN)));
            assertTrue(least.minus(safe).minus(new Length(step)).isBelow(new Length(BigDecimal.TEN)));
        }
    }

    /** What is looked at comes up in one try of twenty at least. */
    private static void often(boolean lookedAt) {
        Statistics.collect(lookedAt);
        Statistics.coverage(tries -> tries.check(true).percentage(share -> share > 5.0));
    }

    @Property
    void aBoreIsAnOutsideInAMirror(
            @ForAll @Size(min = 1, max = 6) List<@BigRange(min = "9.990", max = "10.060") @Scale(4) BigDecimal> figures,
            @ForAll @BigRange(min = "0", max = "0.006") @Scale(4) BigDecimal guard,
            @ForAll @BigRange(min = "0.0001", max = "0.0050") @Scale(4) BigDecimal step) {
        List<Length> mirrored =
                figures.stream().map(figure -> new Length(figure.negate())).toList();
        EvenCut inside = EvenCut.of(
                Feature.BORE,
                MIRRORED,
                new Length(guard),
                MIRRORED.middle(),
                Optional.empty(),
                Optional.of(new Length(step)),
                mirrored);
        EvenCut seen = inside instanceof Offered offered
                ? new Offered(offered.aim().negated(), offered.change().negated())
                : inside;
        assertEquals(outside(lengths(figures), new Length(guard), Optional.of(new Length(step))), seen);
    }

    @Property
    void theOrderAndASizeReadTwiceChangeNothing(
            @ForAll @Size(min = 2, max = 6)
                    List<@BigRange(min = "10.000", max = "10.060") @Scale(4) BigDecimal> figures) {
        List<Length> sizes = lengths(figures);
        List<Length> turned = new ArrayList<>(sizes);
        Collections.reverse(turned);
        turned.add(sizes.get(0));
        assertEquals(outside(sizes, Length.ZERO, Optional.empty()), outside(turned, Length.ZERO, Optional.empty()));
    }
}
