package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpBeginScreenTest extends BeginScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** People, and why an invented plan was issued. */
    @Override
    protected String data() {
        return "Setter Gauge or places changed Planner ";
    }
}
