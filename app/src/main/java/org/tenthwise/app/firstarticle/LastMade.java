package org.tenthwise.app.firstarticle;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunQuery;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.history.RunSummary;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;

/**
 * When a part number was last made or measured before a report's runs were begun, by the times of the entries: those of
 * several stations have no other order. A note or a signature that came later makes nothing, and nor does a run that
 * was put away.
 */
final class LastMade {

    private static final int PAGE = 60;
    private static final Comparator<OffsetDateTime> IN_TIME = Comparator.comparing(OffsetDateTime::toInstant);

    private final KeptEntries kept;
    private final String part;

    LastMade(KeptEntries kept, String part) {
        this.kept = kept;
        this.part = part;
    }

    /** The day, where it stands in the entry; absent where there is none. */
    Optional<LocalDate> before(List<Sheet> sheets) {
        OffsetDateTime first = sheets.stream()
                .map(sheet -> sheet.run().entries().get(0).at())
                .min(IN_TIME)
                .orElseThrow();
        Optional<OffsetDateTime> last = Optional.empty();
        for (RunShelf shelf : List.of(RunShelf.OPEN, RunShelf.CLOSED)) {
            last = before(first, shelf, last);
        }
        return last.map(OffsetDateTime::toLocalDate);
    }

    /** Runs in which nothing was done later than what is found already are not read. */
    private Optional<OffsetDateTime> before(OffsetDateTime first, RunShelf shelf, Optional<OffsetDateTime> known) {
        Optional<OffsetDateTime> last = known;
        Optional<RunFacts> after = Optional.empty();
        while (true) {
            List<RunFacts> page = kept.history().runs(new RunQuery(shelf, Optional.empty(), part, after, PAGE)).stream()
                    .map(RunSummary::run)
                    .toList();
            for (RunFacts run : page) {
                boolean mayBeLater =
                        last.filter(at -> !isBefore(at, run.lastAt())).isEmpty();
                if (run.part().equals(part) && isBefore(run.begunAt(), first) && mayBeLater) {
                    last = Stream.concat(last.stream(), made(run.id(), first)).max(IN_TIME);
                }
            }
            if (page.size() < PAGE) {
                return last;
            }
            after = Optional.of(page.get(page.size() - 1));
        }
    }

    private Stream<OffsetDateTime> made(String run, OffsetDateTime first) {
        return kept.entries(run).stream()
                .filter(entry -> entry.event().changesTheFinding()
                        || entry.event().as(Event.Begun.class).isPresent())
                .map(Entry::at)
                .filter(at -> isBefore(at, first));
    }

    private static boolean isBefore(OffsetDateTime one, OffsetDateTime other) {
        return one.toInstant().isBefore(other.toInstant());
    }
}
