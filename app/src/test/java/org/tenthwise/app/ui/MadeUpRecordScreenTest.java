package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpRecordScreenTest extends RecordScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** Serials that name how they were signed, the ending of a file, and the names of an invented plan. */
    @Override
    protected String data() {
        return "not accepted machined and measured csv"
                + " Sixty balloons, invented Characteristic of balloon Balloon roughed";
    }
}
