package org.tenthwise.app.ui;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpHomeScreenTest extends HomeScreenTest {

    @Override
    protected boolean isMadeUp() {
        return true;
    }

    /** What was typed. */
    @Override
    protected String data() {
        return "second-half-of-the-pair setter nothing not accepted machined and measured";
    }
}
