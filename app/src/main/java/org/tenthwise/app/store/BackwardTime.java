package org.tenthwise.app.store;

import java.time.Instant;
import java.util.Optional;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.words.Message;

/**
 * Notices entries that say they happened before the entry they stand behind. A clock put right does that, so does a
 * time that was made up; nobody can tell the two apart here, so it is a remark and no fault.
 */
final class BackwardTime {

    private Optional<Instant> latest = Optional.empty();
    private Optional<Message> first = Optional.empty();
    private int times;

    /** @param entry the next in the ledger */
    void next(Entry entry) {
        Instant at = entry.at().toInstant();
        if (latest.isPresent() && at.isBefore(latest.get())) {
            times++;
            if (first.isEmpty()) {
                first = Optional.of(Message.of("remark.backward", entry.seq(), at, latest.get()));
            }
        }
        latest = Optional.of(at);
    }

    Optional<Message> remark() {
        return first.map(
                where -> Message.of("remark.backward-times").with("n", times).with("where", where));
    }
}
