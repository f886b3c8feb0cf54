package org.tenthwise.app.command;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.history.SoughtBy;
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

    /** @throws CouldNotRun where there is no such verdict or kind of run */
    Sought sought() throws CouldNotRun {
        Map<SoughtBy, String> by = new EnumMap<>(SoughtBy.class);
        part.ifPresent(text -> by.put(SoughtBy.PART_NUMBER, text));
        serial.ifPresent(text -> by.put(SoughtBy.SERIAL, text));
        lot.ifPresent(text -> by.put(SoughtBy.LOT, text));
        machine.ifPresent(text -> by.put(SoughtBy.MACHINE, text));
        gauge.ifPresent(text -> by.put(SoughtBy.GAUGE, text));
        person.ifPresent(text -> by.put(SoughtBy.PERSON, text));
        from.ifPresent(day -> by.put(SoughtBy.FROM, day.toString()));
        to.ifPresent(day -> by.put(SoughtBy.TO, day.toString()));
        characteristic.ifPresent(text -> by.put(SoughtBy.CHARACTERISTIC, text));
        balloon.ifPresent(text -> by.put(SoughtBy.BALLOON, text));
        designator.ifPresent(text -> by.put(SoughtBy.DESIGNATOR, text));
        if (verdict.isPresent()) {
            by.put(SoughtBy.VERDICT, Word.of(Choices.of(VerdictKind.class, verdict.get(), "--verdict")));
        }
        if (kind.isPresent()) {
            by.put(SoughtBy.KIND, Word.of(Choices.of(Purpose.class, kind.get(), "--kind")));
        }
        return new Sought(by);
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
