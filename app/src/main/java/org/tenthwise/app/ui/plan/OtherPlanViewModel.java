package org.tenthwise.app.ui.plan;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.model.words.Words;

/** Asks for a second plan to compare with. */
public final class OtherPlanViewModel {

    private final PlanDesk desk;
    private final LedgerTasks tasks;
    private final Field<String> other;
    private final FormViewModel form;

    /** @param chosen is handed its name, and the screen that asked is shown again */
    public OtherPlanViewModel(
            PlanDesk desk, LedgerTasks tasks, Words words, Navigator navigator, Consumer<String> chosen) {
        this.desk = desk;
        this.tasks = tasks;
        other = Field.choice(
                "other-plan", words.say("planning.other"), words.say("planning.other.question"), Function.identity());
        form = new FormViewModel(List.of(other), words, words.say("planning.other.act"), () -> {
            navigator.back();
            chosen.accept(other.valueProperty().get().orElseThrow());
        });
    }

    public FormViewModel form() {
        return form;
    }

    public void load() {
        tasks.run(desk::names, other::offer);
    }
}
