package org.tenthwise.app.ui.plan;

import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.checklists.editing.ValueText;
import org.tenthwise.model.words.Words;

/** A form over the keys of a table of a plan: what is missing is asked for, everything else can be changed. */
final class TableForm {

    private static final int MOST = 300;

    /**
     * A key that is asked for.
     *
     * @param missing whether the plan is none without it
     * @param offered values as they are written, the likeliest first
     */
    record Asked(String key, boolean missing, List<String> offered) {}

    /**
     * Values for several of the keys at once, to be taken by one tap.
     *
     * @param reads what a person reads of it
     * @param values as they are written, by their keys; each is offered for its key as well
     */
    record Ready(String reads, Map<String, String> values) {}

    private final TableText now;
    private final List<Asked> asked;
    private final List<Field<String>> fields = new ArrayList<>();
    private final FormViewModel form;

    /** @param act is handed the change that was told */
    TableForm(
            TableText now,
            List<Asked> asked,
            Words words,
            Clock clock,
            String deed,
            Consumer<UnaryOperator<TableText>> act) {
        this(now, asked, List.of(), words, clock, deed, act);
    }

    /** @param ready asked for before anything else, where there are any; who wants none of them goes on */
    TableForm(
            TableText now,
            List<Asked> asked,
            List<Ready> ready,
            Words words,
            Clock clock,
            String deed,
            Consumer<UnaryOperator<TableText>> act) {
        this.now = now;
        this.asked = List.copyOf(asked);
        asked.forEach(key -> fields.add(field(key, words)));
        List<Field<?>> first = ready.isEmpty() ? List.of() : List.of(asAnother(ready, words));
        form = new FormViewModel(
                Stream.concat(first.stream(), fields.stream()).toList(), words, deed, () -> act.accept(this::changed));
        if (first.isEmpty()) {
            firstMissing().ifPresent(form::goTo);
        }
        lastMissing()
                .ifPresent(last -> form.leadsOn(
                        Stream.concat(first.stream(), Stream.of(last)).toList(), clock));
    }

    private Field<Ready> asAnother(List<Ready> ready, Words words) {
        Field<Ready> as =
                Field.choiceIfAny("plan-as", words.say("planning.as"), words.say("planning.as.question"), Ready::reads);
        as.offer(ready);
        as.choice().chosenProperty().subscribe(chosen -> chosen.ifPresent(this::take));
        return as;
    }

    private void take(Ready chosen) {
        for (int i = 0; i < asked.size(); i++) {
            Field<String> field = fields.get(i);
            Optional.ofNullable(chosen.values().get(asked.get(i).key())).ifPresent(value -> {
                field.choose();
                field.choice().choose(ValueText.reads(value));
            });
        }
    }

    FormViewModel form() {
        return form;
    }

    private Field<String> field(Asked key, Words words) {
        String name = NamedKey.say(key.key(), words);
        Field<String> field = Field.words("plan-" + key.key(), name, name, key.missing(), MOST);
        if (!key.missing()) {
            field.onlyIfWanted();
        }
        field.offer(List.copyOf(byReading(key).keySet()));
        now.value(key.key()).map(ValueText::reads).ifPresent(reads -> {
            field.choice().choose(reads);
            field.typing().ifPresent(line -> line.startAnew(reads));
        });
        return field;
    }

    /** Values as they are written, by what a person reads of them. */
    private static Map<String, String> byReading(Asked key) {
        Map<String, String> written = new LinkedHashMap<>();
        key.offered().forEach(value -> written.putIfAbsent(ValueText.reads(value), value));
        return written;
    }

    private Optional<Field<String>> firstMissing() {
        return missing().stream().findFirst();
    }

    private Optional<Field<String>> lastMissing() {
        return missing().stream().reduce((before, after) -> after);
    }

    private List<Field<String>> missing() {
        return fields.stream().filter(Field::required).toList();
    }

    private TableText changed(TableText table) {
        TableText changed = table;
        for (int i = 0; i < asked.size(); i++) {
            changed =
                    changed(changed, asked.get(i), fields.get(i).valueProperty().get());
        }
        return changed;
    }

    private TableText changed(TableText table, Asked key, Optional<String> told) {
        Optional<String> before = now.value(key.key()).map(ValueText::reads);
        if (told.equals(before)) {
            return table;
        }
        Function<String, String> written =
                text -> Optional.ofNullable(byReading(key).get(text)).orElseGet(() -> written(key.key(), text));
        return told.map(text -> table.withAfter(NamedKey.before(key.key()), key.key(), written.apply(text)))
                .orElseGet(() -> table.without(key.key()));
    }

    /** What was text stays text, though it may look like a number now. */
    private String written(String key, String text) {
        return now.says(key).isPresent() ? TomlValue.text(text) : ValueText.written(key, text);
    }
}
