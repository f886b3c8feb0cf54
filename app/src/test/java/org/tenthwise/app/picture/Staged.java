package org.tenthwise.app.picture;

import static org.tenthwise.model.quantity.TemperatureScale.CELSIUS;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** A demo part with a few invented readings of its own. */
final class Staged {

    private final Plan plan;
    private final List<Entry> entries = new ArrayList<>();

    private Staged(DemoPart part) {
        this.plan = part.plan();
        entries.add(DemoRun.of(part == DemoPart.SCREW_CARRIER ? "LG-2207-C-pass" : "WB-118-B-pass")
                .sheet()
                .run()
                .entries()
                .get(0));
    }

    static Staged carrier() {
        return new Staged(DemoPart.SCREW_CARRIER);
    }

    static Staged barrelEnd() {
        return new Staged(DemoPart.WINCH_BARREL_END);
    }

    private Staged happens(Event event) {
        entries.add(new Entry(
                entries.size() + 1,
                entries.get(0).run(),
                OffsetDateTime.parse("2026-11-25T09:30:00+01:00"),
                "Setter 1",
                event));
        return this;
    }

    Staged wires(int step, String certified) {
        return happens(new StepEvent.GaugeSet(
                step,
                Setting.overWires(
                        new Gauge("MC-2", GaugeKind.MICROMETER_OVER_WIRES, Optional.empty()),
                        "W-1",
                        written(certified))));
    }

    Staged master(int step, String certified) {
        return happens(new StepEvent.GaugeSet(
                step,
                Setting.onMaster(
                        new Gauge("BG-2", GaugeKind.BORE_GAUGE, Optional.of(ReadingDirection.RISES_WITH_SIZE)),
                        "MR-1",
                        written(certified),
                        written("0"))));
    }

    Staged micrometer(int step) {
        return happens(new StepEvent.GaugeSet(
                step, Setting.direct(new Gauge("MC-3", GaugeKind.MICROMETER, Optional.empty()))));
    }

    /** Part and gauge at 20 °C. */
    Staged atTwenty(int step) {
        return happens(new StepEvent.TemperatureTaken(step, MeasuredBody.PART, CELSIUS.reference()))
                .happens(new StepEvent.TemperatureTaken(step, MeasuredBody.GAUGE, CELSIUS.reference()));
    }

    Staged reads(int step, String... figures) {
        List<Slot> slots = plan.step(step).check().slots();
        for (int i = 0; i < figures.length; i++) {
            happens(new StepEvent.ReadingTaken(step, slots.get(i).key(), written(figures[i])));
        }
        return this;
    }

    /** Strikes out what happened last. */
    Staged struckOut() {
        return happens(new Event.StruckOut(entries.get(entries.size() - 1).seq(), "slipped"));
    }

    Staged closed() {
        return happens(new Event.Closed("Inspector 1", SignedAs.NOT_ACCEPTED));
    }

    Staged cut(int step) {
        return happens(new StepEvent.PassBegun(step, StepEvent.PassBegun.Why.CUT));
    }

    Staged feels(int step, Answer answer) {
        return happens(new StepEvent.Answered(step, Question.PLUG_FEELS, answer));
    }

    private Written written(String figure) {
        return new Written(figure, plan.unit());
    }

    Line line(int step) {
        return Sheet.of(plan, new Run(entries)).lines().stream()
                .filter(line -> line.step().number() == step)
                .findFirst()
                .orElseThrow();
    }

    Picture picture(int step) {
        Sheet sheet = Sheet.of(plan, new Run(entries));
        return new Pictures(Words.of(Locale.ENGLISH)).of(sheet, line(step)).orElseThrow();
    }
}
