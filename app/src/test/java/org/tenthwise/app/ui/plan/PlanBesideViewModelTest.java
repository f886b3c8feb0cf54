package org.tenthwise.app.ui.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.model.words.Words;

class PlanBesideViewModelTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @TempDir
    private Path folder;

    /** What is proven elsewhere is told by touch too: without its place no plan made of a list is ever whole. */
    @Test
    void whatIsOpenOutsideTheOrderOfWorkIsAskedLast() {
        PlanInHand plan =
                new PlanInHand(PlanText.of(DemoPart.SCREW_CARRIER.planText()).orElseThrow());
        plan.change(text -> text.appended(TableText.ofList("elsewhere")
                .with("number", "99")
                .with("name", TomlValue.text("Cylindricity"))
                .with("requirement", TomlValue.text("\u232d 0.01"))
                .with("upper", "0.01")));
        PlanInHand.Beside open = plan.openBeside().orElseThrow();
        assertEquals(new PlanInHand.Beside("elsewhere", 0, List.of("where")), open);
        new PlanViewModel("carrier", plan, new PlanDesk(folder), workshop.tasks, Words.ENGLISH, workshop).nextOpen();
        assertEquals("beside " + open, workshop.asked.get(workshop.asked.size() - 1));
        FormViewModel form = new PlanBesideViewModel(plan, open, Words.ENGLISH, workshop, Workshop.CLOCK).form();
        assertEquals("plan-where", form.inHandProperty().get().id());
        form.inHandProperty().get().type();
        form.character("coordinate machine");
        form.goOn();
        assertEquals(Optional.empty(), plan.openBeside());
        assertEquals(List.of(), plan.open());
    }
}
