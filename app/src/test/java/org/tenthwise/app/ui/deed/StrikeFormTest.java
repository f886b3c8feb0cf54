package org.tenthwise.app.ui.deed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Watch;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.run.SignedAs;

class StrikeFormTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunSession session;
    private StepForm model;

    private final Watch clock = new Watch();

    @BeforeEach
    void atTheBore() {
        session = workshop.atTheBore("014", "0.013", "0.015");
        opened();
    }

    private void opened() {
        model = new StrikeForm(workshop.inHand(session), workshop.words, workshop, clock);
        model.load();
    }

    @SuppressWarnings("unchecked")
    private Field<Strikable> which() {
        return (Field<Strikable>) model.form().fields().get(0);
    }

    @Test
    void theReadingsAndTemperaturesOfTheStepAreOfferedTheLatestFirst() {
        List<String> offered = which().choice().offeredProperty().get().stream()
                .map(Strikable::reads)
                .toList();
        assertEquals(4, offered.size());
        assertEquals(
                List.of("0.015 mm", "0.013 mm", "20 °C", "20 °C"),
                offered.stream().map(text -> text.split(",")[0]).toList());
    }

    @SuppressWarnings("unchecked")
    private Field<String> why() {
        return (Field<String>) model.form().fields().get(1);
    }

    private void tap(String reason) {
        why().choice().choose(reason);
    }

    @Test
    void aTapOnAReasonStrikesOutTheLastOneWhichIsNamedLarge() {
        assertEquals(why(), model.form().inHandProperty().get());
        assertEquals("0.015 mm, at 8, 90°", why().aboutProperty().get());
        tap("Misread");
        assertEquals(List.of("back"), workshop.asked);
        assertEquals(List.of("0.015 Misread"), struckOut());
    }

    @Test
    void anotherOneIsOneChoiceMore() {
        which().choice().choose(which().choice().offeredProperty().get().get(1));
        assertEquals(why(), model.form().inHandProperty().get());
        assertEquals("0.013 mm, at 8, 0°", why().aboutProperty().get());
        tap("Chip or dirt under the gauge");
        assertEquals(List.of("0.013 Chip or dirt under the gauge"), struckOut());
    }

    /** The finger that opened the screen, or chose another one, comes down once more. */
    @Test
    void aSecondTapIsNoReason() {
        clock.hold();
        opened();
        clock.pass(300);
        tap("Misread");
        assertEquals(List.of(), struckOut());
        clock.pass(100);
        which().choice().choose(which().choice().offeredProperty().get().get(1));
        clock.pass(300);
        tap("Mistyped");
        assertEquals(List.of(), struckOut());
        clock.pass(100);
        tap("Wrong place");
        assertEquals(List.of("0.013 Wrong place"), struckOut());
    }

    @Test
    void aSecondTapOnTheReasonStrikesOutNothingMore() {
        tap("Misread");
        tap("Mistyped");
        assertEquals(List.of("0.015 Misread"), struckOut());
    }

    @Test
    void theReasonsFitWhatIsStruckOut() {
        List<List<String>> offered = which().choice().offeredProperty().get().stream()
                .map(one -> {
                    which().choice().choose(one);
                    return why().choice().offeredProperty().get();
                })
                .toList();
        assertEquals(8, offered.get(0).size());
        assertEquals(offered.get(0), offered.get(1));
        assertTrue(offered.get(2).contains("Part and gauge mixed up"), offered::toString);
        assertEquals(List.of(), struckOut());
        session = workshop.begin(DemoPart.SCREW_CARRIER, "015");
        Workshop.must(() -> session.answer(Answer.NO));
        opened();
        assertEquals(
                List.of("Answered by mistake", "Wrong check", "Looked again: it is different"),
                why().choice().offeredProperty().get());
    }

    @Test
    void nothingIsStruckOutWithoutAReason() {
        assertFalse(model.form().readyProperty().get());
        model.form().goOn();
        assertEquals(List.of(), workshop.asked);
        assertEquals(List.of(), struckOut());
    }

    @Test
    void whatIsStruckOutIsKeptWithItsReason() {
        "Chip".chars().mapToObj(Character::toString).forEach(model.form()::character);
        model.form().enter();
        assertEquals(List.of(), struckOut());
        model.form().goOn();
        assertEquals(List.of("back"), workshop.asked);
        assertEquals(List.of("0.015 Chip"), struckOut());
    }

    @Test
    void aClosedRunIsSaidAndNothingStruckOut() {
        Workshop.must(() -> session.close("Inspector 1", SignedAs.NOT_ACCEPTED));
        tap("Misread");
        assertEquals("Not recorded", workshop.told.get(0).title());
        assertEquals(
                "The run is closed. Only notes and signatures can be added.",
                workshop.told.get(0).words());
        assertEquals(List.of(), struckOut());
    }

    private List<String> struckOut() {
        return session.state().pass().readings().stream()
                .flatMap(reading ->
                        reading.struck().stream().map(out -> reading.typed().text() + " " + out.reason()))
                .toList();
    }
}
