package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Word;

/**
 * What an indicator shows over a sweep, full movement against a limit: its highest and its lowest at every place, or,
 * of a symmetry, what it reads one way up and turned over.
 *
 * <p>Source: ISO 1101, run-out and total run-out, and what an indicator proves of a form; from memory.
 *
 * @param datum as the drawing letters it; absent for a flatness, which has none
 * @param datumBy what stands for the datum while it is read; absent for a flatness
 * @param limits an upper one alone: the width of the zone
 */
public record IndicatedCheck(
        Of of,
        Optional<String> datum,
        Optional<DatumBy> datumBy,
        Limits limits,
        List<Place> places,
        Written guardBand,
        Means with)
        implements CheckOfDimension {

    /** The word plans and files for programs have for it. */
    public static final String KEY = "indicated";

    /** Highest and lowest of a sweep, or one way up and turned over. */
    private static final int READINGS_EACH = 2;

    /** What the movement is of. */
    public enum Of {
        /** Each section of a surface, round the datum. */
        CIRCULAR_RUN_OUT(Combine.GREATEST_RANGE),
        /** Each circle of a face, along the datum. */
        AXIAL_RUN_OUT(Combine.GREATEST_RANGE),
        /** All sections together, the indicator traversed and not set anew. */
        TOTAL_RUN_OUT(Combine.RANGE),
        /** A face, round and across. */
        SQUARENESS(Combine.RANGE),
        PARALLELISM(Combine.RANGE),
        FLATNESS(Combine.RANGE),
        /** A keyway, one way up and turned over: the difference is twice what its middle is off. */
        SYMMETRY(Combine.GREATEST_RANGE);

        private final Combine combine;

        Of(Combine combine) {
            this.combine = combine;
        }

        /** How plan files name it. */
        public String key() {
            return Word.of(this);
        }

        /** Whether of the two readings at a place the first is the highest; turned over, either may be. */
        public boolean isHighestFirst() {
            return this != SYMMETRY;
        }

        /** Whether it is read while the part turns about its datum. */
        public boolean turns() {
            return this == CIRCULAR_RUN_OUT || this == AXIAL_RUN_OUT || this == TOTAL_RUN_OUT;
        }
    }

    /** What stands for the datum. */
    public enum DatumBy {
        CENTRES,
        MANDREL,
        V_BLOCKS,
        SURFACE_PLATE,
        /** The datum was turned in this chucking and not let go since: it runs true as the spindle does. */
        SAME_CHUCKING,
        /** Jaws: they hold what they grip, and that is not the datum. */
        CHUCK;

        /** How plan files name it. */
        public String key() {
            return Word.of(this);
        }
    }

    public IndicatedCheck {
        places = List.copyOf(places);
    }

    /** Whether what is read is read of the datum: what jaws hold turns about their axis, wherever the datum lies. */
    public boolean isOfItsDatum() {
        return datumBy.filter(DatumBy.CHUCK::equals).isEmpty();
    }

    /** The other reading at the place of {@code slot}. */
    public Slot opposite(Slot slot) {
        return slots().stream()
                .filter(other -> other.place().equals(slot.place()) && other.repeat() != slot.repeat())
                .findFirst()
                .orElseThrow();
    }

    @Override
    public int readingsEach() {
        return READINGS_EACH;
    }

    @Override
    public Combine combine() {
        return of.combine;
    }

    @Override
    public Optional<SizeModifier> drawingSays() {
        return Optional.empty();
    }

    @Override
    public boolean readsBelowZero(Slot slot) {
        return true;
    }

    @Override
    public Optional<IndicatedCheck> asIndicated() {
        return Optional.of(this);
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.indicated(this);
    }
}
