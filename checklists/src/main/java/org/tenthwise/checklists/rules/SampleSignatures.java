package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;

/**
 * The signatures of a readings file: {@code [close]}, which is one, and {@code [[signature]]} after it or without it.
 */
final class SampleSignatures {

    private static final String CLOSE = "close";
    private static final String SIGNATURE = "signature";
    private static final List<SignedAs> MEANINGS = Stream.of(SignedAs.values())
            .filter(meaning -> meaning != SignedAs.OTHER)
            .toList();

    private SampleSignatures() {}

    /** In the order they are given: the one that closes, then the further ones. */
    static List<Event> read(TableKeys sample) {
        List<Event> events = new ArrayList<>();
        sample.ifAny(CLOSE, sample::table)
                .flatMap(table -> closed(sample.inside(CLOSE, table)))
                .ifPresent(events::add);
        List<RawTable> further = sample.has(SIGNATURE) ? sample.tables(SIGNATURE) : List.of();
        further.forEach(table -> signed(sample.inside(SIGNATURE, table)).ifPresent(events::add));
        return events;
    }

    private static Optional<Event> closed(TableKeys keys) {
        Optional<String> by = keys.text("by");
        Optional<SignedAs> meaning = meaning(keys);
        keys.finish();
        return keys.built(() -> new Event.Closed(by.orElseThrow(), meaning.orElseThrow()));
    }

    private static Optional<Event> signed(TableKeys keys) {
        Optional<String> by = keys.text("by");
        Optional<SignedAs> meaning = meaning(keys);
        keys.finish();
        return keys.built(() -> new Event.Signed(by.orElseThrow(), meaning.orElseThrow()));
    }

    private static Optional<SignedAs> meaning(TableKeys keys) {
        return keys.word("meaning", MEANINGS, SignedAs::word);
    }
}
