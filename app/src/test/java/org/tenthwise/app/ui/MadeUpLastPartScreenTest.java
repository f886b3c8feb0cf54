package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpLastPartScreenTest extends LastPartScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }
}
