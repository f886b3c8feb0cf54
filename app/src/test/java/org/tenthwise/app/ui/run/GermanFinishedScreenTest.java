package org.tenthwise.app.ui.run;

/** The same screen in German: nothing is left in English or cut off. */
class GermanFinishedScreenTest extends FinishedScreenTest {

    @Override
    protected boolean isGerman() {
        return true;
    }

    /** What the plan says. */
    @Override
    protected String data() {
        return "All";
    }
}
