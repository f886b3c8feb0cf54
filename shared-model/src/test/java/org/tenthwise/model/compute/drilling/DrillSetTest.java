package org.tenthwise.model.compute.drilling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class DrillSetTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static List<Length> reaches(String figures) {
        return Arrays.stream(figures.split(" ")).map(DrillSetTest::mm).toList();
    }

    private static String written(DrillSet set) {
        return set.stages().stream()
                .map(stage -> "%s-%s/%s"
                        .formatted(
                                stage.from().millimetres().toPlainString(),
                                stage.to().millimetres().toPlainString(),
                                stage.leastReach().millimetres().toPlainString()))
                .collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # common practice, by hand: each drill in the hole of the one before, 18 of flute left outside
        582, 0,  90 200 400 600,  18, 0-72/90 72-182/200 182-382/400 382-582/600
        # in any order, one too short to get deeper, one not needed
        300, 80, 600 90 400 200,  18, 80-182/200 182-300/318
        # the last reaches the depth and no further
        104, 0,  40 75 114,       10, 0-30/40 30-65/75 65-104/114
        104, 0,  104,             0,  0-104/104
        """)
    void drillsAtHandAreTakenFromShortToLong(
            String depth, String start, String reaches, String clearance, String stages) {
        assertEquals(stages, written(DrillSet.ofReaches(mm(depth), mm(start), reaches(reaches), mm(clearance))));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # common practice, by hand
        250, 30, 100, 20, 30-130/150 130-230/250 230-250/270, true
        230, 30, 100, 20, 30-130/150 130-230/250,             false
        90,  0,  100, 15, 0-90/105,                           false
        150, 0,  100, 15, 0-100/115 100-150/165,              false
        """)
    void stagesSayHowLongEachDrillMustBe(
            String depth, String start, String perDrill, String clearance, String stages, boolean endsShort) {
        DrillSet set = DrillSet.ofStages(mm(depth), mm(start), mm(perDrill), mm(clearance));
        assertEquals(stages, written(set));
        assertEquals(endsShort, set.endsShort());
    }

    /** Common practice: 90, 200, 400 and 600 less 18 end at 582, and the hole is to be 700 deep. */
    @Test
    void aSetThatCannotReachIsRefused() {
        assertTrue(assertThrows(
                        IllegalArgumentException.class,
                        () -> DrillSet.ofReaches(mm("700"), Length.ZERO, reaches("90 200 400 600"), mm("18")))
                .getMessage()
                .contains("reaches 582 mm"));
        assertThrows(
                IllegalArgumentException.class,
                () -> DrillSet.ofReaches(mm("582.001"), Length.ZERO, reaches("600"), mm("18")));
        assertFalse(DrillSet.ofReaches(mm("582"), Length.ZERO, reaches("600"), mm("18"))
                .endsShort());
    }

    /**
     * By hand: two hundred stages of 0.5 are 100, and a last drill of exactly half the one before is not a short end.
     */
    @Test
    void twoHundredDrillsAreTheMostAndHalfIsNotShort() {
        assertEquals(
                200,
                DrillSet.ofStages(mm("100"), Length.ZERO, mm("0.5"), mm("5"))
                        .stages()
                        .size());
        assertThrows(
                IllegalArgumentException.class, () -> DrillSet.ofStages(mm("100.1"), Length.ZERO, mm("0.5"), mm("5")));
        assertEquals("0-90/90", written(DrillSet.ofStages(mm("90"), Length.ZERO, mm("100"), Length.ZERO)));
    }

    @ParameterizedTest
    @CsvSource({"100, 100, 5", "100, 101, 5", "100, -1, 5", "100, 0, -1"})
    void drillsAtHandNeedAHoleToo(String depth, String start, String clearance) {
        assertThrows(
                IllegalArgumentException.class,
                () -> DrillSet.ofReaches(mm(depth), mm(start), reaches("200"), mm(clearance)));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        100, 100, 10,  5
        100, -1,  10,  5
        0,   0,   10,  5
        100, 0,   0,   5
        100, 0,   10,  -1
        100, 0,   0.4, 5
        """)
    void whatMakesNoHoleIsRefused(String depth, String start, String perDrill, String clearance) {
        assertThrows(
                IllegalArgumentException.class,
                () -> DrillSet.ofStages(mm(depth), mm(start), mm(perDrill), mm(clearance)));
    }
}
