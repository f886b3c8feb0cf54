package org.tenthwise.model.worked;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.model.compute.dovetail.DovetailSide;
import org.tenthwise.model.compute.gear.InvoluteTeeth;
import org.tenthwise.model.compute.gear.ToothSide;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

class WorkedByTest {

    private static final InvoluteTeeth SPLINE = new InvoluteTeeth(24, mm("2"), new BigDecimal("30"), BigDecimal.ZERO);

    private static Written w(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }

    private static Written degrees(String figure) {
        return new Written(figure, Unit.DEGREE);
    }

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static List<Length> read(String figures) {
        return Arrays.stream(figures.split(" ")).map(WorkedByTest::mm).toList();
    }

    /** Angles in degrees. */
    static Stream<Arguments> figures() {
        return Stream.of(
                // ISO 1119:2011, table 1, from memory: 1:20 is 2.864192°; by hand, 2 atan(13.487 / 120)
                Arguments.of(new TwoDiameters(w("20")), "31 30", "2.864192"),
                Arguments.of(new TwoDiameters(w("60")), "31.267 17.780", "12.825314"),
                // by hand: asin(0.5), asin(0.25882)
                Arguments.of(new OnSineBar(w("100")), "50", "30"),
                Arguments.of(new OnSineBar(w("100")), "25.8819", "14.999997"),
                // by hand: 2 atan(4.194 / 80), either end down
                Arguments.of(new RollersOnTaper(w("40"), true), "52.314 56.508", "6.001968"),
                Arguments.of(new RollersOnTaper(w("40"), false), "56.508 52.314", "6.001968"),
                // by hand, balls of 40 and 32, 8 proud and 76 deep: c = 80, 2 asin(4/80); 2 asin(5/50)
                Arguments.of(new BallsInTaper(w("32"), w("40")), "76 -8", "5.731968"),
                Arguments.of(new BallsInTaper(w("10"), w("20")), "60 5", "11.478341"),
                // by hand: (12² + 3²) / (2 · 3); (4² + 1²) / 2
                Arguments.of(new ChordAndHeight(w("24")), "3", "25.5"),
                Arguments.of(new ChordAndHeight(w("8")), "1", "8.5"),
                // by hand: 54² / 80; 60² / 48 + 3 + 5
                Arguments.of(new RollsAtArc(w("10"), false), "64", "36.45"),
                Arguments.of(new RollsAtArc(w("10"), true), "70 6", "83"),
                // by hand: 60 − 8 (1 + cot 27.5°), 40 + the same
                Arguments.of(
                        new PinsInDovetail(degrees("55"), w("8"), DovetailSide.FEMALE, w("12")), "36.632143", "60"),
                Arguments.of(new PinsInDovetail(degrees("55"), w("8"), DovetailSide.MALE, w("12")), "63.367857", "40"),
                // by hand: 30 − 26.06; less the arc over a keyway 8 wide, (30 − √(900 − 64)) / 2 = 0.543170
                Arguments.of(new KeywayDepth(KeywayDepth.From.FAR_SIDE, w("8"), Optional.of(w("5"))), "31.06", "26.06"),
                Arguments.of(new KeywayDepth(KeywayDepth.From.CREST, w("8"), Optional.empty()), "30 26.06", "3.94"),
                Arguments.of(
                        new KeywayDepth(KeywayDepth.From.SIDE_WALL, w("8"), Optional.empty()), "30 26.06", "3.39683"),
                // by hand: 2 tan 30° (4 + 8 − 5.2), 2 (3 + 3√2 − 3)
                Arguments.of(new PinInVee(degrees("60"), w("8")), "5.2", "7.851964"),
                Arguments.of(new PinInVee(degrees("90"), w("6")), "3", "8.485281"),
                // the measurement itself is judged
                Arguments.of(new PinsInTeeth(SPLINE, w("4"), ToothSide.EXTERNAL), "54.218", "54.218"),
                Arguments.of(new OverTeethSpan(SPLINE, 4, Unit.MILLIMETRE), "21.179", "21.179"),
                // by hand: 96.305 − (20.01 + 15) / 2, 61.295 + the same
                Arguments.of(new BetweenCentres(BetweenCentres.Read.OVER, w("20.01"), w("15")), "96.305", "78.8"),
                Arguments.of(new BetweenCentres(BetweenCentres.Read.BETWEEN, w("20.01"), w("15")), "61.295", "78.8"),
                Arguments.of(new BetweenCentres(BetweenCentres.Read.WEB, w("20.01"), w("15")), "61.295", "78.8"));
    }

    @ParameterizedTest
    @MethodSource("figures")
    void whatIsReadComesToIt(WorkedBy by, String readings, String result) {
        Length expected = by.gives().equals(QuantityKind.ANGLE)
                ? Length.of(result, Unit.DEGREE)
                : Length.of(result, Unit.MILLIMETRE);
        Length found = by.of(read(readings));
        BigDecimal hair = new BigDecimal(by.gives().equals(QuantityKind.ANGLE) ? "0.003" : "0.000002");
        assertTrue(found.minus(expected).abs().base().compareTo(hair) <= 0, () -> found + " and not " + expected);
        assertEquals(by.readings().size(), read(readings).size());
    }

