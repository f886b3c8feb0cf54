package org.tenthwise.app.ui.keys;

import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.util.Duration;

/**
 * Lets a part of a screen take no press for a moment after it has changed: a finger already coming down answers nothing
 * it has not seen, and the press is not even shown.
 */
public final class Deaf {

    /** A little longer than a view model is deaf, which has the last word. */
    private static final Duration MOMENT = Duration.millis(450);

    private final Node part;
    private final PauseTransition pause = new PauseTransition(MOMENT);

    public Deaf(Node part) {
        this.part = part;
        pause.setOnFinished(event -> part.setMouseTransparent(false));
    }

    /** From now on; begins anew where it is deaf already. */
    public void forAMoment() {
        part.setMouseTransparent(true);
        pause.playFromStart();
    }
}
