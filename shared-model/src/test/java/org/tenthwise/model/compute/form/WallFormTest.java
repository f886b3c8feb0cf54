package org.tenthwise.model.compute.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** Sizes constructed for the rule in {@link WallForm#of}, which is common practice; differences worked by hand. */
class WallFormTest {

    private static final Length NOTICEABLE = mm("0.002");

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static WallReading at(String depth, String angle, String size) {
        return new WallReading(Optional.of(mm(depth)), Optional.of(new BigDecimal(angle)), mm(size));
    }

    /** Sizes at depths 2, 12, 22, ... mm, one each. */
    private static List<WallReading> downTheWall(String sizes) {
        List<WallReading> readings = new ArrayList<>();
        for (String size : sizes.split(";")) {
            readings.add(at(String.valueOf(2 + 10 * readings.size()), "0", size));
        }
        return readings;
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # sizes from the mouth inwards, taper, shape; noticeable is more than 0.002
        30.010;30.010,                0,      EVEN
        30.010;30.008,                -0.002, EVEN
        30.010;30.0079,               -0.0021, TAPER_IN
        30.010;30.013,                0.003,  TAPER_OUT
        30.010;30.009;30.011,         0.001,  EVEN
        30.015;30.010;30.005,         -0.010, TAPER_IN
        30.005;30.010;30.015,         0.010,  TAPER_OUT
        30.020;30.010;30.009,         -0.011, BELL_MOUTH
        30.020;30.010;30.009;30.011,  -0.009, BELL_MOUTH
        30.020;30.010;30.007,         -0.013, TAPER_IN
        30.012;30.010;30.010,         -0.002, EVEN
        30.015;30.008;30.014,         -0.001, WAIST
        30.010;30.015;30.011,         0.001,  BARREL
        30.010;30.015;30.005;30.010,  0,      UNEVEN
        30.010;30.0115;30.0125;30.0115, 0.0015, UNEVEN
        30.009;30.010;30.020,         0.011,  TAPER_OUT
        """)
    void theWayTheSizeGoesHasAName(String sizes, String taper, WallShape shape) {
        WallForm form = WallForm.of(downTheWall(sizes), NOTICEABLE);
        assertEquals(Optional.of(mm(taper)), form.taper());
        assertEquals(Optional.of(shape), form.shape());
        assertEquals(Optional.empty(), form.outOfRound());
    }

    @Test
    void theOrderOfReadingDoesNotMatter() {
        List<WallReading> readings = new ArrayList<>(downTheWall("30.020;30.010;30.009"));
        WallForm form = WallForm.of(readings, NOTICEABLE);
        Collections.reverse(readings);
        assertEquals(form, WallForm.of(readings, NOTICEABLE));
    }

    @Test
    void taperIsBetweenMeansAndOutOfRoundIsTheWorstDepth() {
        WallForm form = WallForm.of(
                List.of(
                        at("5", "0", "40.010"), at("5", "90", "40.014"),
                        at("30", "0", "40.001"), at("30", "90", "40.007")),
                NOTICEABLE);
        assertEquals(Optional.of(mm("-0.008")), form.taper());
        assertEquals(Optional.of(mm("0.006")), form.outOfRound());
        assertEquals(Optional.of(WallShape.TAPER_IN), form.shape());
    }

    @Test
    void oneDepthHasNoTaperAndNoShape() {
        assertEquals(
                new WallForm(Optional.empty(), Optional.of(mm("0.004")), Optional.empty()),
                WallForm.of(List.of(at("5", "0", "40.010"), at("5", "90", "40.014")), NOTICEABLE));
    }

    @Test
    void anglesAtDifferentDepthsDoNotShowOutOfRound() {
        assertEquals(
                Optional.empty(),
                WallForm.of(List.of(at("5", "0", "40.010"), at("30", "90", "40.014")), NOTICEABLE)
                        .outOfRound());
    }

    @Test
    void aReadingTakenAgainAtOnePlaceCountsWithItsMean() {
        WallForm form = WallForm.of(
                List.of(at("5", "0", "40.010"), at("5.0", "360", "40.012"), at("5", "90", "40.015")), NOTICEABLE);
        assertEquals(Optional.of(mm("0.004")), form.outOfRound());
        assertEquals(
                Optional.empty(),
                WallForm.of(List.of(at("5", "0", "40.010"), at("5", "-360", "40.012")), NOTICEABLE)
                        .outOfRound());
    }

    @Test
    void readingsWithoutADepthShowOutOfRoundButNoTaper() {
        WallForm form = WallForm.of(
                List.of(
                        new WallReading(Optional.empty(), Optional.of(BigDecimal.ZERO), mm("40.010")),
                        new WallReading(Optional.empty(), Optional.of(BigDecimal.valueOf(60)), mm("40.013")),
                        new WallReading(Optional.empty(), Optional.of(BigDecimal.valueOf(120)), mm("40.011"))),
                NOTICEABLE);
        assertEquals(new WallForm(Optional.empty(), Optional.of(mm("0.003")), Optional.empty()), form);
    }

    @Test
    void readingsWithoutAnAngleShowNoOutOfRound() {
        assertEquals(
                Optional.empty(),
                WallForm.of(
                                List.of(
                                        new WallReading(Optional.of(mm("5")), Optional.empty(), mm("40.010")),
                                        new WallReading(Optional.of(mm("5")), Optional.empty(), mm("40.013"))),
                                NOTICEABLE)
                        .outOfRound());
    }

    @Test
    void noReadingsSayNothing() {
        assertEquals(
                new WallForm(Optional.empty(), Optional.empty(), Optional.empty()), WallForm.of(List.of(), NOTICEABLE));
    }

    @Test
    void aNoticeableDifferenceBelowZeroIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> WallForm.of(List.of(), mm("-0.001")));
    }
}
