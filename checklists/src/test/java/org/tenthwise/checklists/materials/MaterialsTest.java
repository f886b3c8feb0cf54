package org.tenthwise.checklists.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.TemperatureScale;

class MaterialsTest {

    private final Materials materials = Materials.known();

    /** Published: Callister and Rethwisch, Table B.6, prints each figure per °C and again per °F. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        bearing bronze C93200, 10.0
        copper C11000,          9.4
        stainless steel 405,    6.0
        steel 4140,             6.8
        stainless steel 304,    9.6
        aluminium 2024,        12.7
        magnesium AZ31B,       14.4
        aluminium 1100,        13.1
        beryllium copper C17200, 9.3
        grey cast iron G3000,   6.3
        titanium grade 1,       4.8
        stainless steel 316,    8.9
        steel 4340,             6.8
        nickel alloy 400,       7.7
        nickel alloy 625,       7.1
        aluminium 7075,        13.0
        brass C36000,          11.4
        stainless steel 440A,   5.7
        """)
    void aFigurePerDegreeCelsiusFitsTheOnePerDegreeFahrenheit(String designation, String perFahrenheit) {
        BigDecimal worked = TemperatureScale.FAHRENHEIT.perDegree(
                materials.named(designation).orElseThrow().expansion());
        assertEquals(new BigDecimal(perFahrenheit), worked.setScale(1, RoundingMode.HALF_EVEN));
    }

    @Test
    void noMaterialStandsTwiceInOneCondition() {
        Set<String> names = new HashSet<>();
        materials.all().forEach(material -> assertTrue(names.add(material.name()), material.name()));
        assertTrue(names.size() > 40);
    }

    @Test
    void aSourceSaysWhoAndWhereOrThatItIsFromMemory() {
        materials
                .all()
                .forEach(material -> assertTrue(
                        material.source().endsWith("(from memory)")
                                || material.source()
                                        .matches("(?!(?i:an?|the) ).+(\\b(19|20)\\d\\d\\b|\\d(st|nd|rd|th) ed\\.).*"),
                        material.source()));
    }

    @Test
    void everyFigureHasItsConditionItsRangeAndItsSource() {
        materials.all().forEach(material -> List.of(material.condition(), material.between(), material.source())
                .forEach(words -> assertFalse(words.isBlank(), material.name())));
    }

    @Test
    void aDesignationInSeveralConditionsIsNoMaterialYet() {
        assertTrue(materials.named("stainless steel S17400").isEmpty());
        assertEquals(
                new BigDecimal("11.9"),
                materials
                        .named("stainless steel S17400, condition H1150")
                        .orElseThrow()
                        .expansion()
                        .millionths());
    }

    /** A tenth either way, by hand. */
    @Test
    void aFigureIsShownWithATenthEitherWay() {
        Material steel = materials.named("steel 4140").orElseThrow();
        assertEquals(0, new BigDecimal("11.07").compareTo(steel.least().millionths()));
        assertEquals(0, new BigDecimal("13.53").compareTo(steel.greatest().millionths()));
    }
}
