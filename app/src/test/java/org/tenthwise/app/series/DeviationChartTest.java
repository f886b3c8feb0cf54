package org.tenthwise.app.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.model.compute.statistics.ChartConstants;
import org.tenthwise.model.compute.statistics.Summary;
import org.tenthwise.model.plan.Plan;

/**
 * Different sizes on one chart by deviation from target. Figures: invented diameters of three part numbers, one piece
 * each, off one lathe, with results worked out by the factors 2.660 and 3.267; and two published tables of subgroups.
 */
class DeviationChartTest {

    private static final Map<String, Plan> PLANS = Map.of(
            "P1", plan("P1", "20.000", "20.021"),
            "P2", plan("P2", "35.000", "35.025"),
            "P3", plan("P3", "52.000", "52.030"));

    private static final String[][] MADE = {
        {"P1", "20.008"}, {"P1", "20.013"}, {"P2", "35.010"}, {"P1", "20.012"}, {"P3", "52.014"},
        {"P2", "35.016"}, {"P3", "52.009"}, {"P1", "20.009"}, {"P2", "35.014"}, {"P3", "52.017"}
    };

    private final SeriesSums sums = new SeriesSums(Handbook.sums());

    @TempDir
    private Path folder;

    private MadeParts shop;

    @BeforeEach
    void open() throws Exception {
        shop = new MadeParts(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private static Plan plan(String part, String lower, String upper) {
        return InventedPlans.read(MadeParts.TEXT
                .replace("\"T-1\"", "\"" + part + "\"")
                .replace("lower = 29.980\nupper = 30.000", "lower = " + lower + "\nupper = " + upper));
    }

    private void make() {
        for (int i = 0; i < MADE.length; i++) {
            shop.part(PLANS.get(MADE[i][0]), String.valueOf(i), "L-1", "Lathe 4")
                    .reads(MadeParts.JOURNAL, MADE[i][1])
                    .closed();
        }
    }

    private DeviationChart chart() {
        return DeviationChart.of(
                new Followed(shop.ledger.history()).of(Sought.ALL.with(SoughtBy.BALLOON, "7")), SizeOf.AS_CUT);
    }

    @Test
    void threePartNumbersStandOnOneChartInTheOrderTheyWereMade() throws Exception {
        make();
        DeviationChart chart = chart();
        assertEquals(
                List.of(
                        "-0.0025", "0.0025", "-0.0025", "0.0015", "-0.001", "0.0035", "-0.006", "-0.0015", "0.0015",
                        "0.002"),
                chart.entries().stream()
                        .map(entry -> entry.deviation().toPlainString())
                        .toList());
        ControlLimits limits = sums.of(chart.sinceTheLastBreak(Set.of()), false).orElseThrow();
        assertEquals(-0.00025, limits.centre().doubleValue(), 1e-9);
        assertEquals(0.00427778, limits.meanMovingRange().doubleValue(), 1e-8);
        // 3 over d2 is 2.660 as handbooks print it, and 2.6596 by the printed d2 of 1.128
        assertEquals(0.0111289, limits.upper().doubleValue(), 3e-6);
        assertEquals(-0.0116289, limits.lower().doubleValue(), 3e-6);
        assertEquals(0.0139755, limits.movingRangeUpper().doubleValue(), 1e-7);
        AskedInBatch.assertAlike(limits.asked());
    }

    @Test
    void overHalfTheToleranceTheyAreStandardised() throws Exception {
        make();
        ControlLimits limits =
                sums.of(chart().sinceTheLastBreak(Set.of()), true).orElseThrow();
        assertEquals(-0.0133333, limits.centre().doubleValue(), 1e-7);
        assertEquals(0.336296, limits.meanMovingRange().doubleValue(), 1e-6);
        assertEquals(0.881215, limits.upper().doubleValue(), 2e-4);
        assertEquals(-0.907881, limits.lower().doubleValue(), 2e-4);
        assertEquals(1.09868, limits.movingRangeUpper().doubleValue(), 1e-5);
    }

    @Test
    void aCharacteristicWithoutATargetIsNamedAndNotCharted() {
        shop.part("001").reads(MadeParts.JOURNAL, "29.990").reads(MadeParts.RELIEF, "28.1");
        DeviationChart chart = DeviationChart.of(shop.all(), SizeOf.FINAL);
        assertEquals(1, chart.entries().size());
        assertEquals(
                List.of("Relief"),
                chart.leftOut().stream().map(Characteristic::name).toList());
        assertEquals(Optional.empty(), sums.of(chart.entries(), false));
    }

    @Test
    void anotherMachineBreaksTheChart() {
        make();
        shop.part(PLANS.get("P1"), "90", "L-1", "Lathe 5").reads(MadeParts.JOURNAL, "20.010");
        assertEquals(1, chart().sinceTheLastBreak(Set.of()).size());
        assertEquals(
                MADE.length + 1,
                chart().sinceTheLastBreak(Set.of(Break.Reason.MACHINE)).size());
    }

    @Test
    void spreadsThatDifferAreSaidToDiffer() {
        String[] narrow = {"20.010", "20.011", "20.010", "20.011"};
        String[] wide = {"35.005", "35.020", "35.006", "35.019"};
        for (int i = 0; i < narrow.length; i++) {
            shop.part(PLANS.get("P1"), "a" + i, "L-1", "Lathe 4").reads(MadeParts.JOURNAL, narrow[i]);
        }
        assertFalse(chart().spreadsDiffer());
        for (int i = 0; i < wide.length; i++) {
            shop.part(PLANS.get("P2"), "b" + i, "L-1", "Lathe 4").reads(MadeParts.JOURNAL, wide[i]);
        }
        assertTrue(chart().spreadsDiffer());
    }

    /**
     * D. C. Montgomery, Introduction to Statistical Quality Control, short production runs, table of deviations from
     * nominal (from memory; its sums agree with the mean of 0.17 and the mean range of 2.7): limits 2.93 and −2.59, of
     * ranges 6.95.
     */
    @Test
    void theSubgroupsOfTwoPartsComeToTheirPrintedLimits() {
        int[][] a = {
            {50, 50, 51, 52}, {50, 49, 50, 51}, {50, 48, 49, 52}, {50, 49, 53, 51}, {25, 24, 27, 26},
            {25, 25, 27, 24}, {25, 27, 26, 23}, {25, 25, 24, 23}, {25, 24, 25, 25}, {25, 26, 24, 25}
        };
        assertSubgroups(a, 1, 0.166667, 2.7, 2.92877, -2.59543, 6.9498);
    }

    /**
     * Lecture notes on short runs, three parts, twelve subgroups of four (docslib.org/doc/3125570, exercise 9.1);
     * readings, means and ranges agree, single deviations are misprinted in three rows. Targets 9.5, 15.5 and 2 here in
     * halves.
     */
    @Test
    void theSubgroupsOfThreePartsComeToTheirPrintedLimits() {
        int[][] b = {
            {19, 14, 18, 20, 22}, {19, 18, 18, 18, 22}, {19, 14, 20, 22, 16}, {31, 28, 30, 34, 34},
            {31, 28, 32, 32, 32}, {31, 30, 34, 30, 34}, {31, 34, 34, 32, 32}, {31, 32, 34, 30, 32},
            {4, 2, 4, 4, 6}, {4, 6, 4, 4, 6}, {4, 6, 6, 4, 2}, {4, 4, 4, 2, 6}
        };
        assertSubgroups(b, 2, 0.1875, 2.25, 1.82775, -1.45275, 5.1345);
    }

    private static void assertSubgroups(
            int[][] rows, int divisor, double mean, double range, double upper, double lower, double rangeUpper) {
        List<BigDecimal> deviations = new ArrayList<>();
        List<BigDecimal> ranges = new ArrayList<>();
        for (int[] row : rows) {
            List<BigDecimal> group = new ArrayList<>();
            for (int i = 1; i < row.length; i++) {
                group.add(BigDecimal.valueOf(row[i] - row[0]).divide(BigDecimal.valueOf(divisor)));
            }
            deviations.addAll(group);
            ranges.add(Summary.of(group).range());
        }
        ChartConstants factors = ChartConstants.of(rows[0].length - 1);
        double centre = Summary.of(deviations).mean().doubleValue();
        double meanRange = Summary.of(ranges).mean().doubleValue();
        assertEquals(mean, centre, 1e-6);
        assertEquals(range, meanRange, 1e-9);
        // the table prints its factors to three places
        assertEquals(upper, centre + factors.a2() * meanRange, 0.002);
        assertEquals(lower, centre - factors.a2() * meanRange, 0.002);
        assertEquals(rangeUpper, factors.d4Upper() * meanRange, 0.003);
    }
}
