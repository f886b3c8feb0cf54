package org.tenthwise.app.export;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.store.Chain;
import org.tenthwise.app.store.ChainCheck;
import org.tenthwise.app.store.EntryText;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.app.store.UnreadableEntry;
import org.tenthwise.app.store.Verification;
import org.tenthwise.app.store.Verification.Fault;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;

/**
 * Looks at a JSON record by itself, without a store.
 *
 * <p>Every entry must give its own hash, follow on the one before it where the two stand next to each other in the ledger,
 * and be readable; the plan must give its hash; and the verdicts and sizes written beside them must be those that plan and
 * entries come to. Who makes the whole record anew, hashes and all, is found out only by a head kept elsewhere: on the
 * printed record, or in the store.
 */
public final class RecordCheck {

    private final JsonMapper json = JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();

    /** @throws IOException if the stream cannot be read; whatever is wrong with what it holds is in the result */
    public Verification check(InputStream in) throws IOException {
        JsonNode record;
        try {
            record = json.readTree(in.readAllBytes());
        } catch (JsonProcessingException e) {
            return noRecord();
        }
        if (!record.path("format").asText().equals(JsonRecord.FORMAT) || !record.path("entries").isArray()
                || record.path("entries").isEmpty()) {
            return noRecord();
        }
        List<StoredEntry> entries = new ArrayList<>();
        record.path("entries").forEach(entry -> entries.add(stored(entry)));
        Head good = Head.OF_NOTHING;
        for (int i = 0; i < entries.size(); i++) {
            StoredEntry entry = entries.get(i);
            List<StoredEntry> before = entries.subList(0, i);
            Optional<Fault> fault = ChainCheck.within(entry).or(() -> outOfPlace(entry, before));
            if (fault.isPresent()) {
                return new Verification(entries.size(), good, fault);
            }
            good = new Head(entry.seq(), entry.hash());
        }
        Optional<Fault> head = head(record, good);
        return new Verification(entries.size(), good, head.isPresent() ? head : meaning(record, entries));
    }

    private static Verification noRecord() {
        return new Verification(0, Head.OF_NOTHING, because("This is not a Tenthwise record in JSON, or it is damaged."));
    }

    private static Optional<Fault> outOfPlace(StoredEntry entry, List<StoredEntry> before) {
        if (before.isEmpty()) {
            return entry.seq() == 1 && !entry.previous().equals(Chain.START)
                    ? at(entry, "Entry 1 does not start the ledger: it names an entry before it.") : Optional.empty();
        }
        StoredEntry last = before.get(before.size() - 1);
        if (entry.seq() <= last.seq()) {
            return at(entry, "Entry %d stands after entry %d.".formatted(entry.seq(), last.seq()));
        }
        if (!entry.run().equals(last.run())) {
            return at(entry, "Entry %d belongs to another run.".formatted(entry.seq()));
        }
        return entry.seq() == last.seq() + 1 && !entry.previous().equals(last.hash())
                ? at(entry, "Entry %d does not follow entry %d as it now stands.".formatted(entry.seq(), last.seq()))
                : Optional.empty();
    }

    private static Optional<Fault> head(JsonNode record, Head last) {
        long seq = record.path("head").path("seq").asLong(-1);
        boolean sound = seq > last.seq() || seq == last.seq() && record.path("head").path("hash").asText().equals(last.hash());
        return sound ? Optional.empty()
                : because("The head of the ledger in the record does not fit entry %d, its last.".formatted(last.seq()));
    }

    /** The plan, and what plan and entries come to. */
    private Optional<Fault> meaning(JsonNode record, List<StoredEntry> stored) throws IOException {
        Run run;
        try {
            List<Entry> entries = new ArrayList<>();
            for (StoredEntry entry : stored) {
                entries.add(EntryText.read(entry.seq(), entry.body().getBytes(UTF_8)));
            }
            run = new Run(entries);
        } catch (UnreadableEntry | IllegalArgumentException e) {
            return at(stored.get(0), "The record does not begin with the beginning of its run.");
        }
        PlanSource kept = run.begun().plan();
        JsonNode plan = record.path("plan");
        if (!kept.text().equals(plan.path("text").asText()) || !kept.sha256().equals(plan.path("sha256").asText())) {
            return because("The plan in the record is not the one the run was begun with.");
        }
        if (!(new PlanReader().readKept(kept.text()) instanceof PlanReading.Good good)) {
            return because("The plan in the record cannot be read by this version of Tenthwise.");
        }
        if (!good.plan().source().sha256().equals(kept.sha256())) {
            return because("The plan in the record does not give its hash.");
        }
        return differing(record.path("result"), asRead(JsonSheet.of(Sheet.of(good.plan(), run))));
    }

    /** The tree as it comes back from a file: whole numbers have no width there. */
    private JsonNode asRead(JsonNode tree) throws IOException {
        return json.readTree(json.writeValueAsBytes(tree));
    }

    private static Optional<Fault> differing(JsonNode written, JsonNode due) {
        leaveOutWhatOlderRecordsLack(written, due);
        if (written.equals(due)) {
            return Optional.empty();
        }
        for (int i = 0; i < due.path("characteristics").size(); i++) {
            JsonNode characteristic = due.path("characteristics").path(i);
            if (!characteristic.equals(written.path("characteristics").path(i))) {
                return because("What the record says of characteristic %d is not what its entries come to.".formatted(
                        characteristic.path("number").asInt()));
            }
        }
        return because("What the record says of the run is not what its entries come to.");
    }

    /** A record of the first version says nothing of guard bands; one that does must say what the plan says. */
    private static void leaveOutWhatOlderRecordsLack(JsonNode written, JsonNode due) {
        if (written.findValue(JsonSheet.GUARD_BAND) == null) {
            due.path("characteristics").forEach(characteristic -> ((ObjectNode) characteristic).remove(JsonSheet.GUARD_BAND));
        }
    }

    private static StoredEntry stored(JsonNode entry) {
        return new StoredEntry(entry.path("seq").asLong(), entry.path("run").asText(), entry.path("kind").asText(),
                entry.path("at").asText(), entry.path("by").asText(), entry.path("body").asText(),
                entry.path("previous").asText(), entry.path("hash").asText());
    }

    private static Optional<Fault> because(String why) {
        return Optional.of(new Fault(Optional.empty(), why));
    }

    private static Optional<Fault> at(StoredEntry entry, String why) {
        return Optional.of(new Fault(Optional.of(entry.seq()), why));
    }
}
