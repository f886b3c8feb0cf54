package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screen in German. */
class GermanOnDrawingScreenTest extends MadeUpOnDrawingScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.GERMAN;
    }
}
