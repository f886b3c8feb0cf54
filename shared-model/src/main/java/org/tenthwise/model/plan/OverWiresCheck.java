package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.tolerance.Limits;

/**
 * Pitch diameter of an external thread, over three wires.
 *
 * @param pitchDiameter limits of the pitch diameter
 * @param minorDiameter greatest minor diameter, for the room between wire and root; absent if the drawing gives none
 * @param minorStep number of the step that measured the minor diameter, which then serves instead
 * @param cutWith numbers of the later steps that measure the depth of its groove, which the same tool cuts
 */
public record OverWiresCheck(
        ScrewThread thread,
        Limits pitchDiameter,
        Optional<Written> minorDiameter,
        Optional<Integer> minorStep,
        List<Place> places,
        int readingsEach,
        Combine combine,
        boolean cutAgain,
        Written guardBand,
        Means with,
        Cutting cutting,
        Optional<SizeModifier> drawingSays,
        List<Integer> cutWith)
        implements CheckOfSize {

    /** The word plans and files for programs have for it. */
    public static final String KEY = "thread-over-wires";

    public OverWiresCheck {
        places = List.copyOf(places);
        cutWith = List.copyOf(cutWith);
    }

    /** With nothing said of the next cut nor of a modifier. */
    public OverWiresCheck(
            ScrewThread thread,
            Limits pitchDiameter,
            Optional<Written> minorDiameter,
            Optional<Integer> minorStep,
            List<Place> places,
            int readingsEach,
            Combine combine,
            boolean cutAgain,
            Written guardBand,
            Means with) {
        this(
                thread,
                pitchDiameter,
                minorDiameter,
                minorStep,
                places,
                readingsEach,
                combine,
                cutAgain,
                guardBand,
                with,
                Cutting.UNSAID,
                Optional.empty(),
                List.of());
    }

    @Override
    public OverWiresCheck cutWith(List<Integer> steps) {
        return new OverWiresCheck(
                thread,
                pitchDiameter,
                minorDiameter,
                minorStep,
                places,
                readingsEach,
                combine,
                cutAgain,
                guardBand,
                with,
                cutting,
                drawingSays,
                steps);
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public Feature feature() {
        return Feature.DIAMETER;
    }

    @Override
    public Limits limits() {
        return pitchDiameter;
    }

    @Override
    public List<Integer> restsOn() {
        return minorStep.stream().toList();
    }

    @Override
    public Optional<ScrewThread> underWires() {
        return Optional.of(thread);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.overWires(this);
    }
}
