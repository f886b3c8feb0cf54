package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.store.Verification.Fault;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.words.Message;

/**
 * Which stations signed which runs.
 *
 * @param runs by the fingerprint of the key, the runs whose last entry is a seal by it
 * @param unsigned closed runs whose last entry is none
 * @param keys fingerprints of all keys that signed anything, in the order they first did
 */
public record Seals(Map<String, List<String>> runs, List<String> unsigned, Set<String> keys) {

    public static final Seals NONE = new Seals(Map.of(), List.of(), Set.of());

    /** Kept while entries are walked, in their order. */
    public static final class Tally {

        private final Map<String, Optional<String>> last = new LinkedHashMap<>();
        private final Set<String> closed = new LinkedHashSet<>();
        private final Set<String> keys = new LinkedHashSet<>();

        /**
         * Takes the next entry, as it is stored.
         *
         * @param before head of its run before it
         * @return what is wrong with it, where it is a seal that is not good
         */
        public Optional<Fault> next(StoredEntry stored, RunHead before) {
            try {
                Entry entry = EntryText.read(stored.seq(), stored.body().getBytes(UTF_8));
                next(entry);
                return Seal.fault(entry, before);
            } catch (UnreadableEntry e) {
                return Optional.of(
                        new Fault(Optional.of(stored.seq()), Message.of("fault.text", stored.seq(), e.why())));
            }
        }

        /** Takes the next entry, which is good. */
        void next(Entry entry) {
            String run = entry.run();
            Event event = entry.event();
            Optional<String> key = event.as(Event.Sealed.class).map(Event.Sealed::fingerprint);
            key.ifPresent(keys::add);
            if (event.as(Event.Closed.class).isPresent()) {
                closed.add(run);
            }
            if (closed.contains(run) || key.isPresent()) {
                last.put(run, key);
            }
        }

        public Seals seals() {
            Map<String, List<String>> runs = new LinkedHashMap<>();
            last.forEach((run, key) -> key.ifPresent(
                    by -> runs.computeIfAbsent(by, first -> new ArrayList<>()).add(run)));
            return new Seals(
                    runs,
                    last.keySet().stream()
                            .filter(run -> closed.contains(run) && last.get(run).isEmpty())
                            .toList(),
                    new LinkedHashSet<>(keys));
        }
    }
}
