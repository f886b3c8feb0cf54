package org.tenthwise.app.ui;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.ui.begin.BeginView;
import org.tenthwise.app.ui.begin.BeginViewModel;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Purpose;

/** The form by which a run is begun, on every display; what it is begun for has a test of its own. */
class BeginScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    @TempDir
    private Path folder;

    private static void type(FormViewModel form, String text) {
        text.chars().mapToObj(Character::toString).forEach(form::character);
    }

    @Test
    void beginningHoldsEverywhere() {
        seen("begin", "empty", window -> begin(window, DemoPart.WINCH_BARREL_END, ""));
        workshop.atTheBore("014", "0.013");
        seen("begin", "next", window -> begin(window, DemoPart.SCREW_CARRIER, ""));
        seen("begin", "already", window -> begin(window, DemoPart.SCREW_CARRIER, "014"));
        seen("begin", "machine", window -> {
            BeginViewModel model = new BeginViewModel(
                    DemoPart.SCREW_CARRIER.plan(), workshop.shop, workshop.tasks, words, workshop, Workshop.CLOCK);
            BeginView view = new BeginView(model, words, window.pictures(), workshop);
            model.load();
            type(model.form(), "016");
            model.form().goTo(model.form().fields().get(2));
            return view;
        });
        seen("begin", "first-article", window -> {
            BeginViewModel model = new BeginViewModel(
                    DemoPart.SCREW_CARRIER.plan(), workshop.shop, workshop.tasks, words, workshop, Workshop.CLOCK);
            BeginView view = new BeginView(model, words, window.pictures(), workshop);
            model.load();
            type(model.form(), "016");
            model.purpose().choice().choose(Purpose.FIRST_ARTICLE_FULL);
            model.form().goTo(model.purpose());
            return view;
        });
    }

    /** Why the plan was issued, by whom and what its first article takes in, is read before a run begins. */
    @Test
    void beginningByAPlanThatWasIssuedHoldsEverywhere() throws IOException {
        PlanDesk desk = new PlanDesk(folder);
        desk.issue(
                "LG-2207-C",
                PlanText.of(DemoPart.SCREW_CARRIER.planText()).orElseThrow(),
                new PlanDesk.Why(
                        "Gauge or places changed",
                        "Planner 1",
                        Optional.of("Planner 2"),
                        LocalDate.of(2026, 11, 30),
                        Optional.empty()));
        Plan issued =
                new PlanInHand(desk.open("LG-2207-C").orElseThrow()).plan().orElseThrow();
        seen("begin", "issued", window -> begin(window, issued, "014"));
    }

    private Screen begin(Window window, DemoPart part, String serial) {
        return begin(window, part.plan(), serial);
    }

    private Screen begin(Window window, Plan plan, String serial) {
        BeginViewModel model = new BeginViewModel(plan, workshop.shop, workshop.tasks, words, workshop, Workshop.CLOCK);
        BeginView view = new BeginView(model, words, window.pictures(), workshop);
        model.load();
        type(model.form(), serial);
        return view;
    }
}
