package org.tenthwise.app.ui;

import org.tenthwise.app.text.TestLanguage;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpArticleScreenTest extends ArticleScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** Words of an invented plan, what is drawn, and the names of a standard and of kinds of files. */
    @Override
    protected String data() {
        return "AS9102 Rev FAIR PDF CSV Invented lock works first run Planner Inspector Quality lead Setter Penetrant"
                + " inspection GR PO Gate roller pin Nov DEPTH MIN POSITION CBORE THRU MAX SPOTFACE FULL DEEP MARK"
                + " BREAK EDGES PLACES EQ SP BOTH ENDS REF TYP";
    }
}
