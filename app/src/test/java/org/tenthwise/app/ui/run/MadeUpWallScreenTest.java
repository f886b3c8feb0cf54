package org.tenthwise.app.ui.run;

import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.text.TestLanguage;

/** The same in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpWallScreenTest extends WallScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** What the plan says, and what was entered. */
    @Override
    protected String data() {
        return WALL + InventedPlans.text("mm", "") + " Setter Lathe";
    }
}
