package org.tenthwise.app.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.history.History;
import org.tenthwise.app.store.CouldNotRead;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;

/**
 * The certified sizes of masters and wires as they were typed before, to be offered: of the same gauge on the same
 * master or wires, for another of the same nominal has its own. In this run that of the last setting that counts; else
 * of the latest run before in which it was set on them, and none if that setting was struck out.
 */
final class CertifiedSizes {

    /**
     * A certified size as it was typed.
     *
     * @param part serial of the part it was typed at; absent where that is the one in hand
     */
    record Known(Written size, Optional<String> part) {}

    private record Sought(String gauge, GaugeKind kind, String reference) {}

    private final RunBook book;
    private final Map<Sought, Optional<Known>> before = new HashMap<>();

    CertifiedSizes(RunBook book) {
        this.book = book;
    }

    /** @param unit one typed in another is not offered */
    Optional<Known> known(String gauge, GaugeKind kind, String reference, Unit unit) {
        Sought sought = new Sought(gauge, kind, reference);
        return last(book.run().gauges().settings(), sought)
                .flatMap(CertifiedSizes::size)
                .map(size -> new Known(size, Optional.empty()))
                .or(() -> before.computeIfAbsent(sought, this::inRunsBefore))
                .filter(known -> known.size().unit().equals(unit));
    }

    /** What was found in other runs is looked up again. */
    void forget() {
        before.clear();
    }

    /** What is in hand is never held up by it: where it cannot be read, nothing is offered. */
    private Optional<Known> inRunsBefore(Sought sought) {
        try {
            return lookUp(sought);
        } catch (CouldNotRead | IllegalStateException e) {
            return Optional.empty();
        }
    }

    private Optional<Known> lookUp(Sought sought) {
        History history = book.kept().history();
        List<String> runs = new ArrayList<>(history.runsWith(sought.kind(), sought.gauge()));
        runs.retainAll(history.runsSetOn(sought.reference()));
        runs.remove(book.run().id());
        Collections.reverse(runs);
        return runs.stream()
                .flatMap(run -> inRun(run, sought).stream())
                .findFirst()
                .flatMap(known -> known);
    }

    /** Absent where it was not set on them there; empty inside where that was struck out. */
    private Optional<Optional<Known>> inRun(String id, Sought sought) {
        Run run = new Run(book.kept().entries(id));
        List<Entry> counting = run.gauges().settings();
        List<Entry> all = run.entries().stream()
                .filter(entry -> entry.event().as(StepEvent.GaugeSet.class).isPresent())
                .toList();
        return last(all, sought).map(entry -> Optional.of(entry)
                .filter(counting::contains)
                .flatMap(CertifiedSizes::size)
                .map(size -> new Known(size, Optional.of(run.begun().serial()))));
    }

    private static Optional<Entry> last(List<Entry> settings, Sought sought) {
        return settings.stream()
                .filter(entry -> isOf(StepEvent.GaugeSet.in(entry).setting(), sought))
                .reduce((earlier, later) -> later);
    }

    private static boolean isOf(Setting setting, Sought sought) {
        return setting.gauge().id().equals(sought.gauge())
                && setting.gauge().kind().equals(sought.kind())
                && setting.reference().filter(sought.reference()::equals).isPresent();
    }

    private static Optional<Written> size(Entry set) {
        return StepEvent.GaugeSet.in(set).setting().certified();
    }
}
