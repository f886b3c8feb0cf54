package org.tenthwise.app.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.words.Words;

/**
 * The story of a step, line by line: what was taken where, with which gauge, when and by whom, and what counts still.
 */
class StepStoryTest {

    private static final Words WORDS = Words.of(Locale.ENGLISH);
    private static final String TEXT = InventedPlans.text(
            "mm",
            """
            [[step]]
            number = 1
            operation = 10
            kind = "confirm"
            name = "Lot"
            what = "The lot is that on the card."
            hold = [1]

            [[step]]
            number = 2
            operation = 10
            kind = "bore"
            name = "Bore"
            method = "Two ways."
            lower = 20.000
            upper = 20.021
            places = ["0°", "90°"]
            cut_again = "too small"
            gauge_kind = "bore-gauge"
            gauge = "BG-1"
            master = 20.000
            hold = [2]

            [[step]]
            number = 3
            operation = 10
            kind = "look"
            name = "Finish"
            what = "No chatter."
            """);
    private static final Plan PLAN = InventedPlans.read(TEXT);
    private static final int LOT = 1;
    private static final int BORE = 2;

    /** Moved by hand, a minute for each deed. */
    private static final class Hours extends Clock {
        private Instant now = Instant.parse("2026-11-25T06:31:00Z");

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.ofHours(1);
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }

    @TempDir
    private Path folder;

    private final Hours hours = new Hours();
    private Ledger ledger;
    private RunSession session;
    /** Whether the shop knows which way the number of the bore gauge goes. */
    private boolean senseKnown;

