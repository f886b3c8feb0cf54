package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.expression.Expression;
import org.tenthwise.model.tolerance.Limits;

/**
 * A size or an angle worked out of what earlier checks found: a wall, a centre distance, the core between two grooves.
 * It has no readings of its own.
 *
 * @param of in the unit of the plan, angles in degrees
 * @param uses every name of the expression, in its order
 * @param restsOn the steps used, then those that these rest on themselves
 */
public record CalculatedCheck(Expression of, List<Use> uses, List<Integer> restsOn, Limits limits) implements Check {

    /** The word plans and files for programs have for it. */
    public static final String KEY = "calculated";

    /**
     * What a name of the expression stands for.
     *
     * @param step an earlier one
     */
    public record Use(String name, int step, By by) {}

    /** By what of a check it is worked out. */
    public enum By {
        /** Any size between the least and the greatest it found. */
        EACH("each"),
        LEAST("least"),
        GREATEST("greatest"),
        MEAN("mean"),
        /** The whole movement of the indicator, of a run-out. */
        RUN_OUT("run-out"),
        /** Half of that, to either side. */
        ECCENTRICITY("eccentricity"),
        /** The full movement of the indicator over a sweep, as it is judged. */
        MOVEMENT("movement");

        private final String key;

        By(String key) {
            this.key = key;
        }

        /** As a plan writes it. */
        public String key() {
            return key;
        }

        /** By what a name can count that stands for such a check: what an indicator shows is no size. */
        public static List<By> of(Check check) {
            if (check.asTurn().isPresent()) {
                return List.of(RUN_OUT, ECCENTRICITY);
            }
            return check.asDimension().flatMap(CheckOfDimension::asIndicated).isPresent()
                    ? List.of(MOVEMENT)
                    : List.of(EACH, LEAST, GREATEST, MEAN);
        }
    }

    public CalculatedCheck {
        uses = List.copyOf(uses);
        restsOn = List.copyOf(restsOn);
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public List<Slot> slots() {
        return List.of();
    }

    /** By what it rests on. */
    @Override
    public boolean isMeasured() {
        return true;
    }

    @Override
    public boolean isTakenElsewhere() {
        return true;
    }

    @Override
    public Optional<Means> means() {
        return Optional.empty();
    }

    @Override
    public Optional<Limits> judgedAgainst() {
        return Optional.of(limits);
    }

    @Override
    public Optional<String> judgedBy() {
        return Optional.of("worst-case");
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.calculated(this);
    }
}
