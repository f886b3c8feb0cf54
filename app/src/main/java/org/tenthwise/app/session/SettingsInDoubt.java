package org.tenthwise.app.session;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.app.store.NewEntry;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;

/** Which settings share the fault of one that turned out wrong, in all runs made in the store, closed ones too. */
final class SettingsInDoubt {

    private final KeptEntries kept;
    private final String run;
    private final Entry wrong;
    private final SettingFault fault;

    /** @param wrong entry of {@code run} that holds the setting */
    SettingsInDoubt(KeptEntries kept, String run, Entry wrong, SettingFault fault) {
        this.kept = kept;
        this.run = run;
        this.wrong = wrong;
        this.fault = fault;
    }

    /** Those of the run the fault was found in first; the wrong one is among them. */
    List<Withdrawn> all() {
        return Stream.concat(Stream.of(run), candidates().stream().filter(other -> !other.equals(run)))
                .flatMap(id -> of(new Run(kept.entries(id))))
                .toList();
    }

    /** The runs that may have one. */
    private List<String> candidates() {
        Setting found = setting(wrong);
        return switch (fault) {
            case SENSE ->
                kept.history().runsWith(found.gauge().kind(), found.gauge().id());
            case REFERENCE -> found.reference().map(kept.history()::runsSetOn).orElseGet(this::ownRuns);
            case ZERO -> List.of();
        };
    }

    /** Nothing is struck out in a run that came in from elsewhere. */
    private List<String> ownRuns() {
        return kept.runs().stream().filter(id -> !RunName.of(id).isImported()).toList();
    }

    /** What strikes them all out; a sense is struck out of what the shop knows as well. */
    List<NewEntry> strikes(OffsetDateTime at, String by, String reason) {
        List<NewEntry> strikes = new ArrayList<>();
        all().forEach(gone -> strikes.add(new NewEntry(gone.run(), at, by, new Event.StruckOut(gone.entry(), reason))));
        if (fault == SettingFault.SENSE) {
            new GaugeRack(kept)
                    .told(setting(wrong).gauge())
                    .forEach(told ->
                            strikes.add(new NewEntry(Entry.SHOP, at, by, new Event.StruckOut(told.seq(), reason))));
        }
        return strikes;
    }

    private Stream<Withdrawn> of(Run other) {
        return other.gauges().settings().stream()
                .filter(this::sharesFault)
                .map(entry -> new Withdrawn(
                        other.id(),
                        entry.seq(),
                        StepEvent.GaugeSet.in(entry).step(),
                        other.gauges().countingUnder(entry).size()));
    }

    private boolean sharesFault(Entry entry) {
        Setting found = setting(wrong);
        Setting other = setting(entry);
        return switch (fault) {
            case SENSE -> found.gauge().sense().isPresent() && other.gauge().equals(found.gauge());
            case REFERENCE ->
                found.certified().isPresent()
                        && other.gauge().kind().reference()
                                == found.gauge().kind().reference()
                        && other.reference().equals(found.reference())
                        && size(other).equals(size(found));
            case ZERO -> entry.seq() == wrong.seq();
        };
    }

    private static Optional<Length> size(Setting setting) {
        return setting.certified().map(Written::length);
    }

    private static Setting setting(Entry entry) {
        return StepEvent.GaugeSet.in(entry).setting();
    }
}
