package org.tenthwise.app.history;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.PlugFinding;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.record.WiresFinding;
import org.tenthwise.model.tolerance.Limits;

/** What stands behind a finding. */
final class Behind {

    private Behind() {}

    static Optional<Limits> limits(Step step) {
        Check check = step.check();
        if (check instanceof Check.RunOut runOut) {
            return Optional.of(Limits.atMost(runOut.limit()));
        }
        if (check instanceof Check.PlugFit plug) {
            return Optional.of(plug.clearance());
        }
        return check instanceof Check.OfSize size ? Optional.of(size.limits()) : Optional.empty();
    }

    static Optional<Length> value(Finding finding) {
        if (finding instanceof RunOutFinding runOut) {
            return runOut.movement();
        }
        if (finding instanceof SizeFinding size) {
            return size.value();
        }
        return finding instanceof WiresFinding wires ? wires.value() : Optional.empty();
    }

    static List<Measured> measured(Finding finding) {
        if (finding instanceof RunOutFinding runOut) {
            return runOut.measured();
        }
        if (finding instanceof SizeFinding size) {
            return size.measured();
        }
        if (finding instanceof PlugFinding plug) {
            return plug.plug();
        }
        return finding instanceof WiresFinding wires ? wires.measured() : List.of();
    }
}
