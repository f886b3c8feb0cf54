package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** A plan of one set-up confirmation and one look of the drawing, which asks for the lot. */
class SigningSessionTest {

    private static final String PLAN =
            """
            format = 1
            part = "S-1"
            revision = "A"
            issue = "1"
            name = "Spacer"
            material = "steel C45"
            drawing = "S-1 sheet 1"
            unit = "mm"
            lot = true

            [[operation]]
            number = 10
            name = "Turn"

            [[step]]
            number = 1
            operation = 10
            kind = "confirm"
            name = "Gripped"
            what = "The jaws are tight."
            hold = [1]

            [[step]]
            number = 2
            operation = 10
            kind = "look"
            name = "Edges"
            what = "Edges are broken."
            """;

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunSession session;

    @BeforeEach
    void aRun() {
        session = begin(PLAN, "001");
    }

    private RunSession begin(String plan, String serial) {
        return Workshop.must(
                () -> workshop.shop.begin(new RunHeader(plan(plan), serial, "L-1", "Lathe 4", "Setter 2")));
    }

    private static Plan plan(String text) {
        return InventedPlans.read(text);
    }

    private void passed() throws Exception {
        session.answer(Answer.YES);
        session.goTo(2);
        session.answer(Answer.YES);
    }

    private static Objection.Kind refused(Reply reply) {
        return reply.objection().orElseThrow().kind();
    }

    private String heading() {
        return new OutcomeWords(workshop.words).whole(session.state().sheet());
    }

    @Test
    void aPartConformsByItselfAndIsAcceptedOnlyByASignature() throws Exception {
        passed();
        assertEquals("Conforms. Not signed.", heading());
        session.close("Setter 2", SignedAs.MACHINED_AND_MEASURED);
        assertEquals("Conforms. Machined and measured by Setter 2. Not yet accepted.", heading());
        session.sign("Inspector 1", SignedAs.ACCEPTED);
        assertEquals("Conforms. Accepted by Inspector 1.", heading());
        session.sign("Inspector 2", SignedAs.NOT_ACCEPTED);
        assertEquals("Conforms. Not accepted by Inspector 2. Accepted by Inspector 1.", heading());
    }

    @Test
    void theSecondPersonIsAnotherThanWhoMadeItOrReadIt() throws Exception {
        passed();
        assertEquals(Objection.Kind.NOT_A_SECOND_PERSON, refused(session.sign("setter  2", SignedAs.MEASURED_AGAIN)));
        session.sign("Setter 1", SignedAs.MACHINED_AND_MEASURED);
        assertEquals(Objection.Kind.NOT_A_SECOND_PERSON, refused(session.sign("SETTER1", SignedAs.MEASURED_AGAIN)));
        assertTrue(
                session.sign("Inspector 1", SignedAs.MEASURED_AGAIN).objection().isEmpty());
        assertEquals(
                Objection.Kind.NOT_A_SECOND_PERSON,
                refused(session.sign("Inspector 1", SignedAs.MACHINED_AND_MEASURED)));
    }

    @Test
    void whatDoesNotConformOrIsNotCompleteCannotBeAccepted() throws Exception {
        assertEquals(Objection.Kind.NOT_TO_BE_ACCEPTED, refused(session.close("Inspector 1", SignedAs.ACCEPTED)));
        session.answer(Answer.YES);
        session.goTo(2);
        session.answer(Answer.NO);
        assertEquals(Objection.Kind.NOT_TO_BE_ACCEPTED, refused(session.sign("Inspector 1", SignedAs.ACCEPTED)));
        assertTrue(
                session.sign("Inspector 1", SignedAs.NOT_ACCEPTED).objection().isEmpty());
    }

    @Test
    void aSignatureLapsesVisiblyWhenSomethingIsReadAnew() throws Exception {
        passed();
        session.sign("Inspector 1", SignedAs.ACCEPTED);
        session.again(StepEvent.PassBegun.Why.MEASURED_AGAIN);
        session.answer(Answer.YES);
        assertEquals("Conforms. Not signed: what Inspector 1 signed has lapsed.", heading());
    }

    @Test
    void aRefusalIsNotSaidToHaveLapsedBecauseSomethingWasReadAnew() throws Exception {
        passed();
        session.sign("Inspector 1", SignedAs.NOT_ACCEPTED);
        session.again(StepEvent.PassBegun.Why.MEASURED_AGAIN);
        session.answer(Answer.YES);
        assertEquals(
                "Conforms. Not accepted by Inspector 1; nobody has accepted it since something was changed.",
                heading());
        session.sign("Inspector 2", SignedAs.ACCEPTED);
        assertEquals("Conforms. Accepted by Inspector 2.", heading());
    }