    /** A reading of work of that size gives the size back, where one reading makes it. */
    @ParameterizedTest
    @MethodSource("figures")
    void theReadingOfASizeComesToIt(WorkedBy by, String readings, String result) {
        Length size = by.of(read(readings));
        Optional<Length> reading = by.reading(size);
        assertEquals(by.readings().size() == 1, reading.isPresent());
        reading.ifPresent(one ->
                assertTrue(one.minus(read(readings).get(0)).abs().compareTo(mm("0.00001")) <= 0, () -> one.toString()));
    }

    /** 25.4 times the sizes given and read: the same angle, 25.4 times the size. */
    @Test
    void anInchIsTwentyFivePointFourMillimetres() {
        WorkedBy metric = new ChordAndHeight(new Written("25.4", Unit.MILLIMETRE));
        WorkedBy inch = new ChordAndHeight(new Written("1", Unit.INCH));
        assertEquals(metric.of(read("3.175")), inch.of(List.of(Length.of("0.125", Unit.INCH))));
    }

    static Stream<Arguments> impossible() {
        return Stream.of(
                Arguments.of(new TwoDiameters(w("20")), "30 31"),
                Arguments.of(new OnSineBar(w("100")), "100.001"),
                Arguments.of(new RollersOnTaper(w("40"), true), "56.508 52.314"),
                Arguments.of(new RollersOnTaper(w("40"), true), "52.314 52.314"),
                Arguments.of(new BallsInTaper(w("32"), w("40")), "-8 76"),
                Arguments.of(new ChordAndHeight(w("24")), "0"),
                Arguments.of(new RollsAtArc(w("10"), false), "19.999"),
                Arguments.of(new RollsAtArc(w("10"), true), "70 31"),
                Arguments.of(new PinsInDovetail(degrees("60"), w("10"), DovetailSide.MALE, w("12")), "27"),
                Arguments.of(new KeywayDepth(KeywayDepth.From.CREST, w("8"), Optional.empty()), "26 26.06"),
                Arguments.of(new KeywayDepth(KeywayDepth.From.SIDE_WALL, w("8"), Optional.empty()), "30 29.5"),
                Arguments.of(new KeywayDepth(KeywayDepth.From.FAR_SIDE, w("8"), Optional.of(w("5"))), "5"),
                Arguments.of(new PinInVee(degrees("60"), w("8")), "6"),
                Arguments.of(new PinsInTeeth(SPLINE, w("4"), ToothSide.EXTERNAL), "45"),
                Arguments.of(new OverTeethSpan(SPLINE, 4, Unit.MILLIMETRE), "30"),
                Arguments.of(new BetweenCentres(BetweenCentres.Read.OVER, w("20"), w("15")), "34.9"));
    }

    /** Off the flanks, off the bar, the wrong way round, or nothing left. */
    @ParameterizedTest
    @MethodSource("impossible")
    void whatNoSuchWorkCanReadIsRefused(WorkedBy by, String readings) {
        List<Length> read = read(readings);
        assertThrows(IllegalArgumentException.class, () -> by.of(read));
    }

    @Test
    void aPinThatStandsOverItsFlankIsRefusedBeforeAnythingIsRead() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new PinsInDovetail(degrees("60"), w("10"), DovetailSide.MALE, w("7.5")));
    }

    /** By hand: chord 20 at a radius of 50, −48.5; over a pin in 90°, −2; over pins, one for one. */
    @Test
    void theSensitivityTellsWhichReadingMustBeGood() {
        assertEquals(
                -48.5,
                new ChordAndHeight(w("20"))
                        .sensitivity(read("1.0102"), 0)
                        .orElseThrow()
                        .doubleValue(),
                0.1);
        assertEquals(
                -2,
                new PinInVee(degrees("90"), w("6"))
                        .sensitivity(read("3"), 0)
                        .orElseThrow()
                        .doubleValue(),
                0.001);
        assertEquals(
                1,
                new PinsInTeeth(SPLINE, w("4"), ToothSide.EXTERNAL)
                        .sensitivity(read("54.2"), 0)
                        .orElseThrow()
                        .doubleValue(),
                0.001);
    }

    /** DIN 5480, W 50x2x24: shift −0.05, half the pitch less 0.1155 thick, by hand. */
    @Test
    void theToothThicknessIsToldBesideTheMeasurement() {
        Length thickness = new PinsInTeeth(SPLINE, w("4"), ToothSide.EXTERNAL)
                .beside(read("54.218"))
                .orElseThrow();
        assertTrue(thickness.minus(mm("3.026")).abs().compareTo(mm("0.0005")) < 0, thickness::toString);
        Length span = new OverTeethSpan(SPLINE, 4, Unit.MILLIMETRE)
                .beside(read("21.179"))
                .orElseThrow();
        assertTrue(span.minus(mm("3.026")).abs().compareTo(mm("0.001")) < 0, span::toString);
    }

    /** Every way there is has a figure above. */
    @Test
    void everyWayIsTried() {
        Set<WorkedWay> tried =
                figures().map(one -> ((WorkedBy) one.get()[0]).way()).collect(Collectors.toSet());
        assertEquals(EnumSet.allOf(WorkedWay.class), tried);
        assertEquals(
                tried, impossible().map(one -> ((WorkedBy) one.get()[0]).way()).collect(Collectors.toSet()));
    }
}
