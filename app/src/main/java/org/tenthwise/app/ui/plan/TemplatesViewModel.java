package org.tenthwise.app.ui.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.catalogue.TemplateShelf;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.Template;
import org.tenthwise.model.words.Words;

/** The templates a check can be added by: an empty one, those that come along, those of the shop. */
public final class TemplatesViewModel {

    private final TemplateShelf shelf;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final Consumer<Template> chosen;
    private final ReadOnlyObjectWrapper<List<Template>> templates = new ReadOnlyObjectWrapper<>(List.of());

    /** @param chosen is handed the template, and the screen that asked is shown again */
    public TemplatesViewModel(
            TemplateShelf shelf, LedgerTasks tasks, Words words, Navigator navigator, Consumer<Template> chosen) {
        this.shelf = shelf;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        this.chosen = chosen;
    }

    public ReadOnlyObjectProperty<List<Template>> templatesProperty() {
        return templates.getReadOnlyProperty();
    }

    public void load() {
        tasks.run(
                () -> shelf.all(words.locale()),
                all -> templates.set(
                        Stream.concat(Stream.of(empty()), all.stream()).toList()));
    }

    private Template empty() {
        return new Template(words.say("planning.template.empty"), List.of(TableText.ofList("step")));
    }

    /** What is in it: names of its checks, or the kind of those without a name. */
    public String line(Template template) {
        List<String> names = template.steps().stream()
                .map(step -> step.says("name").or(() -> step.says("kind")))
                .flatMap(Optional::stream)
                .toList();
        return names.isEmpty()
                ? ""
                : words.say("planning.template.steps", template.steps().size(), words.list(names));
    }

    /** One of several checks is asked which of them are meant. */
    public void take(Template template) {
        if (template.steps().size() > 1) {
            navigator.templateSteps(template, ticked -> {
                navigator.back();
                take(ticked, navigator, chosen);
            });
        } else {
            take(template, navigator, chosen);
        }
    }

    private static void take(Template template, Navigator navigator, Consumer<Template> chosen) {
        navigator.back();
        chosen.accept(template);
    }
}
