package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawValue;

/** Which steps a hold point waits for: itself and those before it. */
final class HoldRules {

    private static final String HOLD = "hold";

    private final Set<Integer> numbers;

    /** @param numbers of all steps of the plan */
    HoldRules(Set<Integer> numbers) {
        this.numbers = Set.copyOf(numbers);
    }

    List<Integer> read(TableKeys keys, Optional<Integer> own) {
        List<Integer> held = new ArrayList<>();
        for (RawValue item : keys.list(HOLD).map(RawList::items).orElse(List.of())) {
            if (!(item instanceof RawValue.Number number && number.figure().scale() == 0)) {
                keys.problem(item.spot(), "plan.hold.by-number", item.what());
                continue;
            }
            int named = number.figure().intValue();
            if (!numbers.contains(named)) {
                keys.problem(item.spot(), "plan.hold.not-there", named);
            } else if (own.isPresent() && named > own.get()) {
                keys.problem(item.spot(), "plan.hold.later", named);
            } else if (held.contains(named)) {
                keys.problem(item.spot(), "plan.hold.twice", named);
            }
            held.add(named);
        }
        return held;
    }
}
