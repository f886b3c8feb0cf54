package org.tenthwise.app.ui.run;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in German. */
class GermanWallScreenTest extends MadeUpWallScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.GERMAN;
    }
}
