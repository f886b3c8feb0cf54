package org.tenthwise.model.compute.position;

import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.FeatureOfSize;
import org.tenthwise.model.tolerance.MaterialModifier;
import org.tenthwise.model.words.Refused;

/**
 * What a size that is away from its material condition adds to a position tolerance.
 *
 * <p>MMC: a hole's size less its least, a shaft's greatest less its size. LMC: a hole's greatest less its size, a
 * shaft's size less its least. Less what the feature leans or bends, for the size that counts is that of the largest
 * perfect pin the hole takes, or the smallest perfect ring that takes the shaft.
 *
 * <p>A length on diameter, never less than zero and never more than the tolerance of the size.
 *
 * <p>At the material condition there is none. A size outside its limits fails by itself, whatever its bonus. What a
 * datum feature is away from its own material condition is not in it: that moves a pattern as a whole, and is no bonus
 * of a single hole.
 *
 * <p>Source: "Calculating additional tolerance permitted when a position tolerance is modified at MMC", dimcax.com,
 * August 1997: a hole of .502 with a least of .499 that leans by .002 has .001 left; ASME Y14.5-2018, from memory.
 *
 * @param least size allowed; may be absent where nothing counts from it
 * @param greatest size allowed; may be absent where nothing counts from it
 */
public record PositionBonus(
        FeatureOfSize feature, MaterialModifier modifier, Optional<Length> least, Optional<Length> greatest) {

    /**
     * @throws IllegalArgumentException without the size the bonus counts from, or with the limits the wrong way round
     */
    public PositionBonus {
        if (modifier != MaterialModifier.NONE
                && from(feature, modifier, least, greatest).isEmpty()) {
            throw new Refused("model.position-bonus.no-limit");
        }
        if (least.isPresent() && greatest.isPresent() && least.get().isAbove(greatest.get())) {
            throw new Refused("model.position-bonus.wrong-way-round");
        }
    }

    private static Optional<Length> from(
            FeatureOfSize feature, MaterialModifier modifier, Optional<Length> least, Optional<Length> greatest) {
        return modifier.countsFromLeast(feature) ? least : greatest;
    }

    /**
     * @param size of a hole the smallest read at any place of it, of a shaft the greatest; for LMC the other way round
     * @param orientationLoss what the feature leans or bends over its depth, on diameter; zero or more
     */
    public Length at(Length size, Length orientationLoss) {
        if (modifier == MaterialModifier.NONE) {
            return size.zero();
        }
        Length from = from(feature, modifier, least, greatest).orElseThrow();
        Length away = countsFromLeast() ? size.minus(from) : from.minus(size);
        Length within = tolerance().filter(away::isAbove).orElse(away);
        Length left = within.minus(orientationLoss);
        return left.signum() < 0 ? left.zero() : left;
    }

    /** Whether the size at which there is no bonus is the least one, so that the smallest size read counts. */
    public boolean countsFromLeast() {
        return modifier.countsFromLeast(feature);
    }

    /** Whether {@code size} is not outside the limits there are; one on a limit is inside. */
    public boolean holds(Length size) {
        return least.filter(size::isBelow).isEmpty()
                && greatest.filter(size::isAbove).isEmpty();
    }

    private Optional<Length> tolerance() {
        return least.flatMap(low -> greatest.map(high -> high.minus(low)));
    }
}
