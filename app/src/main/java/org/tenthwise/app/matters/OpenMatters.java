package org.tenthwise.app.matters;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.Matter;
import org.tenthwise.app.history.MatterKind;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.session.GaugeRack;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.MatterSettled;
import org.tenthwise.model.run.Person;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.words.Word;

/**
 * All that is open in a store, run by run in the order they were begun, then what is of its gauges, each with the runs
 * that were read with it. Nothing is closed by the list: a matter is gone when what it is about was done in its run,
 * and settled while somebody's signature for it rests on what there is.
 */
public final class OpenMatters {

    private final KeptEntries kept;

    public OpenMatters(KeptEntries kept) {
        this.kept = kept;
    }

    /**
     * Those settled as well, each with its signature.
     *
     * @param part its number; absent for all
     * @param person who signed or has the run in hand; absent for all
     */
    public List<OpenMatter> all(Optional<String> part, Optional<String> person) {
        List<Entry> settled = kept.entries(Entry.SHOP).stream()
                .filter(entry -> entry.event().as(MatterSettled.class).isPresent())
                .toList();
        Map<String, String> heads = new HashMap<>();
        return Stream.concat(
                        kept.history().matters().stream()
                                .map(in -> looked(
                                        new OpenMatter(Optional.of(in.run()), in.matter(), Optional.empty()),
                                        settled,
                                        heads)),
                        gauges().map(matter -> looked(matter, settled, heads)))
                .filter(matter -> part.isEmpty()
                        || matter.run()
                                .filter(run ->
                                        run.part().equalsIgnoreCase(part.get().strip()))
                                .isPresent())
                .filter(matter ->
                        person.isEmpty() || Person.isSame(matter.matter().by(), person.get()))
                .toList();
    }

    /** How many are open: as many as {@link #all} lists that are not settled, counted where nothing was signed for. */
    int countOpen() {
        return kept.entries(Entry.SHOP).stream()
                        .noneMatch(
                                entry -> entry.event().as(MatterSettled.class).isPresent())
                ? kept.history().countMatters() + (int) gauges().count()
                : (int) all(Optional.empty(), Optional.empty()).stream()
                        .filter(OpenMatter::isOpen)
                        .count();
    }

    /** What a signature for it is given for. */
    MatterSettled.SettledMatter named(OpenMatter matter) {
        return new MatterSettled.SettledMatter(
                Word.of(matter.matter().kind()),
                matter.run().map(RunFacts::id).orElse(""),
                matter.about(),
                matter.run().map(run -> restsOn(run.id())).orElseGet(() -> restsOnGauge(matter.about())));
    }

    private OpenMatter looked(OpenMatter matter, List<Entry> settled, Map<String, String> heads) {
        String run = matter.run().map(RunFacts::id).orElse("");
        return new OpenMatter(
                matter.run(),
                matter.matter(),
                settled.stream()
                        .filter(entry -> {
                            MatterSettled.SettledMatter of = of(entry);
                            return of.kind().equals(Word.of(matter.matter().kind()))
                                    && of.run().equals(run)
                                    && of.about().equals(matter.about())
                                    && of.rests()
                                            .equals(heads.computeIfAbsent(
                                                    run + "/" + (run.isEmpty() ? matter.about() : ""),
                                                    any -> run.isEmpty()
                                                            ? restsOnGauge(matter.about())
                                                            : restsOn(run)));
                        })
                        .reduce((earlier, later) -> later));
    }

    private static MatterSettled.SettledMatter of(Entry entry) {
        return entry.event().as(MatterSettled.class).orElseThrow().matter();
    }

    /** The head of a run after its last entry that changed anything a signature is for. */
    private String restsOn(String run) {
        long last = new Run(kept.entries(run)).lastChange().seq();
        RunHead head = RunHead.OF_NOTHING;
        for (StoredEntry entry : kept.stored(run)) {
            head = head.and(entry);
            if (entry.seq() == last) {
                break;
            }
        }
        return head.hash();
    }

    /** The hash of the entry by which the gauge came in doubt. */
    private String restsOnGauge(String mark) {
        long found = doubts().filter(doubt -> doubt.gauge().id().equals(mark))
                .mapToLong(doubt -> doubt.found().seq())
                .max()
                .orElse(0);
        return kept.stored(Entry.SHOP).stream()
                .filter(entry -> entry.seq() == found)
                .map(StoredEntry::hash)
                .findFirst()
                .orElse("");
    }

    private Stream<OpenMatter> gauges() {
        GaugesInDoubt runs = new GaugesInDoubt(kept);
        return doubts().flatMap(doubt -> Stream.concat(Stream.of(ofTheShop(doubt)), runs.of(doubt)));
    }

    private static OpenMatter ofTheShop(GaugeRack.InDoubt doubt) {
        return new OpenMatter(
                Optional.empty(),
                new Matter(
                        MatterKind.GAUGE_IN_DOUBT,
                        0,
                        doubt.gauge().id(),
                        "",
                        doubt.found().by(),
                        doubt.found().at()),
                Optional.empty());
    }

    private Stream<GaugeRack.InDoubt> doubts() {
        return new GaugeRack(kept).doubts().stream();
    }
}
