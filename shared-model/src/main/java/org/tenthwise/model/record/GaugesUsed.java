package org.tenthwise.model.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;

/**
 * The gauges a run was read with, and what they were set on, each with its certificate and the checks it was used at.
 * What was struck out was read with none.
 *
 * <p>A gauge is past its due day at a reading made on a later day, as the clock of the station had it; a master and
 * wires at a gauge that was set on them on a later day. That says nothing against the part, and nobody can tell what it
 * means without the next certificate.
 */
public final class GaugesUsed {

    /**
     * One of them under one certificate.
     *
     * @param steps checks it was used at, earlier rounds too
     * @param pastDue the first entry of those that count now which was made past the due day; absent where none was
     * @param pastDueAt checks of which what counts now was made so
     */
    public record Used(
            GaugeOrMaster what,
            Calibration calibration,
            SortedSet<Integer> steps,
            Optional<Entry> pastDue,
            SortedSet<Integer> pastDueAt) {}

    private record Key(GaugeOrMaster what, Calibration calibration) {}

    private final Run run;
    private final Map<Key, Used> used = new LinkedHashMap<>();

    private GaugesUsed(Run run) {
        this.run = run;
    }

    /** All of them, in the order of the checks. */
    public static List<Used> in(Sheet sheet) {
        GaugesUsed of = new GaugesUsed(sheet.run());
        sheet.lines().forEach(of::add);
        return List.copyOf(of.used.values());
    }

    /** Those past their due day. */
    public static List<Used> pastDue(Sheet sheet) {
        return sheet.run().calibrations().areDue()
                ? in(sheet).stream().filter(one -> one.pastDue().isPresent()).toList()
                : List.of();
    }

    /** Those past their due day with which what counts at one check was read. */
    public static List<Used> pastDue(Sheet sheet, Line line) {
        if (!sheet.run().calibrations().areDue()) {
            return List.of();
        }
        GaugesUsed of = new GaugesUsed(sheet.run());
        of.add(line);
        return of.used.values().stream()
                .filter(one -> one.pastDue().isPresent())
                .toList();
    }

    /** Those with which what counts at one check was read, and what they were set on; none of an earlier round. */
    public static List<Used> behind(Sheet sheet, Line line) {
        GaugesUsed of = new GaugesUsed(sheet.run());
        readWith(line.pass()).filter(entry -> counts(line.pass(), entry)).forEach(entry -> of.add(line, entry, true));
        return List.copyOf(of.used.values());
    }

    private void add(Line line) {
        for (Pass pass : line.passes()) {
            boolean inHand = pass.number() == line.pass().number();
            readWith(pass).forEach(entry -> add(line, entry, inHand && counts(pass, entry)));
        }
    }

    private static Stream<Entry> readWith(Pass pass) {
        return Stream.concat(
                pass.readings().stream()
                        .filter(reading -> reading.struck().isEmpty())
                        .map(Pass.Reading::entry),
                pass.answers().stream()
                        .filter(answering -> answering.struck().isEmpty())
                        .filter(answering -> answering.question().byLimitGauge())
                        .map(Pass.Answering::entry));
    }

    private static boolean counts(Pass pass, Entry entry) {
        return pass.standing().values().stream()
                        .anyMatch(reading -> reading.entry().equals(entry))
                || pass.answers().stream()
                        .filter(answering -> answering.entry().equals(entry))
                        .anyMatch(answering ->
                                pass.answering(answering.question().today()).equals(Optional.of(answering)));
    }

    private void add(Line line, Entry read, boolean counts) {
        MadeWith.of(run, line.step(), read).forEach(with -> add(line, with, counts));
    }

    private void add(Line line, MadeWith with, boolean counts) {
        int step = line.step().number();
        boolean past = counts && with.isPast();
        used.merge(
                new Key(with.what(), with.calibration()),
                new Used(
                        with.what(),
                        with.calibration(),
                        new TreeSet<>(List.of(step)),
                        Optional.of(with.at()).filter(any -> past),
                        new TreeSet<>(past ? List.of(step) : List.of())),
                GaugesUsed::both);
    }

    private static Used both(Used one, Used more) {
        List<Entry> past = new ArrayList<>();
        Stream.of(one, more).forEach(of -> of.pastDue().ifPresent(past::add));
        return new Used(
                one.what(),
                one.calibration(),
                together(one.steps(), more.steps()),
                past.stream().min(Comparator.comparing(Entry::seq)),
                together(one.pastDueAt(), more.pastDueAt()));
    }

    private static SortedSet<Integer> together(SortedSet<Integer> one, SortedSet<Integer> more) {
        SortedSet<Integer> all = new TreeSet<>(one);
        all.addAll(more);
        return all;
    }
}
