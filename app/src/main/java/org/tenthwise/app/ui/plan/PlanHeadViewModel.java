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
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/** The head of a plan: part and drawing, unit, general tolerance and what else is said of the whole. */
public final class PlanHeadViewModel {

    private static final List<NamedKey> NEEDED = List.of(
            NamedKey.PART, NamedKey.REVISION, NamedKey.NAME, NamedKey.MATERIAL, NamedKey.DRAWING, NamedKey.UNIT);
    private static final List<NamedKey> BESIDES = List.of(
            NamedKey.DRAWING_NUMBER,
            NamedKey.DRAWING_REVISION,
            NamedKey.DRAWING_FILE,
            NamedKey.TOLERANCE,
            NamedKey.ROUTE,
            NamedKey.LOT,
            NamedKey.REMARK);

    private final TableForm form;

    /** @param files beside the plan that may be pages of the drawing */
    public PlanHeadViewModel(PlanInHand plan, List<String> files, Words words, Navigator navigator, Clock clock) {
        TableText head = plan.text().head();
        form = new TableForm(head, asked(head, files), words, clock, words.say("planning.keep"), change -> {
            plan.change(text -> text.withHead(change));
            navigator.back();
        });
    }

    /** Its issue is told when it is issued, the file of the drawing by its balloons, the format is the program's. */
    private static List<TableForm.Asked> asked(TableText head, List<String> files) {
        List<String> needed = NamedKey.keys(NEEDED);
        Set<String> keys = new LinkedHashSet<>(needed);
        keys.addAll(NamedKey.keys(BESIDES));
        keys.addAll(head.keys());
        keys.removeAll(List.of("format", NamedKey.ISSUE.key(), NamedKey.DRAWING_FILE_SHA256.key()));
        return keys.stream()
                .map(key -> new TableForm.Asked(
                        key, needed.contains(key) && head.value(key).isEmpty(), offered(head, files, key)))
                .toList();
    }

    private static List<String> offered(TableText head, List<String> files, String key) {
        Stream<String> known = key.equals(NamedKey.UNIT.key())
                ? Unit.of(QuantityKind.LENGTH).stream().map(Unit::symbol).map(TomlValue::text)
                : key.equals(NamedKey.LOT.key())
                        ? Stream.of(TomlValue.truth(true), TomlValue.truth(false))
                        : key.equals(NamedKey.DRAWING_FILE.key())
                                ? files.stream().map(TomlValue::text)
                                : Stream.empty();
        return Stream.concat(head.value(key).stream(), known).distinct().toList();
    }

    public FormViewModel form() {
        return form.form();
    }
}
