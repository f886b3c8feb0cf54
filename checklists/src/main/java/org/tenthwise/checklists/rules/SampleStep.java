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
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Word;

/**
 * What a readings file has for one step: the gauge as set, earlier passes, the last pass with its temperatures,
 * remarks, a concession.
 */
final class SampleStep {

    private static final String PASS = "pass";
    private static final String WHY = "why";
    private static final String CUT_ON_THESE = "cut_on_these";
    private static final String CONCESSION = "concession";
    private static final String CARRY_ON = "carry_on";
    private static final String REWORK = "rework";
    private static final String REPAIR = "repair";
    private static final String SCRAP = "scrap";
    /** What stands for the number of a document that departs from the drawing, where the file gives none. */
    private static final String NONE_YET = "None yet";
    /** Those a person chooses; the others come by themselves. */
    private static final List<StepEvent.PassBegun.Why> WHYS = Stream.of(StepEvent.PassBegun.Why.values())
            .filter(StepEvent.PassBegun.Why::isSaid)
            .toList();

    private final TableKeys keys;
    private final Step step;
    private final Plan plan;

    SampleStep(TableKeys keys, Step step, Plan plan) {
        this.keys = keys;
        this.step = step;
        this.plan = plan;
    }

    void read(SampleGauges gauges, SampleEvents events) {
        int number = step.number();
        Optional<SampleGauges.Laid> usual = setting(keys, gauges);
        List<RawTable> earlier = keys.has(PASS) ? keys.tables(PASS) : List.of();
        for (RawTable table : earlier) {
            TableKeys pass = keys.inside(PASS, table);
            (pass.has(SampleGauges.GAUGE) ? setting(pass, gauges) : usual).ifPresent(set -> events.set(number, set));
            new SamplePass(pass, step, plan, gauges, events).read();
            cutOnThese(pass).ifPresent(events::add);
            ended(pass).ifPresent(events::add);
            pass.finish();
        }
        keys.ifAny(PASS, key -> Optional.empty());
        usual.ifPresent(set -> events.set(number, set));
        new SamplePass(keys, step, plan, gauges, events).read();
        keys.ifAny("doubt", keys::prose).ifPresent(words -> events.add(new StepEvent.DoubtFlagged(number, words)));
        keys.ifAny("note", keys::prose).ifPresent(words -> events.add(new StepEvent.NoteMade(number, words)));
        disposed(keys, CONCESSION, Disposition.USE_AS_IS).ifPresent(events::add);
        disposed(keys, CARRY_ON, Disposition.CARRY_ON).ifPresent(events::add);
        disposed(keys, REWORK, Disposition.REWORK).ifPresent(events::add);
        disposed(keys, REPAIR, Disposition.REPAIR).ifPresent(events::add);
        disposed(keys, SCRAP, Disposition.SCRAP).ifPresent(events::add);
        keys.finish();
    }

    private Optional<SampleGauges.Laid> setting(TableKeys of, SampleGauges gauges) {
        return step.check().means().flatMap(means -> gauges.setting(of, means, plan.unit(step)));
    }

    /** Why a pass with places or temperatures missing was cut on all the same. */
    private Optional<Event> cutOnThese(TableKeys pass) {
        Optional<String> reason = pass.ifAny(CUT_ON_THESE, pass::prose);
        boolean cuts = pass.ifAny(WHY, key -> pass.isText(key) ? pass.text(key) : Optional.empty())
                .filter(Word.of(StepEvent.PassBegun.Why.CUT)::equals)
                .isPresent();
        if (pass.has(CUT_ON_THESE) && !(cuts && step.check().asSize().isPresent())) {
            pass.problem(CUT_ON_THESE, "readings.cut-on-these");
        }
        return reason.map(words -> new StepEvent.CutOnThese(step.number(), words));
    }

    /** What an earlier pass ended with: the work was cut, moved or measured again, or given into rework or repair. */
    private Optional<Event> ended(TableKeys pass) {
        if (pass.has(REWORK) || pass.has(REPAIR)) {
            return disposed(pass, REWORK, Disposition.REWORK).or(() -> disposed(pass, REPAIR, Disposition.REPAIR));
        }
        return pass.word(WHY, WHYS, Word::of).map(why -> new StepEvent.PassBegun(step.number(), why));
    }

    private Optional<Event> disposed(TableKeys of, String key, Disposition disposition) {
        boolean carriesOn = disposition == Disposition.CARRY_ON;
        return of.ifAny(key, of::table).flatMap(table -> {
            if (carriesOn == (step.stepClass() == StepClass.DRAWING)) {
                of.problem(key, carriesOn ? "readings.carry-on" : "readings.of-drawing-only");
            }
            TableKeys signed = of.inside(key, table);
            Optional<String> by = signed.text("by");
            Optional<String> reason = signed.prose("reason");
            Optional<String> number = carriesOn ? Optional.empty() : signed.ifAny("number", signed::text);
            signed.finish();
            return signed.built(() -> new StepEvent.DispositionSigned(
                    step.number(),
                    disposition,
                    reason.orElseThrow(),
                    by.orElseThrow(),
                    disposition.departsFromTheDrawing() ? number.or(() -> Optional.of(NONE_YET)) : number));
        });
    }
}
