package org.tenthwise.app.ui;

import java.nio.file.Path;

/** The same screens in German: nothing is left in English or cut off. */
class GermanSettingsScreenTest extends SettingsScreenTest {

    @Override
    protected boolean isGerman() {
        return true;
    }

    /** A language is called as it calls itself. */
    @Override
    protected String data() {
        return "English home shop tenthwise.db-backups stick share folders Boring mill with long name"
                + Path.of("target").toAbsolutePath();
    }
}
