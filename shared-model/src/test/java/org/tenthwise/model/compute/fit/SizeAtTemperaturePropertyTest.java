package org.tenthwise.model.compute.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** What holds for every bore and plug at every temperature. */
class SizeAtTemperaturePropertyTest {

    private static final BigDecimal INCH = new BigDecimal("25.4");

    @Property
    void sizeForSizeStaysSoWhereBothAreOfOneMaterialAndOneTemperature(
            @ForAll @BigRange(min = "0.1", max = "500") @Scale(4) BigDecimal size,
            @ForAll @BigRange(min = "-40", max = "250") @Scale(1) BigDecimal celsius,
            @ForAll @BigRange(min = "0", max = "25") @Scale(1) BigDecimal alpha) {
        Length now = new SizeAtTemperature(celsius, alpha).now(new Length(size));
        assertEquals(new Clearance(Length.ZERO, Length.ZERO), Clearance.of(List.of(now), List.of(now)));
    }

    @Property
    void clearanceNowIsThatAtReferenceWithTheGrowthOfBothPutIn(
            @ForAll @BigRange(min = "0.1", max = "500") @Scale(4) BigDecimal bore,
            @ForAll @BigRange(min = "0.1", max = "500") @Scale(4) BigDecimal plug,
            @ForAll @BigRange(min = "-40", max = "250") @Scale(1) BigDecimal celsius,
            @ForAll @BigRange(min = "0", max = "25") @Scale(1) BigDecimal alpha) {
        Length warmed = new SizeAtTemperature(celsius, alpha).now(new Length(bore));
        Length mirrored = new SizeAtTemperature(
                        BigDecimal.valueOf(40).subtract(celsius).max(new BigDecimal("-273.15")), alpha)
                .now(new Length(bore));
        // as much above 20 °C as below it: the growths cancel
        assertEquals(new Length(bore).plus(new Length(bore)), warmed.plus(mirrored));
        Clearance now = Clearance.of(
                List.of(warmed), List.of(SizeAtTemperature.atReference().now(new Length(plug))));
        assertEquals(new Length(bore).minus(new Length(plug)).plus(warmed.minus(new Length(bore))), now.greatest());
    }

    @Property
    void unitTheSizesAreTypedInChangesNothing(
            @ForAll @BigRange(min = "0.01", max = "19") @Scale(5) BigDecimal bore,
            @ForAll @BigRange(min = "0.01", max = "19") @Scale(5) BigDecimal plug,
            @ForAll @BigRange(min = "-40", max = "250") @Scale(1) BigDecimal celsius,
            @ForAll @BigRange(min = "0", max = "25") @Scale(1) BigDecimal alpha) {
        SizeAtTemperature warmth = new SizeAtTemperature(celsius, alpha);
        Clearance inches =
                Clearance.of(List.of(warmth.now(Length.of(bore, Unit.INCH))), List.of(Length.of(plug, Unit.INCH)));
        Clearance millimetres = Clearance.of(
                List.of(warmth.now(Length.of(bore.multiply(INCH), Unit.MILLIMETRE))),
                List.of(Length.of(plug.multiply(INCH), Unit.MILLIMETRE)));
        assertEquals(millimetres, inches);
    }
}
