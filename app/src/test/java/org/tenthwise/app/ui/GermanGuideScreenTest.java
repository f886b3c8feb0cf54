package org.tenthwise.app.ui;

import org.tenthwise.app.ui.guide.SmallPlan;

/** The same screens in German: nothing is left in English or cut off. */
class GermanGuideScreenTest extends GuideScreenTest {

    @Override
    protected boolean isGerman() {
        return true;
    }

    /** Where plans are looked for, what is typed on a computer, and the plan itself. */
    @Override
    protected String data() {
        return "home shop tenthwise plans java -jar tenthwise.jar check demo toml " + SmallPlan.text();
    }
}
