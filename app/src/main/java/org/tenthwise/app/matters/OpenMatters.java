package org.tenthwise.app.matters;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.session.GaugeRack;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.run.Person;

/**
 * All that is open in a store, run by run in the order they were begun, then what is of its gauges. Nothing is closed
 * by the list: a matter is gone when what it is about was done in its run.
 */
public final class OpenMatters {

    private final KeptEntries kept;

    public OpenMatters(KeptEntries kept) {
        this.kept = kept;
    }

    /**
     * @param part its number; absent for all
     * @param person who signed or has the run in hand; absent for all
     */
    public Stream<OpenMatter> all(Optional<String> part, Optional<String> person) {
        return Stream.concat(kept.runs().stream().flatMap(run -> of(run).stream()), gauges())
                .filter(matter -> part.isEmpty()
                        || matter.run()
                                .filter(run ->
                                        run.part().equalsIgnoreCase(part.get().strip()))
                                .isPresent())
                .filter(matter -> person.isEmpty() || Person.isSame(matter.by(), person.get()));
    }

    /** None of a run that this release cannot judge: {@code History.unjudged()} names it. */
    private List<OpenMatter> of(String run) {
        try {
            return MattersOfRun.of(run, Runs.sheet(kept, run));
        } catch (CouldNotRead e) {
            return List.of();
        }
    }

    private Stream<OpenMatter> gauges() {
        return new GaugeRack(kept)
                .inDoubt().stream()
                        .map(mark -> new OpenMatter(
                                OpenMatter.Kind.GAUGE_IN_DOUBT,
                                Optional.empty(),
                                Optional.of(new OpenMatter.OfStep(0, mark)),
                                "",
                                "",
                                Optional.empty()));
    }
}
