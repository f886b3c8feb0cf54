package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;
import org.tenthwise.app.ui.guide.SmallPlan;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpGuideScreenTest extends GuideScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** Where plans are looked for, what is typed on a computer, and the plan itself. */
    @Override
    protected String data() {
        return "home shop tenthwise plans java -jar tenthwise.jar check demo toml " + SmallPlan.text();
    }
}
