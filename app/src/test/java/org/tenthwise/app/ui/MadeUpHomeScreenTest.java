package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpHomeScreenTest extends HomeScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** What was typed. */
    @Override
    protected String data() {
        return "second-half-of-the-pair setter nothing not accepted machined and measured";
    }
}
