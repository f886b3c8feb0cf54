package org.tenthwise.app.ui.plan;

import java.io.IOException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.drafting.ListFile;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.drafting.Drafted;
import org.tenthwise.checklists.drafting.Drafter;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.GeneralTolerance;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Words;

/** Asks what a plan cannot be begun without, and begins a draft of it with one operation and no step. */
public final class NewPlanViewModel {

    private static final List<NamedKey> ASKED = List.of(
            NamedKey.PART, NamedKey.REVISION, NamedKey.NAME, NamedKey.MATERIAL, NamedKey.DRAWING, NamedKey.UNIT);
    /** Classes of ISO 2768-1. */
    private static final List<String> GENERAL = List.of("ISO 2768-f", "ISO 2768-m", "ISO 2768-c");

    private static final String FIRST_ISSUE = "1";
    private static final int FIRST_OPERATION = 10;

    private final PlanDesk desk;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final Optional<String> list;
    private final TableForm form;

    /** @param list the list of characteristics it is drafted from; absent for a plan without a step */
    public NewPlanViewModel(
            Optional<String> list, PlanDesk desk, LedgerTasks tasks, Words words, Navigator navigator, Clock clock) {
        this.list = list;
        this.desk = desk;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        PlanText empty = PlanText.of("format = 1\n").orElseThrow();
        form = new TableForm(
                empty.head(),
                Stream.concat(
                                NamedKey.keys(ASKED).stream().map(key -> new TableForm.Asked(key, true, offered(key))),
                                Stream.of(new TableForm.Asked(
                                        NamedKey.TOLERANCE.key(), false, offered(NamedKey.TOLERANCE.key()))))
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
        Stream<String> ready = key.equals(NamedKey.UNIT.key())
                ? Unit.of(QuantityKind.LENGTH).stream().map(Unit::symbol)
                : key.equals(NamedKey.TOLERANCE.key()) ? GENERAL.stream() : Stream.empty();
        return ready.map(TomlValue::text).toList();
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
                () -> desk.names().contains(name) ? Optional.<Drafted>empty() : Optional.of(kept(name, begun)),
                made -> made.ifPresentOrElse(
                        drafted -> {
                            navigator.back();
                            if (list.isPresent()) {
                                navigator.drafted(name, drafted);
                            } else {
                                navigator.plan(name);
                            }
                        },
                        () -> navigator.tell(Notice.plain(
                                words.say("planning.there"),
                                words.say("planning.there.already", name),
                                words.say("shell.understood")))),
                () -> form.form().busy(false));
    }

    /** @throws org.tenthwise.model.words.Refused if the list is none, or the general tolerance cannot be read */
    private Drafted kept(String name, PlanText begun) throws IOException {
        Drafted drafted = list.isPresent()
                ? new Drafter(reader(begun), words)
                        .of(begun, ListFile.read(desk.folder().resolve(list.get())))
                : new Drafted(begun, List.of());
        desk.keep(name, drafted.plan());
        return drafted;
    }

    private static CalloutReader reader(PlanText plan) {
        Unit unit = plan.head()
                .says(NamedKey.UNIT.key())
                .flatMap(Unit::ofSymbol)
                .orElseThrow(() -> new Refused("planning.list.unit"));
        return new CalloutReader(
                unit, plan.head().says(NamedKey.TOLERANCE.key()).map(text -> GeneralTolerance.ofText(text, unit)));
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
