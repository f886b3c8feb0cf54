package org.tenthwise.app.ui.plan;

import java.util.List;
import java.util.function.Function;
import org.tenthwise.app.drafting.ListFile;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.model.words.Words;

/** Asks which list of the folder of plans a plan is drafted from. */
public final class ListChoiceViewModel {

    private final PlanDesk desk;
    private final LedgerTasks tasks;
    private final Field<String> list;
    private final FormViewModel form;

    public ListChoiceViewModel(PlanDesk desk, LedgerTasks tasks, Words words, Navigator navigator) {
        this.desk = desk;
        this.tasks = tasks;
        list = Field.choice(
                "list", words.say("planning.list"), words.say("planning.list.question"), Function.identity());
        list.aboutProperty().set(words.say("planning.list.where", desk.folder()));
        form = new FormViewModel(List.of(list), words, words.say("planning.list.take"), () -> {
            navigator.back();
            navigator.newPlanOf(list.reads());
        });
    }

    public FormViewModel form() {
        return form;
    }

    public void load() {
        tasks.run(() -> ListFile.in(desk.folder()), list::offer);
    }
}
