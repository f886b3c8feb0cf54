package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.words.Message;

/** The gauges of a readings file, and how one of them is set for a step. */
final class SampleGauges {

    static final String GAUGE = "gauge";
    private static final String SENSE = "sense";
    private static final String MASTER = "master";
    private static final String WIRES = "wires";
    private static final String MARK = "mark";
    /** Says of a figure that it is meant although far off. */
    static final String KEEP = "keep";

    private final Map<String, Gauge> gauges;
    private final Map<GaugeOrMaster, Calibration> calibrations = new LinkedHashMap<>();

    /**
     * A gauge as it was set for a step.
     *
     * @param meant whether its wires are meant as they are, however far from those of the plan
     */
    record Laid(Setting setting, boolean meant) {}

    private SampleGauges(Map<String, Gauge> gauges) {
        this.gauges = gauges;
    }

    /** Of kinds that are known everywhere, and of those that the plan asks for. */
    static SampleGauges read(TableKeys sample, Plan plan) {
        List<GaugeKind> kinds = Stream.concat(
                        GaugeKind.KNOWN.stream(),
                        plan.steps().stream()
                                .flatMap(step -> step.check().means().stream())
                                .map(Check.Means::kind))
                .distinct()
                .toList();
        SampleGauges read = new SampleGauges(new LinkedHashMap<>());
        Set<String> marks = new HashSet<>();
        for (RawTable table : tables(sample, GAUGE)) {
            TableKeys unnamed = sample.inside(GAUGE, table);
            Optional<String> id = unnamed.text("id");
            TableKeys keys = id.map(mark -> unnamed.about(Message.of("readings.in.gauge", mark)))
                    .orElse(unnamed);
            id.filter(mark -> !marks.add(mark)).ifPresent(mark -> keys.problem("id", "readings.gauge.twice"));
            Calibration calibration = SampleCalibration.read(keys);
            gauge(keys, kinds, id).ifPresent(gauge -> {
                read.gauges.putIfAbsent(gauge.id(), gauge);
                read.calibrations.putIfAbsent(GaugeOrMaster.of(gauge), calibration);
            });
        }
        tables(sample, MASTER).forEach(table -> read.master(sample.inside(MASTER, table)));
        return read;
    }

    private static List<RawTable> tables(TableKeys sample, String key) {
        List<RawTable> tables = sample.has(key) ? sample.tables(key) : List.of();
        sample.ifAny(key, any -> Optional.empty());
        return tables;
    }

    /** A ring, a block or wires with a certificate. */
    private void master(TableKeys keys) {
        Optional<String> mark = keys.text(MARK);
        Calibration calibration = SampleCalibration.read(keys);
        keys.finish();
        mark.ifPresent(id -> {
            if (calibrations.putIfAbsent(GaugeOrMaster.master(id), calibration) != null) {
                keys.problem(MARK, "readings.master.twice", id);
            }
        });
    }

    private static Optional<Gauge> gauge(TableKeys keys, List<GaugeKind> kinds, Optional<String> id) {
        Optional<GaugeKind> kind = keys.word("kind", kinds, GaugeKind::key);
        Optional<ReadingDirection> sense =
                keys.ifAny(SENSE, key -> keys.word(key, List.of(ReadingDirection.values()), SampleGauges::word));
        boolean compares =
                kind.filter(k -> k.reference() == GaugeKind.Reference.MASTER).isPresent();
        if (kind.isPresent() && compares != keys.has(SENSE)) {
            keys.problem(
                    compares ? "kind" : SENSE,
                    compares ? "readings.gauge.no-sense" : "readings.gauge.sense",
                    kind.get().key());
        }
        keys.finish();
        return id.flatMap(mark -> keys.built(() -> new Gauge(mark, kind.orElseThrow(), sense)));
    }

    private static String word(ReadingDirection sense) {
        return sense == ReadingDirection.RISES_WITH_SIZE ? "rises" : "falls";
    }

    List<Event> known() {
        List<Event> known = new ArrayList<>();
        gauges.values().forEach(gauge -> known.add(new ShopEvent.GaugeKnown(gauge)));
        calibrations.forEach((what, calibration) -> {
            if (calibration.isStated()) {
                known.add(new ShopEvent.CalibrationKnown(what, calibration, false));
            }
        });
        return known;
    }

    /** The gauge of a step as it was set; absent where a problem was noted. */
    Optional<Laid> setting(TableKeys step, Check.Means means, Unit unit) {
        Optional<String> id = step.text(GAUGE);
        Optional<Gauge> gauge = id.map(gauges::get);
        if (id.isPresent() && gauge.isEmpty()) {
            step.problem(GAUGE, "readings.gauge.unknown", id.get());
        }
        gauge.filter(g -> !g.kind().equals(means.kind()))
                .ifPresent(g -> step.problem(
                        GAUGE,
                        "readings.gauge.other-kind",
                        means.kind().key(),
                        g.id(),
                        g.kind().key()));
        return switch (means.kind().reference()) {
            case NONE -> gauge.filter(g -> g.kind().equals(means.kind())).map(g -> new Laid(Setting.direct(g), false));
            case MASTER ->
                onMaster(step, gauge.filter(g -> g.kind().equals(means.kind())), unit)
                        .map(set -> new Laid(set, false));
            case WIRES -> overWires(step, gauge.filter(g -> g.kind().equals(means.kind())), unit);
        };
    }

    private static Optional<Setting> onMaster(TableKeys step, Optional<Gauge> gauge, Unit unit) {
        return step.table(MASTER).flatMap(table -> {
            TableKeys keys = step.inside(MASTER, table);
            Optional<String> mark = keys.text(MARK);
            Unit read = QuotedFigures.unit(keys, unit);
            Optional<Written> certified = certified(keys, read);
            Optional<Written> zero = QuotedFigures.figure(keys, "zero", read);
            keys.finish();
            return gauge.flatMap(g -> keys.built(
                    () -> Setting.onMaster(g, mark.orElseThrow(), certified.orElseThrow(), zero.orElseThrow())));
        });
    }

    private static Optional<Laid> overWires(TableKeys step, Optional<Gauge> gauge, Unit unit) {
        return step.table(WIRES).flatMap(table -> {
            TableKeys keys = step.inside(WIRES, table);
            Optional<String> mark = keys.text(MARK);
            Optional<Written> certified = certified(keys, QuotedFigures.unit(keys, unit));
            boolean meant = keys.ifAny(KEEP, keys::truth).orElse(false);
            keys.finish();
            return gauge.flatMap(g -> keys.built(
                    () -> new Laid(Setting.overWires(g, mark.orElseThrow(), certified.orElseThrow()), meant)));
        });
    }

    private static Optional<Written> certified(TableKeys keys, Unit unit) {
        Optional<Written> certified = QuotedFigures.figure(keys, "certified", unit);
        certified
                .filter(size -> size.figure().signum() <= 0)
                .ifPresent(size -> keys.problem("certified", "plan.above-zero", "certified", size));
        return certified;
    }
}
