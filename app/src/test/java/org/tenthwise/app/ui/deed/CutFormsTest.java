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
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;

/** Outside Ø48 of four readings. */
class CutFormsTest {

    private static final int OUTSIDE = 9;

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunSession session;

    @BeforeEach
    void readOne() {
        session = workshop.setUp("014");
        Workshop.must(() -> session.goTo(OUTSIDE));
        Workshop.must(() -> session.readingsFirst(true));
        Workshop.must(() -> session.enter("48.032"));
        assertEquals(1, session.state().pass().standing().size());
    }

    private StepForm onThese() {
        StepForm model = new CutOnTheseForm(workshop.inHand(session), workshop.words, workshop);
        model.load();
        return model;
    }

    private StepForm machine() {
        StepForm model = new MachineForm(workshop.inHand(session), workshop.words, workshop);
        model.load();
        return model;
    }

    private static <T> void choose(Field<T> field, int row) {
        field.choice().choose(field.choice().offeredProperty().get().get(row));
    }

    @Test
    void thePlacesThatNobodyReadStandBeforeOnesEyes() {
        List<String> notes = onThese().card().getValue().orElseThrow().notes();
        String places = session.state().inHand().check().slots().get(1).place().name();
        assertTrue(notes.get(0).startsWith("Not read: "), notes::toString);
        assertTrue(notes.get(0).contains(places), notes::toString);
    }

    @Test
    void withoutAReasonNothingIsSignedAndWithOneTheCutMayBeTaken() {
        FormViewModel form = onThese().form();
        form.goOn();
        assertFalse(session.state().mayCut());
        choose(form.fields().get(0), 0);
        form.goOn();
        assertTrue(session.state().mayCut());
        assertEquals(List.of("back"), workshop.asked);
    }

    /** The second tap on the key comes when the entry is there already. */
    @Test
    void aSecondTapSignsNothingMore() {
        FormViewModel form = onThese().form();
        choose(form.fields().get(0), 0);
        form.goOn();
        long kept = workshop.kept();
        form.goOn();
        assertEquals(kept, workshop.kept());
    }

    @Test
    void theMachineIsKeptAsChosenAndPutRightLater() {
        StepForm first = machine();
        assertEquals("The middle of the limits", first.form().fields().get(1).reads());
        choose(first.form().fields().get(0), 1);
        first.form().goOn();
        assertEquals(Optional.of(Register.RADIUS), session.state().sheet().run().register());
        StepForm again = machine();
        assertEquals("On radius", again.form().fields().get(0).reads());
        choose(again.form().fields().get(0), 0);
        choose(again.form().fields().get(1), 1);
        again.form().goOn();
        assertEquals(
                Optional.of(Register.DIAMETER), session.state().sheet().run().register());
        assertEquals(
                Optional.of(Aim.ByLimits.THIRD), session.state().sheet().run().usualAim());
    }
}
