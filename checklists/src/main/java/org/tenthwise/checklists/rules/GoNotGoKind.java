package org.tenthwise.checklists.rules;

import java.util.Optional;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Check;

/** <em>go-not-go</em>: a limit gauge with two ends. */
final class GoNotGoKind implements StepKind {

    @Override
    public Optional<Check> read(TableKeys keys, PlanSoFar soFar) {
        Optional<String> go = keys.prose("go");
        Optional<String> notGo = keys.prose("not_go");
        Optional<String> gauge = keys.ifAny("gauge", keys::text);
        return keys.built(() -> new AskedCheck.GoNotGo(go.orElseThrow(), notGo.orElseThrow(), gauge));
    }
}