    @Test
    void aClosedRunTakesFurtherSignaturesAndIsNotClosedTwice() throws Exception {
        passed();
        session.close("Setter 2", SignedAs.MACHINED_AND_MEASURED);
        assertEquals(Objection.Kind.CLOSED, refused(session.close("Inspector 1", SignedAs.ACCEPTED)));
        assertTrue(session.sign("Inspector 1", SignedAs.ACCEPTED).objection().isEmpty());
        assertEquals(2, session.state().sheet().run().signatures().size());
    }

    @Test
    void aSetUpIsCarriedOnWithAReasonAndSaidInTheHeading() throws Exception {
        session.answer(Answer.NO);
        assertEquals(List.of(Disposition.CARRY_ON), Dispositions.offeredTo(StepClass.SET_UP));
        assertEquals(Objection.Kind.BLANK, refused(session.dispose(Disposition.CARRY_ON, " ", "Foreman 1", "")));
        session.dispose(Disposition.CARRY_ON, "Held by hand", "Foreman 1", "");
        session.goTo(2);
        session.answer(Answer.YES);
        assertEquals("Conforms, one set-up check carried on. Not signed.", heading());
    }

    @Test
    void whatIsCarriedOnMayHaveTheNumberOfADocument() throws Exception {
        session.answer(Answer.NO);
        session.dispose(Disposition.CARRY_ON, "Held by hand", "Foreman 1", " M-12 ");
        StepEvent.DispositionSigned carried =
                session.state().sheet().line(1).disposed().orElseThrow();
        assertEquals(Optional.of("M-12"), carried.document());
        assertEquals("Document number: M-12.", new Sentences(Words.ENGLISH).document(carried));
        assertTrue(session.state().sheet().line(1).settled());
    }

    @Test
    void aCharacteristicIsNotCarriedOn() throws Exception {
        session.answer(Answer.YES);
        session.goTo(2);
        session.answer(Answer.NO);
        assertEquals(
                Objection.Kind.NOT_FOR_THIS_CLASS,
                refused(session.dispose(Disposition.CARRY_ON, "because", "Foreman 1", "")));
        session.dispose(Disposition.SCRAP, "Broken", "Inspector 1", "");
        assertEquals("Does not conform: 1 of 1 characteristics out. Scrapped. Not signed.", heading());
    }

    @Test
    void aNameWithASignThatNobodySeesIsRefused() throws Exception {
        passed();
        assertEquals(Objection.Kind.HIDDEN_SIGN, refused(session.sign("Inspector\u202e1", SignedAs.ACCEPTED)));
        assertEquals(Objection.Kind.HIDDEN_SIGN, refused(session.close("Inspector\u00071", SignedAs.ACCEPTED)));
        assertEquals(Objection.Kind.HIDDEN_SIGN, refused(session.handOver("Setter\u200b2")));
        assertEquals(
                Objection.Kind.HIDDEN_SIGN,
                refused(session.dispose(Disposition.USE_AS_IS, "why", "Design office", "C-1\u200b")));
        assertEquals(
                Objection.Kind.HIDDEN_SIGN,
                refused(session.dispose(Disposition.USE_AS_IS, "why", "Inspector\u202e1", "C-1")));
        assertThrows(
                IllegalArgumentException.class, () -> new RunHeader(plan(PLAN), "0\u202e01", "L-1", "", "Setter 2"));
    }

    @Test
    void whatDepartsFromTheDrawingHasANumber() throws Exception {
        passed();
        assertEquals(
                Objection.Kind.BLANK, refused(session.dispose(Disposition.USE_AS_IS, "why", "Design office", " ")));
        assertEquals(Objection.Kind.BLANK, refused(session.dispose(Disposition.REPAIR, "why", "Design office", "")));
    }

    @Test
    void aLotThatThePlanAsksForIsGivenOrThereIsNoneOnPurpose() throws Exception {
        assertThrows(IllegalArgumentException.class, () -> new RunHeader(plan(PLAN), "002", " ", "", "Setter 2"));
        RunSession without = workshop.shop.begin(new RunHeader(plan(PLAN), "002", "", "", "Setter 2", true));
        assertTrue(workshop.shop.sheet(without.id()).run().begun().noLot());
        assertTrue(new RunHeader(plan(PLAN.replace("lot = true\n", "")), "003", "", "", "Setter 2")
                .lot()
                .isEmpty());
    }

    private Optional<String> withOtherText(Plan plan) {
        return workshop.shop.history().withOtherText(plan).map(RunFacts::id);
    }

    @Test
    void aPlanWithAnotherTextUnderOneIssueIsNoticed() {
        assertEquals(Optional.empty(), withOtherText(plan(PLAN)));
        String changed = PLAN.replace("Edges are broken.", "Edges are sharp.");
        assertEquals(Optional.of(session.id()), withOtherText(plan(changed)));
        assertEquals(Optional.empty(), withOtherText(plan(changed.replace("issue = \"1\"", "issue = \"2\""))));
        assertEquals(Optional.empty(), withOtherText(DemoPart.SCREW_CARRIER.plan()));
    }
}
