package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;

/** What a readings file has for one step: the gauge as set, earlier passes, the last pass with its temperatures, remarks, a concession. */
final class SampleStep {

    private static final String PASS = "pass";
    private static final String CONCESSION = "concession";
    private static final String CARRY_ON = "carry_on";
    /** Those a person chooses; the others come by themselves. */
    private static final List<Event.PassBegun.Why> WHYS =
            Stream.of(Event.PassBegun.Why.values()).filter(Event.PassBegun.Why::isSaid).toList();

    private final Keys keys;
    private final Step step;
    private final Plan plan;

    SampleStep(Keys keys, Step step, Plan plan) {
        this.keys = keys;
        this.step = step;
        this.plan = plan;
    }

    void read(SampleGauges gauges, SampleEvents events) {
        int number = step.number();
        Optional<SampleGauges.Laid> usual = setting(keys, gauges);
        List<RawTable> earlier = keys.has(PASS) ? keys.tables(PASS) : List.of();
        for (RawTable table : earlier) {
            Keys pass = keys.inside(PASS, table);
            (pass.has(SampleGauges.GAUGE) ? setting(pass, gauges) : usual).ifPresent(set -> events.set(number, set));
            new SamplePass(pass, step, plan, gauges, events).read();
            pass.word("why", WHYS, SamplePass::word).ifPresent(why -> events.add(new Event.PassBegun(number, why)));
            pass.finish();
        }
        keys.ifAny(PASS, key -> Optional.empty());
        usual.ifPresent(set -> events.set(number, set));
        new SamplePass(keys, step, plan, gauges, events).read();
        keys.ifAny("doubt", keys::prose).ifPresent(words -> events.add(new Event.DoubtFlagged(number, words)));
        keys.ifAny("note", keys::prose).ifPresent(words -> events.add(new Event.NoteMade(number, words)));
        boolean ofDrawing = step.stepClass() == StepClass.DRAWING;
        disposed(CONCESSION, Disposition.USE_AS_IS, ofDrawing, "only a check of the drawing is conceded; write \"carry_on\"").ifPresent(events::add);
        disposed(CARRY_ON, Disposition.CARRY_ON, !ofDrawing, "a check of the drawing cannot be carried on with; write \"concession\"").ifPresent(events::add);
        keys.finish();
    }

    private Optional<SampleGauges.Laid> setting(Keys of, SampleGauges gauges) {
        return step.check().means().flatMap(means -> gauges.setting(of, means, plan.unit()));
    }

    private Optional<Event> disposed(String key, Disposition disposition, boolean fits, String otherwise) {
        return keys.ifAny(key, keys::table).flatMap(table -> {
            if (!fits) {
                keys.problem(key, otherwise);
            }
            Keys signed = keys.inside(key, table);
            Optional<String> by = signed.text("by");
            Optional<String> reason = signed.prose("reason");
            signed.finish();
            return signed.built(() -> new Event.Disposed(step.number(), disposition, reason.orElseThrow(), by.orElseThrow()));
        });
    }
}
