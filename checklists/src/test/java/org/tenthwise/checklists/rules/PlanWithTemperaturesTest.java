package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.tenthwise.checklists.rules.PlanText.DEPTH;
import static org.tenthwise.checklists.rules.PlanText.HEAD;
import static org.tenthwise.checklists.rules.PlanText.plan;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.TemperatureAsked;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.TemperatureRange;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.words.Message;

/** What a plan says of heat. */
class PlanWithTemperaturesTest {

    /**
     * 16.2 stands in the table of materials; 11.5 for steel, where the plan says nothing else, is that of JCGM 100,
     * H.1.
     */
    @Test
    void aPlanSaysHowPartAndGaugeGrowAndHowWarmTheShopGets() {
        ThermalData climate = heated("part_material = \"aluminium bronze CuAl10Ni5Fe4\"", "")
                .climate()
                .orElseThrow();
        assertEquals(Expansion.of("16.2"), climate.part().expansion());
        assertEquals(Expansion.of("11.5"), climate.gauge().expansion());
        assertEquals(
                "steel, as the plan gives no other", climate.gauge().source().toString());
        assertEquals(new TemperatureRange(Celsius.of("18"), Celsius.of("23.5")), climate.shop());
        assertEquals(
                new ThermalData.Growth(Expansion.of("13.0"), Message.of("plan.grows.said")),
                heated("part_expansion = 13.0", "").climate().orElseThrow().part());
    }

    /** 9.0 in 1e-6 per °F is 16.2 per °C, 64.4 °F is 18 °C and 77 °F is 25 °C, each exactly. */
    @Test
    void aPlanInInchesMayHaveItsTemperaturesInDegreesFahrenheit() {
        String table = "[temperature]\ndegrees = \"F\"\npart_expansion = 9.0\nshop_least = 64.4\nshop_greatest = "
                + "77\n\n[[step]]";
        ThermalData climate = assertInstanceOf(
                        PlanReading.Good.class, new PlanReader().read(HEAD.replace("[[step]]", table) + DEPTH))
                .plan()
                .climate()
                .orElseThrow();
        assertEquals(TemperatureScale.FAHRENHEIT, climate.scale());
        assertEquals(
                0, new BigDecimal("16.2").compareTo(climate.part().expansion().millionths()));
        assertEquals(Expansion.of("11.5"), climate.gauge().expansion());
        assertEquals(0, new BigDecimal("18").compareTo(climate.shop().least().degrees()));
        assertEquals(0, new BigDecimal("25").compareTo(climate.shop().greatest().degrees()));
    }

    @Test
    void temperaturesAreAskedForUnlessThePlanHasNoSuchTableOrSaysOtherwise() {
        assertEquals(
                TemperatureAsked.WHERE_IT_MATTERS,
                heated("part_expansion = 13.0", "").step(5).temperatureAsked());
        assertEquals(
                TemperatureAsked.ALWAYS,
                heated("part_expansion = 13.0", "temperature = \"ask\"\n")
                        .step(5)
                        .temperatureAsked());
        assertEquals(
                TemperatureAsked.NEVER,
                heated("part_expansion = 13.0", "temperature = \"not-asked\"\n")
                        .step(5)
                        .temperatureAsked());
        Plan cold = plan(DEPTH);
        assertEquals(TemperatureAsked.NEVER, cold.step(5).temperatureAsked());
        assertEquals(Optional.empty(), cold.climate());
    }

    private static Plan heated(String part, String ofTheStep) {
        String table =
                "[temperature]\ndegrees = \"C\"\n%s\nshop_least = 18\nshop_greatest = 23.5\n\n[[step]]".formatted(part);
        return assertInstanceOf(
                        PlanReading.Good.class,
                        new PlanReader().read(HEAD.replace("[[step]]", table) + DEPTH + ofTheStep))
                .plan();
    }
}
