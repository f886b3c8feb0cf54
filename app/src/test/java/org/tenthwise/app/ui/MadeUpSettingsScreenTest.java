package org.tenthwise.app.ui;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpSettingsScreenTest extends SettingsScreenTest {

    @Override
    protected boolean isMadeUp() {
        return true;
    }

    /** A language is called as it calls itself. */
    @Override
    protected String data() {
        return "English";
    }
}
