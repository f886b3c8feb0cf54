package org.tenthwise.checklists.rules;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.plan.IssueOfPlan;
import org.tenthwise.model.plan.Signs;

/** <em>[[issued]]</em>: the issues of a plan, the one in force last. */
final class IssueRules {

    private static final String KEY = "issued";
    private static final String ISSUE = "issue";
    private static final String BY = "by";
    private static final String APPROVED_BY = "approved_by";
    private static final String ON = "on";
    private static final String AFFECTED = "affected";

    private IssueRules() {}

    /** @param inForce the issue at the head of the plan; absent where a problem was noted */
    static List<IssueOfPlan> read(TableKeys plan, Optional<String> inForce) {
        List<IssueOfPlan> issues = new ArrayList<>();
        Optional<String> last = inForce;
        for (RawTable table :
                plan.ifAny(KEY, key -> Optional.of(plan.tables(key))).orElse(List.of())) {
            TableKeys keys = plan.inside(KEY, table);
            Optional<String> number = keys.text(ISSUE);
            last = number;
            Optional<String> reason = keys.prose("reason");
            Optional<String> by = keys.text(BY);
            Optional<String> approvedBy = keys.ifAny(APPROVED_BY, keys::text);
            approvedBy
                    .filter(second ->
                            by.filter(first -> first.equalsIgnoreCase(second)).isPresent())
                    .ifPresent(second -> keys.problem(APPROVED_BY, "plan.issued.alone", second));
            Optional<LocalDate> on = keys.ifAny(ON, key -> day(keys, key));
            Optional<List<String>> affected =
                    keys.ifAny(AFFECTED, key -> keys.any(key).map(it -> affected(keys, it)));
            keys.finish();
            keys.built(() -> new IssueOfPlan(
                            number.orElseThrow(), reason.orElseThrow(), by.orElseThrow(), approvedBy, on, affected))
                    .ifPresent(issues::add);
        }
        if (last.isPresent() && inForce.isPresent() && !last.equals(inForce)) {
            plan.problem(ISSUE, "plan.issued.last", inForce.get(), last.get());
        }
        return issues;
    }

    /** An empty list says that a person found none affected. */
    private static List<String> affected(TableKeys keys, RawValue value) {
        if (!(value instanceof RawList list)) {
            keys.problem(AFFECTED, "plan.issued.affected", value.what());
            return List.of();
        }
        List<String> affected = new ArrayList<>();
        for (RawValue item : list.items()) {
            if (item instanceof RawValue.Text text && !text.text().isBlank()) {
                String called = text.text().strip();
                Signs.hiddenIn(called).ifPresent(sign -> keys.problem(item.spot(), "plan.key.hidden", AFFECTED, sign));
                affected.add(called);
            } else {
                keys.problem(item.spot(), "plan.issued.affected", item.what());
            }
        }
        return affected;
    }

    private static Optional<LocalDate> day(TableKeys keys, String key) {
        return keys.text(key).flatMap(written -> {
            try {
                return Optional.of(LocalDate.parse(written));
            } catch (DateTimeException e) {
                keys.problem(key, "plan.issued.day", written);
                return Optional.empty();
            }
        });
    }
}
