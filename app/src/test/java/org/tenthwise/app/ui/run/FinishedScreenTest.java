package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.Node;
import javafx.scene.Scene;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.ui.Display;
import org.tenthwise.model.run.Disposition;

/** The line that says what the check before came to. */
class FinishedScreenTest extends RunAtHand {

    /** At the plug, behind a bore with that for its last reading. */
    private RunViewModel behindTheBore(String last) throws Exception {
        run.setUpAndGoTo(ARun.BORE).setBoreGauge();
        RunViewModel model = atOnce();
        sends(model, "0.015\n0.014\n0.011\n" + last + "\n");
        if (!model.stateProperty().get().line().settled()) {
            run.session.dispose(Disposition.USE_AS_IS, "Agreed", "Design office", "117");
            model.refresh();
        }
        model.press();
        return model;
    }

    @Test
    void itCannotBePressedAndTakesNoFocus() throws Exception {
        RunViewModel model = behindTheBore("0.013");
        run(() -> {
            Window window = window(Display.DAY);
            window.shell().show(new RunScreen(model, window.pictures(), words));
            Scene scene = window.scene();
            settle(scene);
            Node said = scene.lookup("#finished");
            assertTrue(said.isVisible() && said.getParent().isVisible());
            assertTrue(said.getParent().isMouseTransparent());
            assertFalse(said.isFocusTraversable() || said.getParent().isFocusTraversable());
        });
    }

    @Test
    void whatABoreCameToHoldsEverywhereAtItsPlug() throws Exception {
        RunViewModel model = behindTheBore("0.013");
        seen("run", "finished-before", window -> new RunScreen(model, window.pictures(), words));
    }

    @Test
    void aConcededOneHoldsEverywhereToo() throws Exception {
        RunViewModel model = behindTheBore("0.0245");
        seen("run", "finished-conceded", window -> new RunScreen(model, window.pictures(), words));
    }
}
