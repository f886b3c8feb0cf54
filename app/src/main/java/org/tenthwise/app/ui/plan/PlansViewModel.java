package org.tenthwise.app.ui.plan;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.model.words.Words;

/** The plans and drafts of the folder, each with how far it is. */
public final class PlansViewModel {

    /**
     * A plan or a draft.
     *
     * @param name of the file, without its end
     * @param title the part and its name, as far as they are told
     * @param line its issue, and what is still open
     */
    public record PlanRow(String name, String title, String line) {}

    private final PlanDesk desk;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final ReadOnlyObjectWrapper<List<PlanRow>> rows = new ReadOnlyObjectWrapper<>(List.of());

    public PlansViewModel(PlanDesk desk, LedgerTasks tasks, Words words, Navigator navigator) {
        this.desk = desk;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
    }

    public ReadOnlyObjectProperty<List<PlanRow>> rowsProperty() {
        return rows.getReadOnlyProperty();
    }

    public void load() {
        tasks.run(this::look, rows::set);
    }

    public void open(PlanRow row) {
        navigator.plan(row.name());
    }

    public void begin() {
        navigator.newPlan();
    }

    public void beginOfList() {
        navigator.chooseList();
    }

    private List<PlanRow> look() throws IOException {
        List<String> drafts = desk.drafts();
        List<PlanRow> found = new ArrayList<>();
        for (String name : desk.names()) {
            Optional<PlanText> text = desk.open(name);
            found.add(text.map(plan -> row(name, plan, drafts.contains(name)))
                    .orElseGet(() -> new PlanRow(name, name, words.say("planning.no-toml"))));
        }
        return found;
    }

    private PlanRow row(String name, PlanText text, boolean isDraft) {
        PlanInHand plan = new PlanInHand(text);
        TableText head = text.head();
        String title = words.say(
                "planning.row",
                head.says("part").orElse(name),
                head.says("revision").orElse(""),
                head.says("name").orElse(""));
        int open = plan.open().size();
        String line = words.say(
                isDraft ? "planning.draft" : "planning.issue",
                head.says("issue").orElse(""),
                plan.checks(),
                open);
        return new PlanRow(name, title.strip(), line);
    }
}
