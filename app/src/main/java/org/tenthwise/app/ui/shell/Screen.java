package org.tenthwise.app.ui.shell;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.BorderPane;
import javafx.util.Subscription;
import org.tenthwise.app.ui.keys.Typing;

/**
 * One screen; it fills the whole of the window, laid out at 1280 × 800 or 800 × 1280, or more one way. It is built
 * once, shown, perhaps covered by another and shown again, and goes for good. It owns what it listens to, and lets go
 * of all of it when it goes.
 */
public abstract class Screen extends BorderPane {

    private final String title;
    private final List<Subscription> owned = new ArrayList<>();

    /** @param title spoken when the screen is shown */
    protected Screen(String title) {
        this.title = title;
    }

    public final String title() {
        return title;
    }

    /** Called before the screen is first shown and whenever the tablet is turned. */
    public abstract void arrange(Arrangement arrangement);

    /** Called each time the screen comes to be the current one. */
    public void onShown() {}

    /** Where typing goes while no control wants it. */
    public Typing typing() {
        return Typing.NONE;
    }

    /** Takes a subscription into its keeping until the screen goes. */
    protected final void owns(Subscription subscription) {
        owned.add(subscription);
    }

    /** The screen is gone for good. */
    final void letGo() {
        owned.forEach(Subscription::unsubscribe);
        owned.clear();
    }
}
