package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;

/**
 * The signatures of a readings file: {@code [close]}, which is one, and {@code [[signature]]} before it, after it or
 * without it.
 */
final class SampleSignatures {

    private static final String CLOSE = "close";
    private static final String SIGNATURE = "signature";
    private static final List<SignedAs> MEANINGS = Stream.of(SignedAs.values())
            .filter(meaning -> meaning != SignedAs.OTHER)
            .toList();

    private SampleSignatures() {}

    /** In the order they stand in the file. */
    static List<Event> read(TableKeys sample) {
        Optional<RawTable> close = sample.ifAny(CLOSE, sample::table);
        List<RawTable> all = new ArrayList<>(sample.has(SIGNATURE) ? sample.tables(SIGNATURE) : List.of());
        close.ifPresent(all::add);
        return all.stream()
                .sorted(Comparator.comparingInt(table -> table.spot().line()))
                .map(table -> close.filter(closing -> closing == table).isPresent()
                        ? closed(sample.inside(CLOSE, table))
                        : signed(sample.inside(SIGNATURE, table)))
                .flatMap(Optional::stream)
                .toList();
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
