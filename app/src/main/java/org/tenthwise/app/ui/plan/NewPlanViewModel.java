package org.tenthwise.app.ui.plan;

import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/** Asks what a plan cannot be begun without, and begins a draft of it with one operation and no step. */
public final class NewPlanViewModel {

    private static final List<NamedKey> ASKED = List.of(
            NamedKey.PART, NamedKey.REVISION, NamedKey.NAME, NamedKey.MATERIAL, NamedKey.DRAWING, NamedKey.UNIT);
    private static final String FIRST_ISSUE = "1";
    private static final int FIRST_OPERATION = 10;

    private final PlanDesk desk;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final TableForm form;

    public NewPlanViewModel(PlanDesk desk, LedgerTasks tasks, Words words, Navigator navigator, Clock clock) {
        this.desk = desk;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        PlanText empty = PlanText.of("format = 1\n").orElseThrow();
        form = new TableForm(
                empty.head(),
                NamedKey.keys(ASKED).stream()
                        .map(key -> new TableForm.Asked(key, true, offered(key)))
                        .toList(),
                words,
                clock,
                words.say("planning.begin"),
                change -> begin(empty.withHead(head -> change.apply(
                        head.withAfter(List.of("format"), NamedKey.ISSUE.key(), TomlValue.text(FIRST_ISSUE))))));
    }

    public FormViewModel form() {
        return form.form();
    }

    private static List<String> offered(String key) {
        return key.equals(NamedKey.UNIT.key())
                ? Unit.of(QuantityKind.LENGTH).stream()
                        .map(Unit::symbol)
                        .map(TomlValue::text)
                        .toList()
                : List.of();
    }

    private void begin(PlanText head) {
        PlanText begun = head.withOneMore(
                "operation",
                TableText.ofList("operation")
                        .with("number", TomlValue.number(FIRST_OPERATION))
                        .with("name", TomlValue.text(words.say("planning.first-operation"))));
        String name = fileName(begun);
        form.form().busy(true);
        tasks.run(
                () -> {
                    boolean isNew = !desk.names().contains(name);
                    if (isNew) {
                        desk.keep(name, begun);
                    }
                    return isNew;
                },
                isNew -> {
                    if (isNew) {
                        navigator.back();
                        navigator.plan(name);
                    } else {
                        navigator.tell(Notice.plain(
                                words.say("planning.there"),
                                words.say("planning.there.already", name),
                                words.say("shell.understood")));
                    }
                },
                () -> form.form().busy(false));
    }

    /** Part and revision, with nothing in it that a file system minds. */
    private static String fileName(PlanText plan) {
        return Stream.of(NamedKey.PART, NamedKey.REVISION)
                .map(key -> plan.head().says(key.key()).orElse(""))
                .map(text -> text.replaceAll("[^\\p{L}\\p{N}._-]", "_"))
                .reduce((part, revision) -> part + "-" + revision)
                .orElseThrow();
    }
}
