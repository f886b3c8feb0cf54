package org.tenthwise.app.ui;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpBenchScreenTest extends BenchScreenTest {

    @Override
    protected boolean isMadeUp() {
        return true;
    }
}
