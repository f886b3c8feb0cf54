package org.tenthwise.app.ui;

import java.util.List;
import org.tenthwise.app.text.TestLanguage;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.TemplateShelf;
import org.tenthwise.checklists.rules.PlanChoices;

/** The same screens in a language that is not English and a third longer: nothing is left in English or cut off. */
class MadeUpPlanScreenTest extends PlanScreenTest {

    @Override
    protected TestLanguage language() {
        return TestLanguage.MADE_UP;
    }

    /** What plans say, and the words they are written in. */
    @Override
    protected String data() {
        return folder
                + " characteristics csv THRU "
                + DemoPart.SCREW_CARRIER.planText()
                + DemoPart.WINCH_BARREL_END.planText()
                + PlanChoices.of("gauge_kind", List.of())
                + TemplateShelf.shipped(language().words().locale())
                + "Bore of ours"
                + "Planner front back one place";
    }
}
