package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.run.SignedAs;

/** The keys of the run screen by keyboard and focus, the lesser ones, and the one that leads to the signature. */
class KeyHandlingTest extends RunAtHand {

    @Test
    void everyWayOutIsAsked() throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge().enter("0.0245");
        run(() -> {
            Scene scene = opened().scene();
            for (String key : List.of("back", "doubt", "note", "strike", "sign-for", "gauge", "commit")) {
                press(scene, key);
            }
            strike(scene, KeyCode.ESCAPE);
        });
        String id = run.session.id();
        assertEquals(
                List.of(
                        "back",
                        "say DOUBT " + id,
                        "say NOTE " + id,
                        "form STRIKE " + id,
                        "form DISPOSE " + id,
                        "gauge " + id),
                ways.asked);
        assertEquals(2, run.session.state().line().passes().size());
    }

    @Test
    void theLastCheckLeadsToTheSignature() throws Exception {
        run.session.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        run(() -> press(opened().scene(), "commit-answered"));
        assertEquals(List.of("record " + run.session.id()), ways.asked);
    }

    @Test
    void everyKeyIsReachedByTheTabulator() {
        run(() -> {
            Scene scene = opened().scene();
            assertTrue(scene.getRoot().lookupAll(".key").stream()
                    .filter(node -> node instanceof Button)
                    .allMatch(node -> node.isFocusTraversable()));
        });
    }

    @Test
    void whenAQuestionIsAnsweredTheFocusStaysUnderTheHand() {
        run(() -> {
            Scene scene = opened().scene();
            scene.lookup("#reply-0").requestFocus();
            pressFocused(scene);
            strike(scene, KeyCode.TAB);
            assertEquals("reply-0", scene.getFocusOwner().getId());
            assertEquals(2, run.session.state().inHand().number());
        });
    }

    @Test
    void aBlankOrALetterPressesNoKeyAndControlWithEnterDoes() {
        run(() -> {
            Scene scene = opened().scene();
            scene.lookup("#back").requestFocus();
            type(scene, " x");
            strike(scene, KeyCode.SPACE);
            strike(scene, KeyCode.ENTER);
            assertEquals(List.of(), ways.asked);
            pressFocused(scene);
        });
        assertEquals(List.of("back"), ways.asked);
    }
}
