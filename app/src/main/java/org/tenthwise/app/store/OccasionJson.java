package org.tenthwise.app.store;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.run.Baseline;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Word;

/** What a run was begun for, as JSON; nothing at all where nobody said, so that such an entry is as it always was. */
final class OccasionJson {

    /** What it takes to read it. */
    static final int FORMAT = 9;

    private static final String KEY = "occasion";

    private OccasionJson() {}

    static int format(Occasion occasion) {
        return occasion.saysNothing() ? 1 : FORMAT;
    }

    static void write(Occasion occasion, ObjectNode to) {
        if (occasion.saysNothing()) {
            return;
        }
        ObjectNode own = to.putObject(KEY);
        own.put("purpose", Word.of(occasion.purpose()));
        occasion.baseline()
                .ifPresent(baseline ->
                        own.putObject("baseline").put("run", baseline.run()).put("head", baseline.head()));
        if (!occasion.reason().isEmpty()) {
            own.put("reason", occasion.reason());
        }
        occasion.piece().ifPresent(piece -> own.put("piece", piece));
        if (!occasion.affected().isEmpty()) {
            ArrayNode affected = own.putArray("affected");
            occasion.affected().forEach(affected::add);
        }
        if (!occasion.order().isEmpty()) {
            own.put("order", occasion.order());
        }
        if (!occasion.changes().isEmpty()) {
            ArrayNode changes = own.putArray("changes");
            occasion.changes().forEach(changes::add);
        }
    }

    static Occasion read(JsonFields from) throws UnreadableEntry {
        Optional<JsonFields> any = from.objectIfAny(KEY);
        return any.isPresent() ? said(any.get()) : Occasion.NOT_STATED;
    }

    private static Occasion said(JsonFields own) throws UnreadableEntry {
        Purpose purpose = own.word("purpose", Purpose.class);
        Optional<JsonFields> baseline = own.objectIfAny("baseline");
        Optional<Baseline> standsOn = baseline.isPresent() ? Optional.of(baseline(baseline.get())) : Optional.empty();
        String reason = own.textIfAny("reason").orElse("");
        Optional<Integer> piece = Optional.empty();
        Optional<Long> told = own.wholeIfAny("piece");
        if (told.isPresent()) {
            piece = Optional.of(whole(told.get(), "piece"));
        }
        List<Integer> affected = new ArrayList<>();
        for (long step : own.wholesIfAny("affected")) {
            affected.add(whole(step, "affected"));
        }
        String order = own.textIfAny("order").orElse("");
        List<String> changes = own.textsIfAny("changes");
        own.end();
        return new Occasion(purpose, standsOn, reason, piece, affected, order, changes);
    }

    private static Baseline baseline(JsonFields from) throws UnreadableEntry {
        Baseline baseline = new Baseline(from.text("run"), from.text("head"));
        from.end();
        return baseline;
    }

    private static int whole(long number, String key) throws UnreadableEntry {
        try {
            return Math.toIntExact(number);
        } catch (ArithmeticException e) {
            throw new UnreadableEntry(Message.of("entry.no-whole", key), e);
        }
    }
}
