package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in German. */
class GermanDocumentsScreenTest extends MadeUpDocumentsScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.GERMAN;
    }
}
