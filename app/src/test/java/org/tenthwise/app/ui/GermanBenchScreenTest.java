package org.tenthwise.app.ui;

/** The same screens in German: nothing is left in English or cut off. */
class GermanBenchScreenTest extends BenchScreenTest {

    @Override
    protected boolean isGerman() {
        return true;
    }
}
