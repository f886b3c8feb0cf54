package org.tenthwise.checklists.rules;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.TomlReading;
import org.tenthwise.checklists.format.TomlText;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.OccasionSaid;
import org.tenthwise.model.words.Message;

/** Reads a readings file against the plan it belongs to: a sample, or every problem in it. */
public final class SampleReader {

    private static final String STEP = "step";
    private static final String NUMBER = "number";
    private static final String LOT = "lot";
    private static final String NO_LOT = "no_lot";

    private final TomlText toml;

    public SampleReader() {
        this.toml = new TomlText();
    }

    public SampleReading read(String text, Plan plan) {
        TomlReading reading = toml.read(text);
        if (reading instanceof TomlReading.Unreadable unreadable) {
            return new SampleReading.Bad(Problems.of(unreadable));
        }
        Problems problems = new Problems();
        Optional<ReadingsFile> sample = sample(new TableKeys(((TomlReading.Readable) reading).top(), problems), plan);
        return sample.isPresent() ? new SampleReading.Good(sample.get()) : new SampleReading.Bad(problems.sorted());
    }

    private static Optional<ReadingsFile> sample(TableKeys keys, Plan plan) {
        if (!HeaderRules.isOfThisFormat(keys)) {
            return Optional.empty();
        }
        judgePart(keys, plan.part());
        Optional<String> serial = keys.text("serial");
        boolean noLot = keys.ifAny(NO_LOT, keys::truth).orElse(false);
        Optional<String> lot = noLot ? keys.ifAny(LOT, keys::text) : keys.text(LOT);
        if (noLot && lot.isPresent()) {
            keys.problem(NO_LOT, "readings.lot");
        }
        Optional<String> machine = keys.text("machine");
        SampleEvents events = new SampleEvents();
        SampleMachine.read(keys, machine, events);
        Optional<String> by = keys.text("by");
        Optional<OccasionSaid> occasion = SampleOccasion.read(keys, plan);
        SampleGauges gauges = SampleGauges.read(keys, plan);
        events.addAll(gauges.known());
        steps(keys, plan, gauges, events);
        SampleSignatures.read(keys, plan, serial).forEach(events::add);
        Expectations expected = Expectations.read(keys, plan);
        keys.finish();
        return keys.built(() -> new ReadingsFile(
                new Event.Begun(
                        plan.part(), serial.orElseThrow(), lot.orElse(""), machine.orElseThrow(), plan.source(), noLot),
                by.orElseThrow(),
                events.events(),
                events.meant(),
                expected.standings(),
                expected.outcome(),
                occasion.orElseThrow()));
    }

    private static void judgePart(TableKeys keys, PartId planned) {
        Optional<String> number = keys.text("part");
        Optional<String> revision = keys.text("revision");
        if (number.isPresent() && revision.isPresent() && !planned.equals(new PartId(number.get(), revision.get()))) {
            keys.problem(
                    "part", "readings.other-part", number.get(), revision.get(), planned.number(), planned.revision());
        }
    }

    private static void steps(TableKeys sample, Plan plan, SampleGauges gauges, SampleEvents events) {
        Set<Integer> seen = new HashSet<>();
        int furthest = 0;
        for (RawTable table : sample.tables(STEP)) {
            TableKeys unnamed = sample.inside(Message.of("plan.in.check-unnumbered"), table);
            Optional<Integer> number = unnamed.whole(NUMBER);
            TableKeys keys = number.map(n -> unnamed.about(Message.of("plan.in.check", n)))
                    .orElse(unnamed);
            Optional<Step> step = number.flatMap(
                    n -> plan.steps().stream().filter(s -> s.number() == n).findFirst());
            if (number.isPresent() && step.isEmpty()) {
                keys.problem(NUMBER, "readings.step.unknown");
            }
            if (step.isPresent()) {
                int own = number.orElseThrow();
                if (!seen.add(own)) {
                    keys.problem(NUMBER, "readings.step.twice");
                } else if (own < furthest && step.get().check().isInOrder()) {
                    keys.problem(NUMBER, "readings.step.order", furthest);
                }
                furthest = step.get().check().isInOrder() ? Math.max(furthest, own) : furthest;
                new SampleStep(keys, step.get(), plan).read(gauges, events);
            }
        }
    }
}
