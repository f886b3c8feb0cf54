package org.tenthwise.app.ui;

/** The same screen in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpMoreScreenTest extends MoreScreenTest {

    @Override
    protected boolean isMadeUp() {
        return true;
    }
}
