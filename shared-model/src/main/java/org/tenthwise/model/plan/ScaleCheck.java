package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.roughness.AcceptanceRule;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/**
 * What is neither a length nor an angle: roughness, hardness, torque, weight, leak. It is read in the unit of its
 * limits alone, nothing is turned into it, no cut is offered for it, and heat does not change it.
 *
 * @param limits in the unit of a scale, as {@code guardBand}
 * @param readingsEach as many as the rule may take, where there is one
 * @param rule how roughness values are set against their upper limit; absent for anything else
 */
public record ScaleCheck(
        Limits limits,
        List<Place> places,
        int readingsEach,
        Combine combine,
        Written guardBand,
        Means with,
        Optional<AcceptanceRule> rule)
        implements CheckOfDimension {

    /** The word plans and files for programs have for it. */
    public static final String KEY = "scale";

    public ScaleCheck {
        places = List.copyOf(places);
    }

    @Override
    public String key() {
        return KEY;
    }

    /** A modifier of the drawing is of sizes. */
    @Override
    public Optional<SizeModifier> drawingSays() {
        return Optional.empty();
    }

    @Override
    public boolean readsBelowZero(Slot slot) {
        return rule.isEmpty();
    }

    @Override
    public Optional<String> judgedBy() {
        return Optional.of(rule.map(AcceptanceRule::key).orElse(combine.key()));
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.scale(this);
    }
}
