package org.tenthwise.app.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.series.MadeParts.JOURNAL;
import static org.tenthwise.app.series.MadeParts.RELIEF;
import static org.tenthwise.app.series.MadeParts.SEAT;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;
import org.tenthwise.app.history.StepSummary;
import org.tenthwise.app.series.Break.Reason;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/** Which parts stand in a series, with which size, in which order, and where it is broken. */
class SeriesTest {

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

    private static List<String> sizes(Series series, SizeOf which) {
        return series.points().stream()
                .map(point -> point.run().serial() + " "
                        + point.size(which).judged().base().toPlainString())
                .toList();
    }

    private static List<String> leftOut(Series series) {
        return series.leftOut().stream()
                .map(one -> one.run().serial() + " " + one.why())
                .toList();
    }

    private Set<Reason> onlyBreak(int step) {
        List<Break> breaks = shop.series(step).breaks();
        assertEquals(1, breaks.size(), breaks::toString);
        assertEquals(1, breaks.get(0).before());
        return breaks.get(0).reasons();
    }

    @Test
    void partsStandInTheOrderTheyWereMeasuredWithTheirSizes() {
        shop.journals("29.990", "29.991", "29.989");
        Series journal = shop.series(JOURNAL);
        assertEquals(List.of("001 29.99", "002 29.991", "003 29.989"), sizes(journal, SizeOf.FINAL));
        assertEquals(sizes(journal, SizeOf.FINAL), sizes(journal, SizeOf.AS_CUT));
        assertEquals(List.of(), journal.breaks());
        assertEquals(Optional.of("7"), journal.characteristic().balloon());
        assertEquals(1, journal.segments().size());
    }

    /** So that a screen of one does not read all there is. */
    @Test
    void aCharacteristicIsLookedForNoWiderThanItStands() {
        Sought all = Sought.ofPart("T-1");
        Characteristic seven = new Characteristic("T-1", Optional.of("7"), 1, "Journal", Optional.empty());
        assertEquals(all.with(SoughtBy.BALLOON, "7"), seven.in(all));
        Characteristic first = new Characteristic("T-1", Optional.empty(), 1, "Journal", Optional.empty());
        assertEquals(all.with(SoughtBy.CHARACTERISTIC, "1"), first.in(all));
        Sought journals = all.with(SoughtBy.CHARACTERISTIC, "Journal");
        assertEquals(journals, first.in(journals));
        Characteristic umlaut = new Characteristic("T-1", Optional.of("\u00c47"), 1, "Journal", Optional.empty());
        assertEquals(all, umlaut.in(all));
    }

    /** Two runs can be open at once: the place of a part is where this characteristic was measured. */
    @Test
    void theOrderIsThatOfTheReadingsNotThatOfTheRuns() {
        MadeParts.Part first = shop.part("001");
        shop.part("002").reads(JOURNAL, "29.990");
        first.reads(JOURNAL, "29.985");
        assertEquals(List.of("002 29.99", "001 29.985"), sizes(shop.series(JOURNAL), SizeOf.FINAL));
        assertEquals(List.of(), shop.series(JOURNAL).breaks());
    }

    @Test
    void theSizeAsItWasCutIsTheFirstSinceTheLastCutAndTheFinalOneThatMeasuredLast() {
        shop.part("001")
                .reads(JOURNAL, "30.040")
                .cut(JOURNAL)
                .reads(JOURNAL, "29.992")
                .again(JOURNAL)
                .reads(JOURNAL, "29.994");
        Series journal = shop.series(JOURNAL);
        assertEquals(List.of("001 29.992"), sizes(journal, SizeOf.AS_CUT));
        assertEquals(List.of("001 29.994"), sizes(journal, SizeOf.FINAL));
        assertEquals(1, journal.points().get(0).cuts());
    }

