package org.tenthwise.app.ui.plan;

import java.util.List;
import java.util.stream.IntStream;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.catalogue.TemplateShelf;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.Template;
import org.tenthwise.model.words.Words;

/** Asks how many checks are kept as a template of the shop, and under which name. */
public final class KeepTemplateViewModel {

    private static final int MOST_STEPS = 12;
    private static final int MOST_NAME = 60;

    private final List<TableText> steps;
    private final TemplateShelf shelf;
    private final LedgerTasks tasks;
    private final Navigator navigator;
    private final Field<Integer> through;
    private final Field<String> name;
    private final FormViewModel form;

    /** @param steps the first of them is kept in any case */
    public KeepTemplateViewModel(
            List<TableText> steps, TemplateShelf shelf, LedgerTasks tasks, Words words, Navigator navigator) {
        this.steps = List.copyOf(steps);
        this.shelf = shelf;
        this.tasks = tasks;
        this.navigator = navigator;
        through = Field.choice(
                "through",
                words.say("planning.template.through"),
                words.say("planning.template.through.question"),
                count -> named(count, words));
        through.offer(IntStream.rangeClosed(1, Math.min(steps.size(), MOST_STEPS))
                .boxed()
                .toList());
        through.choice().choose(1);
        name = Field.words(
                "template-name",
                words.say("planning.template.name"),
                words.say("planning.template.name.question"),
                true,
                MOST_NAME);
        form = new FormViewModel(List.of(through, name), words, words.say("planning.keep"), this::keep);
    }

    private String named(int count, Words words) {
        TableText last = steps.get(count - 1);
        return words.say(
                "planning.step",
                last.value("number").orElse(""),
                last.says("name").orElseGet(() -> words.say("planning.unnamed")));
    }

    public FormViewModel form() {
        return form;
    }

    private void keep() {
        int count = through.valueProperty().get().orElseThrow();
        Template template = Template.kept(name.reads().strip(), steps.subList(0, count));
        form.busy(true);
        tasks.run(
                () -> {
                    shelf.keep(template);
                    return true;
                },
                kept -> navigator.back(),
                () -> form.busy(false));
    }
}
