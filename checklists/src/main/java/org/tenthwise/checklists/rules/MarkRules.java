package org.tenthwise.checklists.rules;

import java.util.Optional;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** Points of the half section: {@code [axial position, diameter]}. */
final class MarkRules {

    private final TableKeys keys;
    private final Unit unit;

    MarkRules(TableKeys keys, Unit unit) {
        this.keys = keys;
        this.unit = unit;
    }

    /** The mark of a step, which lies on or within the outline. */
    Optional<Mark> onOutline(String key, PlanSoFar soFar) {
        Optional<Mark> mark = keys.any(key).flatMap(this::point);
        if (!soFar.outlineGiven()) {
            keys.problem(key, "plan.mark.no-outline", key);
        }
        if (mark.isPresent()
                && soFar.outline().isPresent()
                && !lies(mark.get(), soFar.outline().get())) {
            keys.problem(
                    key,
                    "plan.mark.outside",
                    key,
                    words(soFar.outline().get().length()),
                    words(soFar.outline().get().greatestDiameter()));
        }
        return mark;
    }

    Optional<Mark> point(RawValue value) {
        if (value instanceof RawList list
                && list.items().size() == 2
                && list.items().get(0) instanceof RawValue.Number at
                && list.items().get(1) instanceof RawValue.Number diameter) {
            if (diameter.figure().signum() >= 0) {
                return Optional.of(new Mark(Length.of(at.figure(), unit), Length.of(diameter.figure(), unit)));
            }
            keys.problem(value.spot(), "plan.mark.diameter", diameter.figure());
        } else {
            keys.problem(value.spot(), "plan.mark.written");
        }
        return Optional.empty();
    }

    private static boolean lies(Mark mark, Outline outline) {
        return mark.at().signum() >= 0
                && !mark.at().isAbove(outline.length())
                && !mark.diameter().isAbove(outline.greatestDiameter());
    }

    private String words(Length length) {
        return length.in(unit).toPlainString() + " " + unit.symbol();
    }
}