    @Test
    void whatIsStruckOutIsNeverInASeries() {
        shop.part("001").reads(JOURNAL, "29.950").struck().reads(JOURNAL, "29.990");
        assertEquals(List.of("001 29.99"), sizes(shop.series(JOURNAL), SizeOf.AS_CUT));
        shop.part("002").reads(JOURNAL, "29.991").struck();
        assertEquals(List.of("001 29.99"), sizes(shop.series(JOURNAL), SizeOf.FINAL));
        assertEquals(List.of("002 NOT_READ_TO_ITS_END"), leftOut(shop.series(JOURNAL)));
    }

    @Test
    void aPartCutAndNotMeasuredSinceIsNone() {
        shop.part("001").reads(JOURNAL, "30.040").cut(JOURNAL);
        assertEquals(List.of(), shop.series(JOURNAL).points());
        assertEquals(List.of("001 NOT_READ_TO_ITS_END"), leftOut(shop.series(JOURNAL)));
    }

    @Test
    void aPartReadAtOneOfTwoPlacesIsNoneAndOneReadAtBothHasBothEnds() {
        shop.part("001").reads(SEAT, "39.990");
        assertEquals(List.of("001 NOT_READ_TO_ITS_END"), leftOut(shop.series(SEAT)));
        shop.part("002").reads(SEAT, "39.998", "39.981");
        PartPoint point = shop.series(SEAT).points().get(0);
        assertEquals("39.981", point.asCut().least().base().toPlainString());
        assertEquals("39.998", point.asCut().greatest().base().toPlainString());
        assertEquals("39.998", point.asCut().judged().base().toPlainString());
    }

    @Test
    void aRunPutAwayAndAReadingFarOffStandBesideTheSeries() {
        shop.part("001").reads(JOURNAL, "29.990").did(new Event.PutAway("Foreman 1", "begun by mistake"));
        shop.part("002").reads(JOURNAL, "2.999");
        shop.part("003").reads(JOURNAL, "29.991");
        Series journal = shop.series(JOURNAL);
        assertEquals(List.of("003 29.991"), sizes(journal, SizeOf.FINAL));
        assertEquals(List.of("001 PUT_AWAY", "002 FAR_OFF"), leftOut(journal));
    }

    /** Whoever measures a part twice has not made two. */
    @Test
    void aPartMeasuredInTwoRunsIsOnePointWithTheLastWordAndTheFirstPlace() {
        shop.part("001").reads(JOURNAL, "29.990").closed();
        shop.part("002").reads(JOURNAL, "29.991").closed();
        shop.part("001")
                .by("Inspector 2")
                .with(JOURNAL, "MC-9")
                .reads(JOURNAL, "29.988")
                .closed();
        Series journal = shop.series(JOURNAL);
        assertEquals(List.of("001 29.99", "002 29.991"), sizes(journal, SizeOf.AS_CUT));
        assertEquals(List.of("001 29.988", "002 29.991"), sizes(journal, SizeOf.FINAL));
        assertEquals(2, journal.points().get(0).timesMeasured());
        assertEquals(List.of("001 MEASURED_AGAIN_LATER"), leftOut(journal));
        assertEquals("run-003", journal.points().get(0).run().id());
    }

    @Test
    void theSameSerialOfAnotherLotIsAnotherPart() {
        shop.part("001").reads(JOURNAL, "29.990");
        shop.part(MadeParts.PLAN, "001", "L-2", "Lathe 4").reads(JOURNAL, "29.991");
        assertEquals(2, shop.series(JOURNAL).points().size());
        assertEquals(EnumSet.of(Reason.LOT), onlyBreak(JOURNAL));
    }

    /** A part found out first and in later is a reject all the same: one of the two is wrong. */
    @Test
    void aPartThatWasOutWhenItWasMeasuredBeforeCountsAgainstTheParts() {
        shop.part("001").reads(JOURNAL, "29.970").closed();
        shop.part("001").reads(JOURNAL, "29.985").closed();
        PartPoint point = shop.series(JOURNAL).points().get(0);
        assertEquals(PartStanding.IN, point.standing());
        assertTrue(point.isReject());
    }

