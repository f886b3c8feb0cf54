package org.tenthwise.app.ui.shell;

import javafx.scene.layout.Region;
import org.tenthwise.app.ui.keys.Typing;

/** One screen. It is built once, shown, perhaps covered by another and shown again, and goes for good. */
public interface Screen {

    /** Fills the whole of the window; laid out at 1280 × 800 or 800 × 1280, or more one way. */
    Region root();

    /** Spoken when the screen is shown. */
    String title();

    /** Called before the screen is first shown and whenever the tablet is turned. */
    void arrange(Arrangement arrangement);

    /** Called each time the screen comes to be the one in hand. */
    default void onShown() {}

    /** Called when the screen is gone for good: lets go of what it listens to. */
    default void onGone() {}

    /** Where typing goes while no control wants it. */
    default Typing typing() {
        return Typing.NONE;
    }
}
