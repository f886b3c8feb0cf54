package org.tenthwise.app.export;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.tenthwise.app.store.Chain;
import org.tenthwise.app.store.ChainCheck;
import org.tenthwise.app.store.EntryText;
import org.tenthwise.app.store.Head;
import org.tenthwise.app.store.RunChain;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.Seals;
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
import org.tenthwise.model.words.Message;

/**
 * Looks at a JSON record by itself, without a store.
 *
 * <p>Every entry must give its own hash, follow on the one before it in the ledger where the two stand next to each
 * other there, and on all before it in the run ({@link RunChain}), so that none can be left out but from the end; the
 * plan must give its hash. Then the whole record is made anew from its entries, and must be what is written, key for
 * key: so whatever stands in it is proven by the entries or found. Who cuts off the last entries, or makes all of them
 * anew, hashes and all, is found out only by a run head kept elsewhere: on the printed record, or in the store.
 */
public final class RecordCheck {

    private final JsonMapper json = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    /**
     * What a record was found to be.
     *
     * @param found of its entries; where it is compared, of all it says
     * @param head of the run up to the entry up to which all is well: to be compared with the one printed
     * @param compared whether what it says its entries come to was set beside them; never for one of the second form,
     *     which called what a gauge was set on a correction
     */
    public record Result(Verification found, RunHead head, boolean compared) {

        private Result(Verification found, RunHead head) {
            this(found, head, true);
        }
    }

    /** @throws IOException if the stream cannot be read; whatever is wrong with what it holds is in the result */
    public Result check(InputStream in) throws IOException {
        JsonNode record;
        try {
            record = json.readTree(in.readAllBytes());
        } catch (JsonProcessingException e) {
            return nothing(Message.of("recorded.no-record"));
        }
        List<StoredEntry> entries = RecordEntries.of(record);
        String format = record.path("format").asText();
        if (format.equals(JsonRecord.FIRST_FORMAT) && !entries.isEmpty()) {
            return new Result(
                    new Verification(entries.size(), Head.OF_NOTHING, because(Message.of("recorded.first-form"))),
                    RunHead.OF_NOTHING);
        }
        boolean second = format.equals(JsonRecord.SECOND_FORMAT);
        if (!second && !format.equals(JsonRecord.FORMAT) || entries.isEmpty()) {
            return nothing(Message.of("recorded.no-record"));
        }
        Head good = Head.OF_NOTHING;
        RunChain chain = new RunChain();
        Seals.Tally seals = new Seals.Tally();
        for (int i = 0; i < entries.size(); i++) {
            StoredEntry entry = entries.get(i);
            List<StoredEntry> before = entries.subList(0, i);
            Optional<Fault> fault = ChainCheck.within(entry).or(() -> outOfPlace(entry, before));
            if (fault.isEmpty()) {
                RunHead head = chain.head();
                chain.next(entry);
                fault = chain.fault().or(() -> seals.next(entry, head));
            }
            if (fault.isPresent()) {
                return new Result(new Verification(entries.size(), good, fault), chain.head());
            }
            good = entry.asHead();
        }
        if (!chain.tied()) {
            return new Result(
                    new Verification(entries.size(), good, because(Message.of("recorded.last-not-tied"))),
                    chain.head());
        }
        return new Result(
                new Verification(
                        entries.size(),
                        good,
                        second ? Optional.empty() : meaning(record, entries),
                        Map.of(),
                        List.of(),
                        seals.seals(),
                        false),
                chain.head(),
                !second);
    }

    private static Result nothing(Message why) {
        return new Result(new Verification(0, Head.OF_NOTHING, because(why)), RunHead.OF_NOTHING);
    }

    private static Optional<Fault> outOfPlace(StoredEntry entry, List<StoredEntry> before) {
        if (before.isEmpty()) {
            return (entry.seq() == 1) != entry.previous().equals(Chain.START)
                    ? at(
                            entry,
                            entry.seq() == 1
                                    ? Message.of("fault.not-the-first")
                                    : Message.of("recorded.must-be-first", entry.seq()))
                    : Optional.empty();
        }
        StoredEntry last = before.get(before.size() - 1);
        if (entry.seq() <= last.seq()) {
            return at(entry, Message.of("recorded.after", entry.seq(), last.seq()));
        }
        if (!entry.run().equals(last.run())) {
            return at(entry, Message.of("recorded.another-run", entry.seq()));
        }
        return entry.seq() == last.seq() + 1 && !entry.previous().equals(last.hash())
                ? at(entry, Message.of("fault.not-following", entry.seq(), last.seq()))
                : Optional.empty();
    }

    /** The plan, and all that plan and entries come to. */
    private Optional<Fault> meaning(JsonNode record, List<StoredEntry> stored) throws IOException {
        Run run;
        try {
            List<Entry> entries = new ArrayList<>();
            for (StoredEntry entry : stored) {
                entries.add(EntryText.read(entry.seq(), entry.body().getBytes(UTF_8)));
            }
            run = new Run(entries);
        } catch (UnreadableEntry | IllegalArgumentException e) {
            return at(stored.get(0), Message.of("recorded.no-beginning"));
        }
        PlanSource kept = run.begun().plan();
        if (!(new PlanReader().readKept(kept.text()) instanceof PlanReading.Good good)) {
            return because(Message.of("recorded.plan-unreadable"));
        }
        if (!good.plan().source().sha256().equals(kept.sha256())) {
            return because(Message.of("recorded.plan-hash"));
        }
        JsonNode due;
        try {
            due = JsonRecord.tree(new Evidence(Sheet.of(good.plan(), run), stored, ""));
        } catch (IllegalArgumentException | ArithmeticException | NoSuchElementException e) {
            return because(Message.of("recorded.no-run"));
        }
        return Difference.between(record, asRead(due)).map(why -> new Fault(Optional.empty(), why));
    }

    /** The tree as it comes back from a file: whole numbers have no width there. */
    private JsonNode asRead(JsonNode tree) throws IOException {
        return json.readTree(json.writeValueAsBytes(tree));
    }

    private static Optional<Fault> because(Message why) {
        return Optional.of(new Fault(Optional.empty(), why));
    }

    private static Optional<Fault> at(StoredEntry entry, Message why) {
        return Optional.of(new Fault(Optional.of(entry.seq()), why));
    }
}