    @Test
    void metalLeftInAnOpenRunIsNotKnownYetAndInAClosedOneOut() {
        MadeParts.Part part = shop.part("001").reads(JOURNAL, "30.040");
        assertEquals(
                PartStanding.STILL_TO_CUT, shop.series(JOURNAL).points().get(0).standing());
        part.closed();
        assertEquals(PartStanding.OUT, shop.series(JOURNAL).points().get(0).standing());
    }

    @Test
    void whatIsUsedByConcessionIsMarked() {
        shop.part("001")
                .reads(JOURNAL, "29.970")
                .did(new StepEvent.DispositionSigned(
                        JOURNAL, Disposition.USE_AS_IS, "agreed", "Engineer 1", Optional.of("C-7")));
        PartPoint point = shop.series(JOURNAL).points().get(0);
        assertEquals(PartStanding.CONCEDED, point.standing());
        assertEquals(
                Optional.of(Disposition.USE_AS_IS), point.step().disposed().map(StepSummary.Disposed::disposition));
    }

    @Test
    void anotherMachineLotPersonOrGaugeBreaksIt() {
        shop.part("001").reads(JOURNAL, "29.990");
        shop.part(MadeParts.PLAN, "002", "L-2", "Lathe 5")
                .by("Setter 2")
                .with(JOURNAL, "MC-7")
                .reads(JOURNAL, "29.991");
        assertEquals(EnumSet.of(Reason.MACHINE, Reason.LOT, Reason.GAUGE, Reason.PERSON), onlyBreak(JOURNAL));
        assertEquals(2, shop.series(JOURNAL).segments().size());
        assertEquals(1, shop.series(JOURNAL).segments(onlyBreak(JOURNAL)).size());
        assertEquals(2, shop.series(JOURNAL).segments(Set.of(Reason.MACHINE)).size());
    }

    @Test
    void aPartCutAgainAfterItWasMeasuredBreaksItBeforeThatPart() {
        shop.part("001").reads(JOURNAL, "29.990");
        shop.part("002").reads(JOURNAL, "30.030").cut(JOURNAL).reads(JOURNAL, "29.991");
        assertEquals(EnumSet.of(Reason.OFFSET), onlyBreak(JOURNAL));
        shop.part("003").reads(JOURNAL, "29.992");
        assertEquals(1, shop.series(JOURNAL).breaks().size(), "the third goes on with the offset of the second");
    }

    @ParameterizedTest
    @CsvSource({"Insert changed or indexed", "Wendeplatte gewechselt oder gedreht", "new TIP put in", "Formstahl neu"})
    void aNoteOfAToolBreaksItInEveryLanguage(String note) {
        shop.part("001").reads(JOURNAL, "29.990").did(new StepEvent.NoteMade(JOURNAL, note));
        shop.part("002").reads(JOURNAL, "29.991");
        shop.part("003").reads(JOURNAL, "29.992");
        assertEquals(EnumSet.of(Reason.TOOL), onlyBreak(JOURNAL));
    }

    @Test
    void aNoteOfSomethingElseBreaksNothing() {
        shop.part("001").reads(JOURNAL, "29.990").did(new StepEvent.NoteMade(JOURNAL, "coolant topped up"));
        shop.part("002").reads(JOURNAL, "29.991");
        assertEquals(List.of(), shop.series(JOURNAL).breaks());
    }

    /** The limits of today judge no part of before, and no sum goes across. */
    @Test
    void otherLimitsAreAStopThatNobodyCanLookAcross() {
        shop.part("001").reads(JOURNAL, "29.990");
        Plan wider = MadeParts.changed("lower = 29.980", "lower = 29.970");
        shop.part(wider, "002", "L-1", "Lathe 4").reads(JOURNAL, "29.991");
        assertTrue(onlyBreak(JOURNAL).containsAll(Set.of(Reason.LIMITS, Reason.PLAN_ISSUE)));
        assertEquals(
                2, shop.series(JOURNAL).segments(EnumSet.allOf(Reason.class)).size());
        assertEquals(
                "29.980",
                shop.series(JOURNAL)
                        .points()
                        .get(0)
                        .limits()
                        .lower()
                        .orElseThrow()
                        .text());
    }

