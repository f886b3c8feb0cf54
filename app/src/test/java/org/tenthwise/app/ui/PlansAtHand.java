package org.tenthwise.app.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.ui.plan.PlanView;
import org.tenthwise.app.ui.plan.PlanViewModel;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.catalogue.TemplateShelf;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.rules.PlanChoices;

/** A folder of plans and the screw carrier's, for the tests of the looks of making and changing them. */
abstract class PlansAtHand extends ScreenTest {

    @RegisterExtension
    final Workshop workshop = new Workshop(words);

    @TempDir
    Path folder;

    final PlanDesk desk() {
        return new PlanDesk(folder);
    }

    static PlanText carrier() {
        return PlanText.of(DemoPart.SCREW_CARRIER.planText()).orElseThrow();
    }

    final Screen plan(PlanInHand plan, int place) {
        PlanViewModel model = new PlanViewModel("LG-2207-C", plan, desk(), workshop.tasks, words, workshop);
        model.take(place);
        return new PlanView(model, words, workshop);
    }

    /** What plans say, and the words they are written in. */
    final String plansSay(Locale locale) {
        return folder
                + " characteristics csv THRU "
                + DemoPart.SCREW_CARRIER.planText()
                + DemoPart.WINCH_BARREL_END.planText()
                + PlanChoices.of("gauge_kind", List.of())
                + TemplateShelf.shipped(locale)
                + "Bore of ours"
                + "Planner front back one place";
    }
}
