package org.tenthwise.app.export.qif;

import java.util.Optional;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.WorkedCheck;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.tolerance.Origin;
import org.tenthwise.model.words.Message;

/** What a check says of itself that the standard has no element for. */
final class StepFacts {

    private StepFacts() {}

    /** @param nominal whether the drawing has a nominal size */
    static NamedAttributes of(Line line, boolean nominal) {
        Step step = line.step();
        Check check = step.check();
        Optional<Uncertainty> sure = check.means()
                .flatMap(Check.Means::uncertainty)
                .or(() -> check.asWorked().flatMap(WorkedCheck::ofAReading));
        NamedAttributes facts = new NamedAttributes()
                .and("step", String.valueOf(step.number()))
                .and("check", check.key())
                .and("operation", check.isInOrder() ? String.valueOf(step.operation()) : "")
                .and("judged-by", check.judgedBy())
                .and("nominal", step.limits().isPresent() && !nominal ? "none" : "")
                .and("limits-of", limits(line).map(Origin::designation))
                .and("limits-by", limits(line).map(Origin::standard).map(Message::toString))
                .and(
                        "guard-band",
                        check.asDimension()
                                .map(CheckOfDimension::guardBand)
                                .filter(band -> band.figure().signum() > 0)
                                .map(Written::toString))
                .and(
                        "modifier",
                        check.asDimension()
                                .flatMap(CheckOfDimension::drawingSays)
                                .map(Enum::name))
                .and("expanded-uncertainty", sure.map(of -> of.expanded().toString()))
                .and("coverage-factor", sure.map(of -> of.coverageFactor().toPlainString()))
                .and("uncertainty-of", sure.map(Uncertainty::name))
                .and("thread", check.underWires().map(ScrewThread::toString));
        return count(step, facts);
    }

    private static Optional<Origin> limits(Line line) {
        return line.step().limits().flatMap(limits -> limits.origin());
    }

    private static NamedAttributes count(Step step, NamedAttributes facts) {
        int count = step.drawing().instances().count();
        return facts.and("count", count > 1 ? String.valueOf(count) : "");
    }
}
