package org.tenthwise.app.ui;

/** The same screens in German: nothing is left in English or cut off. */
class GermanRecordScreenTest extends RecordScreenTest {

    @Override
    protected boolean isGerman() {
        return true;
    }

    /** Serials that name how they were signed. */
    @Override
    protected String data() {
        return "not accepted machined and measured";
    }
}
