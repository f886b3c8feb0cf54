package org.tenthwise.model.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.tolerance.Limits;

class ScaleTest {

    private static final Unit MICROMETRE = Unit.named("µm");
    private static final Unit MICROINCH = Unit.named("µin");

    private static Length on(Unit scale, String figure) {
        return Length.of(figure, scale);
    }

    @ParameterizedTest
    @ValueSource(strings = {"µm", "µin", "HRC", "HBW", "N·m", "lbf·ft", "kg", "lb", "bar", "ml/min", "%", "HV10", "°C"})
    void aScaleHasAUnitOfAnyWord(String name) {
        Unit scale = Unit.named(name);
        assertEquals(name, scale.symbol());
        assertEquals(Unit.named(name), scale);
        assertEquals(List.of(scale), scale.ofSameKind());
        assertTrue(scale.isOfScale());
        assertFalse(scale.isOfAngle() || scale.isOfLength() || scale.hasMarksInside());
        assertEquals("1.60 " + name, new Written("1.60", scale).toString());
        assertEquals("1.6 " + name, new Written("1.60", scale).length().toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "ml / min", "5", "-", ".1", "a word of seventeen", "seventeenletters!"})
    void whatIsNoNameOfAScaleIsRefused(String name) {
        assertThrows(IllegalArgumentException.class, () -> Unit.named(name));
    }

    @Test
    void lengthsAndAnglesAreNoScales() {
        assertEquals(Unit.INCH, Unit.named("in"));
        assertEquals(Unit.SECOND_OF_ARC, Unit.named("° ′ ″"));
        assertFalse(Unit.named("mm").isOfScale());
    }

    /** A micrometre of roughness is a thousandth of a millimetre, and 40 µin are about 1 µm: neither is silently so. */
    @Test
    void noScaleIsTurnedIntoAnother() {
        Length rough = on(MICROMETRE, "1.6");
        for (Length other :
                List.of(on(MICROINCH, "63"), Length.of("0.0016", Unit.MILLIMETRE), Length.of("1", Unit.DEGREE))) {
            assertThrows(IllegalArgumentException.class, () -> rough.plus(other));
            assertThrows(IllegalArgumentException.class, () -> rough.minus(other));
            assertThrows(IllegalArgumentException.class, () -> other.compareTo(rough));
            assertNotEquals(rough, other);
        }
        assertThrows(IllegalArgumentException.class, () -> rough.in(MICROINCH));
        assertThrows(IllegalArgumentException.class, () -> rough.in(Unit.MILLIMETRE));
        assertThrows(IllegalArgumentException.class, rough::millimetres);
        assertThrows(
                IllegalArgumentException.class,
                () -> Limits.between(new Written("30", Unit.named("HRC")), new Written("300", Unit.named("HBW"))));
        assertNotEquals(on(MICROMETRE, "0"), on(MICROINCH, "0"));
    }

    @Test
    void figuresOfOneScaleAreAddedAndComparedExactly() {
        assertEquals(on(MICROMETRE, "0.3"), on(MICROMETRE, "0.1").plus(on(MICROMETRE, "0.20")));
        assertTrue(on(MICROMETRE, "1.61").isAbove(on(MICROMETRE, "1.6")));
        assertEquals("1.6", on(MICROMETRE, "1.60").in(MICROMETRE).toPlainString());
        assertEquals(0, MICROMETRE.placesMoreThan(MICROMETRE));
    }
}
