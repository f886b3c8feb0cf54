package org.tenthwise.app.ui.run;

import org.junit.jupiter.api.Test;

/** How it looks in every state. */
class WallScreenTest extends WallAtHand {

    @Test
    void openItHoldsEverywhere() throws Exception {
        run.session.goTo(4);
        seen("run", "run-calculated-open", this::screen);
    }

    @Test
    void passedItHoldsEverywhere() throws Exception {
        read("40.020");
        seen("run", "run-calculated-pass", this::screen);
    }

    @Test
    void failedItHoldsEverywhere() throws Exception {
        read("40.080");
        seen("run", "run-calculated-fail", this::screen);
    }
}
