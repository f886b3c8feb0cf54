package org.tenthwise.model.compute.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.converter.ConvertWith;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.cutting.EvenCut.NoCut;
import org.tenthwise.model.compute.cutting.EvenCut.Offered;
import org.tenthwise.model.compute.cutting.EvenCut.Reason;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.FeatureNamed;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/**
 * Cases worked by hand. Common practice: the same comes off every place, and never more than the one with least metal
 * can give.
 */
class EvenCutTest {

    private static final Limits BORE = limits("30.000", "30.021");
    private static final Limits OUTSIDE = limits("47.980", "48.000");

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static Optional<Length> maybe(String figure) {
        return Optional.ofNullable(figure).map(EvenCutTest::mm);
    }

    private static Limits limits(String lower, String upper) {
        return new Limits(
                Optional.ofNullable(lower).map(EvenCutTest::written),
                Optional.ofNullable(upper).map(EvenCutTest::written));
    }

    private static Written written(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }

    private static List<Length> sizes(String figures) {
        return Arrays.stream(figures.split(" ")).map(EvenCutTest::mm).toList();
    }

    private static Optional<Length> none() {
        return Optional.empty();
    }

    private static EvenCut toTheMiddle(Feature feature, Limits limits, String guardBand, String figures) {
        return EvenCut.of(feature, limits, mm(guardBand), limits.middle(), none(), none(), sizes(figures));
    }

    private static NoCut refused(Reason reason, String safe) {
        return new NoCut(reason, Optional.of(mm(safe)));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # feature, lower, upper, guard band, sizes, the most that may come off
        # bore open at the floor: the mouth needs 0.146, the floor has 0.031 left to its limit
        BORE,     30.000, 30.021, 0,     29.854 29.990, 0.031
        # 0.050 uneven in 0.021: needs 0.100, room for 0.071
        BORE,     30.000, 30.021, 0,     29.900 29.950, 0.071
        # pitch diameter of M20x2.5-6g, 0.300 uneven in 0.170: needs 0.300, room for 0.170
        DIAMETER, 18.164, 18.334, 0,     18.634 18.334, 0.170
        # slot 0.060 uneven in 0.043: needs 0.050, room for 0.033
        WIDTH,    12.000, 12.043, 0,     12.010 11.950, 0.033
        # 0.018 uneven would go into 0.020, but not into the 0.014 between both guard bands: needs 0.007, room for 0.003
        DIAMETER, 47.980, 48.000, 0.003, 48.004 47.986, 0.003
        # the guard band counts where metal is left too: needs 0.004 and 0.003 more, room for 0.005
        DIAMETER, 47.980, 48.000, 0.003, 48.004 47.988, 0.005
        # the smallest lies in the guard band past size: nothing more may come off
        DIAMETER, 47.980, 48.000, 0.003, 48.004 47.982, 0
        """)
    void refusesAWallNoEvenCutBringsInAndSaysWhatMayComeOff(
            @ConvertWith(FeatureNamed.class) Feature feature,
            String lower,
            String upper,
            String guardBand,
            String figures,
            String safe) {
        assertEquals(refused(Reason.UNEVEN, safe), toTheMiddle(feature, limits(lower, upper), guardBand, figures));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # feature, lower, upper, guard band, sizes, change of the size
        # one size goes to the middle
        BORE,     30.000, 30.021, 0,     29.854,        0.1565
        DIAMETER, 47.980, 48.000, 0.003, 48.004,        -0.014
        DEPTH,    11.9,   12.1,   0,     11.5,          0.5
        # a mean of 15.010, judged alone: five places of 15.000 and one of 15.060
        DIAMETER, 14.990, 15.002, 0,     15.010,        -0.014
        # the middle of two to the middle: the same room on both sides
        BORE,     30.000, 30.021, 0,     29.900 29.910, 0.1055
        # as uneven as the limits are apart: one cut, and both end on a limit
        BORE,     30.000, 30.021, 0,     29.900 29.921, 0.100
        DIAMETER, 47.980, 48.000, 0.003, 48.020 48.006, -0.023
        # in the guard band where metal is left: a light cut
        BORE,     30.000, 30.021, 0.003, 30.001,        0.0095
        """)
    void offersTheMiddleOfTheSizesOnTheMiddleOfTheLimits(
            @ConvertWith(FeatureNamed.class) Feature feature,
            String lower,
            String upper,
            String guardBand,
            String figures,
            String change) {
        Limits limits = limits(lower, upper);
        assertEquals(new Offered(limits.middle(), mm(change)), toTheMiddle(feature, limits, guardBand, figures));
    }

