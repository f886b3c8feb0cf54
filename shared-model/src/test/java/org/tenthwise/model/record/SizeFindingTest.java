package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.with;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.form.WallShape;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/** Bores of 20.000 to 20.021 with a guard band of 0.002, read at two places; too small can be cut again. By hand. */
class SizeFindingTest {

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # combine, first,   second,  verdict,   past,    light cut
        EACH,      19.999,  20.010,  UNPROVEN,  ,        true
        EACH,      20.001,  20.010,  UNPROVEN,  ,        true
        EACH,      19.999,  20.020,  UNPROVEN,  ,        false
        EACH,      20.020,  20.010,  UNPROVEN,  ,        false
        EACH,      19.990,  20.010,  CUT_AGAIN, ,        false
        EACH,      19.990,  20.022,  UNPROVEN,  ,        false
        EACH,      19.990,  20.024,  FAIL,      ,        false
        MEAN,      19.985,  20.005,  CUT_AGAIN, ,        false
        MEAN,      19.900,  20.050,  FAIL,      20.050,  false
        MEAN,      19.900,  20.022,  UNPROVEN,  20.022,  false
        MEAN,      19.970,  20.029,  UNPROVEN,  ,        false
        SMALLEST,  19.990,  20.030,  FAIL,      20.030,  false
        LARGEST,   19.990,  19.980,  CUT_AGAIN, ,        false
        """)
    void noCutIsAskedForWhileOnePlaceIsPastSize(
            Combine combine, String first, String second, VerdictKind standing, String past, boolean lightCut) {
        SizeFinding found = (SizeFinding) new Bench()
                .step(bore(places(2), combine, "0.002"))
                .read(1, first, second)
                .finding(1);
        assertEquals(standing, found.verdict().standing());
        assertEquals(Optional.ofNullable(past).map(Bench::length), found.past().map(Measured::value));
        assertEquals(
                standing == VerdictKind.CUT_AGAIN || lightCut, found.proposal().isPresent());
    }

    /** The mean, 59.880/3 = 19.960, still has metal left; 20.050 is further past 20.021 than 20.030 is. */
    @ParameterizedTest
    @CsvSource({"19.800, 20.030, 20.050", "19.800, 20.050, 20.030", "20.050, 20.030, 19.800"})
    void ofSeveralPlacesPastSizeTheFurthestIsTold(String first, String second, String third) {
        SizeFinding found = (SizeFinding) new Bench()
                .step(bore(places(3), Combine.MEAN, "0.002"))
                .read(1, first, second, third)
                .finding(1);
        assertEquals(VerdictKind.FAIL, found.verdict().standing());
        assertEquals(Optional.of(length("20.050")), found.past().map(Measured::value));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # the second decides, whichever was read first
        20.010, 20.019
        20.019, 20.020
        20.020, 20.021
        20.001, 19.997
        19.990, 20.022
        20.022, 20.024
        """)
    void theWorstPlaceDecidesAndWhatIsPastSizeBeforeAllElse(String better, String worse) {
        assertEquals(Optional.of(length(worse)), deciding(better, worse));
        assertEquals(Optional.of(length(worse)), deciding(worse, better));
    }

    private static Optional<Length> deciding(String first, String second) {
        return ((SizeFinding) new Bench()
                        .step(bore(places(2), Combine.EACH, "0.002"))
                        .read(1, first, second)
                        .finding(1))
                .deciding()
                .map(Measured::value);
    }

    @Test
    void aWallIsNamedFromATenthOfTheToleranceOn() {
        assertEquals(Optional.of(WallShape.TAPER_IN), wall("20.012", "20.009"));
        assertEquals(Optional.of(WallShape.TAPER_OUT), wall("20.009", "20.012"));
        assertEquals(Optional.of(WallShape.EVEN), wall("20.010", "20.009"));
    }

    @Test
    void whatLiesRoundTheBoreIsComparedAtOneDepth() {
        List<Place> round = List.of(
                new Place("0°", Optional.of(mm("5")), Optional.of(new BigDecimal("0"))),
                new Place("90°", Optional.of(mm("5")), Optional.of(new BigDecimal("90"))));
        SizeFinding found = (SizeFinding) new Bench()
                .step(bore(round, Combine.EACH, "0"))
                .read(1, "20.012", "20.009")
                .finding(1);
        assertEquals(Optional.of(length("0.003")), found.form().outOfRound());
    }

    private static Optional<WallShape> wall(String mouth, String floor) {
        List<Place> deep = List.of(
                new Place("mouth", Optional.of(mm("5")), Optional.empty()),
                new Place("floor", Optional.of(mm("25")), Optional.empty()));
        return ((SizeFinding) new Bench()
                        .step(bore(deep, Combine.EACH, "0"))
                        .read(1, mouth, floor)
                        .finding(1))
                .form()
                .shape();
    }

    private static SizeCheck bore(List<Place> places, Combine combine, String guardBand) {
        return new SizeCheck(
                Feature.BORE,
                Limits.between(mm("20.000"), mm("20.021")),
                places,
                1,
                combine,
                true,
                mm(guardBand),
                with(GaugeKind.INSIDE_MICROMETER));
    }

    /** Two ways at one place go round; the same two at two places that nobody gave a depth may taper as well. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        0;90,        20.002;20.006,               0.004
        0;180,       20.002;20.006,
        0;90;180,    20.002;20.006;20.004,
        0;90;0;90,   20.002;20.006;20.012;20.016,
        """)
    void outOfRoundIsSaidOfReadingsTwoWaysAtOneDepthAlone(String angles, String sizes, String outOfRound) {
        String[] at = angles.split(";");
        List<Place> places = IntStream.range(0, at.length)
                .mapToObj(i -> new Place("place " + i, Optional.empty(), Optional.of(new BigDecimal(at[i]))))
                .toList();
        SizeFinding found = (SizeFinding) new Bench()
                .step(bore(places, Combine.EACH, "0"))
                .read(1, sizes.split(";"))
                .finding(1);
        assertEquals(
                Optional.ofNullable(outOfRound).map(Bench::length), found.form().outOfRound());
    }
}
