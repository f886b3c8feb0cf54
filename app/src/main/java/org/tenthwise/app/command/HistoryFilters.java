package org.tenthwise.app.command;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.PointQuery;
import org.tenthwise.app.history.ReadingQuery;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Word;
import picocli.CommandLine.Option;

/** What a history can be narrowed to. */
final class HistoryFilters {

    @Option(names = "--part", paramLabel = "P")
    private Optional<String> part = Optional.empty();

    @Option(names = "--serial", paramLabel = "S")
    private Optional<String> serial = Optional.empty();

    @Option(names = "--lot", paramLabel = "L")
    private Optional<String> lot = Optional.empty();

    @Option(names = "--machine", paramLabel = "M")
    private Optional<String> machine = Optional.empty();

    @Option(names = "--gauge", paramLabel = "G")
    private Optional<String> gauge = Optional.empty();

    @Option(names = "--person", paramLabel = "N")
    private Optional<String> person = Optional.empty();

    @Option(names = "--from", paramLabel = "DAY")
    private Optional<LocalDate> from = Optional.empty();

    @Option(names = "--to", paramLabel = "DAY")
    private Optional<LocalDate> to = Optional.empty();

    @Option(names = "--verdict", paramLabel = "V")
    private Optional<String> verdict = Optional.empty();

    @Option(names = "--kind", paramLabel = "KIND")
    private Optional<String> kind = Optional.empty();

    @Option(names = "--characteristic", paramLabel = "C")
    private Optional<String> characteristic = Optional.empty();

    @Option(names = "--balloon", paramLabel = "B")
    private Optional<String> balloon = Optional.empty();

    @Option(names = "--designator", paramLabel = "D")
    private Optional<String> designator = Optional.empty();

    /** Of single readings; what it does not narrow, {@link #alsoNarrowed} does. */
    ReadingQuery readings() {
        return new ReadingQuery(part, serial, gauge, person, from, to, characteristic, balloon, designator);
    }

    History.HistoryRow alsoNarrowed(History.HistoryRow rows) throws CouldNotRun {
        Optional<VerdictKind> wanted = verdict();
        Optional<Purpose> begunFor = kind();
        return (run, step, reading) -> {
            if (begunFor.map(purpose -> purpose == run.kind().purpose()).orElse(true)
                    && lot.map(run.lot()::equalsIgnoreCase).orElse(true)
                    && machine.map(run.machine()::equalsIgnoreCase).orElse(true)
                    && wanted.map(kind -> kind == step.verdict().standing()).orElse(true)) {
                rows.take(run, step, reading);
            }
        };
    }

    PointQuery points() throws CouldNotRun {
        return new PointQuery(
                part,
                serial,
                lot,
                machine,
                person,
                gauge,
                from,
                to,
                verdict(),
                kind(),
                characteristic,
                balloon,
                designator);
    }

    private Optional<VerdictKind> verdict() throws CouldNotRun {
        if (verdict.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Choices.of(VerdictKind.class, verdict.get(), "--verdict"));
    }

    private Optional<Purpose> kind() throws CouldNotRun {
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Choices.of(Purpose.class, kind.get(), "--kind"));
    }

    /** @throws CouldNotRun where nothing can lie between the days */
    void check() throws CouldNotRun {
        if (from.isPresent() && to.isPresent() && from.get().isAfter(to.get())) {
            throw new CouldNotRun(Message.of("command.history.days-turned-round", from.get(), to.get()));
        }
    }

    /** Words that stand for choices. */
    static final class Choices {

        private Choices() {}

        /** @throws CouldNotRun where there is none of that name */
        static <E extends Enum<E>> E of(Class<E> choices, String word, String option) throws CouldNotRun {
            Optional<E> found = Word.find(choices, word);
            if (found.isEmpty()) {
                throw new CouldNotRun(Message.of(
                        "command.history.no-choice",
                        option,
                        word,
                        Arrays.stream(choices.getEnumConstants()).map(Word::of).toList()));
            }
            return found.get();
        }
    }
}