    @Test
    void anotherDimensionUnderTheSameBalloonIsAStop() {
        shop.part("001").reads(RELIEF, "28.1");
        Plan length = InventedPlans.read(MadeParts.TEXT.replace(
                "kind = \"diameter\"\nname = \"Relief\"",
                "kind = \"size\"\nfeature = \"thickness\"\nname = \"Relief\""));
        shop.part(length, "002", "L-1", "Lathe 4").reads(RELIEF, "28.2");
        assertTrue(onlyBreak(RELIEF).contains(Reason.KIND));
        assertTrue(Reason.KIND.isStop());
    }

    /** Another step came in before: the balloon tells it, not the number of the step. */
    @Test
    void aBalloonIsFollowedOverIssuesThatNumberTheirStepsAnew() {
        shop.part("001").reads(JOURNAL, "29.990");
        Plan turned = InventedPlans.read(MadeParts.TEXT
                .replace("number = 3\noperation", "number = 6\noperation")
                .replace("number = 2\noperation", "number = 5\noperation")
                .replace("number = 1\noperation", "number = 4\noperation"));
        shop.part(turned, "002", "L-1", "Lathe 4")
                .with(4, "MC-1")
                .did(new StepEvent.ReadingTaken(4, "1.1", new Written("29.991", Unit.MILLIMETRE)));
        assertEquals(List.of("001 29.99", "002 29.991"), sizes(shop.series(4), SizeOf.FINAL));
        assertEquals(EnumSet.of(Reason.PLAN_ISSUE), onlyBreak(4));
    }

    /** Without a balloon the number and the name must both be the same. */
    @Test
    void withoutABalloonNothingIsJoinedByItsNumberAlone() {
        String bare = MadeParts.TEXT.replaceAll("balloon = .*\n", "");
        shop.part(InventedPlans.read(bare), "001", "L-1", "Lathe 4").reads(JOURNAL, "29.990");
        shop.part(InventedPlans.read(bare.replace("Journal", "Collar")), "002", "L-1", "Lathe 4")
                .reads(JOURNAL, "29.991");
        assertEquals(
                List.of(List.of("001 29.99"), List.of("002 29.991")),
                shop.all().stream().map(series -> sizes(series, SizeOf.FINAL)).toList());
        assertTrue(shop.all().stream()
                .allMatch(series -> series.characteristic().balloon().isEmpty()));
    }

    /** A clock that was set back, or runs of another tablet: which part came first nobody can tell. */
    @Test
    void partsInAnotherOrderByTheClockThanInTheLedgerAreBroken() {
        shop.part("001").reads(JOURNAL, "29.990");
        shop.at("2026-03-01T07:00:00+01:00");
        shop.part("002").reads(JOURNAL, "29.991");
        assertEquals(List.of("002 29.991", "001 29.99"), sizes(shop.series(JOURNAL), SizeOf.FINAL));
        assertTrue(onlyBreak(JOURNAL).contains(Reason.ORDER));
    }

    @Test
    void aSizeHasItsPlaceInTheToleranceWhereThereAreTwoLimits() {
        shop.part("001").reads(JOURNAL, "29.980").reads(RELIEF, "28.4");
        shop.part("002").reads(JOURNAL, "29.990");
        shop.part("003").reads(JOURNAL, "30.000");
        assertEquals(
                List.of("-100", "0", "100"),
                shop.series(JOURNAL).points().stream()
                        .map(point -> point.place(SizeOf.FINAL)
                                .orElseThrow()
                                .percent()
                                .stripTrailingZeros()
                                .toPlainString())
                        .toList());
        assertFalse(
                shop.series(RELIEF).points().get(0).place(SizeOf.FINAL).isPresent(),
                "one limit has no middle, and zero is not best for a diameter");
    }
}
