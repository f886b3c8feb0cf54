package org.tenthwise.app.text;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Clamping;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Operation;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlanBuilder;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepBuilder;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Words;

/** A size of the work, what was read of it and said of its machine, and what is advised. */
abstract class WorkBeingCut {

    static final Words WORDS = Words.of(Locale.ENGLISH);
    static final String BORE = "BORE 30.000 30.021 0";
    static final String HOLDS =
            " With the same edge and about the same depth of cut; otherwise take half, " + "measure, take the rest.";

    final List<Event> events = new ArrayList<>();

    void counts(Register register) {
        if (register != null) {
            events.add(new ShopEvent.MachineKnown("Lathe 4", register, Aim.ByLimits.MIDDLE));
        }
    }

    void read(String sizes) {
        String[] figures = sizes.split(" ");
        for (int i = 0; i < figures.length; i++) {
            events.add(new StepEvent.ReadingTaken(
                    1, check(BORE, figures.length).slots().get(i).key(), mm(figures[i])));
        }
    }

    String advice(String size, int places) {
        return new Advice(WORDS).next(line(size, places, Optional.empty()));
    }

    Line line(String size, int places, Optional<Clamping> clamping) {
        return line(check(size, places), clamping);
    }

    Line line(SizeCheck check, Optional<Clamping> clamping, Step... after) {
        Step step = new StepBuilder(1, 10, "Size", check).clamping(clamping).build();
        Plan plan = new PlanBuilder(
                        new PartId("X-1", "A"),
                        Unit.MILLIMETRE,
                        List.of(new Operation(10, "All")),
                        Stream.concat(Stream.of(step), Stream.of(after)).toList())
                .name("Trial")
                .build();
        List<Event> all = Stream.concat(
                        Stream.of(new Event.Begun(plan.part(), "1", "", "Lathe 4", plan.source())), events.stream())
                .toList();
        List<Entry> entries = new ArrayList<>();
        all.forEach(event -> entries.add(new Entry(
                entries.size() + 1, "r", OffsetDateTime.parse("2026-11-25T07:31:00+01:00"), "Setter 1", event)));
        return Sheet.of(plan, new Run(entries)).line(1);
    }

    static SizeCheck check(String size, int places) {
        String[] parts = size.split(" ");
        Cutting cutting = new Cutting(
                Optional.empty(), parts.length > 4 ? Optional.of(mm(parts[4])) : Optional.empty(), Optional.empty());
        return new SizeCheck(
                Feature.known(parts[0].toLowerCase(Locale.ROOT)).orElseThrow(),
                Limits.between(mm(parts[1]), mm(parts[2])),
                Stream.iterate(1, i -> i + 1)
                        .limit(places)
                        .map(i -> Place.named("place " + i))
                        .toList(),
                1,
                Combine.EACH,
                true,
                mm(parts[3]),
                new Check.Means(GaugeKind.MICROMETER, Optional.empty(), Optional.empty()),
                cutting,
                Optional.empty(),
                Contact.SQUARE);
    }

    static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }
}
