package org.tenthwise.checklists.rules;

import java.util.Optional;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.ProofOf;
import org.tenthwise.model.plan.Specified;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.Limits;

/** <em>document</em>: a paper that proves something, asked for in its turn. */
final class DocumentKind implements StepKind {

    @Override
    public boolean needsMethod() {
        return false;
    }

    @Override
    public Optional<Check> read(TableKeys keys, PlanSoFar soFar) {
        Optional<String> what = keys.prose("what");
        Optional<String> where = keys.ifAny("where", keys::text);
        Optional<Limits> limits = limits(keys, soFar);
        return what.map(
                asked -> new DocumentCheck(ProofOf.DOCUMENT, asked, where.orElse(""), limits, Specified.NOTHING));
    }

    /** What its figures are judged against, where the drawing has limits; with the mark of degrees they are angles. */
    static Optional<Limits> limits(TableKeys keys, PlanSoFar soFar) {
        LimitRules rules = LimitRules.OF_A_SIZE;
        boolean angle = keys.isAngle(rules.lowerKey()) || keys.isAngle(rules.upperKey());
        boolean any = keys.has(rules.lowerKey()) || keys.has(rules.upperKey());
        return any ? rules.read(keys, angle ? Unit.MINUTE_OF_ARC : soFar.unit()) : Optional.empty();
    }
}
