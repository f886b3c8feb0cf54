package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.MemoryLedger;
import org.tenthwise.app.store.Occasions;
import org.tenthwise.app.text.EarlierWords;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Baseline;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.words.Words;

/** What a run keeps of the part number as the store knew it when the run was begun. */
class EarlierRunsTest {

    private static final String TEXT =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "look"
            name = "Edges"
            what = "Broken."
            """;

    private static final Plan PLAN = InventedPlans.inMillimetres(TEXT);
    private static final Plan OTHER = InventedPlans.read(
            InventedPlans.text("mm", TEXT.replace("Broken.", "Rounded.")).replace("issue = \"1\"", "issue = \"2\""));

    private Ledger ledger;

    Ledger opened() throws Exception {
        return new MemoryLedger();
    }

    @BeforeEach
    final void open() throws Exception {
        ledger = opened();
    }

    @AfterEach
    final void close() {
        ledger.close();
    }

    private Runs shopOn(String day) {
        return new Runs(ledger, Clock.fixed(Instant.parse(day + "T06:31:00Z"), ZoneOffset.UTC));
    }

    private RunSession begun(String day, Plan plan, String serial, String machine) throws Exception {
        return shopOn(day)
                .begin(new RunHeader(plan, serial, "L-1", machine, "Setter 1")
                        .begunFor(Occasions.fullFirstArticle("new part")));
    }

    private void accepted(String day, String serial) throws Exception {
        RunSession session = begun(day, PLAN, serial, "Lathe 4");
        session.answer(Answer.YES);
        session.close("Inspector 1", SignedAs.ACCEPTED);
    }

    private static List<String> said(RunSession session) {
        return new EarlierWords(Words.of(Locale.ENGLISH)).lines(session.state().sheet());
    }

    @Test
    void ofAPartNumberThatIsNewNothingWasAcceptedBefore() throws Exception {
        assertEquals(
                List.of("No accepted record of this part number before."),
                said(begun("2026-01-05", PLAN, "1", "Lathe 4")));
    }

    @Test
    void whereNothingChangedThatIsSaid() throws Exception {
        accepted("2026-01-05", "1");
        assertEquals(
                List.of("Since the last accepted record, T-1-A-1, nothing of what is kept changed."),
                said(begun("2026-01-06", PLAN, "2", "Lathe 4")));
    }

    @Test
    void whatChangedIsNamed() throws Exception {
        accepted("2026-01-05", "1");
        assertEquals(
                List.of("Changed since the last accepted record, T-1-A-1: plan issue 1 to 2, checks Edges, "
                        + "machine Lathe 4 to Lathe 5."),
                said(begun("2026-01-06", OTHER, "2", "Lathe 5")));
    }

    /** One that is refused, lapsed or open is no accepted one. */
    @Test
    void aRunThatWasRefusedIsNoneAccepted() throws Exception {
        RunSession refused = begun("2026-01-05", PLAN, "1", "Lathe 4");
        refused.answer(Answer.YES);
        refused.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        assertEquals(
                Optional.empty(),
                begun("2026-01-06", PLAN, "2", "Lathe 4")
                        .state()
                        .sheet()
                        .run()
                        .begun()
                        .earlier()
                        .orElseThrow()
                        .accepted());
    }

    /** More of them than are looked at in one go. */
    @Test
    void piecesInProcessAreNoneToLookBackToHoweverManyWereAccepted() throws Exception {
        accepted("2026-01-05", "1");
        for (int piece = 2; piece <= 45; piece++) {
            acceptedFor(Occasions.inProcess(piece), PLAN, String.valueOf(piece));
        }
        assertEquals(
                List.of("Changed since the last accepted record, T-1-A-1: machine Lathe 4 to Lathe 5."),
                said(begun("2026-01-07", PLAN, "46", "Lathe 5")));
    }

    @Test
    void aPartialFirstArticleIsNoneToLookBackTo() throws Exception {
        accepted("2026-01-05", "1");
        Baseline baseline = new Baseline("T-1-A-1", ledger.runHead("T-1-A-1").hash());
        acceptedFor(Occasions.partialFirstArticle(baseline, "another machine", List.of(1)), PLAN, "2");
        assertEquals(
                List.of("Changed since the last accepted record, T-1-A-1: machine Lathe 4 to Lathe 6."),
                said(begun("2026-01-07", PLAN, "3", "Lathe 6")));
    }

    @Test
    void aLastPieceIsOneOnlyWhereItAsksEveryCheck() throws Exception {
        Plan first = InventedPlans.inMillimetres(
                TEXT + TEXT.replace("number = 1", "number = 2").replace("Edges", "Mark") + "when = [\"first\"]\n");
        acceptedFor(Occasion.of(Purpose.LAST_PIECE), first, "1");
        assertEquals(
                List.of("No accepted record of this part number before."),
                said(begun("2026-01-07", first, "2", "Lathe 5")));
        acceptedFor(Occasion.of(Purpose.LAST_PIECE), PLAN, "3");
        assertEquals(
                List.of("Since the last accepted record, T-1-A-3, nothing of what is kept changed."),
                said(begun("2026-01-08", PLAN, "4", "Lathe 5")));
    }

    private void acceptedFor(Occasion occasion, Plan plan, String serial) throws Exception {
        RunSession session = shopOn("2026-01-06")
                .begin(new RunHeader(plan, serial, "L-1", "Lathe 5", "Setter 1").begunFor(occasion));
        session.answer(Answer.YES);
        session.close("Inspector 1", SignedAs.ACCEPTED);
    }

    /** SAE AS9102 Rev B, 4.6: a lapse of two years, from the last production operation to the restart. */
    @Test
    void twoYearsWithoutProductionAreNoticedAndANoteMakesNothing() throws Exception {
        accepted("2023-01-05", "1");
        assertFalse(shopOn("2025-01-05")
                .beginnings()
                .earlier(PLAN)
                .isLapsed(shopOn("2025-01-05").now()));
        shopOn("2025-01-02").open("T-1-A-1").note("still on the shelf");
        assertTrue(shopOn("2025-01-06")
                .beginnings()
                .earlier(PLAN)
                .isLapsed(shopOn("2025-01-06").now()));
        assertEquals(
                "Last made on 2023-01-05, more than two years before: decide whether a full or a partial first article "
                        + "is due.",
                said(begun("2025-01-06", PLAN, "2", "Lathe 4")).get(1));
    }
}
