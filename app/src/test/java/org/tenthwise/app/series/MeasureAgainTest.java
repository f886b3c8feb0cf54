package org.tenthwise.app.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.app.series.MadeParts.JOURNAL;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.series.MeasureAgain.Counsel;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.StepEvent;

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
        List<Segment> segments = series.segments();
        SegmentSums sums =
                new SeriesSums(Handbook.sums()).of(segments.get(segments.size() - 1), of, SeriesSums.USUAL_INDEX);
        return MeasureAgain.of(series, sums, since, now);
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

    @Test
    void whereThePartReadLastIsOutThereIsNoLeave() {
        twelve();
        part("013").reads(JOURNAL, "30.026").closed();
        assertEquals(Optional.of(Counsel.NOT_ALL_IN), when());
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
                        series, across, List.of(), Optional.of(last(series).at())));
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
