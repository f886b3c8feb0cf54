package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.plan.Section;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Message;

/** {@code sections}: where along the part run-out is read, one place or two, the one nearest to the jaws first. */
final class SectionRules {

    private static final String SECTIONS = "sections";
    private static final int MOST = 2;

    private SectionRules() {}

    /** Empty where the plan says nothing, or where a problem was noted. */
    static List<Section> read(TableKeys keys, Unit unit) {
        List<Section> sections = new ArrayList<>();
        List<RawTable> tables =
                keys.ifAny(SECTIONS, key -> Optional.of(keys.tables(key))).orElse(List.of());
        for (RawTable table : tables) {
            TableKeys section = keys.inside(Message.of("plan.in.section"), table);
            section(section, unit).ifPresent(read -> {
                sections.stream().reduce((earlier, later) -> later).ifPresent(before -> beyond(section, before, read));
                sections.add(read);
            });
        }
        if (tables.size() > MOST) {
            keys.problem(tables.get(MOST).spot(), "plan.sections.too-many", tables.size());
        }
        return sections;
    }

    private static Optional<Section> section(TableKeys keys, Unit unit) {
        Optional<String> name = keys.text("name");
        Optional<Written> at = keys.figure("at", unit);
        at.filter(from -> from.figure().signum() < 0)
                .ifPresent(from -> keys.problem("at", "plan.sections.distance", from));
        keys.finish();
        return keys.built(() -> new Section(name.orElseThrow(), at.orElseThrow()));
    }

    private static void beyond(TableKeys keys, Section before, Section section) {
        if (!section.at().length().isAbove(before.at().length())) {
            keys.problem("at", "plan.sections.order", section.name(), section.at(), before.name(), before.at());
        }
        if (section.name().toLowerCase(Locale.ROOT).equals(before.name().toLowerCase(Locale.ROOT))) {
            keys.problem("name", "plan.sections.twice", section.name());
        }
    }
}
