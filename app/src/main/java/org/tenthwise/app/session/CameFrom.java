package org.tenthwise.app.session;

import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.history.RunName;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.ImportEvent.Imported;

/**
 * How a run that was made elsewhere came into a store.
 *
 * @param sign of the station and store it is from
 * @param at when it first came in
 * @param by who took it in then
 * @param signerKnown whether the key of the station was ever named as one that is trusted
 */
public record CameFrom(String sign, OffsetDateTime at, String by, boolean signerKnown) {

    /** By their signs: those whose key was never named as one that is trusted. */
    static Set<String> unknownStations(KeptEntries kept) {
        Set<String> unknown = new HashSet<>();
        Set<String> known = new HashSet<>();
        kept.entries(Entry.SHOP).stream()
                .flatMap(entry -> entry.event().as(Imported.class).stream())
                .forEach(imported -> (imported.signerKnown() ? known : unknown)
                        .add(imported.origin().sign()));
        unknown.removeAll(known);
        return Set.copyOf(unknown);
    }

    /** Absent for a run of the store itself. */
    static Optional<CameFrom> of(KeptEntries kept, String id) {
        RunName name = RunName.of(id);
        if (!name.isImported()) {
            return Optional.empty();
        }
        String sign = name.origin().orElseThrow();
        return kept.entries(Entry.SHOP).stream()
                .filter(entry -> entry.event()
                        .as(Imported.class)
                        .filter(imported -> imported.origin().sign().equals(sign)
                                && imported.runs().stream()
                                        .anyMatch(run -> run.run().equals(name.run())))
                        .isPresent())
                .findFirst()
                .map(entry -> new CameFrom(
                        sign, entry.at(), entry.by(), !unknownStations(kept).contains(sign)));
    }
}
