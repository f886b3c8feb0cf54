package org.tenthwise.app.ui.run;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in German. */
class GermanPositionScreenTest extends MadeUpPositionScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.GERMAN;
    }
}
