package org.tenthwise.model.record;

import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.plan.Instances;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.Operation;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlanBuilder;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepBuilder;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.plan.TemperatureAsked;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.TemperatureRange;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Message;

/** A plan made of the given checks, numbered from 1, and a run on it. In millimetres. */
final class Bench {

    /** A shop of 18 to 25 °C, a part of bronze and gauges of steel. */
    static final ThermalData BRONZE = new ThermalData(
            new ThermalData.Growth(Expansion.of("16.2"), Message.of("as-said", "the plan")),
            new ThermalData.Growth(Expansion.of("11.5"), Message.of("as-said", "the plan")),
            new TemperatureRange(Celsius.of("18"), Celsius.of("25")),
            TemperatureScale.CELSIUS);

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-25T07:31:00+01:00");

    private final List<Step> steps = new ArrayList<>();
    private final List<Entry> entries = new ArrayList<>();
    private Optional<ThermalData> climate = Optional.empty();
    private OffsetDateTime at = AT;
    private String by = "Setter 1";

    Bench() {
        did(new Event.Begun(new PartId("X-1", "A"), "1", "", "", new PlanSource("", "")));
    }

    /** In a shop like that; every step put down after it asks for temperatures. */
    Bench in(ThermalData shop) {
        climate = Optional.of(shop);
        return this;
    }

    /** A step that asks for no temperature, whatever the shop. */
    Bench stepNotAsking(Check check) {
        return step(check, TemperatureAsked.NEVER);
    }

    Bench step(Check check, Integer... hold) {
        int number = steps.size() + 1;
        steps.add(new StepBuilder(number, 10, "Step " + number, check)
                .hold(List.of(hold))
                .temperatureAsked(climate.isPresent() ? TemperatureAsked.WHERE_IT_MATTERS : TemperatureAsked.NEVER)
                .build());
        return this;
    }

    /** A step that looks after so many alike. */
    Bench several(Check check, int count) {
        int number = steps.size() + 1;
        steps.add(new StepBuilder(number, 10, "Step " + number, check)
                .drawing(new OnDrawing(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        "",
                        Optional.empty(),
                        new Instances(count, Optional.empty(), Instances.Report.EACH),
                        Optional.empty()))
                .build());
        return this;
    }

    Bench step(Check check, TemperatureAsked temperatureAsked) {
        int number = steps.size() + 1;
        steps.add(new StepBuilder(number, 10, "Step " + number, check)
                .temperatureAsked(temperatureAsked)
                .build());
        return this;
    }

    /** What the drawing says of the step put down last, and what that step is to the drawing. */
    Bench drawn(OnDrawing drawing, StepClass stepClass) {
        int last = steps.size() - 1;
        steps.set(
                last,
                new StepBuilder(steps.get(last))
                        .drawing(drawing)
                        .stepClass(stepClass)
                        .build());
        return this;
    }

    /** Temperatures of part and gauge at a step. */
    Bench at(int step, String part, String gauge) {
        return did(new StepEvent.TemperatureTaken(step, MeasuredBody.PART, Degrees.of(part, CELSIUS)))
                .did(new StepEvent.TemperatureTaken(step, MeasuredBody.GAUGE, Degrees.of(gauge, CELSIUS)));
    }

    Bench did(Event event) {
        entries.add(new Entry(entries.size() + 1, "r", at, by, event));
        return this;
    }

    /** What happens from here on happens so many minutes later, and another person enters it. */
    Bench later(int minutes, String person) {
        at = at.plusMinutes(minutes);
        by = person;
        return this;
    }

    /** Place in the ledger of what happened last. */
    long last() {
        return entries.size();
    }

    /** Readings for the slots of a step, in order. */
    Bench read(int step, String... typed) {
        Check check = steps.get(step - 1).check();
        for (int i = 0; i < typed.length; i++) {
            did(new StepEvent.ReadingTaken(step, check.slots().get(i).key(), mm(typed[i])));
        }
        return this;
    }

    /** The same, each in a unit of its own. */
    Bench read(int step, Written... typed) {
        Check check = steps.get(step - 1).check();
        for (int i = 0; i < typed.length; i++) {
            did(new StepEvent.ReadingTaken(step, check.slots().get(i).key(), typed[i]));
        }
        return this;
    }

    Sheet sheet() {
        Plan plan = new PlanBuilder(new PartId("X-1", "A"), Unit.MILLIMETRE, List.of(new Operation(10, "All")), steps)
                .name("Trial")
                .climate(climate)
                .build();
        return Sheet.of(plan, new Run(entries));
    }

    Finding finding(int step) {
        return sheet().line(step).finding();
    }

    static SizeCheck size(Feature feature, String lower, String upper, Combine combine, int places) {
        return new SizeCheck(
                feature,
                Limits.between(mm(lower), mm(upper)),
                places(places),
                1,
                combine,
                true,
                mm("0"),
                with(GaugeKind.MICROMETER));
    }

    static RunOutCheck runOut(String limit, int jaws, String... angles) {
        return new RunOutCheck(
                mm(limit),
                List.of(angles).stream().map(BigDecimal::new).toList(),
                Holding.ofJaws(jaws),
                BigDecimal.ZERO,
                List.of(),
                with(GaugeKind.DIAL_INDICATOR));
    }

    static Check.Means with(GaugeKind kind) {
        return new Check.Means(kind, Optional.empty(), Optional.empty());
    }

    static List<Place> places(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> Place.named("place " + i))
                .toList();
    }

    /** Pitch diameters over three wires. */
    static OverWiresCheck wires(ScrewThread thread, String lower, String upper, Optional<String> root, int places) {
        return new OverWiresCheck(
                thread,
                Limits.between(mm(lower), mm(upper)),
                root.map(Bench::mm),
                Optional.empty(),
                places(places),
                1,
                Combine.EACH,
                true,
                mm("0"),
                with(GaugeKind.MICROMETER_OVER_WIRES));
    }

    static Setting wires(String certified) {
        return Setting.overWires(
                new Gauge("W-1", GaugeKind.MICROMETER_OVER_WIRES, Optional.empty()), "set", mm(certified));
    }

    static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }

    static Length length(String figure) {
        return mm(figure).length();
    }
}
