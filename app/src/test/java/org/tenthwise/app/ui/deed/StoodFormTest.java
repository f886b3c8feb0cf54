package org.tenthwise.app.ui.deed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.run.Pass;

class StoodFormTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunSession session;
    private StepForm model;

    @BeforeEach
    void afterTheFirstByAngle() {
        session = workshop.begin(DemoPart.SCREW_CARRIER, "014");
        Workshop.must(() -> session.answer(Answer.YES));
        Workshop.must(() -> session.goTo(4));
        for (String read : List.of("0.040", "0.000", "0.041", "0.000", "0.033")) {
            Workshop.must(() -> session.enter(read));
        }
        model = new StoodForm(workshop.inHand(session), workshop.words, workshop);
        model.load();
    }

    @Test
    void thePlacesRoundTheTurnAreTheReadyAnswers() {
        assertEquals(
                Stream.of(
                                "half-way from jaw 1 to jaw 2",
                                "jaw 2 under the needle",
                                "half-way from jaw 2 to jaw 3",
                                "jaw 3 under the needle",
                                "half-way from jaw 3 to jaw 4",
                                "jaw 4 under the needle",
                                "half-way from jaw 4 to jaw 1")
                        .map(place -> place + ", near the jaws")
                        .toList(),
                places(model.form().fields().get(0)));
    }

    private static <T> List<String> places(Field<T> field) {
        return field.choice().offeredProperty().get().stream().map(field::reads).toList();
    }

    private static <T> void choose(Field<T> field, int which) {
        field.choice().choose(field.choice().offeredProperty().get().get(which));
    }

    @Test
    void theKeySaysThePlaceInFull() {
        choose(model.form().fields().get(0), 2);
        assertEquals("jaws 2\u20133", model.form().lineProperty().get());
        choose(model.form().fields().get(0), 3);
        assertEquals("jaw 3", model.form().lineProperty().get());
    }

    @Test
    void theReadingIsStruckOutWithWhereItWasTakenAndKeptThere() {
        choose(model.form().fields().get(0), 3);
        model.form().goOn();
        assertEquals(List.of("back"), workshop.asked);
        Pass.Reading struck = session.state().pass().readings().get(4);
        assertEquals(
                "The place was another: jaw 3 under the needle, near the jaws",
                struck.struck().orElseThrow().reason());
        assertEquals(
                "0.033", session.state().pass().standing().get("5.1").typed().text());
    }
}
