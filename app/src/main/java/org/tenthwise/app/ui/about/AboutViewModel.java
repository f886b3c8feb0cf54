package org.tenthwise.app.ui.about;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.app.ui.shell.Notice.NoticeKey;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.checklists.rules.PlanProblem;
import org.tenthwise.model.words.Words;

/** What there is to say about the program, and which plan files it does not use. */
public final class AboutViewModel {

    /** A heading and what stands under it, a paragraph each. */
    public record AboutSection(String heading, List<String> paragraphs) {
        public AboutSection {
            paragraphs = List.copyOf(paragraphs);
        }
    }

    private final AboutFacts facts;
    private final Callable<Catalogue> plans;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final ReadOnlyObjectWrapper<List<AboutSection>> sections;

    /** @param plans looks up the plans there are, away from the screen */
    public AboutViewModel(
            AboutFacts facts, Callable<Catalogue> plans, LedgerTasks tasks, Words words, Navigator navigator) {
        this.facts = facts;
        this.plans = plans;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        this.sections = new ReadOnlyObjectWrapper<>(sections(List.of(), List.of(), List.of()));
    }

    /** What can hurt, first of all. */
    public AboutSection cautions() {
        return new AboutSection(words.say("about.cautions"), Suggestions.ready(words, "about.cautions.all"));
    }

    public ReadOnlyObjectProperty<List<AboutSection>> sectionsProperty() {
        return sections.getReadOnlyProperty();
    }

    /** Looks up the plan files, the key and the backups; the rest is there from the beginning. */
    public void load() {
        tasks.run(
                () -> sections(
                        plans.call().refused(),
                        facts.key().call(),
                        facts.backups().call()),
                sections::set);
    }

    /** Whether a key can be made under a section: the one that tells of the key there is. */
    boolean leadsToNewKey(AboutSection section) {
        return section.heading().equals(words.say("about.key"));
    }

    /** What another key leads to is said first, and asked. */
    void newKey() {
        navigator.tell(new Notice(
                words.say("about.new-key.title"),
                words.say("about.new-key.leads-to"),
                List.of(
                        new NoticeKey(words.say("about.new-key.make"), this::makeKey),
                        new NoticeKey(words.say("about.new-key.leave"), () -> {}))));
    }

    private void makeKey() {
        tasks.run(facts.newKey(), aside -> {
            load();
            navigator.tell(Notice.plain(
                    words.say("about.new-key.done"),
                    aside.map(path -> words.say("command.key.put-aside", path) + " ")
                                    .orElse("")
                            + words.say("command.key.made"),
                    words.say("shell.understood")));
        });
    }

    private List<AboutSection> sections(List<Catalogue.RefusedFile> refused, List<String> key, List<String> backups) {
        List<AboutSection> all = new ArrayList<>();
        all.add(new AboutSection(
                words.say("about.program"),
                List.of(
                        words.say("about.version", facts.version()),
                        words.say("about.licence"),
                        words.say("about.no-warranty"))));
        all.add(new AboutSection(
                words.say("about.data"),
                List.of(
                        words.say("about.data-at", facts.dataAt()),
                        words.say("about.plans-at", facts.plansAt()),
                        words.say("about.data-kept"))));
        if (!key.isEmpty()) {
            all.add(new AboutSection(words.say("about.key"), key));
        }
        if (!backups.isEmpty()) {
            all.add(new AboutSection(words.say("about.backups"), backups));
        }
        if (!refused.isEmpty()) {
            all.add(new AboutSection(
                    words.say("about.refused"), refused.stream().map(this::line).toList()));
        }
        all.add(new AboutSection(
                words.say("about.libraries"),
                Library.all().stream()
                        .map(library -> words.say("about.library", library.name(), library.serves(), library.licence()))
                        .toList()));
        return List.copyOf(all);
    }

    /** One line a file, whatever is wrong in it. */
    private String line(Catalogue.RefusedFile file) {
        PlanProblem first = file.problems().get(0);
        return words.say(
                "about.refused-file",
                file.file(),
                first.line(),
                first.what(),
                file.problems().size() - 1);
    }
}
