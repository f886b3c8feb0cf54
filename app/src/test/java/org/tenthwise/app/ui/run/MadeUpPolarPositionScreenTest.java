package org.tenthwise.app.ui.run;

import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.text.TestLanguage;

/** The same in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpPolarPositionScreenTest extends PolarPositionScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** What the plan says, and what was entered. */
    @Override
    protected String data() {
        return BORES_BY_ANGLE + InventedPlans.text("mm", "") + " Setter Lathe";
    }
}
