package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screen in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpMoreScreenTest extends MoreScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** What was typed, and where the demo plan has its expansion from. */
    @Override
    protected String data() {
        return "Bar springs at the mouth Chip or dirt under the gauge aluminium bronze condition not stated Copper"
                + " Development Association properties of its like in castings as handed on by foundries"
                + " read November from";
    }
}
