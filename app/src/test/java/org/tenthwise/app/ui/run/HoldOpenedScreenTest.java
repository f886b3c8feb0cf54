package org.tenthwise.app.ui.run;

import org.junit.jupiter.api.Test;

/** The list of a run with a hold point that is open: when, and by whom it was opened. */
class HoldOpenedScreenTest extends RunAtHand {

    @Test
    void whoOpenedAHoldPointHoldsEverywhere() throws Exception {
        run.setUpAndGoTo(6);
        seen("run", "hold-opened", this::screen);
    }
}
