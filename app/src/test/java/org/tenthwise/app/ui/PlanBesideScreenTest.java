package org.tenthwise.app.ui;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.plan.PlanBesideViewModel;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.TomlValue;

/** Where something is proven that is not measured at the machine, on every display. */
class PlanBesideScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private Screen screen() {
        PlanInHand plan =
                new PlanInHand(PlanText.of(DemoPart.SCREW_CARRIER.planText()).orElseThrow());
        plan.change(text -> text.appended(TableText.ofList("elsewhere")
                .with("number", "99")
                .with("name", TomlValue.text("Ø52 H7"))
                .with("requirement", TomlValue.text("\u232d 0.01"))
                .with("upper", "0.01")));
        PlanBesideViewModel model =
                new PlanBesideViewModel(plan, plan.openBeside().orElseThrow(), words, workshop, Workshop.CLOCK);
        return FormView.titled(model.title(), model.form(), words, workshop::back, () -> {});
    }

    @Test
    void whereSomethingIsProvenIsAskedForEverywhere() {
        seen("plan", "beside", window -> screen());
    }
}
