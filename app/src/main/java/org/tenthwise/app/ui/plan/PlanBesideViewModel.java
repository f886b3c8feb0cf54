package org.tenthwise.app.ui.plan;

import java.time.Clock;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.model.words.Words;

/** Asks for what is open about a table outside the order of work: what is proven elsewhere, a note, a material. */
public final class PlanBesideViewModel {

    private static final String NUMBER = "number";

    private final PlanInHand plan;
    private final PlanInHand.Beside open;
    private final Words words;
    private final TableText table;
    private final TableForm form;

    public PlanBesideViewModel(PlanInHand plan, PlanInHand.Beside open, Words words, Navigator navigator, Clock clock) {
        this.plan = plan;
        this.open = open;
        this.words = words;
        this.table = plan.text().list(open.list()).get(open.place());
        this.form = new TableForm(table, asked(), words, clock, words.say("planning.keep"), change -> {
            plan.change(text -> text.with(open.list(), open.place(), change));
            navigator.back();
        });
        String about = table.says("requirement").or(() -> table.says("name")).orElse("");
        form.form().fields().forEach(field -> field.aboutProperty().set(words.readable(about)));
    }

    private List<TableForm.Asked> asked() {
        Set<String> keys = new LinkedHashSet<>(open.missing());
        keys.addAll(table.keys());
        keys.remove(NUMBER);
        return keys.stream()
                .map(key -> new TableForm.Asked(
                        key, open.missing().contains(key) && table.value(key).isEmpty(), offered(key)))
                .toList();
    }

    /** What the others of its list say of it, and where things are usually proven; common practice. */
    private List<String> offered(String key) {
        Stream<String> said = plan.text().list(open.list()).stream()
                .flatMap(other -> other.value(key).stream())
                .filter(value -> key.equals(NamedKey.WHERE.key()));
        Stream<String> usual = key.equals(NamedKey.WHERE.key())
                ? Stream.of(
                                words.say("planning.where.coordinate-machine"),
                                words.say("planning.where.supplier"),
                                words.say("planning.where.laboratory"))
                        .map(TomlValue::text)
                : Stream.empty();
        return Stream.concat(table.value(key).stream(), Stream.concat(said, usual))
                .distinct()
                .toList();
    }

    public String title() {
        return words.say(
                "planning.step",
                table.value(NUMBER).orElse(""),
                table.says("name").orElseGet(() -> words.say("planning.unnamed")));
    }

    public FormViewModel form() {
        return form.form();
    }
}
