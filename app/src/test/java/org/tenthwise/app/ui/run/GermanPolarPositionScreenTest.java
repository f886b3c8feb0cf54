package org.tenthwise.app.ui.run;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in German. */
class GermanPolarPositionScreenTest extends MadeUpPolarPositionScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.GERMAN;
    }
}
