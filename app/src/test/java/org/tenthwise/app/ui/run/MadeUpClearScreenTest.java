package org.tenthwise.app.ui.run;

/** The same in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpClearScreenTest extends ClearScreenTest {

    @Override
    protected boolean isMadeUp() {
        return true;
    }

    /** What the plan says. */
    @Override
    protected String data() {
        return "All";
    }
}
