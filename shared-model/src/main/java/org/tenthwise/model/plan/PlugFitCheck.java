package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.tolerance.Limits;

/**
 * A plug in a bore measured before.
 *
 * @param boreStep number of the step that measured the bore
 * @param clearance wanted clearance, bore less plug; a negative one is interference
 * @param places where the plug is measured
 * @param feel what the hand must find
 */
public record PlugFitCheck(int boreStep, Limits clearance, List<Place> places, PlugFeel feel, Means with)
        implements Check {

    /** The word plans and files for programs have for it. */
    public static final String KEY = "plug-fit";

    public PlugFitCheck {
        places = List.copyOf(places);
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public List<Slot> slots() {
        return Slot.at(places, 1);
    }

    @Override
    public List<Question> questions() {
        return List.of(Question.PLUG_FEELS);
    }

    @Override
    public List<Integer> restsOn() {
        return List.of(boreStep);
    }

    @Override
    public Optional<Means> means() {
        return Optional.of(with);
    }

    @Override
    public Optional<Limits> judgedAgainst() {
        return Optional.of(clearance);
    }

    @Override
    public Optional<String> judgedBy() {
        return Optional.of("clearance");
    }

    @Override
    public boolean comesToASize() {
        return false;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.plugFit(this);
    }
}
