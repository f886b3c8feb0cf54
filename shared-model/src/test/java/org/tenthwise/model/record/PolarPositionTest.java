package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.with;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.PositionReading;
import org.tenthwise.model.plan.TruePlace;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.FeatureOfSize;
import org.tenthwise.model.tolerance.MaterialModifier;
import org.tenthwise.model.verdict.VerdictKind;

/** Holes read by radius and angle, in a zone of 0.1. All figures by hand, with sin 0.1° = 0.00174533. */
class PolarPositionTest {

    /** At 20 and 0°, where a turn begins and ends. */
    private static final TruePlace ALONE = new TruePlace(Optional.empty(), mm("20"), mm("0"));

    private static PositionCheck at(TruePlace... holes) {
        return new PositionCheck(
                mm("0.1"),
                MaterialModifier.NONE,
                FeatureOfSize.HOLE,
                Optional.empty(),
                PositionReading.POLAR,
                List.of(holes),
                List.of(),
                with(GaugeKind.CALIPER),
                Optional.of(new Uncertainty("head", new Written("0.01", Unit.DEGREE), new BigDecimal("2"))));
    }

    private static Written degrees(String figure) {
        return new Written(figure, Unit.DEGREE);
    }

    private static PositionFinding alone(Written... readings) {
        return (PositionFinding) new Bench().step(at(ALONE)).read(1, readings).finding(1);
    }

    @ParameterizedTest
    @CsvSource({
        "20.05, 0, 0.1, PASS",
        "20.050001, 0, 0.100002, FAIL",
        "19.95, 360, 0.1, PASS",
        "20, 0.1, 0.069815, PASS",
        "20, 359.9, 0.069815, PASS",
        "20, -0.1, 0.069815, PASS",
        "20, 0.2, 0.139626, FAIL"
    })
    void twiceItsDistanceFromTheTruePlaceIsJudged(String radius, String angle, double deviation, VerdictKind verdict) {
        PositionFinding finding = alone(mm(radius), degrees(angle));
        assertEquals(deviation, finding.value().orElseThrow().millimetres().doubleValue(), 3e-6);
        assertEquals(verdict, finding.verdict().standing());
        assertEquals(List.of(), finding.farOff());
    }

    @Test
    void anAngleInDegreesAndMinutesIsTheSameAngle() {
        PositionFinding decimals = alone(mm("20"), degrees("0.1"));
        PositionFinding minutes = alone(mm("20"), new Written("0°06′", Unit.MINUTE_OF_ARC));
        assertEquals(decimals.value(), minutes.value());
    }

    @Test
    void aRadiusAloneIsNoPlace() {
        PositionFinding finding = alone(mm("20"));
        assertEquals(VerdictKind.OPEN, finding.verdict().standing());
        assertEquals(List.of(), finding.points());
        assertEquals(1, finding.missing());
    }

    /** 1 mm at 20 is 2.865°. */
    @ParameterizedTest
    @ValueSource(strings = {"2.87", "357.13", "90", "180", "-90"})
    void anAngleOfAnotherHoleIsFarOff(String angle) {
        PositionFinding finding = alone(mm("20"), degrees(angle));
        assertEquals(1, finding.farOff().size());
        assertFalse(finding.verdict().passed());
    }

    @ParameterizedTest
    @ValueSource(strings = {"21.001", "18.9", "-20"})
    void aRadiusOfAnotherHoleIsFarOff(String radius) {
        assertEquals(1, alone(mm(radius), degrees("0")).farOff().size());
    }

    /** A hole across, read as 180° off with its radius below zero, would lie right: no axis is read so. */
    @Test
    void nothingPassesByARadiusBelowZero() {
        assertFalse(alone(mm("-20"), degrees("180")).verdict().passed());
    }

    @Test
    void whatIsAskedNextIsOfItsOwnKind() {
        PositionCheck check = at(
                new TruePlace(Optional.of("A"), mm("0"), mm("25")), new TruePlace(Optional.of("B"), mm("20"), mm("0")));
        Expected radius = asked(check, 0);
        assertTrue(radius.fits(Length.of("20", Unit.MILLIMETRE)));
        assertFalse(radius.fits(Length.of("31.1", Unit.MILLIMETRE)));
        Expected angle = asked(check, 3);
        assertTrue(angle.fits(Length.of("359.9", Unit.DEGREE)));
        assertTrue(angle.fits(Length.of("90", Unit.DEGREE)));
        assertFalse(angle.fits(Length.of("180", Unit.DEGREE)));
        assertFalse(check.readsBelowZero(check.slots().get(0)));
        assertTrue(check.readsBelowZero(check.slots().get(1)));
    }

    private static Expected asked(PositionCheck check, int slot) {
        return Plausible.reading(null, check, Optional.of(check.slots().get(slot)), Optional.empty(), List.of())
                .orElseThrow();
    }

    @Test
    void aHoleOnTheAxisIsNotReadSo() {
        TruePlace middle = new TruePlace(Optional.empty(), mm("0"), mm("0"));
        assertThrows(IllegalArgumentException.class, () -> at(middle));
    }

    /** 20 · 0.01° is 0.0034907 to the side. */
    @Test
    void whatAnAngleMayBeOffMovesTheAxisToTheSide() {
        assertEquals(
                Optional.of(Length.of("0.003491", Unit.MILLIMETRE)),
                alone(mm("20"), degrees("0")).directionMayMove());
        assertEquals(Optional.empty(), alone(mm("20")).directionMayMove());
    }

    /** Of 3, 4 and 5. */
    @Test
    void aTruePlaceIsToldByRadiusAndAngle() {
        TruePlace place = new TruePlace(Optional.empty(), mm("-15"), mm("-20"));
        assertEquals("25", place.radius().text());
        assertEquals("233.1301", place.direction().text());
    }
}
