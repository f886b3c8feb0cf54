package org.tenthwise.app.ui.run;

/** The same in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpOneTapScreenTest extends OneTapScreenTest {

    @Override
    protected boolean isMadeUp() {
        return true;
    }

    /** What the plan says, and what was typed. */
    @Override
    protected String data() {
        return "All Started by mistake";
    }
}
