package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpPurposeScreenTest extends PurposeScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** Part, run, people and machine. */
    @Override
    protected String data() {
        return "LG WB AB Setter Lathe New boring bar, other overhang Change";
    }
}
