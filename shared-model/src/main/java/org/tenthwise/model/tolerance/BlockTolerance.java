package org.tenthwise.model.tolerance;

import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Refused;

/**
 * General tolerances of a title block: by how many places a size is drawn with, so that {@code .50} and {@code .500}
 * have different ones. Common practice of drawings in inches; nothing is assumed that the block does not say.
 *
 * @param text as the drawing has it
 * @param byPlaces how far off either way, by the places of the size
 * @param fractions how far off a size drawn as a fraction may be
 * @param angles how far off an angle may be
 */
public record BlockTolerance(
        String text, Map<Integer, Written> byPlaces, Optional<Written> fractions, Optional<Written> angles)
        implements GeneralTolerance {

    public BlockTolerance {
        byPlaces = Map.copyOf(byPlaces);
    }

    /** @throws Refused if {@code text} is no such block */
    static BlockTolerance read(String text, Unit unit) {
        return new BlockReader(text, unit).read();
    }

    @Override
    public Optional<Written> onSize(Written nominal) {
        return Optional.ofNullable(byPlaces.get(nominal.places()))
                .filter(tolerance -> tolerance.unit() == nominal.unit());
    }

    @Override
    public Optional<Written> onFraction(Written nominal) {
        return fractions.filter(tolerance -> tolerance.unit() == nominal.unit());
    }

    @Override
    public Optional<Written> onRadius(Written nominal) {
        return onSize(nominal);
    }

    @Override
    public Optional<Written> onAngle(Optional<Length> shorterLeg) {
        return angles;
    }
}
