package org.tenthwise.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import org.tenthwise.model.run.AcceptedBefore;
import org.tenthwise.model.run.Earlier;
import org.tenthwise.model.words.Message;

/** What the store knew of a part number when a run of it was begun, as JSON; nothing at all in older runs. */
final class EarlierJson {

    private static final String KEY = "earlier";
    private static final String ACCEPTED = "accepted";
    private static final String LAST_MADE = "last-made";

    private EarlierJson() {}

    static void write(Optional<Earlier> earlier, ObjectNode to) {
        earlier.ifPresent(known -> {
            ObjectNode own = to.putObject(KEY);
            known.accepted().ifPresent(before -> write(before, own.putObject(ACCEPTED)));
            known.lastMade().ifPresent(at -> own.put(LAST_MADE, said(at)));
        });
    }

    private static void write(AcceptedBefore before, ObjectNode to) {
        to.put("run", before.run())
                .put("head", before.head())
                .put("by", before.acceptedBy())
                .put("at", said(before.at()))
                .put("issue", before.issue())
                .put("sha256", before.planHash())
                .put("machine", before.machine())
                .put("lot", before.lot());
        before.gauges().forEach(to.putArray("gauges")::add);
        before.otherwise().forEach(to.putArray("otherwise")::add);
    }

    static Optional<Earlier> read(JsonFields from) throws UnreadableEntry {
        Optional<JsonFields> own = from.objectIfAny(KEY);
        if (own.isEmpty()) {
            return Optional.empty();
        }
        Optional<JsonFields> accepted = own.get().objectIfAny(ACCEPTED);
        Optional<AcceptedBefore> before = accepted.isPresent() ? Optional.of(before(accepted.get())) : Optional.empty();
        Optional<String> made = own.get().textIfAny(LAST_MADE);
        Optional<OffsetDateTime> last = made.isPresent() ? Optional.of(time(made.get())) : Optional.empty();
        own.get().end();
        return Optional.of(new Earlier(before, last));
    }

    private static AcceptedBefore before(JsonFields from) throws UnreadableEntry {
        AcceptedBefore before = new AcceptedBefore(
                from.text("run"),
                from.text("head"),
                from.text("by"),
                time(from.text("at")),
                from.text("issue"),
                from.text("sha256"),
                from.text("machine"),
                from.text("lot"),
                from.textsIfAny("gauges"),
                from.textsIfAny("otherwise"));
        from.end();
        return before;
    }

    private static String said(OffsetDateTime at) {
        return at.format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }

    private static OffsetDateTime time(String text) throws UnreadableEntry {
        try {
            return EntryTime.read(text);
        } catch (DateTimeException e) {
            throw new UnreadableEntry(Message.of("entry.no-time", text), e);
        }
    }
}
