package org.tenthwise.checklists.editing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/** Where a step stands on the outline, as a plan has it: position and diameter. */
public final class MarkText {

    public static final String KEY = "at";

    private MarkText() {}

    /** Absent where the step stands nowhere, or at what is no point. */
    public static Optional<Mark> of(TableText step, Unit unit) {
        return step.value(KEY)
                .map(ValueText::reads)
                .map(text -> List.of(text.split(";")))
                .filter(figures -> figures.size() == 2
                        && figures.stream().map(String::strip).allMatch(Written::isPlainDecimal))
                .map(figures -> figures.stream()
                        .map(figure -> Length.of(figure.strip(), unit))
                        .toList())
                .filter(lengths -> lengths.get(1).signum() >= 0)
                .map(lengths -> new Mark(lengths.get(0), lengths.get(1)));
    }

    /** @param before keys it stands after where it is new */
    public static TableText put(TableText step, List<String> before, BigDecimal at, BigDecimal diameter) {
        return step.withAfter(before, KEY, TomlValue.list(List.of(TomlValue.number(at), TomlValue.number(diameter))));
    }
}
