package org.tenthwise.app.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.series.MadeParts.JOURNAL;
import static org.tenthwise.app.series.MadeParts.SEAT;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.history.MatterKind;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.series.MeasureAgain.Counsel;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.text.SeriesSentences;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** Nobody is told to run on where anything might be otherwise than the figures know. */
class MeasureAgainTest {

    /** The sum names part 15 of these; {@link SeriesSumsTest} has where the figure is from. */
    private static final List<String> GROWING = List.of(
            "29.998", "30.002", "30.003", "30.001", "30.003", "30.004", "30.008", "30.008", "30.011", "30.007",
            "30.016", "30.014");

    private static final Plan WIDE =
            MadeParts.changed("lower = 29.980\nupper = 30.000", "lower = 29.975\nupper = 30.025");

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

    private MadeParts.Part part(String serial) {
        return shop.part(WIDE, serial, "L-1", "Lathe 4");
    }

    private void twelve() {
        for (int i = 0; i < GROWING.size(); i++) {
            part("%03d".formatted(i + 1)).reads(JOURNAL, GROWING.get(i)).closed();
        }
    }

    private static Optional<MeasureAgain> again(
            Series series, SizeOf of, List<RunFacts> since, Optional<OffsetDateTime> now) {
        return again(series, of, since, false, now);
    }

    private static Optional<MeasureAgain> again(
            Series series, SizeOf of, List<RunFacts> since, boolean pastDue, Optional<OffsetDateTime> now) {
        SegmentSums sums = new SeriesSums(Handbook.sums()).of(sinceTheLastBreak(series), of, SeriesSums.USUAL_INDEX);
        return MeasureAgain.of(series, sums, since, pastDue, now);
    }

    private static Segment sinceTheLastBreak(Series series) {
        List<Segment> segments = series.segments();
        return segments.get(segments.size() - 1);
    }

    private static PartPoint last(Series series) {
        return series.points().get(series.points().size() - 1);
    }

    /** Minutes behind the last reading. */
    private Optional<MeasureAgain> said(int minutes) {
        Series series = shop.series(JOURNAL);
        return again(
                series,
                SizeOf.AS_CUT,
                BegunSince.of(shop.ledger.history(), last(series)),
                PastDue.isAnyOf(shop.ledger.history(), sinceTheLastBreak(series)),
                Optional.of(last(series).at().plusMinutes(minutes)));
    }

    private Optional<Counsel> when() {
        return said(10).map(MeasureAgain::counsel);
    }

    /** Before part 15, and twelve are there: 13 and 14 may pass, and 14 is measured. */
    @Test
    void itIsCountedInPartsFromTheLastOneThatWasRead() {
        twelve();
        MeasureAgain again = said(10).orElseThrow();
        assertEquals(Counsel.AFTER, again.counsel());
        assertEquals(2, again.parts());
        assertEquals("012", again.last().run().serial());
    }

    @Test
    void ofASeriesThatIsOldAndOfAClockThatIsWrongThereIsNoLeave() {
        twelve();
        assertEquals(Counsel.AFTER, said(12 * 60).orElseThrow().counsel());
        assertEquals(Counsel.LONG_AGO, said(12 * 60 + 1).orElseThrow().counsel());
        assertEquals(Counsel.LONG_AGO, said(-1).orElseThrow().counsel());
    }

    /** It is cut by the same offset, and to measure it afterwards brings no metal back. */
    @Test
    void behindAPartThatADriftBroughtOutTheNextOneIsCorrectedForFirst() {
        twelve();
        part("013").reads(JOURNAL, "30.026").closed();
        assertEquals(PartStanding.OUT, last(shop.series(JOURNAL)).standing());
        assertEquals(Optional.of(Counsel.NEXT_MAY_BE_OUT), when());
    }

    @Test
    void whereAPartIsStillToBeCutThereIsNoLeave() {
        twelve();
        part("013").reads(JOURNAL, "30.027");
        assertEquals(Optional.of(Counsel.NOT_ALL_IN), when());
    }

