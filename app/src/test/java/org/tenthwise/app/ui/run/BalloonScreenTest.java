package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.SixtyBalloons;
import org.tenthwise.app.ui.run.RunScreenState.StepLine;
import org.tenthwise.model.plan.Answer;

/** A plan whose order of work is not the order of the drawing. */
class BalloonScreenTest extends RunAtHand {

    @BeforeEach
    void someWayInto() throws Exception {
        beginARunOf(SixtyBalloons.PLAN);
        run.session.answer(Answer.YES);
        run.enter("22.9");
        run.session.goTo(3);
        run.session.answer(Answer.YES);
        run.session.goTo(4);
        run.enter("8.004", "8.011");
        run.session.goTo(5);
        run.enter("15.004");
    }

    @Test
    void theListTellsTheOrderOfWorkFromTheBalloonEverywhere() {
        seen("run", "balloons", this::screen);
    }

    @Test
    void aBalloonIsTheTextOfTheDrawingAndSaidWithTheName() {
        List<StepLine> steps = new RunPresenter(words).of(run.session.state()).steps();
        assertEquals(
                List.of(Optional.empty(), Optional.of("20"), Optional.of("1"), Optional.of("6"), Optional.of("12A")),
                steps.subList(0, 5).stream().map(StepLine::balloon).toList());
        assertTrue(steps.get(4).spoken().contains("balloon 12A"), steps.get(4).spoken());
        assertFalse(steps.get(0).spoken().contains("balloon"), steps.get(0).spoken());
    }

    /** Half of four holes gauged must not be answered for all of them unseen. */
    @Test
    void oneAnswerForAllOfSeveralSaysSo() throws Exception {
        beginARunOf(
                InventedPlans.inMillimetres(
                        """
                [[step]]
                number = 1
                operation = 10
                kind = "go-not-go"
                name = "Threads"
                balloon = 8
                count = 4
                method = "Plug, each hole."
                go = "Goes in whole."
                not_go = "Two turns at the most."
                """));
        assertEquals(
                "all 4",
                new RunPresenter(words).of(run.session.state()).inHand().taken());
    }

    /** Balloon 9 is the order number 9 here as little as anywhere: only what is ringed is a balloon. */
    @Test
    void whereBothAreTheSameNumberOneStands() throws Exception {
        beginARunOf(
                InventedPlans.inMillimetres(
                        """
                [[step]]
                number = 1
                operation = 10
                kind = "look"
                name = "Edges"
                balloon = 1
                what = "Edges broken."
                """));
        run(() -> {
            Scene scene = opened().scene();
            assertTrue(scene.getRoot().lookupAll(".ringed").stream()
                    .map(Label.class::cast)
                    .allMatch(ring -> ring.getText().isEmpty() && !ring.isVisible()));
        });
    }
}
