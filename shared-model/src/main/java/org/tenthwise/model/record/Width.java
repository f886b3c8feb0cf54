package org.tenthwise.model.record;

import java.util.Optional;
import org.tenthwise.model.plan.AngleCheck;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.CalculatedCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.IndicatedCheck;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.ScaleCheck;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.WorkedCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limits;

/**
 * How wide the tolerance of a reading is; absent where one limit is, and for a range, whose limits say nothing of it.
 */
record Width(Plan plan) implements Check.Cases<Optional<Length>> {

    @Override
    public Optional<Length> asked(AskedCheck asked) {
        return Optional.empty();
    }

    @Override
    public Optional<Length> runOut(RunOutCheck runOut) {
        return Optional.of(runOut.limit().length());
    }

    @Override
    public Optional<Length> size(SizeCheck size) {
        return size.limitsOfASize().flatMap(Limits::width);
    }

    @Override
    public Optional<Length> angle(AngleCheck angle) {
        return angle.limitsOfASize().flatMap(Limits::width);
    }

    @Override
    public Optional<Length> indicated(IndicatedCheck indicated) {
        return Optional.empty();
    }

    /** A tolerance of what comes out is none of a reading. */
    @Override
    public Optional<Length> worked(WorkedCheck worked) {
        return Optional.empty();
    }

    @Override
    public Optional<Length> scale(ScaleCheck scale) {
        return scale.limitsOfASize().flatMap(Limits::width);
    }

    @Override
    public Optional<Length> position(PositionCheck position) {
        return Optional.of(position.zone().length());
    }

    @Override
    public Optional<Length> calculated(CalculatedCheck calculated) {
        return Optional.empty();
    }

    @Override
    public Optional<Length> plugFit(PlugFitCheck fit) {
        return plan.step(fit.boreStep()).check().match(this);
    }

    @Override
    public Optional<Length> overWires(OverWiresCheck wires) {
        return wires.limitsOfASize().flatMap(Limits::width);
    }

    @Override
    public Optional<Length> document(DocumentCheck document) {
        return Optional.empty();
    }
}
