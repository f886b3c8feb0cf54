package org.tenthwise.app.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.session.Asked;
import org.tenthwise.app.session.Objection;
import org.tenthwise.app.session.Reply;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.text.Objections;
import org.tenthwise.app.text.Words;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.Sense;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.run.Event;

/**
 * Does in a run what a readings file says, by the same verbs the screens use. A step that a hold point keeps shut is passed
 * over, as it would be at the machine. A figure far off what is expected is refused: a file has no fingers to slip, but who
 * wrote it has. Wires of another size than the plan's are a choice, and taken.
 */
final class Replay {

    private static final int NONE = 0;
    private static final Set<String> SWEPT = Set.of(Check.RunOut.HIGHEST, Check.RunOut.LOWEST);

    private final RunSession session;
    private final Words words;
    private final Objections objections;
    private final Map<String, Gauge> gauges = new HashMap<>();
    private final Set<Integer> shut = new HashSet<>();
    private final List<String> notTaken = new ArrayList<>();
    private int step = NONE;

    Replay(RunSession session, Words words) {
        this.session = session;
        this.words = words;
        this.objections = new Objections(words);
    }

    /** @param events of a readings file, from its first on */
    void play(List<Event> events) throws CouldNotRun, CouldNotSave {
        for (Event event : events) {
            int next = stepOf(event);
            if (next != NONE && next != step) {
                step = next;
                session.goTo(next);
                if (session.state().asked() instanceof Asked.Held) {
                    shut.add(next);
                }
            }
            if (!shut.contains(next)) {
                play(event);
            }
        }
    }

    private void play(Event event) throws CouldNotRun, CouldNotSave {
        if (event instanceof Event.GaugeKnown known) {
            gauges.put(known.gauge().id(), known.gauge());
        } else if (event instanceof Event.GaugeSet set) {
            set(set.setting());
        } else if (event instanceof Event.ReadingTaken taken) {
            read(taken);
        } else if (event instanceof Event.TemperatureTaken taken) {
            taken(session.temperature(taken.of(), taken.read().text()));
        } else if (event instanceof Event.Answered answered) {
            answer(answered);
        } else if (event instanceof Event.PassBegun pass) {
            taken(session.again(pass.why()));
        } else if (event instanceof Event.DoubtFlagged doubt) {
            taken(session.flagDoubt(doubt.words()));
        } else if (event instanceof Event.NoteMade note) {
            taken(session.note(note.words()));
        } else if (event instanceof Event.Disposed disposed) {
            taken(session.dispose(disposed.disposition(), disposed.reason(), disposed.signedBy()));
        } else if (event instanceof Event.Signed signed) {
            signed(session.sign(signed.signedBy(), signed.meaning()), signed.signedBy());
        } else if (event instanceof Event.Closed closed) {
            signed(session.close(closed.signedBy(), closed.as()), closed.signedBy());
        } else {
            throw new IllegalArgumentException("A readings file has no " + event.getClass().getSimpleName());
        }
    }

    private void set(Setting setting) throws CouldNotRun, CouldNotSave {
        taken(session.gauge().choose(setting.gauge().id(), setting.reference()));
        if (session.state().asked() instanceof Asked.WhichSense) {
            Sense sense = gauges.get(setting.gauge().id()).sense().orElseThrow();
            taken(session.gauge().tellSense(sense == Sense.FALLS_WITH_SIZE));
        }
        if (setting.zero().isPresent()) {
            taken(session.enter(setting.certified().orElseThrow().text()));
            taken(session.enter(setting.zero().get().text()));
            if (session.state().asked() instanceof Asked.SenseInFigures) {
                taken(session.gauge().confirmSense(true));
            }
        } else if (setting.certified().isPresent()) {
            taken(session.keep(setting.certified().get().text()));
        }
    }

    private void read(Event.ReadingTaken taken) throws CouldNotRun, CouldNotSave {
        if (SWEPT.contains(taken.slot()) && !session.state().sweep()) {
            taken(session.sweep(true));
        }
        if (session.state().asked() instanceof Asked.Temperature) {
            taken(session.readingsFirst(true));
        }
        if (!(session.state().asked() instanceof Asked.Reading asked) || !asked.slot().key().equals(taken.slot())) {
            throw refused(words.say("refused", Objection.Kind.NOT_ASKED_HERE) + " (%s)".formatted(taken.typed().text()));
        }
        taken(session.enter(taken.typed().text()));
    }

    private void answer(Event.Answered answered) throws CouldNotRun, CouldNotSave {
        if (!(session.state().asked() instanceof Asked.Answering asked) || asked.question() != answered.question()) {
            throw refused(words.say("refused", Objection.Kind.NOT_ASKED_HERE));
        }
        taken(session.answer(answered.answer()));
    }

    /** Signatures that were refused, a sentence each; everything else was done all the same. */
    List<String> notTaken() {
        return List.copyOf(notTaken);
    }

    private void signed(Reply reply, String signedBy) {
        reply.objection().ifPresent(objection -> notTaken.add("The signature of %s was not taken. %s"
                .formatted(signedBy, words.say("refused", objection.kind()))));
    }

    private void taken(Reply reply) throws CouldNotRun {
        Optional<Objection> objection = reply.objection();
        if (objection.isPresent()) {
            throw refused(objection.get());
        }
    }

    private CouldNotRun refused(Objection why) {
        String about = why.detail().isEmpty() || why.mayBeKept() ? "" : " (%s)".formatted(why.detail());
        return refused(objections.say(why) + about);
    }

    private CouldNotRun refused(String why) {
        return new CouldNotRun("Check %d: %s What was taken before it is kept as run %s. Put the readings file right.".formatted(
                step, why, session.id()));
    }

    private static int stepOf(Event event) {
        if (event instanceof Event.GaugeSet set) {
            return set.step();
        }
        if (event instanceof Event.ReadingTaken taken) {
            return taken.step();
        }
        if (event instanceof Event.TemperatureTaken taken) {
            return taken.step();
        }
        if (event instanceof Event.Answered answered) {
            return answered.step();
        }
        if (event instanceof Event.PassBegun pass) {
            return pass.step();
        }
        if (event instanceof Event.DoubtFlagged doubt) {
            return doubt.step();
        }
        if (event instanceof Event.NoteMade note) {
            return note.step();
        }
        return event instanceof Event.Disposed disposed ? disposed.step() : NONE;
    }
}
