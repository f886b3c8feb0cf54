package org.tenthwise.app.ui.run;

import org.tenthwise.app.text.TestLanguage;

/** The same in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpOfferScreenTest extends OfferScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** What the plan says, and what was typed. */
    @Override
    protected String data() {
        return "All Started by mistake";
    }
}
