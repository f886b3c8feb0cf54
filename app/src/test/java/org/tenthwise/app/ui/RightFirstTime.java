package org.tenthwise.app.ui;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.session.Reply;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/** The demo's screw carrier, right at the first reading: what is told of the run, and what is then typed and tapped. */
final class RightFirstTime {

    static final Plan PLAN = DemoPart.SCREW_CARRIER.plan();

    private RightFirstTime() {}

    static ReadingsFile sample() {
        return ((SampleReading.Good) new SampleReader().read(DemoPart.SCREW_CARRIER.passingReadings(), PLAN)).sample();
    }

    /** Of each check the pass it passed by. */
    static List<Event> events() {
        List<Event> events = sample().events();
        Map<Integer, Integer> last = new HashMap<>();
        for (int i = 0; i < events.size(); i++) {
            if (events.get(i) instanceof StepEvent.PassBegun begun) {
                last.put(begun.step(), i);
            }
        }
        List<Event> right = new ArrayList<>();
        for (int i = 0; i < events.size(); i++) {
            Event event = events.get(i);
            int from = event instanceof StepEvent at ? last.getOrDefault(at.step(), -1) : -1;
            if (event instanceof StepEvent.GaugeSet || i > from) {
                right.add(event);
            }
        }
        return right;
    }

    /** Keeps all of it in a run, as if it had been typed. */
    static void keep(RunSession run) {
        for (Event event : events()) {
            Workshop.must(() -> kept(run, event));
        }
    }

    private static Reply kept(RunSession run, Event event) throws CouldNotSave {
        if (event instanceof StepEvent at && at.step() != run.state().inHand().number()) {
            run.goTo(at.step());
        }
        if (event instanceof StepEvent.GaugeSet set) {
            return set(run, set.setting());
        } else if (event instanceof StepEvent.ReadingTaken taken) {
            return run.enter(taken.typed().text());
        } else if (event instanceof StepEvent.TemperatureTaken taken) {
            return run.temperatures().take(taken.of(), taken.read().text());
        } else if (event instanceof StepEvent.Answered answered) {
            return run.answer(answered.answer());
        } else if (event instanceof Event.Closed closed) {
            return run.close(closed.signedBy(), closed.as());
        }
        return new Reply(run.state(), Optional.empty());
    }

    private static Reply set(RunSession run, Setting setting) throws CouldNotSave {
        if (run.state().asked().asLyingReady().isPresent()) {
            return run.gauge().setAsBefore();
        }
        if (run.state().asked().asksSense()) {
            run.gauge().tellSense(setting.gauge().sense().orElseThrow() == ReadingDirection.FALLS_WITH_SIZE);
        }
        if (setting.certified().isPresent()) {
            run.enter(setting.certified().get().text());
        }
        if (setting.zero().isPresent()) {
            run.enter(setting.zero().get().text());
            return run.gauge().confirmSense(true);
        }
        return new Reply(run.state(), Optional.empty());
    }
}
