package org.tenthwise.model.plan;

import java.util.Optional;
import org.tenthwise.model.words.Word;

/**
 * How often a characteristic is there, as {@code 4X} on the drawing says, and which of them a step looks after.
 *
 * @param count of all of them; one or more
 * @param one the one a step looks after, from 1; absent for a step that looks after all
 * @param report how the results of a step that looks after all of them stand in the account of the drawing
 */
public record Instances(int count, Optional<Integer> one, Report report) {

    /** How the results of several alike are told. */
    public enum Report {
        /** Each on a line of its own. */
        EACH,
        /** The least and the greatest of them. */
        LEAST_AND_GREATEST;

        /** How plan files name it. */
        public String key() {
            return Word.of(this);
        }
    }

    /** There once. */
    public static final Instances ONE = new Instances(1, Optional.empty(), Report.EACH);

    public Instances {
        if (count < 1 || one.filter(number -> number < 1 || number > count).isPresent()) {
            throw new IllegalArgumentException("Of %s there is no instance %s".formatted(count, one));
        }
    }

    /** How many of them a step looks after. */
    public int lookedAfter() {
        return areSeveral() ? count : 1;
    }

    /** Whether a step looks after several alike. */
    public boolean areSeveral() {
        return count > 1 && one.isEmpty();
    }
}
