package org.tenthwise.model.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Refused;

/** Tables: DIN ISO 2768 T1 supplier sheet, three copies that agree. Title blocks: common practice. */
class GeneralToleranceTest {

    private static final String BLOCK = ".X ±.1 .XX ±.01 .XXX ±.005 ANGLES ±1°";

    private static String onSize(GeneralTolerance general, String size, Unit unit) {
        return general.onSize(new Written(size, unit)).map(Written::text).orElse("-");
    }

    @ParameterizedTest
    @CsvSource({
        "f, LINEAR, 0.5, 0.05",
        "f, LINEAR, 3, 0.05",
        "m, LINEAR, 6, 0.1",
        "m, LINEAR, 6.01, 0.2",
        "m, LINEAR, 30, 0.2",
        "m, LINEAR, 30.001, 0.3",
        "m, LINEAR, 120, 0.3",
        "c, LINEAR, 400, 1.2",
        "c, LINEAR, 2, 0.2",
        "v, LINEAR, 3.1, 0.5",
        "f, LINEAR, 2000, 0.5",
        "v, LINEAR, 4000, 8.0",
        "m, RADIUS, 2, 0.2",
        "f, RADIUS, 6, 0.5",
        "v, RADIUS, 10, 2.0",
        "c, RADIUS, 4000, 2.0",
        "m, ANGLE, 10, 60",
        "c, ANGLE, 100, 30",
        "c, ANGLE, 500, 10",
        "f, ANGLE, 10.1, 30",
        "v, ANGLE, 0.1, 180"
    })
    void aSizeOnTheEdgeOfARowBelongsToTheRowBelow(
            String letter, GeneralClass.Kind kind, BigDecimal size, BigDecimal tolerance) {
        assertEquals(tolerance, GeneralClass.ofLetter(letter).orElseThrow().at(kind, size));
    }

    @ParameterizedTest
    @CsvSource({
        "m, LINEAR, 0.499",
        "v, LINEAR, 3",
        "f, LINEAR, 2000.1",
        "m, LINEAR, 4000.1",
        "m, RADIUS, 0.4",
        "m, ANGLE, 0"
    })
    void whereTheStandardHasNothingNothingIsMadeUp(String letter, GeneralClass.Kind kind, BigDecimal size) {
        GeneralClass known = GeneralClass.ofLetter(letter).orElseThrow();
        assertThrows(Refused.class, () -> known.at(kind, size));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ISO 2768-m",
                "ISO 2768-mK",
                "iso 2768 m",
                "ISO2768-mK-E",
                "DIN ISO 2768-1:1989-m",
                "ISO 2768-1 - m",
                "DIN EN ISO 2768 – mH",
                "ISO 2768-1-M"
            })
    void theClassIsReadHoweverItIsWritten(String text) {
        GeneralTolerance general = GeneralTolerance.ofText(text, Unit.MILLIMETRE);
        assertEquals("0.3", onSize(general, "30.5", Unit.MILLIMETRE));
        assertEquals("-", onSize(general, "0.4", Unit.MILLIMETRE));
        assertEquals("-", onSize(general, "30.5", Unit.INCH));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ISO 2768",
                "ISO 2768-K",
                "ISO 2768-2",
                "ISO 2768-mf",
                "ISO 2768-x",
                "ISO 22081",
                "",
                ".XX",
                ".XX .01",
                ".XX ±0",
                ".XX ±.01 .XX ±.02",
                ".XX ±.0.1",
                ".XX ±,01",
                ".XXXXXX ±.01",
                "ANGLES ±1",
                "FRACTIONS ±1/3",
                ".XX ±.01°",
                ".XX ±.01 AND MORE",
                "12.5"
            })
    void whatIsNoGeneralToleranceIsRefused(String text) {
        assertThrows(Refused.class, () -> GeneralTolerance.ofText(text, Unit.MILLIMETRE));
    }

    @Test
    void theStandardIsOfMillimetres() {
        assertThrows(Refused.class, () -> GeneralTolerance.ofText("ISO 2768-m", Unit.INCH));
    }

    @Test
    void placesOfTheSizeChooseInATitleBlock() {
        GeneralTolerance block = GeneralTolerance.ofText(BLOCK, Unit.INCH);
        assertEquals("0.1", onSize(block, "1.5", Unit.INCH));
        assertEquals("0.01", onSize(block, "0.50", Unit.INCH));
        assertEquals("0.005", onSize(block, "2.250", Unit.INCH));
        assertEquals("-", onSize(block, "2.2500", Unit.INCH));
        assertEquals("-", onSize(block, "2", Unit.INCH));
        assertEquals("-", onSize(block, "12.5", Unit.MILLIMETRE));
        assertEquals(Optional.empty(), block.onFraction(new Written("0.5", Unit.INCH)));
        assertEquals(
                Length.of("1", Unit.DEGREE),
                block.onAngle(Optional.empty()).orElseThrow().length());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "X ±1, X.X ±0.2, X.XX ±0.1, ANGLES ±0°30′, FRACTIONS ±1/64",
                "0 PL ± 1; 1 PL ± .2; 2 PL = +/-.1; FRACTIONAL: +-1/64; ANGULAR ± 0.5 DEG",
                "UNLESS OTHERWISE SPECIFIED: 2 PLACES ±.10 1 PLACE ±0.2 X. ±1 FRACTION ±1/64 ANG ±30'"
            })
    void aTitleBlockIsReadHoweverItIsWritten(String text) {
        GeneralTolerance block = GeneralTolerance.ofText(text, Unit.INCH);
        assertEquals(new BigDecimal("0.1"), new BigDecimal(onSize(block, "0.50", Unit.INCH)).stripTrailingZeros());
        assertEquals("0.2", onSize(block, "1.5", Unit.INCH));
        assertEquals("1", onSize(block, "2", Unit.INCH));
        assertEquals(
                new BigDecimal("0.015625"),
                block.onFraction(new Written("0.5", Unit.INCH))
                        .orElseThrow()
                        .figure()
                        .stripTrailingZeros());
        assertEquals(
                Length.of("30", Unit.MINUTE_OF_ARC),
                block.onAngle(Optional.empty()).orElseThrow().length());
    }

    @Test
    void anAngleGoesByTheShorterLegAndWithoutOneThereIsNoTolerance() {
        GeneralTolerance medium = GeneralTolerance.ofText("ISO 2768-m", Unit.MILLIMETRE);
        assertEquals(
                Length.of("60", Unit.MINUTE_OF_ARC),
                medium.onAngle(Optional.of(Length.of("10", Unit.MILLIMETRE)))
                        .orElseThrow()
                        .length());
        assertEquals(Optional.empty(), medium.onAngle(Optional.empty()));
    }

    @Test
    void aRadiusHasItsOwnLooserRow() {
        GeneralTolerance medium = GeneralTolerance.ofText("ISO 2768-m", Unit.MILLIMETRE);
        Written two = new Written("2", Unit.MILLIMETRE);
        assertEquals("0.2", medium.onRadius(two).orElseThrow().text());
        assertEquals("0.1", medium.onSize(two).orElseThrow().text());
    }
}
