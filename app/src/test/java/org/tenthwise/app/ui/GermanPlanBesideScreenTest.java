package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screen in German. */
class GermanPlanBesideScreenTest extends PlanBesideScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.GERMAN;
    }
}
