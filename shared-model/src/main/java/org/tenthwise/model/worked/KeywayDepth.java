package org.tenthwise.model.worked;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.keyway.Keyseat;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Word;

/**
 * The depth of a keyway in a shaft, in one of the three ways a drawing gives it, from the far side of the shaft over a
 * block in the keyway, and of the shaft itself where the depth is from its crest or at its side wall.
 *
 * @param from what the drawing counts it from
 * @param width of the keyway
 * @param block under the anvil, by its certificate; absent where the floor itself is touched
 */
public record KeywayDepth(From from, Written width, Optional<Written> block) implements WorkedBy {

    /** Where a drawing counts the depth of a keyway from. */
    public enum From {
        /** From the far side of the shaft to the floor. */
        FAR_SIDE,
        /** From the crest of the shaft over the keyway. */
        CREST,
        /** From the edges of the keyway: how high its walls are. */
        SIDE_WALL;

        /** How a plan names it. */
        public String key() {
            return Word.of(this);
        }
    }

    @Override
    public WorkedWay way() {
        return WorkedWay.KEYWAY;
    }

    @Override
    public List<WorkedReading> readings() {
        return from == From.FAR_SIDE
                ? List.of(WorkedReading.FAR_SIDE)
                : List.of(WorkedReading.SHAFT, WorkedReading.FAR_SIDE);
    }

    @Override
    public List<Given> given() {
        Given wide = Given.of(KnownSize.WIDTH, width);
        return block.map(under -> List.of(wide, Given.of(KnownSize.BLOCK, under)))
                .orElse(List.of(wide));
    }

    @Override
    public Length of(List<Length> readings) {
        Length farSide = readings.get(readings.size() - 1).minus(under());
        Length depth =
                switch (from) {
                    case FAR_SIDE -> farSide;
                    case CREST -> readings.get(0).minus(farSide);
                    case SIDE_WALL ->
                        readings.get(0).minus(farSide).minus(new Keyseat(readings.get(0), width.length()).crest());
                };
        if (depth.signum() <= 0 || farSide.signum() <= 0) {
            throw new Refused("model.worked.no-keyway");
        }
        return depth;
    }

    @Override
    public Optional<Length> reading(Length size) {
        return from == From.FAR_SIDE ? Optional.of(size.plus(under())) : Optional.empty();
    }

    private Length under() {
        return block.map(Written::length).orElse(Length.ZERO);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.keyway(this);
    }
}