    @Test
    void aThirdInLeavesTheMetalSideNearer() {
        Length inABore = Aim.ByLimits.THIRD.of(BORE, Feature.BORE.stillCutBeyond());
        assertEquals(
                new Offered(mm("30.007"), mm("0.107")),
                EvenCut.of(Feature.BORE, BORE, Length.ZERO, inABore, none(), none(), sizes("29.900")));
        Limits outside = limits("47.979", "48.000");
        Length onAnOutside = Aim.ByLimits.THIRD.of(outside, Feature.DIAMETER.stillCutBeyond());
        assertEquals(
                new Offered(mm("47.993"), mm("-0.107")),
                EvenCut.of(Feature.DIAMETER, outside, Length.ZERO, onAnOutside, none(), none(), sizes("48.100")));
    }

    @Test
    void aLimitThatIsNearerKeepsTheCutFromTheAim() {
        assertEquals(
                new Offered(mm("30.007"), mm("0.100")),
                EvenCut.of(Feature.BORE, BORE, Length.ZERO, mm("30.007"), none(), none(), sizes("29.900 29.918")),
                "to the aim, 0.098 would leave the smaller place 0.002 too small");
        assertEquals(
                new Offered(mm("30.018"), mm("0.103")),
                EvenCut.of(Feature.BORE, BORE, Length.ZERO, mm("30.018"), none(), none(), sizes("29.900 29.918")),
                "to the aim, 0.109 would leave the greater place 0.006 past size");
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            textBlock =
                    """
        # feature, lower, upper, sizes, change: one limit is the aim where it is the only one
        BORE,     30.000, -,      29.900 29.950, 0.100
        DIAMETER, -,      48.000, 48.050 48.020, -0.050
        DEPTH,    12.0,   -,      11.8,          0.2
        """)
    void metalLeftWithOneLimitOnThatSide(
            @ConvertWith(FeatureNamed.class) Feature feature,
            String lower,
            String upper,
            String figures,
            String change) {
        Limits limits = limits(lower, upper);
        assertEquals(new Offered(limits.middle(), mm(change)), toTheMiddle(feature, limits, "0", figures));
    }

    @Test
    void withoutALimitPastSizeNothingBoundsWhatMayComeOff() {
        assertEquals(
                new NoCut(Reason.BELOW_LEAST_CUT, none()),
                EvenCut.of(
                        Feature.BORE,
                        limits("30.000", null),
                        Length.ZERO,
                        mm("30.000"),
                        maybe("0.02"),
                        none(),
                        sizes("29.980")));
    }

