package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpFormsScreenTest extends FormsScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** Words that were typed, and those of an invented plan. */
    @Override
    protected String data() {
        return LONG_WORDS
                + "Position Ø0.05 coordinate machine Alloy aged AMS class forged bar Invented Alloys Setter Nov ";
    }
}
