package org.tenthwise.app.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * Which part is the one before, and what is told of it: whoever takes its size for one of this part scraps this one.
 */
class LastPartTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));

    private static final String STEPS =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "confirm"
            name = "Lot"
            what = "The lot is that on the card."

            [[step]]
            number = 2
            operation = 10
            kind = "diameter"
            name = "Journal"
            method = "Two places."
            lower = 29.980
            upper = 30.000
            places = ["left", "right"]
            cut_again = "too big"
            gauge_kind = "micrometer"
            gauge = "MC-1"
            """;

    private static final String TEXT = InventedPlans.text("mm", STEPS);
    private static final Plan PLAN = InventedPlans.read(TEXT);
    private static final int JOURNAL = 2;

    @TempDir
    private Path folder;

    private Ledger ledger;

    @BeforeEach
    void open() throws Exception {
        ledger = new SqliteStores().open(folder.resolve("s.db"));
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    private static Plan changed(String from, String to) {
        assertTrue(TEXT.contains(from), from);
        return InventedPlans.read(TEXT.replace(from, to));
    }

    private RunSession begun(Plan plan, String serial) throws Exception {
        RunSession session = new Runs(ledger, CLOCK).begin(new RunHeader(plan, serial, "", "Lathe 4", "Setter 2"));
        session.goTo(JOURNAL);
        return session;
    }

    private RunSession measured(Plan plan, String serial, String... sizes) throws Exception {
        RunSession session = begun(plan, serial);
        for (String size : sizes) {
            assertEquals(Optional.empty(), session.enter(size).objection());
        }
        return session;
    }

    private Optional<LastPart> before(String serial) {
        return before(serial, Long.MAX_VALUE);
    }

    private Optional<LastPart> before(String serial, long seq) {
        LastPartQuery query = new LastPartQuery(PLAN.part(), serial, PLAN.step(JOURNAL), seq);
        Optional<LastPart> drawn = ledger.history().lastPart(query);
        assertEquals(new ReadFromEntries(ledger).lastPart(query), drawn);
        return drawn;
    }

    private String serialBefore(String serial) {
        return before(serial).map(part -> part.run().serial()).orElse("none");
    }

    @Test
    void itsSizesItsGaugeItsVerdictWhenAndInWhoseHandAreThere() throws Exception {
        measured(PLAN, "013", "29.990", "29.992");
        begun(PLAN, "014");
        LastPart part = before("014").orElseThrow();
        assertEquals("013", part.run().serial());
        assertEquals(VerdictKind.PASS, part.found().verdict().standing());
        assertEquals(
                List.of("left 29.990 MC-1", "right 29.992 MC-1"),
                part.readings().stream()
                        .map(read -> read.place() + " " + read.typed().text() + " "
                                + read.gauge().orElseThrow().mark())
                        .toList());
        assertEquals("Setter 2", part.found().found().orElseThrow().by());
        assertEquals(CLOCK.instant(), part.found().found().orElseThrow().at().toInstant());
        assertFalse(part.isOfAnotherRevision(PLAN));
        assertFalse(part.isOfAnotherPlan(PLAN));
        assertFalse(part.hadOtherLimits(PLAN.step(JOURNAL)));
    }

    @Test
    void anotherRunOnTheSameSerialIsNotThePartBefore() throws Exception {
        measured(PLAN, "a13", "29.990", "29.992");
        assertEquals("none", serialBefore("a13"));
        assertEquals("none", serialBefore("A13"), "typed once so and once so");
        assertEquals("a13", serialBefore("14"));
    }

    @Test
    void theOneMeasuredLastIsItNotTheOneBegunLast() throws Exception {
        RunSession first = begun(PLAN, "012");
        measured(PLAN, "013", "29.990", "29.992");
        assertEquals("013", serialBefore("014"));
        first.enter("29.985");
        assertEquals("013", serialBefore("014"), "half read is not measured");
        first.enter("29.986");
        assertEquals("012", serialBefore("014"));
    }

    @Test
    void whereNothingIsMeasuredThereIsNone() throws Exception {
        begun(PLAN, "013");
        assertEquals("none", serialBefore("014"));
    }

    @Test
    void whatIsStruckOutSinceCountsNoMore() throws Exception {
        RunSession other = measured(PLAN, "013", "29.990", "29.992");
        long right = other.state().pass().readings().get(1).entry().seq();
        other.strikeOut(right, "misread");
        assertEquals("none", serialBefore("014"));
        other.enter("30.010");
        LastPart part = before("014").orElseThrow();
        assertEquals(VerdictKind.CUT_AGAIN, part.found().verdict().standing());
        assertEquals(Optional.of("misread"), part.readings().get(1).struck());
        assertEquals(Optional.empty(), part.readings().get(1).value());
    }

    @Test
    void allItsPassesAreThere() throws Exception {
        RunSession other = measured(PLAN, "013", "30.100", "30.101");
        other.again(Why.CUT);
        other.enter("29.990");
        other.enter("29.991");
        assertEquals(
                List.of(1, 1, 2, 2),
                before("014").orElseThrow().readings().stream()
                        .map(ReadingSummary::pass)
                        .toList());
    }

    @Test
    void itIsJudgedByThePlanItWasMeasuredBy() throws Exception {
        Plan wider = changed("upper = 30.000", "upper = 30.020");
        measured(wider, "013", "30.010", "30.012");
        LastPart part = before("014").orElseThrow();
        assertEquals(VerdictKind.PASS, part.found().verdict().standing());
        assertTrue(part.hadOtherLimits(PLAN.step(JOURNAL)));
        assertTrue(part.isOfAnotherPlan(PLAN), "the same issue with another text");
    }

    @Test
    void aLimitWrittenWithFewerZerosIsTheSameLimit() throws Exception {
        measured(changed("upper = 30.000", "upper = 30.0"), "013", "29.990", "29.992");
        assertFalse(before("014").orElseThrow().hadOtherLimits(PLAN.step(JOURNAL)));
    }

    @Test
    void aLimitThatWasNotThereIsAnotherLimit() throws Exception {
        measured(changed("lower = 29.980\n", ""), "013", "29.990", "29.992");
        assertTrue(before("014").orElseThrow().hadOtherLimits(PLAN.step(JOURNAL)));
    }

    @Test
    void anotherIssueIsToldApart() throws Exception {
        measured(changed("issue = \"1\"", "issue = \"2\""), "013", "29.990", "29.992");
        LastPart part = before("014").orElseThrow();
        assertTrue(part.isOfAnotherPlan(PLAN));
        assertFalse(part.isOfAnotherRevision(PLAN));
    }

    @Test
    void oneOfTheRevisionGoesBeforeALaterOneOfAnother() throws Exception {
        measured(changed("revision = \"A\"", "revision = \"B\""), "015", "29.990", "29.992");
        assertEquals("015", serialBefore("014"));
        assertTrue(before("014").orElseThrow().isOfAnotherRevision(PLAN));
        measured(PLAN, "012", "29.988", "29.989");
        measured(changed("revision = \"A\"", "revision = \"B\""), "016", "29.990", "29.992");
        assertEquals("012", serialBefore("014"));
    }

    @ParameterizedTest
    @CsvSource({
        "'name = \"Journal\"', 'name = \"Collar\"'",
        "'part = \"T-1\"', 'part = \"T-2\"'",
        "'number = 2', 'number = 3'"
    })
    void whatAskedForSomethingElseIsNotIt(String from, String to) throws Exception {
        isNotIt(changed(from, to));
    }

    @Test
    void aWidthUnderTheSameNumberAndNameIsNotIt() throws Exception {
        isNotIt(InventedPlans.read(TEXT.replace("\"diameter\"", "\"width\"")
                .replace("\"micrometer\"", "\"caliper\"")
                .replace("too big", "too small")));
    }

    private void isNotIt(Plan other) throws Exception {
        RunSession session = new Runs(ledger, CLOCK).begin(new RunHeader(other, "013", "", "Lathe 4", "Setter 2"));
        session.goTo(other.steps().get(1).number());
        session.enter("29.990");
        session.enter("29.992");
        assertTrue(session.state().line().settled());
        assertEquals("none", serialBefore("014"));
    }

    @Test
    void ofAClosedRunNothingIsToldThatCameAfterIt() throws Exception {
        measured(PLAN, "013", "29.990", "29.992");
        long closed = ledger.head().seq() + 1;
        measured(PLAN, "015", "29.985", "29.986");
        assertEquals("015", serialBefore("014"));
        assertEquals("013", before("014", closed).orElseThrow().run().serial());
    }
}
