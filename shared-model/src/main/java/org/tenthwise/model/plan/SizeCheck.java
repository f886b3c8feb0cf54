package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/**
 * A plain size: bore, pocket width, outside diameter, depth, or a size of any other feature.
 *
 * @param contact what a reading is of
 */
public record SizeCheck(
        Feature feature,
        Limits limits,
        List<Place> places,
        int readingsEach,
        Combine combine,
        boolean cutAgain,
        Written guardBand,
        Means with,
        Cutting cutting,
        Optional<SizeModifier> drawingSays,
        Contact contact)
        implements CheckOfSize {

    /** The word plans and files for programs have for a size of any feature; a plain one goes by its feature. */
    public static final String KEY = "size";

    /** Nothing is cut again on a side that nobody knows. */
    public SizeCheck {
        places = List.copyOf(places);
        if (cutAgain && feature.side().isEmpty()) {
            throw new IllegalArgumentException("Metal may be left on either side of a " + feature.key());
        }
    }

    /** Read square across, with nothing said of the next cut nor of a modifier. */
    public SizeCheck(
            Feature feature,
            Limits limits,
            List<Place> places,
            int readingsEach,
            Combine combine,
            boolean cutAgain,
            Written guardBand,
            Means with) {
        this(
                feature,
                limits,
                places,
                readingsEach,
                combine,
                cutAgain,
                guardBand,
                with,
                Cutting.UNSAID,
                Optional.empty(),
                Contact.SQUARE);
    }

    @Override
    public String key() {
        return feature.isPlain() ? feature.key() : KEY;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.size(this);
    }

    /** The flanks of a thread, where this is the depth of its groove. */
    @Override
    public List<Integer> cutWith() {
        return contact instanceof Contact.DepthOfThread thread ? List.of(thread.wiresStep()) : List.of();
    }

    @Override
    public List<Question> questions() {
        return contact instanceof Contact.InGrooves grooves && grooves.standsAskew()
                ? List.of(Question.GROOVES_TOUCHED)
                : List.of();
    }
}