    @Test
    void anotherToolThatWasNotedBehindTheLastReadingEndsIt() {
        twelve();
        part("013").did(new StepEvent.NoteMade(JOURNAL, "new insert"));
        assertEquals(Optional.of(Counsel.TOOL_SINCE), when());
    }

    @Test
    void anotherPartOnTheMachineEndsItAndOneElsewhereDoesNot() {
        twelve();
        shop.part(MadeParts.changed("T-1", "X-9"), "001", "L-1", "Lathe 5");
        assertEquals(Optional.of(Counsel.AFTER), when());
        shop.part(MadeParts.changed("T-1", "X-9"), "002", "L-1", "lathe 4").reads(JOURNAL, "29.990");
        assertEquals(Optional.of(Counsel.BEGUN_SINCE), when());
    }

    /** Nothing is found of it yet, and it is on the machine all the same. */
    @Test
    void anotherPartThatNobodyReadYetEndsItHoweverItsMachineIsWritten() {
        twelve();
        shop.part(MadeParts.changed("T-1", "X-9"), "001", "L-1", "lathe 4 ");
        assertEquals(Optional.of(Counsel.BEGUN_SINCE), when());
    }

    @Test
    void anotherPartThatNobodyReadYetEndsItWhereItNamesNoMachine() {
        twelve();
        for (int i = 0; i < 25; i++) {
            shop.part(MadeParts.changed("T-1", "X-9"), "5" + i, "L-1", "Lathe 5");
        }
        assertEquals(Optional.of(Counsel.AFTER), when());
        shop.part(MadeParts.changed("T-1", "Y-9"), "001", "L-1", "");
        assertEquals(Optional.of(Counsel.BEGUN_SINCE), when());
    }

    /** The next part is on the machine: it is read before anything is said of those behind it. */
    @Test
    void thePartBegunNextIsReadFirst() {
        twelve();
        part("013");
        assertEquals(Optional.of(Counsel.BEGUN_SINCE), when());
    }

    @Test
    void whereTheLimitIsNextNobodyRunsOn() {
        String[] steep = {"30.010", "30.013", "30.014", "30.017", "30.019", "30.022", "30.023"};
        for (int i = 0; i < steep.length; i++) {
            part(String.valueOf(i)).reads(JOURNAL, steep[i]).closed();
        }
        assertEquals(Optional.of(Counsel.NEXT_MAY_BE_OUT), when());
    }

    private static Event dueOn(String mark, String day) {
        return new ShopEvent.CalibrationKnown(
                GaugeOrMaster.gauge(mark, GaugeKind.MICROMETER),
                new Calibration("K-1", Optional.of(LocalDate.parse(day))),
                false);
    }

    /** Its zero may have gone the way the sizes seem to go. */
    @Test
    void whereAGaugeWasPastItsDueDayThereIsNoLeave() {
        twelve();
        part("013")
                .with(JOURNAL, "MC-1")
                .did(dueOn("MC-1", "2026-03-01"))
                .reads(JOURNAL, "30.015")
                .closed();
        assertEquals(Optional.of(Counsel.GAUGE_PAST_DUE), when());
    }

    /** Only the gauge a size was read with speaks against that size. */
    @Test
    void onItsDueDayAGaugeGivesLeaveAndSoDoesOneOfAnotherCheckThatIsPastIts() {
        twelve();
        part("013")
                .with(JOURNAL, "MC-1")
                .with(SEAT, "MC-2")
                .did(dueOn("MC-1", "2026-03-02"))
                .did(dueOn("MC-2", "2026-03-01"))
                .reads(SEAT, "39.990", "39.991")
                .reads(JOURNAL, "30.015")
                .closed();
        assertEquals(
                1,
                shop.ledger.history().matters().stream()
                        .filter(open -> open.matter().kind() == MatterKind.GAUGE_PAST_DUE)
                        .count());
        assertEquals(Optional.of(Counsel.AFTER), when());
    }

    private List<String> said() {
        Series series = shop.series(JOURNAL);
        SegmentSums sums =
                new SeriesSums(Handbook.sums()).of(sinceTheLastBreak(series), SizeOf.AS_CUT, SeriesSums.USUAL_INDEX);
        return new SeriesSentences(Words.ENGLISH)
                .of(sums, 3, Optional.empty()).stream()
                        .map(SeriesSentences.Told::sentence)
                        .toList();
    }

