package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Question;

/** The screen after an answer by one tap, and the key that takes it back. */
class OneTapScreenTest extends RunAtHand {

    @Test
    void theCheckThatFollowsAGoodAnswerHoldsEverywhere() throws Exception {
        run.session.answers().give(1, Answer.YES);
        run.session.answers().give(2, Answer.YES);
        seen("run", "answered-by-one-tap", this::screen);
    }

    @Test
    void aBadAnswerThatCanBeTakenBackHoldsEverywhere() throws Exception {
        run.session.answers().give(1, Answer.NO);
        seen("run", "answered-no", this::screen);
    }

    @Test
    void aRunPutAwayHoldsEverywhereAndIsTakenUpByAKey() throws Exception {
        run.session.answers().give(1, Answer.YES);
        run.session.shelf().putAway("Setter 3", "Started by mistake");
        seen("run", "put-away", this::screen);
        run(() -> press(opened().scene(), "reply-0"));
        assertEquals(
                Optional.of(Question.CONFIRMED), run.session.state().asked().asQuestion());
    }

    @Test
    void oneTapGoesOnAndOneTapComesBack() {
        run(() -> {
            Scene scene = opened().scene();
            press(scene, "reply-0");
            assertEquals("2", text(scene, "step-number"));
            press(scene, "strike");
            assertEquals("1", text(scene, "step-number"));
            assertEquals(words.say("run.strike"), ((Button) scene.lookup("#strike")).getText());
        });
        assertEquals(
                Optional.of(Question.CONFIRMED), run.session.state().asked().asQuestion());
    }
}