    @BeforeEach
    void begin() throws Exception {
        ledger = new SqliteStores().open(folder.resolve("s.db"));
        session = begun(PLAN, "014", "Setter 1");
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    private RunSession begun(Plan plan, String serial, String by) throws Exception {
        return new Runs(ledger, hours).begin(new RunHeader(plan, serial, "", "Lathe 4", by));
    }

    private void later(int minutes) {
        hours.now = hours.now.plus(Duration.ofMinutes(minutes));
    }

    private static void lot(RunSession run) throws Exception {
        run.goTo(LOT);
        assertEquals(Optional.empty(), run.answer(Answer.YES).objection());
    }

    /** The bore in hand and its gauge set on 20.000, where it reads nothing. */
    private void setGauge(RunSession run) throws Exception {
        lot(run);
        run.goTo(BORE);
        if (!senseKnown) {
            run.gauge().tellSense(false);
        }
        enter(run, "20.000", "0");
        if (!senseKnown) {
            run.gauge().confirmSense(true);
        }
        senseKnown = true;
    }

    private void enter(RunSession run, String... figures) throws Exception {
        for (String figure : figures) {
            later(1);
            assertEquals(Optional.empty(), run.enter(figure).objection(), figure);
        }
    }

    private List<StoryChapter> chapters() {
        return StepStory.of(session.state(), WORDS).chapters();
    }

    private List<String> told(String heading) {
        return chapters().stream()
                .filter(chapter -> chapter.heading().equals(heading))
                .flatMap(chapter -> chapter.lines().stream())
                .map(line ->
                        line.words() + " | " + line.when() + " | " + line.person() + (line.counts() ? "" : " | gone"))
                .toList();
    }

    private List<String> headings() {
        return chapters().stream().map(StoryChapter::heading).toList();
    }

    @Test
    void beforeAnythingIsDoneNothingIsTold() {
        assertEquals(List.of("Hold point after this check"), headings());
        assertEquals(List.of("1 Lot: not settled |  | "), told("Hold point after this check"));
    }

    @Test
    void everyReadingNamesItsPlaceItsGaugeWhenAndWho() throws Exception {
        setGauge(session);
        enter(session, "0.010");
        session.handOver("Setter 2");
        enter(session, "0.012");
        assertEquals(
                List.of(
                        "0°: 20.010, read 0.010 (BG-1) | 07:34 | Setter 1",
                        "90°: 20.012, read 0.012 (BG-1) | 07:35 | Setter 2"),
                told("This part, serial 014"));
    }

    @Test
    void onAnotherDayTheDayIsSaidWithTheHour() throws Exception {
        setGauge(session);
        enter(session, "0.010");
        later(24 * 60);
        assertEquals(
                List.of("0°: 20.010, read 0.010 (BG-1) | 25 Nov 2026, 07:34 | Setter 1"),
                told("This part, serial 014"));
    }

    @Test
    void whatIsStruckOutSinceIsToldAsSuchWithWhy() throws Exception {
        setGauge(session);
        enter(session, "0.010");
        session.handOver("Setter 2");
        session.strikeOut(session.state().pass().readings().get(0).entry().seq(), "Chip under the gauge");
        assertEquals(
                List.of("0°: 20.010, read 0.010 (BG-1). Struck out by Setter 2: Chip under the gauge."
                        + " | 07:34 | Setter 1 | gone"),
                told("This part, serial 014"));
    }

    @Test
    void aCutTellsWhatWasAskedAndWhatCameOff() throws Exception {
        setGauge(session);
        session.machine(Register.DIAMETER, Aim.ByLimits.MIDDLE);
        enter(session, "-0.090", "-0.090");
        later(10);
        assertEquals(Optional.empty(), session.again(Why.CUT).objection());
        enter(session, "-0.020", "-0.020");
        assertEquals(
                List.of(
                        "This part, serial 014, round 2",
                        "This part, serial 014, round 1",
                        "How it is judged",
                        "Hold point before this check",
                        "Hold point after this check",
                        "Gauge"),
                headings());
        assertEquals(
                List.of(
                        "Measured after a cut. Cut 1: asked 0.100, came off 0.070. | 07:45 | Setter 1",
                        "Round 2, 0°: 19.980, read −0.020 (BG-1) | 07:46 | Setter 1",
                        "Round 2, 90°: 19.980, read −0.020 (BG-1) | 07:47 | Setter 1"),
                told("This part, serial 014, round 2"));
        assertEquals(
                List.of(
                        "Round 1, 0°: 19.910, read −0.090 (BG-1) | 07:34 | Setter 1",
                        "Round 1, 90°: 19.910, read −0.090 (BG-1) | 07:35 | Setter 1",
                        "Round 1, 19.910: Cut again. 0.090 mm below the lower limit. |  | "),
                told("This part, serial 014, round 1"));
    }

    @Test
    void howItIsReadAndJudgedIsTold() throws Exception {
        setGauge(session);
        enter(session, "0.010", "0.012");
        assertTrue(told("How it is judged")
                .contains("Two ways. Rock it through square; read where the needle turns back. |  | "));
    }

    /** 20.000 + 0.010 − 0 is 20.010 on the one, 20.000 − 0.010 + 0 is 19.990 on the other. */
    @Test
    void howASizeIsMadeOfAReadingIsToldByTheSenseOfTheGauge() throws Exception {
        setGauge(session);
        enter(session, "0.010");
        assertTrue(told("How it is judged").contains("Size = ring + reading − dial on the ring. |  | "));
        assertTrue(told("This part, serial 014").get(0).startsWith("0°: 20.010, read 0.010"));
        session = begun(PLAN, "016", "Setter 1");
        lot(session);
        session.goTo(BORE);
        session.gauge().choose("BG-2");
        session.gauge().tellSense(true);
        enter(session, "20.000", "0");
        session.gauge().confirmSense(true);
        enter(session, "0.010");
        assertTrue(told("How it is judged").contains("Size = ring − reading + dial on the ring. |  | "));
        assertTrue(told("This part, serial 016").get(0).startsWith("0°: 19.990, read 0.010"));
    }

    @Test
    void measuredAgainIsNotToldAsACut() throws Exception {
        setGauge(session);
        enter(session, "0.010", "0.012");
        session.again(Why.MEASURED_AGAIN);
        assertEquals(List.of("Measured again. | 07:35 | Setter 1"), told("This part, serial 014, round 2"));
    }

    @Test
    void theHoldPointsBeforeAndAfterTheStepTellWhoOpenedThem() throws Exception {
        setGauge(session);
        assertEquals(List.of("1 Lot: passed | 07:31 | Setter 1"), told("Hold point before this check"));
        assertEquals(List.of("2 Bore: not settled |  | "), told("Hold point after this check"));
        enter(session, "0.010", "0.030");
        session.handOver("Setter 2");
        session.dispose(Disposition.USE_AS_IS, "Agreed", "Design office", "117");
        assertEquals(List.of("2 Bore: under concession | 07:35 | Design office"), told("Hold point after this check"));
        assertEquals(
                List.of("use as is, under concession. Agreed. Concession number: 117. | 07:35 | Design office"),
                told("Notes, doubts, signatures"));
    }

    @Test
    void aLapsedConcessionIsToldAsLapsed() throws Exception {
        theHoldPointsBeforeAndAfterTheStepTellWhoOpenedThem();
        session.again(Why.MEASURED_AGAIN);
        assertEquals(List.of("2 Bore: not settled |  | "), told("Hold point after this check"));
        assertTrue(told("Notes, doubts, signatures").get(0).endsWith("117. Lapsed. | 07:35 | Design office | gone"));
    }

    @Test
    void aSettingThatWasWrongIsToldAsSuchAndSoIsWhatWasReadUnderIt() throws Exception {
        setGauge(session);
        enter(session, "0.010");
        session.gauge().strikeOut(session.state().settingsHere().get(0), SettingFault.ZERO, "Dial had slipped");
        assertEquals(1, told("Gauge").size());
        assertTrue(told("Gauge").get(0).contains("Struck out by Setter 1: Dial had slipped."));
        assertTrue(told("Gauge").get(0).endsWith("gone"));
        assertTrue(told("This part, serial 014").get(0).contains("Struck out by Setter 1: Dial had slipped."));
    }

    @Test
    void theGaugeSetLastIsToldFirst() throws Exception {
        setGauge(session);
        session.gauge().setAnew(false);
        enter(session, "20.001", "0.002");
        assertEquals(
                List.of(
                        "BG-1 · dial goes up as the bore grows · set on ring 20.001 · dial at 0.002 | 07:35 | Setter 1",
                        "BG-1 · dial goes up as the bore grows · set on ring 20.000 · dial at 0 | 07:33 | Setter 1"),
                told("Gauge"));
    }

    @Test
    void notesAndDoubtsOfThisStepAloneAndTheSignaturesOfTheRun() throws Exception {
        session.note("of the lot");
        setGauge(session);
        session.note("bar springs");
        session.flagDoubt("tip worn");
        session.sign("Setter 1", SignedAs.MACHINED_AND_MEASURED);
        assertEquals(
                List.of(
                        "Note: bar springs | 07:33 | Setter 1",
                        "Doubt: tip worn | 07:33 | Setter 1",
                        "Machined and measured by Setter 1. | 07:33 | Setter 1"),
                told("Notes, doubts, signatures"));
        enter(session, "0.010");
        assertTrue(told("Notes, doubts, signatures").get(2).endsWith("gone"), "it lapsed with the reading");
    }

    @Test
    void anAnswerIsToldToo() throws Exception {
        lot(session);
        assertEquals(List.of("confirmed | 07:31 | Setter 1"), told("This part, serial 014"));
        session.answer(Answer.YES);
    }

    // the part before

    private void partBefore(Plan plan, String machine, String... figures) throws Exception {
        RunSession before = new Runs(ledger, hours).begin(new RunHeader(plan, "013", "", machine, "Setter 3"));
        setGauge(before);
        enter(before, figures);
        later(60);
        session = begun(PLAN, "015", "Setter 1");
        session.goTo(BORE);
    }

    @Test
    void everyLineOfThePartBeforeHasItsSerialInFront() throws Exception {
        partBefore(PLAN, "Lathe 4", "0.010", "0.012");
        assertEquals(
                List.of(
                        "013 · 20.012: Pass. 0.009 mm inside the upper limit. | 07:35 | Setter 3",
                        "013 · 0°: 20.010, read 0.010 (BG-1) | 07:34 | Setter 3",
                        "013 · 90°: 20.012, read 0.012 (BG-1) | 07:35 | Setter 3"),
                told("Last part, serial 013"));
        assertFalse(headings().contains("This part, serial 015"), "nothing is read of this one");
    }

    private String brief() {
        return StepStory.lastPart(session.state(), WORDS).orElse("none");
    }

    @Test
    void inALineItIsItsSizeAloneWhereItPassedAsThisOneWould() throws Exception {
        partBefore(PLAN, "Lathe 4", "0.010", "0.012");
        assertEquals("Last part, serial 013: 20.012.", brief());
        session.goTo(LOT);
        assertEquals("Last part, serial 013: passed.", brief());
        session.goTo(3);
        assertEquals("none", brief());
    }

    @Test
    void inALineItSaysThatItFailed() throws Exception {
        partBefore(PLAN, "Lathe 4", "0.010", "0.030");
        assertEquals("Last part, serial 013: 20.030, failed.", brief());
    }

    @Test
    void inALineItSaysThatItsLimitsAndItsRevisionWereOthers() throws Exception {
        Plan other = InventedPlans.read(
                TEXT.replace("upper = 20.021", "upper = 20.033").replace("revision = \"A\"", "revision = \"B\""));
        partBefore(other, "Lathe 4", "0.010", "0.030");
        assertEquals("Last part, serial 013: 20.030, rev B, other limits.", brief());
    }

    @Test
    void whatWasOtherwiseThereIsSaid() throws Exception {
        Plan other = InventedPlans.read(TEXT.replace("upper = 20.021", "upper = 20.033")
                .replace("issue = \"1\"", "issue = \"2\"")
                .replace("revision = \"A\"", "revision = \"B\""));
        partBefore(other, "Lathe 7", "0.010", "0.030");
        assertEquals(
                List.of(
                        "013 · 20.030: Pass. 0.003 mm inside the upper limit. | 07:35 | Setter 3",
                        "013 · Of rev B; this one is of rev A. |  | ",
                        "013 · Measured by plan issue 2; this one by issue 1. |  | ",
                        "013 · Other limits: 20.000 to 20.033 mm; here 20.000 to 20.021 mm. |  | ",
                        "013 · Made on Lathe 7. |  | "),
                told("Last part, serial 013").subList(0, 5));
    }

    @Test
    void anotherTextOfTheSameIssueIsSaid() throws Exception {
        partBefore(InventedPlans.read(TEXT.replace("Two ways.", "Two ways, slowly.")), "Lathe 4", "0.010", "0.012");
        assertEquals(
                "013 · Measured by another text of plan issue 1. |  | ",
                told("Last part, serial 013").get(1));
    }

    @Test
    void whatWasStruckOutThereIsToldAsSuch() throws Exception {
        RunSession before = begun(PLAN, "013", "Setter 3");
        setGauge(before);
        enter(before, "0.050");
        before.strikeOut(before.state().pass().readings().get(0).entry().seq(), "Misread");
        enter(before, "0.010", "0.012");
        session = begun(PLAN, "015", "Setter 1");
        session.goTo(BORE);
        assertEquals(
                "013 · 0°: 0.050 (BG-1). Struck out: Misread. | 07:34 | Setter 3 | gone",
                told("Last part, serial 013").get(1));
    }

    @Test
    void theCutsOfThePartBeforeAreToldByThePass() throws Exception {
        RunSession before = begun(PLAN, "013", "Setter 3");
        setGauge(before);
        enter(before, "-0.050", "-0.050");
        before.machine(Register.DIAMETER, Aim.ByLimits.MIDDLE);
        before.again(Why.CUT);
        enter(before, "0.010", "0.012");
        session = begun(PLAN, "015", "Setter 1");
        session.goTo(BORE);
        assertEquals(
                List.of(
                        "013 · Round 1, 0°: 19.950, read −0.050 (BG-1) | 07:34 | Setter 3",
                        "013 · Round 2, 0°: 20.010, read 0.010 (BG-1) | 07:36 | Setter 3"),
                told("Last part, serial 013").stream()
                        .filter(line -> line.contains("0°") && !line.contains("90°"))
                        .toList());
    }

    @Test
    void whatWasSignedForThereIsSaidAndNotCalledAPass() throws Exception {
        RunSession before = begun(PLAN, "013", "Setter 3");
        setGauge(before);
        enter(before, "0.010", "0.030");
        before.dispose(Disposition.USE_AS_IS, "Agreed", "Design office", "117");
        session = begun(PLAN, "015", "Setter 1");
        session.goTo(BORE);
        assertEquals(
                "013 · 20.030: Fail. 0.009 mm above the upper limit. Disposition: use as is, under concession, Design"
                        + " office. | 07:35 | Setter 3",
                told("Last part, serial 013").get(0));
    }
}
