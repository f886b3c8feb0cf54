package org.tenthwise.model.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Pass.Answering;
import org.tenthwise.model.run.Pass.Ended;
import org.tenthwise.model.run.Pass.Reading;
import org.tenthwise.model.run.Pass.Struck;
import org.tenthwise.model.run.Pass.Temperature;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/**
 * The passes of one step, one entry after the other. A pass ends where someone begins the next, and by itself where the
 * step is given into rework or repair, a step it rests on changes, or one that the same tool cuts is cut: what was
 * found with the size of before says nothing of the size of now. A pass with nothing in it does not end by itself.
 */
final class Passes {

    private final int step;
    private final List<Integer> restsOn;
    private final List<Integer> cutWith;
    private final Changes changes;
    private final Run run;

    private final List<Pass> ended = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private final List<Answering> answers = new ArrayList<>();
    private final List<Temperature> temperatures = new ArrayList<>();
    private final List<Pass.Giving> documents = new ArrayList<>();
    private Optional<Why> why = Optional.empty();
    private Optional<Entry> onThese = Optional.empty();
    private Optional<Setting> setting = Optional.empty();
    private Optional<Struck> settingGone = Optional.empty();

    private Passes(Step step, Run run) {
        this.step = step.number();
        this.restsOn = step.check().restsOn();
        this.cutWith = step.check().cutWith();
        this.changes = new Changes(run);
        this.run = run;
    }

    /**
     * The one in hand last; at least one.
     *
     * @param entries of the step and of those that can change what is found there
     */
    static List<Pass> of(Step step, Run run, List<Entry> entries) {
        Passes passes = new Passes(step, run);
        entries.forEach(passes::add);
        passes.ended.add(passes.inHand(Optional.empty()));
        return passes.ended;
    }

    private void add(Entry entry) {
        Optional<Struck> gone = run.struck(entry.seq());
        Event event = entry.event();
        if (changesWhatIsCutOn(entry)) {
            onThese = Optional.empty();
        }
        if (event instanceof StepEvent.CutOnThese signed && signed.step() == step) {
            onThese = Optional.of(entry);
        } else if (event instanceof StepEvent.GaugeSet set && set.step() == step) {
            setting = Optional.of(set.setting());
            settingGone = gone;
        } else if (event instanceof StepEvent.GaugeChosen chosen && chosen.step() == step) {
            setting = Optional.empty();
            settingGone = Optional.empty();
        } else if (event instanceof StepEvent.ReadingTaken taken && taken.step() == step) {
            readings.add(new Reading(entry, taken.slot(), taken.typed(), setting, gone.or(() -> settingGone)));
        } else if (event instanceof StepEvent.Answered answered && answered.step() == step) {
            Optional<Struck> with =
                    settingGone.filter(any -> answered.question().byLimitGauge());
            answers.add(new Answering(entry, answered.question(), answered.answer(), gone.or(() -> with)));
        } else if (event instanceof StepEvent.TemperatureTaken taken && taken.step() == step) {
            temperatures.add(new Temperature(entry, taken.of(), taken.read(), gone));
        } else if (event instanceof StepEvent.DocumentGiven given && given.step() == step) {
            documents.add(new Pass.Giving(entry, given.document(), gone));
        } else if (event instanceof StepEvent.PassBegun pass && pass.step() == step) {
            end(entry, pass.why(), step);
        } else {
            endByItself(entry);
        }
    }

    /** A new pass is none: it is what was signed for. */
    private boolean changesWhatIsCutOn(Entry entry) {
        Event event = entry.event();
        return event instanceof StepEvent.GaugeSet set && set.step() == step
                || event instanceof StepEvent.GaugeChosen chosen && chosen.step() == step
                || event instanceof StepEvent.DispositionSigned disposed && disposed.step() == step
                || !(event instanceof StepEvent.PassBegun)
                        && changes.step(entry)
                                .filter(changed -> changed == step)
                                .isPresent();
    }

    private void endByItself(Entry entry) {
        Optional<Integer> changed = changes.step(entry);
        boolean empty = readings.isEmpty() && answers.isEmpty() && temperatures.isEmpty() && documents.isEmpty();
        if (empty || changed.isEmpty()) {
            return;
        }
        boolean cut = entry.event().takesMetal() && cutWith.contains(changed.get());
        if (cut || restsOn.contains(changed.get())) {
            end(entry, Why.RESTED_ON_CHANGED, changed.get());
        } else if (changed.get() == step && entry.event() instanceof StepEvent.DispositionSigned disposed) {
            end(entry, disposed.disposition() == Disposition.REPAIR ? Why.REPAIRED : Why.REWORKED, step);
        }
    }

    private void end(Entry by, Why next, int changed) {
        ended.add(inHand(Optional.of(new Ended(by, next, changed))));
        readings.clear();
        answers.clear();
        temperatures.clear();
        documents.clear();
        onThese = Optional.empty();
        why = Optional.of(next);
    }

    private Pass inHand(Optional<Ended> end) {
        return new Pass(
                ended.size() + 1,
                why,
                end,
                List.copyOf(readings),
                List.copyOf(answers),
                List.copyOf(temperatures),
                List.copyOf(documents),
                onThese);
    }
}
