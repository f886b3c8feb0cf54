package org.tenthwise.app.ui;

import java.nio.file.Path;
import org.tenthwise.app.text.TestLanguage;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpSettingsScreenTest extends SettingsScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** A language is called as it calls itself. */
    @Override
    protected String data() {
        return "English home shop tenthwise.db-backups stick share folders Boring mill with long name"
                + Path.of("target").toAbsolutePath();
    }
}
