package org.tenthwise.app.ui.plan;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.model.words.Words;

/** Asks for the plan to compare with, and for the one to compare, if it is not the one in hand: any two. */
public final class OtherPlanViewModel {

    /**
     * @param name the desk opens it by; absent for the plan in hand
     * @param reads what a person reads
     */
    private record Choice(Optional<String> name, String reads) {}

    private final PlanDesk desk;
    private final LedgerTasks tasks;
    private final Words words;
    private final Choice inHand;
    private final Field<Choice> before;
    private final Field<Choice> after;
    private final FormViewModel form;

    /** @param chosen is handed both names, the second absent for the plan in hand; its screen is shown again */
    public OtherPlanViewModel(
            PlanDesk desk,
            LedgerTasks tasks,
            Words words,
            Navigator navigator,
            BiConsumer<String, Optional<String>> chosen) {
        this.desk = desk;
        this.tasks = tasks;
        this.words = words;
        inHand = new Choice(Optional.empty(), words.say("planning.after.this"));
        before = Field.choice(
                "other-plan", words.say("planning.other"), words.say("planning.other.question"), Choice::reads);
        after = Field.choice(
                "after-plan", words.say("planning.after"), words.say("planning.after.question"), Choice::reads);
        after.offer(List.of(inHand));
        after.choice().choose(inHand);
        form = new FormViewModel(List.of(before, after), words, words.say("planning.other.act"), () -> {
            navigator.back();
            chosen.accept(
                    before.valueProperty().get().flatMap(Choice::name).orElseThrow(),
                    after.valueProperty().get().flatMap(Choice::name));
        });
    }

    public FormViewModel form() {
        return form;
    }

    public void load() {
        tasks.run(this::choices, all -> {
            before.offer(all);
            after.offer(Stream.concat(Stream.of(inHand), all.stream()).toList());
        });
    }

    /** The plans of the folder, then the issues that were in force before. */
    private List<Choice> choices() throws IOException {
        return Stream.concat(
                        desk.names().stream().map(name -> new Choice(Optional.of(name), name)),
                        desk.issuesBefore().stream()
                                .map(name -> new Choice(
                                        Optional.of(name),
                                        words.say("planning.other.before", name.substring(name.lastIndexOf('/') + 1)))))
                .toList();
    }
}
