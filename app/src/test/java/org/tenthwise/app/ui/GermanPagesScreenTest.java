package org.tenthwise.app.ui;

/** The same screens in German: nothing is left in English or cut off. */
class GermanPagesScreenTest extends PagesScreenTest {

    @Override
    protected boolean isGerman() {
        return true;
    }

    @Override
    protected String data() {
        return "not accepted machined and measured";
    }
}
