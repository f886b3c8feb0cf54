package org.tenthwise.app.ui;

/** The same screen in German: nothing is left in English or cut off. */
class GermanMoreScreenTest extends MoreScreenTest {

    @Override
    protected boolean isGerman() {
        return true;
    }

    /** What was typed, and where the demo plan has its expansion from. */
    @Override
    protected String data() {
        return new MadeUpMoreScreenTest().data();
    }
}
