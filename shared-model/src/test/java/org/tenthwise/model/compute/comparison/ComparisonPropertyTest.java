package org.tenthwise.model.compute.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/** What holds for every reading of a comparing gauge. */
class ComparisonPropertyTest {

    @Property
    void theTrueReadingsOfALeverAddUpAsItsReadingsDo(
            @ForAll @BigRange(min = "-5", max = "5") @Scale(4) BigDecimal one,
            @ForAll @BigRange(min = "-5", max = "5") @Scale(4) BigDecimal other,
            @ForAll @BigRange(min = "0", max = "89.99") @Scale(2) BigDecimal angle) {
        Length together = LeverIndicator.trueReading(new Length(one.add(other)), angle);
        Length apart = LeverIndicator.trueReading(new Length(one), angle)
                .plus(LeverIndicator.trueReading(new Length(other), angle));
        // three roundings of half a nanometre
        assertTrue(
                together.minus(apart).abs().millimetres().compareTo(new BigDecimal("0.000002")) <= 0,
                together + " and " + apart);
        assertEquals(
                LeverIndicator.trueReading(new Length(one), angle).negated(),
                LeverIndicator.trueReading(new Length(one.negate()), angle));
        assertTrue(LeverIndicator.trueReading(new Length(one), angle).abs().compareTo(new Length(one).abs()) <= 0);
    }

    @Property
    void aSizeMovesWithTheReadingAndNotWithWhereTheDialWasSet(
            @ForAll @BigRange(min = "1", max = "500") @Scale(4) BigDecimal master,
            @ForAll @BigRange(min = "-1", max = "1") @Scale(4) BigDecimal reading,
            @ForAll @BigRange(min = "-1", max = "1") @Scale(4) BigDecimal zero,
            @ForAll @BigRange(min = "-1", max = "1") @Scale(4) BigDecimal more,
            @ForAll ReadingDirection sense) {
        Length certified = new Length(master);
        Length size = FromMaster.size(certified, sense, new Length(reading), new Length(zero));
        assertEquals(
                size, FromMaster.size(certified, sense, new Length(reading.add(more)), new Length(zero.add(more))));
        assertEquals(
                size.plus(new Length(more).times(BigDecimal.valueOf(sense.sign()))),
                FromMaster.size(certified, sense, new Length(reading.add(more)), new Length(zero)));
    }

    @Property
    void twoPointsShowEvenLobesTwiceAndOddOnesNever(@ForAll @IntRange(min = 2, max = 500) int lobes) {
        assertEquals(lobes % 2 == 0 ? 2 : 0, new Lobes(BigDecimal.valueOf(180)).magnification(lobes), 1e-12);
    }

    @Property
    void aGaugeHeldWrongReadsNoBetterThanOneHeldLessWrong(
            @ForAll @BigRange(min = "1", max = "500") @Scale(3) BigDecimal diameter,
            @ForAll @BigRange(min = "0", max = "80") @Scale(2) BigDecimal tilt,
            @ForAll @BigRange(min = "0", max = "0.49") @Scale(3) BigDecimal share) {
        Length bore = new Length(diameter);
        assertTrue(
                Rocking.readsMore(bore, tilt).compareTo(Rocking.readsMore(bore, tilt.multiply(new BigDecimal("0.9"))))
                        >= 0);
        Length beside = bore.times(share);
        assertTrue(OffCentre.readsLess(bore, beside)
                        .compareTo(OffCentre.readsLess(bore, beside.times(new BigDecimal("0.9"))))
                >= 0);
        // Pythagoras: what is left of the bore, with twice the distance, makes up the bore again
        double chord = Nanometres.of(bore.minus(OffCentre.readsLess(bore, beside)));
        assertEquals(diameter.doubleValue(), Math.hypot(chord, 2 * Nanometres.of(beside)), 0.000001);
    }
}
