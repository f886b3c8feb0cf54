package org.tenthwise.app.matters;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.history.MatterKind.CONCESSION;
import static org.tenthwise.app.history.MatterKind.CONCESSION_LAPSED;
import static org.tenthwise.app.history.MatterKind.DISPOSITION_LAPSED;
import static org.tenthwise.app.history.MatterKind.DOCUMENT_TO_COME;
import static org.tenthwise.app.history.MatterKind.GAUGE_IN_DOUBT;
import static org.tenthwise.app.history.MatterKind.NONCONFORMANCE;
import static org.tenthwise.app.history.MatterKind.REPAIR;
import static org.tenthwise.app.history.MatterKind.REPAIR_LAPSED;
import static org.tenthwise.app.history.MatterKind.RUN_NOT_COMPLETE;
import static org.tenthwise.app.history.MatterKind.SIGNATURE_MISSING;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.history.MatterKind;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.MemoryLedger;
import org.tenthwise.app.store.Occasions;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Refused;

/** Every kind of matter comes with its cause, goes when that is worked off in its run, and comes back with it. */
class OpenMattersTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));

    private static final String LOOK =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "look"
            name = "Edges"
            what = "Broken."
            """;

    private static final Plan PLAN = InventedPlans.inMillimetres(LOOK);

    private static final Plan WITH_PAPER = InventedPlans.inMillimetres(
            LOOK
                    + """
                    [[elsewhere]]
                    number = 2
                    name = "Position of the holes"
                    where = "Coordinate machine"
                    """);

    private final MemoryLedger ledger = new MemoryLedger();
    private final Runs shop = new Runs(ledger, CLOCK);

    private RunSession begun(Plan plan, String serial) throws Exception {
        return shop.begin(new RunHeader(plan, serial, "L-1", "Lathe 4", "Setter 1"));
    }

    private List<MatterKind> open() {
        List<MatterKind> open = open(Optional.empty(), Optional.empty());
        assertEquals(open.size(), new OpenMatters(ledger).countOpen());
        return open;
    }

    private List<MatterKind> open(Optional<String> part, Optional<String> person) {
        return new OpenMatters(ledger)
                .all(part, person).stream()
                        .filter(OpenMatter::isOpen)
                        .map(matter -> matter.matter().kind())
                        .toList();
    }

    private static void strike(RunSession session) throws Exception {
        Entry last = session.state().sheet().run().entries().stream()
                .filter(entry -> entry.event().as(StepEvent.Answered.class).isPresent())
                .reduce((before, after) -> after)
                .orElseThrow();
        session.strikeOut(last.seq(), "looked at the wrong side");
    }

    private static void dispose(RunSession session, Disposition as, String number) throws Exception {
        assertTrue(session.dispose(as, "as agreed", "Inspector 1", number)
                .objection()
                .isEmpty());
    }

    @Test
    void whatIsAcceptedWholeHasNothingOpen() throws Exception {
        assertEquals(List.of(), open());
        RunSession session = begun(PLAN, "1");
        assertEquals(List.of(RUN_NOT_COMPLETE), open());
        session.answer(Answer.YES);
        session.close("Inspector 1", SignedAs.ACCEPTED);
        assertEquals(List.of(), open());
    }

    @Test
    void aRunPutAwayHasNothingOpenUntilItIsTakenUp() throws Exception {
        RunSession session = begun(PLAN, "1");
        session.shelf().putAway("Setter 1", "wrong part");
        assertEquals(List.of(), open());
        session.shelf().takeUp();
        assertEquals(List.of(RUN_NOT_COMPLETE), open());
    }

    @Test
    void aNonconformanceGoesWithTheNumberOfItsDocumentAndComesBackWhenThatLapses() throws Exception {
        RunSession session = begun(PLAN, "1");
        session.answer(Answer.NO);
        assertEquals(List.of(NONCONFORMANCE, RUN_NOT_COMPLETE), open());
        dispose(session, Disposition.SCRAP, "NC-7");
        assertEquals(List.of(RUN_NOT_COMPLETE), open());
        strike(session);
        session.answer(Answer.NO);
        assertEquals(List.of(NONCONFORMANCE, DISPOSITION_LAPSED, RUN_NOT_COMPLETE), open());
    }

    @Test
    void aDispositionWithoutADocumentLeavesTheNonconformanceOpen() throws Exception {
        RunSession session = begun(PLAN, "1");
        session.answer(Answer.NO);
        dispose(session, Disposition.SCRAP, "");
        assertEquals(List.of(NONCONFORMANCE, RUN_NOT_COMPLETE), open());
    }

    @Test
    void aConcessionStaysInTheListAndIsSaidToHaveLapsedOnceItsFindingChanges() throws Exception {
        RunSession session = begun(PLAN, "1");
        session.answer(Answer.NO);
        dispose(session, Disposition.USE_AS_IS, "C-12");
        assertEquals(List.of(CONCESSION, RUN_NOT_COMPLETE), open());
        OpenMatter concession = new OpenMatters(ledger)
                .all(Optional.empty(), Optional.of("inspector 1"))
                .get(0);
        assertEquals("C-12", concession.matter().number());
        assertEquals(1, concession.matter().check());
        assertEquals("Edges", concession.matter().about());
        strike(session);
        assertEquals(List.of(CONCESSION_LAPSED, RUN_NOT_COMPLETE), open());
        session.answer(Answer.YES);
        assertEquals(List.of(RUN_NOT_COMPLETE), open());
    }

    @Test
    void aRepairIsCalledOneWithItsDocumentAlsoAfterItConformsAndAConcessionBehindItIsOne() throws Exception {
        RunSession session = begun(PLAN, "1");
        session.answer(Answer.NO);
        dispose(session, Disposition.REPAIR, "A-7");
        strike(session);
        assertEquals(List.of(REPAIR_LAPSED, RUN_NOT_COMPLETE), open());
        session.answer(Answer.YES);
        assertEquals(List.of(REPAIR, RUN_NOT_COMPLETE), open());
        assertEquals(
                "A-7",
                new OpenMatters(ledger)
                        .all(Optional.empty(), Optional.empty())
                        .get(0)
                        .matter()
                        .number());
        strike(session);
        session.answer(Answer.NO);
        dispose(session, Disposition.USE_AS_IS, "C-12");
        assertEquals(List.of(CONCESSION, RUN_NOT_COMPLETE), open());
    }

    @Test
    void aDocumentIsToComeUntilItIsThereAndAgainOnceItIsStruckOut() throws Exception {
        RunSession session = begun(WITH_PAPER, "1");
        session.answer(Answer.YES);
        assertEquals(List.of(DOCUMENT_TO_COME, RUN_NOT_COMPLETE), open());
        session.goTo(2);
        session.documents()
                .give("CMM-9", LocalDate.parse("2026-11-20"), Document.Says.CONFORMS, "Measuring room", List.of());
        assertEquals(List.of(RUN_NOT_COMPLETE), open());
        Entry paper = session.state().sheet().run().last();
        session.strikeOut(paper.seq(), "of another part");
        assertEquals(List.of(DOCUMENT_TO_COME, RUN_NOT_COMPLETE), open());
    }

    @Test
    void aClosedRunWantsAnAcceptanceOrARefusalThatStillHolds() throws Exception {
        RunSession session = begun(PLAN, "1");
        session.answer(Answer.YES);
        session.close("Setter 1", SignedAs.MACHINED_AND_MEASURED);
        assertEquals(List.of(SIGNATURE_MISSING), open());
        session.sign("Inspector 1", SignedAs.ACCEPTED);
        assertEquals(List.of(), open());
    }

    @Test
    void aClosedRunThatWasAcceptedWantsItAgainOnceADocumentOfItIsStruckOut() throws Exception {
        RunSession session = begun(WITH_PAPER, "1");
        session.answer(Answer.YES);
        session.goTo(2);
        session.documents()
                .give("CMM-9", LocalDate.parse("2026-11-20"), Document.Says.CONFORMS, "Measuring room", List.of());
        Entry paper = session.state().sheet().run().last();
        session.close("Inspector 1", SignedAs.ACCEPTED);
        assertEquals(List.of(), open());
        session.strikeOut(paper.seq(), "of another part");
        assertEquals(List.of(DOCUMENT_TO_COME, RUN_NOT_COMPLETE, SIGNATURE_MISSING), open());
    }

    @Test
    void whatIsNotInARunIsNoOpenMatter() throws Exception {
        Plan plan = InventedPlans.inMillimetres(
                LOOK + LOOK.replace("number = 1", "number = 2").replace("Edges", "Mark") + "when = [\"first\"]\n");
        RunSession session =
                shop.begin(new RunHeader(plan, "2", "L-1", "Lathe 4", "Setter 1").begunFor(Occasions.inProcess(2)));
        session.answer(Answer.YES);
        session.close("Inspector 1", SignedAs.ACCEPTED);
        assertEquals(List.of(), open());
    }

    @Test
    void aGaugeFoundWrongIsInDoubtUntilItIsToldOf() throws Exception {
        Event told = new ShopEvent.GaugeKnown(
                new Gauge("BG-4", GaugeKind.BORE_GAUGE, Optional.of(ReadingDirection.FALLS_WITH_SIZE)));
        OffsetDateTime now = OffsetDateTime.now(CLOCK);
        Entry known = ledger.append(Entry.SHOP, now, "Setter 1", List.of(told)).get(0);
        assertEquals(List.of(), open());
        ledger.append(Entry.SHOP, now, "Setter 1", List.of(new Event.StruckOut(known.seq(), "counts the other way")));
        assertEquals(List.of(GAUGE_IN_DOUBT), open());
        ledger.append(Entry.SHOP, now, "Setter 1", List.of(told));
        assertEquals(List.of(), open());
    }

    @Test
    void theListIsOfOnePartOrOnePersonWhereThatIsAsked() throws Exception {
        begun(PLAN, "1");
        assertEquals(List.of(RUN_NOT_COMPLETE), open(Optional.of("t-1"), Optional.of("Setter 1")));
        assertEquals(List.of(), open(Optional.of("T-2"), Optional.empty()));
        assertEquals(List.of(), open(Optional.empty(), Optional.of("Setter 2")));
    }

    private OpenMatter only(MatterKind kind) {
        return new OpenMatters(ledger)
                .all(Optional.empty(), Optional.empty()).stream()
                        .filter(matter -> matter.isOpen() && matter.matter().kind() == kind)
                        .findFirst()
                        .orElseThrow();
    }

    private void settle(MatterKind kind, String document) throws Exception {
        new MatterBook(ledger, CLOCK).settle(only(kind), "Quality lead", "agreed with the customer", document);
    }

    private String refused(OpenMatter matter, String document) {
        return assertThrows(Refused.class, () -> new MatterBook(ledger, CLOCK)
                        .settle(matter, "Quality lead", "agreed", document))
                .why()
                .key();
    }

    @Test
    void aNonconformanceOfAClosedRunIsSettledByADocument() throws Exception {
        RunSession session = begun(PLAN, "1");
        session.answer(Answer.NO);
        dispose(session, Disposition.SCRAP, "");
        session.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        assertEquals(List.of(NONCONFORMANCE), open());
        assertEquals("matters.refused.no-document", refused(only(NONCONFORMANCE), " "));
        settle(NONCONFORMANCE, "NC-7");
        assertEquals(List.of(), open());
        OpenMatter settled =
                new OpenMatters(ledger).all(Optional.empty(), Optional.empty()).get(0);
        assertEquals("Quality lead", settled.settled().orElseThrow().by());
        ledger.append(
                settled.run().orElseThrow().id(),
                OffsetDateTime.now(CLOCK),
                "Inspector 1",
                List.of(new StepEvent.NoteMade(1, "kept in the cage")));
        assertEquals(List.of(), open(), "a note changes nothing of it");
    }

    @Test
    void whatIsSettledIsOpenAgainOnceWhatItRestsOnIsAnother() throws Exception {
        RunSession session = begun(WITH_PAPER, "1");
        session.answer(Answer.NO);
        dispose(session, Disposition.USE_AS_IS, "C-12");
        session.close("Inspector 1", SignedAs.MACHINED_AND_MEASURED);
        settle(CONCESSION, "");
        assertFalse(open().contains(CONCESSION));
        session.goTo(2);
        session.documents()
                .give("CMM-9", LocalDate.parse("2026-11-20"), Document.Says.CONFORMS, "Measuring room", List.of());
        assertTrue(open().contains(CONCESSION));
    }

    @Test
    void whatIsDoneInItsRunIsNotSignedAway() throws Exception {
        RunSession session = begun(WITH_PAPER, "1");
        session.answer(Answer.YES);
        assertEquals("matters.refused.in-its-run", refused(only(RUN_NOT_COMPLETE), ""));
        session.close("Inspector 1", SignedAs.MACHINED_AND_MEASURED);
        assertEquals("matters.refused.in-its-run", refused(only(DOCUMENT_TO_COME), ""));
        settle(SIGNATURE_MISSING, "");
        assertFalse(open().contains(SIGNATURE_MISSING));
    }

    @Test
    void whatWasLookedAtAndIsAnotherByNowIsNotSignedFor() throws Exception {
        RunSession session = begun(PLAN, "1");
        session.answer(Answer.NO);
        dispose(session, Disposition.USE_AS_IS, "C-12");
        session.close("Inspector 1", SignedAs.ACCEPTED);
        OpenMatter seen = only(CONCESSION);
        settle(CONCESSION, "");
        assertEquals("matters.refused.changed", refused(seen, ""), "signed for already");
    }

    @Test
    void aGaugeInDoubtIsSettledForThisDoubtAlone() throws Exception {
        Event told = new ShopEvent.GaugeKnown(
                new Gauge("BG-4", GaugeKind.BORE_GAUGE, Optional.of(ReadingDirection.FALLS_WITH_SIZE)));
        OffsetDateTime now = OffsetDateTime.now(CLOCK);
        Entry known = ledger.append(Entry.SHOP, now, "Setter 1", List.of(told)).get(0);
        ledger.append(Entry.SHOP, now, "Setter 1", List.of(new Event.StruckOut(known.seq(), "counts the other way")));
        settle(GAUGE_IN_DOUBT, "");
        assertEquals(List.of(), open());
        Entry again = ledger.append(Entry.SHOP, now, "Setter 1", List.of(told)).get(0);
        ledger.append(Entry.SHOP, now, "Setter 1", List.of(new Event.StruckOut(again.seq(), "again")));
        assertEquals(List.of(GAUGE_IN_DOUBT), open());
    }
}
