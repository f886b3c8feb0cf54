package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpHistoryScreenTest extends HistoryScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** What the plan and the shop have. */
    @Override
    protected String data() {
        return "Journal Width of the rim over both faces Shoulder at least Lathe Setter";
    }
}
