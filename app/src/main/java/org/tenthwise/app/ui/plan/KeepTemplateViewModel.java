package org.tenthwise.app.ui.plan;

import java.util.List;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.checklists.catalogue.TemplateShelf;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.Template;
import org.tenthwise.model.words.Words;

/** Asks under which name checks are kept as a template of the shop. */
public final class KeepTemplateViewModel {

    private static final int MOST_NAME = 60;

    private final List<TableText> steps;
    private final TemplateShelf shelf;
    private final LedgerTasks tasks;
    private final Runnable kept;
    private final Field<String> name;
    private final FormViewModel form;

    /** @param kept what is done once they are kept */
    public KeepTemplateViewModel(
            List<TableText> steps, TemplateShelf shelf, LedgerTasks tasks, Words words, Runnable kept) {
        this.steps = List.copyOf(steps);
        this.shelf = shelf;
        this.tasks = tasks;
        this.kept = kept;
        name = Field.words(
                "template-name",
                words.say("planning.template.name"),
                words.say("planning.template.name.question"),
                true,
                MOST_NAME);
        form = new FormViewModel(List.of(name), words, words.say("planning.keep"), this::keep);
    }

    public FormViewModel form() {
        return form;
    }

    private void keep() {
        Template template = Template.kept(name.reads().strip(), steps);
        form.busy(true);
        tasks.run(
                () -> {
                    shelf.keep(template);
                    return true;
                },
                done -> kept.run(),
                () -> form.busy(false));
    }
}
