package org.tenthwise.app.history;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.words.Word;

/** The plainest way to say whether something is looked for: each filter by itself, in what the entries tell. */
final class SoughtInEntries {

    private SoughtInEntries() {}

    /** What is said of who, when and by which gauges; the day is that of the place where it happened. */
    static boolean isBy(Sought sought, String person, OffsetDateTime at, Stream<ReadingSummary.GaugeMark> gauges) {
        List<String> marks = gauges.map(ReadingSummary.GaugeMark::mark).toList();
        LocalDate day = at.toLocalDate();
        return isSame(sought.of(SoughtBy.PERSON), person)
                && sought.of(SoughtBy.GAUGE).map(marks::contains).orElse(true)
                && sought.of(SoughtBy.FROM)
                        .map(LocalDate::parse)
                        .map(from -> !day.isBefore(from))
                        .orElse(true)
                && sought.of(SoughtBy.TO)
                        .map(LocalDate::parse)
                        .map(to -> !day.isAfter(to))
                        .orElse(true);
    }

    /** A characteristic nobody has found has neither person nor day nor gauge. */
    static boolean isLookedFor(Sought sought, RunFacts run, RunDigest.OfStep step) {
        boolean byWhom = Stream.of(SoughtBy.PERSON, SoughtBy.GAUGE, SoughtBy.FROM, SoughtBy.TO)
                .anyMatch(by -> sought.of(by).isPresent());
        return isOfRunAndCheck(sought, run, step.step())
                && step.step()
                        .found()
                        .map(found -> isBy(
                                sought,
                                found.by(),
                                found.at(),
                                Stream.concat(
                                        found.gauge().stream(),
                                        step.readings().stream()
                                                .filter(reading ->
                                                        reading.struck().isEmpty())
                                                .flatMap(reading -> reading.gauge().stream()))))
                        .orElse(!byWhom);
    }

    static boolean isOfRunAndCheck(Sought sought, RunFacts run, StepSummary step) {
        return sought.of(SoughtBy.PART_NUMBER).map(run.part()::equals).orElse(true)
                && isSame(sought.of(SoughtBy.SERIAL), run.serial())
                && isSame(sought.of(SoughtBy.LOT), run.lot())
                && isSame(sought.of(SoughtBy.MACHINE), run.machine())
                && isSame(sought.of(SoughtBy.KIND), Word.of(run.kind().purpose()))
                && isSame(sought.of(SoughtBy.VERDICT), Word.of(step.verdict().standing()))
                && sought.of(SoughtBy.CHARACTERISTIC)
                        .map(which ->
                                which.equals(String.valueOf(step.number())) || which.equalsIgnoreCase(step.name()))
                        .orElse(true)
                && isSame(sought.of(SoughtBy.BALLOON), step.balloon().orElse(""))
                && isSame(sought.of(SoughtBy.DESIGNATOR), step.designator().orElse(""));
    }

    private static boolean isSame(Optional<String> wanted, String there) {
        return wanted.map(there::equalsIgnoreCase).orElse(true);
    }
}