    /** A share of rejects, and limits, are those of parts that are alike: these are not. */
    @Test
    void whereSizesDriftNoShareOfRejectsIsForetoldAndTheLimitsAreNoneOfPartsToCome() {
        twelve();
        assertTrue(said().contains("0 of 12 out. That says nothing of parts to come, for these drift or jump."));
        assertTrue(
                said().stream()
                        .anyMatch(said -> said.startsWith("Trial limits of 12 parts: ")
                                && said.endsWith("These drift or jump: parts to come will not keep to them.")),
                () -> said().toString());
    }

    @Test
    void whereTheyDoNotTheShareIsSaid() {
        String[] steady = {
            "30.001", "30.004", "29.999", "30.003", "30.000", "30.002", "29.998", "30.003", "30.001", "30.000"
        };
        for (int i = 0; i < steady.length; i++) {
            part(String.valueOf(i)).reads(JOURNAL, steady[i]).closed();
        }
        assertTrue(
                said().contains("0 of 10 out. Up to 26\u00a0% of parts made alike could be (95\u00a0% confidence)."),
                () -> said().toString());
        assertTrue(said().stream().noneMatch(said -> said.contains("drift or jump")), () -> said().toString());
    }

    /** What broke the series is behind the drift: it is of another tool, gauge or machine. */
    @Test
    void behindABreakAndAcrossOneNothingIsSaid() {
        twelve();
        shop.part(WIDE, "013", "L-1", "Lathe 5").reads(JOURNAL, "30.000").closed();
        assertEquals(Optional.empty(), when());
        Series series = shop.series(JOURNAL);
        SegmentSums across = new SeriesSums(Handbook.sums())
                .of(series.segments(Break.Reason.loose()).get(0), SizeOf.AS_CUT, SeriesSums.USUAL_INDEX);
        assertEquals(13, across.n());
        assertEquals(
                Optional.empty(),
                MeasureAgain.of(
                        series,
                        across,
                        List.of(),
                        false,
                        Optional.of(last(series).at())));
    }

    @Test
    void finalSizesGiveNoLeave() {
        twelve();
        Series series = shop.series(JOURNAL);
        assertEquals(
                Optional.empty(),
                again(series, SizeOf.FINAL, List.of(), Optional.of(last(series).at())));
    }

    @Test
    void onPaperItSaysWhereTheLineMeetsTheLimitAndNoMore() {
        twelve();
        MeasureAgain again = again(shop.series(JOURNAL), SizeOf.AS_CUT, List.of(), Optional.empty())
                .orElseThrow();
        assertEquals(Counsel.ON_PAPER, again.counsel());
        assertEquals(3, again.parts());
    }

    @Test
    void ofPartsReadAtAnotherStationThereIsNoLeave() {
        twelve();
        Series series = shop.series(JOURNAL);
        List<PartPoint> came =
                series.points().stream().map(MeasureAgainTest::cameIn).toList();
        Series elsewhere =
                new Series(series.characteristic(), came, series.breaks(), series.leftOut(), series.toolSince());
        assertEquals(
                Optional.of(Counsel.ELSEWHERE),
                again(
                                elsewhere,
                                SizeOf.AS_CUT,
                                List.of(),
                                Optional.of(last(series).at()))
                        .map(MeasureAgain::counsel));
    }

    private static PartPoint cameIn(PartPoint point) {
        RunFacts run = point.run();
        RunFacts came = new RunFacts(
                run.begun(),
                RunName.imported(run.id(), "3f9c0a1b"),
                run.part(),
                run.revision(),
                run.serial(),
                run.lot(),
                run.machine(),
                run.planHash(),
                run.begunAt(),
                run.by(),
                run.people(),
                run.last(),
                run.lastAt(),
                run.stand(),
                run.closing(),
                run.kind());
        return new PartPoint(
                came,
                point.step(),
                point.found(),
                point.asCut(),
                point.finish(),
                point.at(),
                point.entry(),
                point.timesMeasured(),
                point.outBefore());
    }
}
