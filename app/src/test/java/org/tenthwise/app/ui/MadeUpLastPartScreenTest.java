package org.tenthwise.app.ui;

/** The same in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpLastPartScreenTest extends LastPartScreenTest {

    @Override
    protected boolean isMadeUp() {
        return true;
    }
}
