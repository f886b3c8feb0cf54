package org.tenthwise.app.ui.deed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.SignedAs;

class StrikeFormTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunSession session;
    private StepForm model;

    @BeforeEach
    void atTheBore() {
        session = workshop.atTheBore("014", "0.013", "0.015");
        model = new StrikeForm(workshop.inHand(session), workshop.words, workshop);
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

    @Test
    void nothingIsStruckOutWithoutAReason() {
        which().choice().choose(which().choice().offeredProperty().get().get(0));
        model.form().goOn();
        model.form().goOn();
        assertFalse(model.form().readyProperty().get());
        assertEquals(List.of(), workshop.asked);
        assertEquals(0, struck().size());
    }

    @Test
    void whatIsStruckOutIsKeptWithItsReason() {
        which().choice().choose(which().choice().offeredProperty().get().get(0));
        model.form().goOn();
        "Chip".chars().mapToObj(Character::toString).forEach(model.form()::character);
        model.form().goOn();
        assertEquals(List.of("back"), workshop.asked);
        assertEquals(
                List.of("Chip"),
                struck().stream()
                        .map(reading -> reading.struck().orElseThrow().reason())
                        .toList());
        assertEquals("0.015", struck().get(0).typed().text());
    }

    @Test
    void aClosedRunIsSaidAndNothingStruckOut() {
        which().choice().choose(which().choice().offeredProperty().get().get(0));
        model.form().goOn();
        model.form().character("x");
        Workshop.must(() -> session.close("Inspector 1", SignedAs.NOT_ACCEPTED));
        model.form().goOn();
        assertEquals("Not taken", workshop.told.get(0).title());
        assertEquals(
                "The run is closed. Nothing but notes and signatures can be added to it.",
                workshop.told.get(0).words());
        assertEquals(0, struck().size());
    }

    private List<Pass.Reading> struck() {
        return session.state().pass().readings().stream()
                .filter(reading -> reading.struck().isPresent())
                .toList();
    }
}
