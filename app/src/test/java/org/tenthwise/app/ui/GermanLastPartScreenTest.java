package org.tenthwise.app.ui;

/** The same screen in German: nothing is left in English or cut off. */
class GermanLastPartScreenTest extends LastPartScreenTest {

    @Override
    protected boolean isGerman() {
        return true;
    }
}
