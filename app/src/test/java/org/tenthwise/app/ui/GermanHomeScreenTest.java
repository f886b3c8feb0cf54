package org.tenthwise.app.ui;

/** The same screens in German: nothing is left in English or cut off. */
class GermanHomeScreenTest extends HomeScreenTest {

    @Override
    protected boolean isGerman() {
        return true;
    }

    /** What was typed. */
    @Override
    protected String data() {
        return "second-half-of-the-pair setter nothing not accepted machined and measured";
    }
}
