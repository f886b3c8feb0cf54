package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in German. */
class GermanDeskScreenTest extends MadeUpDeskScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.GERMAN;
    }
}
