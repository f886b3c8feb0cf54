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

    private static final Duration LONGER = Duration.millis(850);

    private final Node part;
    private final PauseTransition pause;

    public Deaf(Node part) {
        this(part, MOMENT);
    }

    private Deaf(Node part, Duration moment) {
        this.part = part;
        this.pause = new PauseTransition(moment);
        pause.setOnFinished(event -> part.setMouseTransparent(false));
    }

    /** For a key that means something else where another lay that was pressed just before. */
    public static Deaf forLonger(Node part) {
        return new Deaf(part, LONGER);
    }

    /** From now on; begins anew where it is deaf already. */
    public void forAMoment() {
        part.setMouseTransparent(true);
        pause.playFromStart();
    }
}
