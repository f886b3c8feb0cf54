package org.tenthwise.model.compute.temperature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.quantity.TemperatureRange;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Judge;

/** What holds for every part and every gauge in a shop. */
class AtTwentyPropertyTest {

    private static final Length PICOMETRES = new Length(new BigDecimal("1e-11"));

    @Property
    void oneMaterialAtOneTemperatureNeedsNoCorrection(
            @ForAll @BigRange(min = "0.001", max = "3000") @Scale(4) BigDecimal read,
            @ForAll @BigRange(min = "1", max = "30") @Scale(2) BigDecimal alpha,
            @ForAll @BigRange(min = "0", max = "60") @Scale(2) BigDecimal at) {
        Expansion material = new Expansion(alpha);
        assertEquals(
                Length.ZERO,
                new AtTwenty(material, new Celsius(at), material, new Celsius(at)).correction(new Length(read)));
    }

    @Property
    void toTwentyAndBackIsWhereItBegan(
            @ForAll @BigRange(min = "0.001", max = "3000") @Scale(4) BigDecimal read,
            @ForAll @BigRange(min = "0", max = "30") @Scale(2) BigDecimal partAlpha,
            @ForAll @BigRange(min = "0", max = "60") @Scale(2) BigDecimal partAt,
            @ForAll @BigRange(min = "0", max = "30") @Scale(2) BigDecimal gaugeAlpha,
            @ForAll @BigRange(min = "0", max = "60") @Scale(2) BigDecimal gaugeAt) {
        Expansion part = new Expansion(partAlpha);
        Expansion gauge = new Expansion(gaugeAlpha);
        Length there = new AtTwenty(part, new Celsius(partAt), gauge, new Celsius(gaugeAt)).size(new Length(read));
        Length back = new AtTwenty(gauge, new Celsius(gaugeAt), part, new Celsius(partAt)).size(there);
        assertTrue(!back.minus(new Length(read)).abs().isAbove(PICOMETRES), () -> read + " came back as " + back);
    }

    @Property
    void inchesAndMillimetresComeToOneVerdict(
            @ForAll @BigRange(min = "1.1790", max = "1.1830") @Scale(5) BigDecimal inches,
            @ForAll @BigRange(min = "10", max = "35") @Scale(1) BigDecimal partAt,
            @ForAll @BigRange(min = "10", max = "35") @Scale(1) BigDecimal gaugeAt) {
        AtTwenty sum =
                new AtTwenty(Expansion.of("23.6"), new Celsius(partAt), Expansion.of("11.5"), new Celsius(gaugeAt));
        Written inInches = Written.of(inches, Unit.INCH);
        Written inMillimetres = Written.of(inInches.length().in(Unit.MILLIMETRE), Unit.MILLIMETRE);
        Judge byInches = judge(new Written("1.18110", Unit.INCH), new Written("1.18193", Unit.INCH));
        Judge byMillimetres =
                judge(new Written("29.99994", Unit.MILLIMETRE), new Written("30.021022", Unit.MILLIMETRE));
        assertEquals(
                byInches.of(Nanometres.round(sum.size(inInches.length()))),
                byMillimetres.of(Nanometres.round(sum.size(inMillimetres.length()))));
    }

    @Property
    void noTemperatureOfTheShopNeedsMoreThanTheWorst(
            @ForAll @BigRange(min = "1", max = "3000") @Scale(3) BigDecimal read,
            @ForAll @BigRange(min = "1", max = "30") @Scale(2) BigDecimal partAlpha,
            @ForAll @BigRange(min = "15", max = "28") @Scale(2) BigDecimal partAt,
            @ForAll @BigRange(min = "15", max = "28") @Scale(2) BigDecimal gaugeAt) {
        TemperatureRange shop = new TemperatureRange(Celsius.of("15"), Celsius.of("28"));
        Expansion part = new Expansion(partAlpha);
        Expansion gauge = Expansion.of("11.5");
        Length needed = new AtTwenty(part, new Celsius(partAt), gauge, new Celsius(gaugeAt))
                .correction(new Length(read))
                .abs();
        assertTrue(!needed.isAbove(
                WorstCorrection.of(new Length(read), part, shop, gauge, shop).worst()));
    }

    private static Judge judge(Written lower, Written upper) {
        return new Judge(Limits.between(lower, upper), Length.ZERO, Optional.empty());
    }
}
