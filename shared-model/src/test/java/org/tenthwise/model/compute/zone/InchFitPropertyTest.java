package org.tenthwise.model.compute.zone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** What holds for every class of fit at every size. */
class InchFitPropertyTest {

    @Property
    void nothingChangesInsideAStepAndTheHoleBeginsAtItsSize(
            @ForAll InchFit fit, @ForAll @BigRange(min = "0.96", max = "19.69") @Scale(4) BigDecimal size) {
        BigDecimal edge = SizeTable.read(fit.name().startsWith("FN") ? "inch-force-fits" : "inch-fits")
                .upTo(size);
        Length basic = Length.of(size, Unit.INCH);
        Length last = Length.of(edge, Unit.INCH);
        assertEquals(basic, fit.hole(basic).least());
        assertEquals(fit.hole(last).upper(), fit.hole(basic).upper());
        assertEquals(fit.shaft(last).upper(), fit.shaft(basic).upper());
        assertEquals(fit.shaft(last).lower(), fit.shaft(basic).lower());
        assertTrue(
                fit.hole(basic).width().signum() > 0 && fit.shaft(basic).width().signum() > 0);
    }

    @Property
    void sizeTypedInMillimetresIsTheSameSize(
            @ForAll InchFit fit, @ForAll @BigRange(min = "0.96", max = "19.69") @Scale(4) BigDecimal size) {
        Length inches = Length.of(size, Unit.INCH);
        Length millimetres = Length.of(size.multiply(new BigDecimal("25.4")), Unit.MILLIMETRE);
        assertEquals(fit.shaft(inches), fit.shaft(millimetres));
        assertEquals(fit.hole(inches), fit.hole(millimetres));
    }
}
