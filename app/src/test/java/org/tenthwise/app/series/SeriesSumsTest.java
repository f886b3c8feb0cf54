package org.tenthwise.app.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.series.MadeParts.JOURNAL;
import static org.tenthwise.app.series.MadeParts.SEAT;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.series.CapabilityShown.Standing;
import org.tenthwise.app.series.Drift.Shown;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.model.compute.statistics.Individuals.LimitsStanding;
import org.tenthwise.model.plan.Plan;

/** What the parts of a segment are said to show, and what is not said of them. */
class SeriesSumsTest {

    /**
     * A turned diameter that grows as the edge wears, deviations in mm from 30, drawn at random with a true slope of
     * 0.0012 a part and a scatter of 0.0025; and one without a slope. Worked out by numpy 1.26 and by R 4.2.2, which
     * agree: slope of the first 0.001360, limit of +0.025 met at 19.9 parts, a single part from 15.537 to 26.741.
     */
    private static final String[] GROWING = {
        "29.998", "30.002", "30.003", "30.001", "30.003", "30.004", "30.008", "30.008", "30.011", "30.007", "30.016",
        "30.014"
    };

    private static final String[] LEVEL_ENOUGH = {
        "30.000", "29.998", "30.001", "30.003", "30.006", "30.003", "30.001", "30.000"
    };

    private static final Plan WIDE =
            MadeParts.changed("lower = 29.980\nupper = 30.000", "lower = 29.975\nupper = 30.025");

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

    private void made(String... sizes) {
        for (int i = 0; i < sizes.length; i++) {
            shop.part(WIDE, String.valueOf(i + 1), "L-1", "Lathe 4")
                    .reads(JOURNAL, sizes[i])
                    .closed();
        }
    }

    private SegmentSums ofLast(int step) throws Exception {
        List<Segment> segments = shop.series(step).segments();
        SegmentSums found = sums.of(segments.get(segments.size() - 1), SizeOf.AS_CUT, SeriesSums.USUAL_INDEX);
        for (AskedSum asked : AskedInBatch.all(found)) {
            AskedInBatch.assertAlike(asked);
        }
        return found;
    }

    private Track only() throws Exception {
        SegmentSums found = ofLast(JOURNAL);
        assertEquals(1, found.tracks().size());
        return found.tracks().get(0);
    }

    @Test
    void aDriftIsShownWithThePartToMeasureBefore() throws Exception {
        made(GROWING);
        Drift drift = only().drift();
        assertEquals(Shown.SHOWN, drift.shown());
        assertEquals(Optional.of(15), drift.measureBefore());
        assertEquals(0.00136, drift.line().orElseThrow().slope().doubleValue(), 5e-5);
        assertTrue(drift.line().orElseThrow().low() > 0);
        assertEquals(Optional.empty(), drift.missed());
        assertEquals(
                15.537362246709957,
                Double.parseDouble(drift.asked().orElseThrow().result().written().values().entrySet().stream()
                        .filter(entry -> entry.getKey().equals("single_low"))
                        .map(entry -> AskedInBatch.text(entry.getValue()))
                        .findFirst()
                        .orElseThrow()),
                1e-6);
    }

    /** It is never said that nothing drifts: a drift of three standard deviations may well have been missed. */
    @Test
    void whereNoDriftIsShownTheChanceThatItWasMissedStandsBesideAndNoPartIsNamed() throws Exception {
        made(LEVEL_ENOUGH);
        Drift drift = only().drift();
        assertEquals(Shown.NOT_SHOWN, drift.shown());
        assertEquals(Optional.empty(), drift.measureBefore());
        // the power of the test of a slope with 8 parts: 0.64, by simulation in Python
        assertEquals(0.36, drift.missed().orElseThrow(), 0.01);
    }

