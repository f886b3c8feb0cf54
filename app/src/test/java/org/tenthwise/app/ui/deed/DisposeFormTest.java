package org.tenthwise.app.ui.deed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.StepEvent;

class DisposeFormTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunSession session;
    private StepForm model;

    @BeforeEach
    void aBoreThatIsPastSize() {
        session = workshop.atTheBore("014", "0.013", "0.015", "0.014", "0.027");
        model = new DisposeForm(workshop.inHand(session), workshop.words, workshop);
        model.load();
    }

    @SuppressWarnings("unchecked")
    private void choose(Disposition disposition) {
        ((Field<Disposition>) model.form().fields().get(0)).choice().choose(disposition);
    }

    @SuppressWarnings("unchecked")
    private List<String> reasons() {
        return ((Field<String>) model.form().fields().get(1))
                .choice()
                .offeredProperty()
                .get();
    }

    @Test
    void theReasonsOfferedBelongToTheDisposition() {
        choose(Disposition.SCRAP);
        List<String> scrap = reasons();
        choose(Disposition.USE_AS_IS);
        assertTrue(scrap.contains("Past size, no metal left"));
        assertTrue(reasons().stream().noneMatch(scrap::contains));
    }

    @Test
    void aConcessionIsKeptWithReasonAndSignatureAndSettlesTheStep() {
        choose(Disposition.USE_AS_IS);
        model.form().goOn();
        type("Key is fitted to it");
        model.form().goOn();
        assertEquals("Concession number", model.form().inHandProperty().get().name());
        model.form().goOn();
        assertEquals("Concession number", model.form().inHandProperty().get().name(), "it is needed");
        type("C-117");
        model.form().goOn();
        type("Design office");
        model.form().goOn();
        assertEquals(
                Optional.of(new StepEvent.DispositionSigned(
                        13, Disposition.USE_AS_IS, "Key is fitted to it", "Design office", Optional.of("C-117"))),
                session.state().line().disposed());
        assertTrue(session.state().line().settled());
        assertEquals(List.of("back"), workshop.asked);
    }

    @Test
    void thatThereIsNoNumberYetIsReadyAndRecordedAsSaid() {
        choose(Disposition.REPAIR);
        model.form().goOn();
        type("Sleeved");
        model.form().goOn();
        assertEquals(
                List.of("None yet"),
                number("approval").choice().offeredProperty().get());
        number("approval").choice().choose("None yet");
        model.form().goOn();
        type("Design office");
        model.form().goOn();
        assertEquals(
                Optional.of("None yet"),
                session.state().line().disposed().orElseThrow().document());
        assertTrue(session.state().line().repaired());
    }

    @Test
    void theNumberAskedForBelongsToTheDispositionAndAScrapMayGoWithout() {
        choose(Disposition.USE_AS_IS);
        assertEquals(List.of("concession"), asked());
        number("concession").type();
        choose(Disposition.SCRAP);
        assertEquals(List.of("nonconformance"), asked());
        model.form().goOn();
        type("Past size");
        model.form().goOn();
        model.form().goOn();
        assertEquals("who", model.form().inHandProperty().get().id());
        type("Inspector 1");
        model.form().goOn();
        assertEquals(
                Optional.of(new StepEvent.DispositionSigned(13, Disposition.SCRAP, "Past size", "Inspector 1")),
                session.state().line().disposed());
    }

    @Test
    void aNumberGivenInTheRunIsReadyForTheNextFinding() {
        Workshop.must(() -> session.dispose(Disposition.USE_AS_IS, "Key is fitted to it", "Design office", "C-117"));
        model.load();
        assertEquals(
                List.of("None yet", "C-117"),
                number("concession").choice().offeredProperty().get());
        assertEquals(
                List.of("None yet"),
                number("approval").choice().offeredProperty().get());
    }

    private List<String> asked() {
        return model.form().fields().subList(2, 6).stream()
                .filter(field -> field.askedProperty().get())
                .map(Field::id)
                .toList();
    }

    @SuppressWarnings("unchecked")
    private Field<String> number(String id) {
        return (Field<String>) model.form().fields().stream()
                .filter(field -> field.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Where another document covers it, its number can be given; it need not. */
    @Test
    void aSetUpThatFailedIsOnlyCarriedOnHereWithANumberOrWithout() {
        RunSession setUp = workshop.begin(DemoPart.SCREW_CARRIER, "020");
        Workshop.must(() -> setUp.answer(Answer.NO));
        StepForm other = new DisposeForm(workshop.inHand(setUp), workshop.words, workshop);
        other.load();
        assertEquals(
                Optional.of(Disposition.CARRY_ON),
                other.form().fields().get(0).valueProperty().get());
        List<Field<?>> numbers = other.form().fields().subList(2, 6).stream()
                .<Field<?>>map(field -> field)
                .filter(field -> field.askedProperty().get())
                .toList();
        assertEquals(List.of("document"), numbers.stream().map(Field::id).toList());
        assertFalse(numbers.get(0).required());
        assertEquals(
                1, other.form().fields().get(0).choice().offeredProperty().get().size());
    }

    @Test
    void theCardSaysWhatFailed() {
        assertEquals("Fail", model.card().getValue().orElseThrow().verdict());
        // 30.000 + 0.027 = 30.027, over 30.021 by 0.006
        assertEquals(
                "30.027. 0.006 mm above the upper limit.",
                model.card().getValue().orElseThrow().sentence());
    }

    private void type(String text) {
        text.chars().mapToObj(Character::toString).forEach(model.form()::character);
    }
}
