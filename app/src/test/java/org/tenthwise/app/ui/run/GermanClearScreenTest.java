package org.tenthwise.app.ui.run;

/** The same in German: nothing is left in English or cut off. */
class GermanClearScreenTest extends ClearScreenTest {

    @Override
    protected boolean isGerman() {
        return true;
    }

    /** What the plan says, and what was typed. */
    @Override
    protected String data() {
        return "All Started by mistake";
    }
}
