package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpPlanScreenTest extends PlanScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    @Override
    protected String data() {
        return plansSay(language().words().locale());
    }
}
