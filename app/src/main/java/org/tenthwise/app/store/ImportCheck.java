package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.tenthwise.app.history.RunName;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ImportEvent;
import org.tenthwise.model.run.ImportEvent.Provenance;
import org.tenthwise.model.words.Message;

/**
 * Sets runs of another store beside what is here. They come in as a whole or not at all.
 *
 * <p>Every entry is looked at by itself, in its run and beside its neighbours in the ledger it is from, so that nothing
 * rests on who looked before. What is here of a run must be what it begins with, to the byte.
 */
public final class ImportCheck {

    /** Signs of a run name; {@code @} is none, and no name is longer. */
    private static final Pattern NAME = Pattern.compile("[^@\\p{Cntrl}]{1,400}");

    private static final int SIGNS = 8;

    private final KeptEntries kept;
    private final Incoming incoming;
    private final Provenance origin;
    /** Entries that arrive, by their place in the ledger they are from. */
    private final Map<Long, StoredEntry> arriving = new HashMap<>();

    private ImportCheck(KeptEntries kept, Incoming incoming) {
        this.kept = kept;
        this.incoming = incoming;
        this.origin = origin();
    }

    /** @throws NotImported why none of them can come in */
    public static Arrivals of(KeptEntries kept, Incoming incoming) throws NotImported {
        return new ImportCheck(kept, incoming).arrivals();
    }

    private Provenance origin() {
        List<Provenance> here = kept.origins();
        return here.stream()
                .filter(one -> one.is(incoming.key(), incoming.store()))
                .findFirst()
                .orElseGet(() -> new Provenance(incoming.key(), incoming.store(), freeSign(here)));
    }

    private String freeSign(List<Provenance> here) {
        Set<String> taken = new HashSet<>();
        here.forEach(one -> taken.add(one.sign()));
        String first =
                incoming.key().substring(0, Math.min(SIGNS, incoming.key().length()));
        String sign = first;
        for (int i = 2; taken.contains(sign); i++) {
            sign = first + "-" + i;
        }
        return sign;
    }

    private Arrivals arrivals() throws NotImported {
        if (incoming.runs().isEmpty()) {
            throw new NotImported(Message.of("import.empty"));
        }
        Set<String> names = new HashSet<>();
        for (Incoming.OfRun run : incoming.runs()) {
            if (!names.add(run.run())) {
                throw new NotImported(Message.of("import.twice", run.run()));
            }
            for (StoredEntry entry : run.entries()) {
                if (arriving.put(entry.seq(), entry) != null) {
                    throw new NotImported(Message.of("import.one-place", entry.seq()));
                }
            }
        }
        List<Arrivals.OfRun> runs = new ArrayList<>();
        for (Incoming.OfRun run : incoming.runs()) {
            runs.add(arrival(run));
        }
        return new Arrivals(origin, becomesKnown(), runs);
    }

    private boolean becomesKnown() {
        return incoming.signerKnown()
                && kept.origins().contains(origin)
                && kept.entries(Entry.SHOP).stream()
                        .flatMap(entry -> entry.event().as(ImportEvent.Imported.class).stream())
                        .noneMatch(imported -> imported.origin().equals(origin) && imported.signerKnown());
    }

    private Arrivals.OfRun arrival(Incoming.OfRun run) throws NotImported {
        List<Entry> entries = entriesOf(run);
        isNotOfAnother(run);
        List<StoredEntry> here = kept.stored(RunName.imported(run.run(), origin.sign()));
        beginsWith(run, here);
        List<StoredEntry> added = run.entries()
                .subList(
                        Math.min(here.size(), run.entries().size()),
                        run.entries().size());
        if (added.isEmpty()) {
            return new Arrivals.OfRun(run.run(), Arrivals.What.SAME, here.size(), List.of(), RunHead.OF_NOTHING);
        }
        if (isOpen(entries)) {
            return new Arrivals.OfRun(run.run(), Arrivals.What.OPEN, here.size(), List.of(), RunHead.OF_NOTHING);
        }
        for (StoredEntry entry : added) {
            standsBetweenItsNeighbours(run, entry);
        }
        RunHead head = RunHead.OF_NOTHING;
        for (StoredEntry entry : run.entries()) {
            head = head.and(entry);
        }
        return new Arrivals.OfRun(
                run.run(), here.isEmpty() ? Arrivals.What.NEW : Arrivals.What.LONGER, here.size(), added, head);
    }

