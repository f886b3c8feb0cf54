package org.tenthwise.checklists.rules;

import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.model.plan.Check;

/** <em>confirm</em> and <em>look</em>: a sentence to answer yes or no to. */
final class AskedKind implements StepKind {

    private final Function<String, Check> check;

    AskedKind(Function<String, Check> check) {
        this.check = check;
    }

    @Override
    public boolean needsMethod() {
        return false;
    }

    @Override
    public Optional<Check> read(TableKeys keys, PlanSoFar soFar) {
        return keys.prose("what").map(check);
    }
}
