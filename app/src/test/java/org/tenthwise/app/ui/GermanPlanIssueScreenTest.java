package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in German. */
class GermanPlanIssueScreenTest extends MadeUpPlanIssueScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.GERMAN;
    }
}
