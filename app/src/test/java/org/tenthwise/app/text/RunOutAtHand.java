package org.tenthwise.app.text;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.plan.Operation;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlanBuilder;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.Section;
import org.tenthwise.model.plan.SectionSlots;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepBuilder;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/** One run-out check of limit 0.020 mm, invented, and what was read of it. */
public final class RunOutAtHand {

    private static final List<BigDecimal> FOUR =
            List.of("0", "90", "180", "270").stream().map(BigDecimal::new).toList();
    private static final List<BigDecimal> EIGHT = List.of("0", "45", "90", "135", "180", "225", "270", "315").stream()
            .map(BigDecimal::new)
            .toList();

    private final Step step;
    private final RunOutCheck check;
    private final List<Entry> entries = new ArrayList<>();

    private RunOutAtHand(Holding holding, StepClass stepClass, List<BigDecimal> angles, List<Section> sections) {
        this.check = new RunOutCheck(
                mm("0.020"),
                angles,
                holding,
                BigDecimal.ZERO,
                sections,
                new Check.Means(GaugeKind.DIAL_INDICATOR, Optional.of("IN-1"), Optional.empty()));
        this.step =
                new StepBuilder(1, 10, "Run-out", check).stepClass(stepClass).build();
        add(new Event.Begun(new PartId("X-1", "A"), "1", "", "", new PlanSource("", "")));
    }

    /** At four places of one section. */
    public static RunOutAtHand one(Holding holding) {
        return new RunOutAtHand(holding, StepClass.SET_UP, FOUR, List.of());
    }

    public static RunOutAtHand ofTheDrawing(Holding holding) {
        return new RunOutAtHand(holding, StepClass.DRAWING, FOUR, List.of());
    }

    /** At eight places of two sections, 20 and 150 from the jaws. */
    public static RunOutAtHand two(Holding holding) {
        return new RunOutAtHand(
                holding,
                StepClass.SET_UP,
                EIGHT,
                List.of(new Section("near the jaws", mm("20")), new Section("far out", mm("150"))));
    }

    public static RunOutAtHand twoOfTheDrawing(Holding holding) {
        return new RunOutAtHand(
                holding, StepClass.DRAWING, EIGHT, two(holding).check.sections());
    }

    /** At four places of two sections. */
    public static RunOutAtHand twoByFour(Holding holding) {
        return new RunOutAtHand(
                holding,
                StepClass.SET_UP,
                FOUR,
                List.of(new Section("near the jaws", mm("20")), new Section("far out", mm("150"))));
    }

    public RunOutAtHand near(String... readings) {
        return read(check.bySection().get(0).byAngle(), readings);
    }

    public RunOutAtHand nearSwept(String highest, String lowest) {
        return read(check.bySection().get(0).sweep(), highest, lowest);
    }

    public RunOutAtHand far(String... readings) {
        return read(check.bySection().get(1).byAngle(), readings);
    }

    public RunOutAtHand farSwept(String highest, String lowest) {
        SectionSlots far = check.bySection().get(1);
        return read(far.sweep(), highest, lowest);
    }

    private RunOutAtHand read(List<Slot> slots, String... readings) {
        for (int i = 0; i < readings.length; i++) {
            add(new StepEvent.ReadingTaken(1, slots.get(i).key(), mm(readings[i])));
        }
        return this;
    }

    public Plan plan() {
        return new PlanBuilder(
                        new PartId("X-1", "A"), Unit.MILLIMETRE, List.of(new Operation(10, "All")), List.of(step))
                .name("Trial")
                .build();
    }

    public Sheet sheet() {
        return Sheet.of(plan(), new Run(entries));
    }

    public Line line() {
        return sheet().line(1);
    }

    public RunOutAtHand closed() {
        add(new Event.Closed("Inspector 1", SignedAs.NOT_ACCEPTED));
        return this;
    }

    public RunOutAtHand signedFor() {
        add(new StepEvent.DispositionSigned(
                1,
                line().step().stepClass() == StepClass.DRAWING ? Disposition.USE_AS_IS : Disposition.CARRY_ON,
                "Turned true later.",
                "Foreman 1",
                Optional.empty()));
        return this;
    }

    public RunOutFinding finding() {
        return (RunOutFinding) line().finding();
    }

    private void add(Event event) {
        entries.add(new Entry(
                entries.size() + 1L, "r", OffsetDateTime.parse("2026-11-25T07:31:00+01:00"), "Setter 1", event));
    }

    private static Written mm(String figure) {
        return Written.of(new BigDecimal(figure), Unit.MILLIMETRE);
    }
}
