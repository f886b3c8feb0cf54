package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Base64;
import java.util.Optional;
import org.tenthwise.app.key.PublicKeyOfStation;
import org.tenthwise.app.key.StationKey;
import org.tenthwise.app.store.Verification.Fault;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.words.Message;

/**
 * What a station signs of a run, and whether a seal that stands in one is good.
 *
 * <p>Signed are four lines of UTF-8, the last without an end: {@code tenthwise-seal-1}; how many entries the run had,
 * the place of the last in the ledger and the hash over all of them ({@link RunHead}), with a blank between; when it
 * was signed, ISO 8601 with offset; the run. So a seal fits no other run, no other state of this one and no other
 * moment.
 */
public final class Seal {

    private static final String FIRST_LINE = "tenthwise-seal-1";

    private Seal() {}

    /** Of a run as it stands after {@code head}, to be added behind it. */
    public static Event.Sealed by(StationKey key, String run, RunHead head, OffsetDateTime at) {
        return new Event.Sealed(
                head.place(),
                head.hash(),
                key.shown().fingerprint(),
                key.shown().text(),
                Base64.getEncoder().encodeToString(key.sign(said(run, head, at))));
    }

    /**
     * What is wrong with a seal; absent where it is good, and for any other entry.
     *
     * @param before head of the run before the entry
     */
    static Optional<Fault> fault(Entry entry, RunHead before) {
        return entry.event()
                .as(Event.Sealed.class)
                .flatMap(seal -> why(entry, seal, before))
                .map(why -> new Fault(Optional.of(entry.seq()), why));
    }

    private static Optional<Message> why(Entry entry, Event.Sealed seal, RunHead before) {
        if (seal.place() != before.place() || !seal.head().equals(before.hash())) {
            return Optional.of(Message.of("fault.seal-of-another-head", entry.seq(), entry.run()));
        }
        Optional<PublicKeyOfStation> key = PublicKeyOfStation.ofText(seal.key());
        if (key.filter(known -> known.fingerprint().equals(seal.fingerprint())).isEmpty()) {
            return Optional.of(Message.of("fault.seal-key", entry.seq()));
        }
        return key.get().signed(said(entry.run(), before, entry.at()), signature(seal))
                ? Optional.empty()
                : Optional.of(Message.of(
                        "fault.seal", entry.seq(), entry.run(), key.get().shortFingerprint()));
    }

    private static byte[] signature(Event.Sealed seal) {
        try {
            byte[] signature = Base64.getDecoder().decode(seal.signature());
            return Base64.getEncoder().encodeToString(signature).equals(seal.signature()) ? signature : new byte[0];
        } catch (IllegalArgumentException e) {
            return new byte[0];
        }
    }

    private static byte[] said(String run, RunHead head, OffsetDateTime at) {
        return "%s\n%s %s %s\n%s\n%s"
                .formatted(
                        FIRST_LINE,
                        head.place(),
                        head.seq(),
                        head.hash(),
                        at.format(DateTimeFormatter.ISO_OFFSET_DATE_TIME),
                        run)
                .getBytes(UTF_8);
    }
}
