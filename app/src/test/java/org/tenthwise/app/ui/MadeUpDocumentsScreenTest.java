package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpDocumentsScreenTest extends DocumentsScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** Words of an invented plan. */
    @Override
    protected String data() {
        return "Position Ø0.05 coordinate machine Alloy aged AMS class forged bar Invented Alloys Setter Nov Look"
                + " Penetrant test Shop rule Test House Pressure test bar As drawn Edges All edges broken Carrier"
                + " invented Lathe Turn machined and measured Invented part for trying out csv"
                + " tmp junit";
    }
}
