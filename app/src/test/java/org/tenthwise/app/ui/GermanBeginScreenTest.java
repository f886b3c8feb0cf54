package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in German. */
class GermanBeginScreenTest extends MadeUpBeginScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.GERMAN;
    }
}
