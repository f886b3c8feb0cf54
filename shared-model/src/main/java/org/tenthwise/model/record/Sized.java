package org.tenthwise.model.record;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.SizeModifier;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Judge;

/** What a plain size and a thread over wires have in common. */
record Sized(Feature feature, Limits limits, Length guardBand, List<Slot> slots, Combine combine, boolean cutAgain, Cutting cutting,
             Optional<SizeModifier> drawingSays) {

    static Sized of(Check.Size check) {
        return new Sized(check.feature(), check.limits(), check.guardBand().length(), check.slots(), check.combine(), check.cutAgain(),
                check.cutting(), check.drawingSays());
    }

    static Sized of(Check.OverWires check) {
        return new Sized(Feature.DIAMETER, check.pitchDiameter(), check.guardBand().length(), check.slots(), check.combine(), check.cutAgain(),
                check.cutting(), check.drawingSays());
    }

    Judge judge() {
        return new Judge(limits, guardBand, cutAgain && combine != Combine.RANGE ? Optional.of(feature.stillCutBeyond()) : Optional.empty());
    }

    /** Whether the drawing makes one size of all readings, and binds that alone by the limits. */
    boolean isOne() {
        return drawingSays.filter(modifier -> modifier != SizeModifier.LP).isPresent();
    }
}
