package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in German. */
class GermanMattersScreenTest extends MadeUpMattersScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.GERMAN;
    }
}