    /** The entries of a run, each as it was written and none missing. */
    private List<Entry> entriesOf(Incoming.OfRun run) throws NotImported {
        if (!NAME.matcher(run.run()).matches() || run.run().equals(Entry.SHOP)) {
            throw new NotImported(Message.of("import.no-name", run.run()));
        }
        List<Entry> entries = new ArrayList<>();
        RunChain chain = new RunChain();
        long last = 0;
        for (StoredEntry stored : run.entries()) {
            ChainCheck.Looked looked = ChainCheck.look(stored, stored.body().getBytes(UTF_8));
            chain.next(looked);
            if (chain.fault().isPresent()) {
                throw refused(run, chain.fault().get().why());
            }
            if (!stored.run().equals(run.run()) || stored.seq() <= last || stored.seq() >= KeptEntries.MOST_ENTRIES) {
                throw refused(run, Message.of("import.out-of-place", stored.seq()));
            }
            last = stored.seq();
            entries.add(looked.entry());
        }
        if (entries.isEmpty() || entries.get(0).event().as(Event.Begun.class).isEmpty()) {
            throw refused(run, Message.of("import.no-beginning"));
        }
        if (!chain.tied()) {
            throw refused(run, Message.of("fault.run-not-tied", last, run.run()));
        }
        return entries;
    }

    /** A run of this store is here in full; one that another key signed for is here under that key. */
    private void isNotOfAnother(Incoming.OfRun run) throws NotImported {
        StoredEntry first = run.entries().get(0);
        if (kept.headAt(first.seq()).equals(Optional.of(first.asHead()))) {
            throw new NotImported(Message.of("import.own", run.run()));
        }
        for (Provenance other : kept.origins()) {
            if (!other.equals(origin)
                    && kept.importedAt(other.sign(), first.seq())
                            .filter(first::equals)
                            .isPresent()) {
                throw new NotImported(Message.of("import.another-key", run.run(), other.sign(), origin.sign()));
            }
        }
    }

    private static void beginsWith(Incoming.OfRun run, List<StoredEntry> here) throws NotImported {
        for (int i = 0; i < Math.min(here.size(), run.entries().size()); i++) {
            StoredEntry there = run.entries().get(i);
            if (!here.get(i).equals(there)) {
                throw new NotImported(Message.of("import.fork", run.run(), i + 1, there.seq()));
            }
        }
    }

    /** Neither closed nor put away. */
    private static boolean isOpen(List<Entry> entries) {
        boolean closed = entries.stream()
                .anyMatch(entry -> entry.event().as(Event.Closed.class).isPresent());
        return !closed
                && entries.stream()
                        .map(Entry::event)
                        .flatMap(event -> Stream.of(
                                        event.as(Event.PutAway.class).map(away -> false),
                                        event.as(Event.TakenUp.class).map(up -> true))
                                .flatMap(Optional::stream))
                        .reduce(true, (earlier, later) -> later);
    }

    /** As the ledger it is from has it: one entry at a place, each behind the one before it. */
    private void standsBetweenItsNeighbours(Incoming.OfRun run, StoredEntry entry) throws NotImported {
        Optional<StoredEntry> before = at(entry.seq() - 1);
        Optional<StoredEntry> after = at(entry.seq() + 1);
        boolean first = entry.seq() == 1;
        if (kept.importedAt(origin.sign(), entry.seq()).isPresent()
                || before.filter(one -> !one.hash().equals(entry.previous())).isPresent()
                || after.filter(one -> !one.previous().equals(entry.hash())).isPresent()
                || first != entry.previous().equals(Chain.START)
                || first != entry.hash().equals(incoming.store())) {
            throw new NotImported(Message.of("import.another-ledger", run.run(), entry.seq()));
        }
    }

    private Optional<StoredEntry> at(long seq) {
        return Optional.ofNullable(arriving.get(seq)).or(() -> kept.importedAt(origin.sign(), seq));
    }

    private static NotImported refused(Incoming.OfRun run, Message why) {
        return new NotImported(Message.of("import.run", run.run(), why));
    }
}