    @Test
    void withALimitPastSizeAloneTheCutStaysShortOfIt() {
        assertEquals(
                new Offered(mm("30.021"), mm("0.021")),
                toTheMiddle(Feature.BORE, limits(null, "30.021"), "0", "29.900 30.000"));
        assertEquals(
                new Offered(mm("30.021"), mm("0.018")),
                toTheMiddle(Feature.BORE, limits(null, "30.021"), "0.003", "29.900 30.000"));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # feature, lower, upper, sizes, step, change
        # rounded with metal left: 0.1565 on diameter
        BORE,     30.000, 30.021, 29.854,        0.001, 0.156
        BORE,     30.000, 30.021, 29.854,        0.01,  0.15
        DIAMETER, 47.980, 48.000, 48.0045,       0.001, -0.014
        # 0.0155 in a step of 0.004 would be 0.012 and leave 0.0005 too much: the next step, 0.016, still lies inside
        DIAMETER, 47.980, 48.000, 48.0125 47.9985, 0.004, -0.016
        # on a step already
        BORE,     30.000, 30.021, 29.900 29.921, 0.005, 0.100
        """)
    void roundsToTheStepWithMetalLeftUnlessThatLeavesAPlaceOut(
            @ConvertWith(FeatureNamed.class) Feature feature,
            String lower,
            String upper,
            String figures,
            String step,
            String change) {
        Limits limits = limits(lower, upper);
        assertEquals(
                new Offered(limits.middle(), mm(change)),
                EvenCut.of(feature, limits, Length.ZERO, limits.middle(), none(), maybe(step), sizes(figures)));
    }

    /** To the aim it is 0.098 and the smaller place needs 0.100, a step itself: that and no step more. */
    @Test
    void aBoundThatIsOnAStepIsTakenAsItIs() {
        assertEquals(
                new Offered(mm("30.007"), mm("0.100")),
                EvenCut.of(
                        Feature.BORE, BORE, Length.ZERO, mm("30.007"), none(), maybe("0.001"), sizes("29.900 29.918")));
    }

    @Test
    void noStepOfTheRegisterBetweenBothIsUnevenAndTheSafeCutIsAStepToo() {
        // from 0.1005 to 0.1008 in steps of 0.001
        assertEquals(
                refused(Reason.UNEVEN, "0.100"),
                EvenCut.of(
                        Feature.BORE,
                        BORE,
                        Length.ZERO,
                        BORE.middle(),
                        none(),
                        maybe("0.001"),
                        sizes("29.8995 29.9202")));
        assertEquals(
                refused(Reason.UNEVEN, "0.03"),
                EvenCut.of(
                        Feature.BORE, BORE, Length.ZERO, BORE.middle(), none(), maybe("0.01"), sizes("29.854 29.990")));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # feature, size, least cut, change, or - where refused: the depth is half of a diameter and a width, all of a
        # depth
        BORE,  9.980, 0.015, 0.030
        BORE,  9.980, 0.0151, -
        WIDTH, 9.980, 0.015, 0.030
        WIDTH, 9.980, 0.016, -
        DEPTH, 9.980, 0.030, 0.030
        DEPTH, 9.980, 0.031, -
        """)
    void belowTheLeastCutThereIsNoCut(
            @ConvertWith(FeatureNamed.class) Feature feature, String size, String leastCut, String change) {
        Limits limits = limits("10.000", "10.020");
        EvenCut expected = change.equals("-")
                ? refused(Reason.BELOW_LEAST_CUT, "0.040")
                : new Offered(limits.middle(), mm(change));
        assertEquals(
                expected,
                EvenCut.of(feature, limits, Length.ZERO, limits.middle(), maybe(leastCut), none(), sizes(size)));
    }

    @Test
    void aCutOfZeroIsNotOffered() {
        assertEquals(refused(Reason.BELOW_LEAST_CUT, "0.0105"), toTheMiddle(Feature.BORE, BORE, "0", "30.0105"));
        assertEquals(refused(Reason.BELOW_LEAST_CUT, "0.001"), toTheMiddle(Feature.BORE, BORE, "0", "30.020"));
        assertEquals(
                refused(Reason.BELOW_LEAST_CUT, "0.010"),
                EvenCut.of(Feature.BORE, BORE, Length.ZERO, BORE.middle(), none(), maybe("0.005"), sizes("30.008")),
                "2.5 µm in steps of 5");
    }

    @Test
    void pastSizeBeginsBehindTheLimitAndNotInTheGuardBand() {
        assertEquals(refused(Reason.PAST_SIZE, "0"), toTheMiddle(Feature.BORE, BORE, "0.003", "29.900 30.0211"));
        assertEquals(refused(Reason.PAST_SIZE, "0"), toTheMiddle(Feature.DIAMETER, OUTSIDE, "0", "47.9799"));
        assertEquals(refused(Reason.UNEVEN, "0"), toTheMiddle(Feature.BORE, BORE, "0.003", "29.900 30.021"));
    }

    @Test
    void refusesWhatIsNoSumAtAll() {
        Length aim = BORE.middle();
        assertThrows(
                IllegalArgumentException.class,
                () -> EvenCut.of(Feature.BORE, BORE, Length.ZERO, aim, none(), none(), List.of()));
        assertThrows(
                IllegalArgumentException.class,
                () -> EvenCut.of(Feature.BORE, BORE, mm("-0.001"), aim, none(), none(), sizes("29.9")));
        assertThrows(
                IllegalArgumentException.class,
                () -> EvenCut.of(Feature.BORE, BORE, Length.ZERO, aim, maybe("0"), none(), sizes("29.9")));
        assertThrows(
                IllegalArgumentException.class,
                () -> EvenCut.of(Feature.BORE, BORE, Length.ZERO, aim, none(), maybe("0"), sizes("29.9")));
    }
}
