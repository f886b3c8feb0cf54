package org.tenthwise.checklists.rules;

import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/**
 * The signatures of a readings file: {@code [close]}, which is one, and {@code [[signature]]} before it, after it or
 * without it; and among them the papers that came when all else was done, {@code [[document]]}.
 */
final class SampleSignatures {

    private static final String CLOSE = "close";
    private static final String SIGNATURE = "signature";
    private static final String STEP = "step";
    private static final String FIGURES = "figures";
    private static final String TABLE = "csv";
    private static final List<SignedAs> MEANINGS = Stream.of(SignedAs.values())
            .filter(meaning -> meaning != SignedAs.OTHER)
            .toList();

    private SampleSignatures() {}

    /** In the order they stand in the file. */
    static List<Event> read(TableKeys sample, Plan plan, Optional<String> serial) {
        Map<RawTable, Function<RawTable, List<? extends Event>>> all = new IdentityHashMap<>();
        sample.ifAny(CLOSE, sample::table)
                .ifPresent(table -> all.put(
                        table, of -> closed(sample.inside(CLOSE, of)).stream().toList()));
        tables(sample, SIGNATURE)
                .forEach(table -> all.put(table, of -> signed(sample.inside(SIGNATURE, of)).stream()
                        .toList()));
        tables(sample, SampleDocument.DOCUMENT)
                .forEach(table -> all.put(table, of -> given(sample.inside(SampleDocument.DOCUMENT, of), plan).stream()
                        .toList()));
        tables(sample, FIGURES)
                .forEach(table -> all.put(table, of -> figures(sample.inside(FIGURES, of), plan, serial)));
        return all.entrySet().stream()
                .sorted(Comparator.comparingInt(entry -> entry.getKey().spot().line()))
                .<Event>flatMap(entry -> entry.getValue().apply(entry.getKey()).stream())
                .toList();
    }

    private static List<RawTable> tables(TableKeys sample, String key) {
        return sample.ifAny(key, any -> Optional.of(sample.tables(any))).orElse(List.of());
    }

    /** A paper that came when all else was done. */
    private static Optional<Event> given(TableKeys keys, Plan plan) {
        Optional<Step> step = keys.whole(STEP).flatMap(number -> plan.steps().stream()
                .filter(known ->
                        known.number() == number && known.check().asDocument().isPresent())
                .findFirst());
        if (step.isEmpty() && keys.has(STEP)) {
            keys.problem(STEP, "readings.document.step");
        }
        Optional<StepEvent.DocumentGiven> given = step.flatMap(of -> new SampleDocument(plan, of).read(keys));
        if (step.isPresent()) {
            keys.finish();
        }
        return given.map(event -> event);
    }

    /** A table of figures, each check of it a document. */
    private static List<Event> figures(TableKeys keys, Plan plan, Optional<String> serial) {
        Optional<SampleDocument.Report> report = SampleDocument.report(keys);
        Optional<FiguresFile.Reading> read = keys.prose(TABLE).map(text -> FiguresFile.read(text, plan, serial));
        read.ifPresent(reading -> {
            if (reading instanceof FiguresFile.Reading.Bad bad) {
                bad.problems()
                        .forEach(problem ->
                                keys.problem(TABLE, "readings.figures.line", problem.line(), problem.what()));
            }
        });
        keys.finish();
        return keys.built(() -> ((FiguresFile.Reading.Good) read.orElseThrow())
                        .figures().entrySet().stream()
                                .<Event>map(given -> report.orElseThrow().giving(given.getKey(), given.getValue()))
                                .toList())
                .orElse(List.of());
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