    @Test
    void everythingSaidOfASegmentIsWhatTheBatchSaysOfItsSizesAsTheyWereTyped() throws Exception {
        made(GROWING);
        Track track = only();
        assertEquals(
                List.of(GROWING).stream()
                        .map(BigDecimal::new)
                        .map(BigDecimal::stripTrailingZeros)
                        .toList(),
                track.figures().stream().map(BigDecimal::stripTrailingZeros).toList());
        var summary = AskedInBatch.answer("summary", List.of(GROWING));
        assertEquals(
                0,
                new BigDecimal(AskedInBatch.text(summary.get("mean")))
                        .compareTo(track.mean().orElseThrow().mean()));
        assertEquals(
                0,
                new BigDecimal(AskedInBatch.text(summary.get("sd")))
                        .compareTo(track.mean().orElseThrow().sd().orElseThrow()));
        var chart = AskedInBatch.answer("individuals", List.of(GROWING));
        assertEquals(
                0,
                new BigDecimal(AskedInBatch.text(chart.get("upper")))
                        .compareTo(track.limits().orElseThrow().upper()));
        var index = AskedInBatch.answer(
                "capability",
                List.of(GROWING),
                "\"lower\":\"29.975\"",
                "\"upper\":\"30.025\"",
                "\"required\":\"1.33\"");
        assertEquals(
                Double.parseDouble(AskedInBatch.text(index.get("cpk_low"))),
                track.capability().interval().orElseThrow().low(),
                1e-9);
        var rejects = AskedInBatch.answer("zero-rejects", List.of(), "\"n\":12");
        assertEquals(
                Double.parseDouble(AskedInBatch.text(rejects.get("upper"))),
                ofLast(JOURNAL).rejects().rate().orElseThrow().upper(),
                1e-9);
    }

    /** What is drifting now is not what is coming. */
    @Test
    void aDriftingSeriesSupportsNoIndex() throws Exception {
        made(GROWING);
        assertEquals(Standing.DRIFTING, only().capability().standing());
    }

