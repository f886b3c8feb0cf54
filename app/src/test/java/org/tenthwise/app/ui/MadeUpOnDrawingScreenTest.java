package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;
import org.tenthwise.checklists.catalogue.DemoPart;

/** The same screen in a language that is not English and a third longer. */
class MadeUpOnDrawingScreenTest extends OnDrawingScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** What the plan and the run say, and the file. */
    @Override
    protected String data() {
        return DemoPart.SCREW_CARRIER.planText() + "Setter Lathe pdf";
    }
}