    @Test
    void limitsAreNoneBelowTenOnTrialBelowTwentyFiveAndUsualFromThere() throws Exception {
        List<String> sizes = new ArrayList<>();
        for (int i = 0; i < 25; i++) {
            sizes.add("30.00" + (i * 7 % 9));
        }
        for (int n : new int[] {9, 10, 24, 25}) {
            shop.close();
            shop = new MadeParts(folder.resolve(String.valueOf(n)));
            made(sizes.subList(0, n).toArray(String[]::new));
            assertEquals(
                    n < 10 ? Optional.empty() : Optional.of(n < 25 ? LimitsStanding.TRIAL : LimitsStanding.USUAL),
                    only().limits().map(ControlLimits::standing));
            assertEquals(n < 10, only().capability().standing() == Standing.NO_INDEX_YET);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void ofAHandfulNoLineAndNoIndexIsSaidAndNoMeanOfTwo(int n) throws Exception {
        made(List.of(GROWING).subList(0, n).toArray(String[]::new));
        Track track = only();
        assertEquals(Shown.TOO_FEW, track.drift().shown());
        assertEquals(Optional.empty(), track.drift().line());
        assertEquals(n > 2, track.mean().isPresent());
        assertEquals(Optional.empty(), track.limits());
        assertEquals(Standing.NO_INDEX_YET, track.capability().standing());
        assertEquals(Optional.empty(), track.capability().index());
        assertEquals(n, ofLast(JOURNAL).rejects().n());
    }

    @Test
    void partsAllAlikeHaveNoSpreadToSpeakOf() throws Exception {
        String[] alike = new String[12];
        Arrays.fill(alike, "30.001");
        made(alike);
        Track track = only();
        assertTrue(track.level());
        assertEquals(Shown.LEVEL, track.drift().shown());
        assertEquals(Optional.empty(), track.mean().orElseThrow().sd());
        assertEquals(Optional.empty(), track.limits());
        assertEquals(Standing.COARSE, track.capability().standing());
    }

    /** Four steps of a gauge are the gauge, not the parts. */
    @Test
    void aGaugeTooCoarseToTellPartsApartLeavesNoNumberThatMeansNothing() throws Exception {
        made(
                "30.00", "30.01", "30.00", "30.01", "30.01", "30.00", "30.01", "30.00", "30.01", "30.00", "30.00",
                "30.01");
        Track track = only();
        assertTrue(track.coarse());
        assertEquals(Shown.COARSE, track.drift().shown());
        assertEquals(Optional.empty(), track.mean().orElseThrow().sd());
        assertEquals(Optional.empty(), track.limits());
        assertEquals(Standing.COARSE, track.capability().standing());
    }

    @Test
    void aTenPartsIndexIsNotDecidedAndAWideSpreadIsContradicted() throws Exception {
        made("30.001", "30.004", "29.998", "30.002", "29.997", "30.003", "29.999", "30.000", "29.996", "30.002");
        CapabilityShown few = only().capability();
        assertTrue(few.interval().orElseThrow().low() < few.index().orElseThrow());
        shop.close();
        shop = new MadeParts(folder.resolve("wide"));
        made("29.976", "30.024", "29.981", "30.022", "29.978", "30.021", "29.977", "30.023", "29.980", "30.019");
        assertEquals(Standing.CONTRADICTS, only().capability().standing());
        shop.close();
        shop = new MadeParts(folder.resolve("narrow"));
        made(
                "30.0001", "30.0003", "29.9998", "30.0002", "29.9999", "30.0000", "30.0004", "29.9997", "30.0001",
                "30.0002");
        assertEquals(Standing.SUPPORTS, only().capability().standing());
    }

    /** A mean of the worst places, now at one end and now at the other, would lie in the middle of nothing. */
    @Test
    void ofPartsWithSeveralSizesTheLeastAndTheGreatestAreToldApart() throws Exception {
        for (int i = 0; i < 10; i++) {
            shop.part(String.valueOf(i)).reads(SEAT, "39.98" + (i % 5), "39.99" + (i * 3 % 7));
        }
        SegmentSums found = ofLast(SEAT);
        assertEquals(
                List.of(Track.Side.LEAST, Track.Side.GREATEST),
                found.tracks().stream().map(Track::side).toList());
        assertEquals(Optional.empty(), found.tracks().get(0).upper());
        assertEquals(Optional.empty(), found.tracks().get(1).lower());
        assertTrue(found.tracks().get(0).mean().orElseThrow().mean().compareTo(new BigDecimal("39.985")) < 0);
        assertTrue(found.tracks().get(1).mean().orElseThrow().mean().compareTo(new BigDecimal("39.99")) > 0);
    }

    @Test
    void unprovenAndUnfinishedPartsAreCountedNowhereAndNamed() throws Exception {
        made("30.001", "30.002", "30.030");
        shop.part(WIDE, "9", "L-1", "Lathe 4").reads(JOURNAL, "30.050");
        Rejects rejects = ofLast(JOURNAL).rejects();
        assertEquals(
                List.of(3, 1, 0, 1), List.of(rejects.n(), rejects.rejects(), rejects.unproven(), rejects.stillToCut()));
        assertEquals(3, ofLast(JOURNAL).n());
        assertFalse(only().places().contains(4));
    }

    @Test
    void onlyTheSegmentAskedForIsSummed() throws Exception {
        made(GROWING);
        shop.part(WIDE, "20", "L-1", "Lathe 5").reads(JOURNAL, "30.000").closed();
        assertEquals(1, ofLast(JOURNAL).n());
        Series series = shop.series(JOURNAL);
        List<Segment> across = series.segments(EnumSet.of(Break.Reason.MACHINE));
        assertEquals(
                13, sums.of(across.get(0), SizeOf.FINAL, SeriesSums.USUAL_INDEX).n());
        assertEquals(2, series.segments(Set.of(Break.Reason.GAUGE)).size());
    }

    /** The part named is always one that is still to come. */
    @Test
    void whereALimitIsNearTheNextPartIsNamed() throws Exception {
        made("30.010", "30.013", "30.014", "30.017", "30.019", "30.022", "30.023");
        assertEquals(Optional.of(8), only().drift().measureBefore());
    }

    /** A line is not looked along further than it was measured. */
    @Test
    void aFarLimitIsNotTrustedFurtherThanAsManyPartsAgain() throws Exception {
        made("29.9801", "29.9802", "29.9803", "29.9804", "29.9805", "29.9806");
        assertEquals(Optional.of(12), only().drift().measureBefore());
    }
}
