package org.tenthwise.app.command;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.session.Objection;
import org.tenthwise.app.session.Reply;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.text.Objections;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Words;

/**
 * The hand at a step of a run that is played from a file: sets a gauge, reads and answers by the keys that lie there,
 * and stops with what the run says against it.
 */
final class ReplayHand {

    private final RunSession session;
    private final Objections objections;
    private final Map<String, Gauge> gauges = new HashMap<>();
    private int step;

    ReplayHand(RunSession session, Words words) {
        this.session = session;
        this.objections = new Objections(words);
    }

    void goTo(int next) throws CouldNotSave {
        if (next != step) {
            step = next;
            session.goTo(next);
        }
    }

    /** Takes a gauge along, with the sense it reads in. */
    void know(Gauge gauge) {
        gauges.put(gauge.id(), gauge);
    }

    /** @param meant whether wires of another size than the plan's are meant */
    void set(Setting setting, boolean meant) throws CouldNotRun, CouldNotSave {
        taken(session.gauge().choose(setting.gauge().id(), setting.reference()));
        if (session.state().asked().asLyingReady().isPresent()) {
            taken(session.gauge().setOtherwise(false));
        }
        if (session.state().asked().asksSense()) {
            ReadingDirection sense = gauges.get(setting.gauge().id()).sense().orElseThrow();
            taken(session.gauge().tellSense(setting.gauge().kind().told(true) == sense));
        }
        if (setting.zero().isPresent()) {
            taken(enter(setting.certified().orElseThrow()));
            taken(enter(setting.zero().get()));
            if (session.state().asked().asksIfSenseIsRight()) {
                taken(session.gauge().confirmSense(true));
            }
        } else if (setting.certified().isPresent()) {
            Written wires = setting.certified().get();
            taken(meant ? session.keep(wires.text(), wires.unit()) : enter(wires));
        }
    }

    private Reply enter(Written figure) throws CouldNotSave {
        return session.enter(figure.text(), figure.unit());
    }

    /** @param meant whether a figure far off what is expected is meant */
    void read(StepEvent.ReadingTaken taken, boolean meant) throws CouldNotRun, CouldNotSave {
        Optional<RunOutCheck> turn = session.state().inHand().check().asTurn();
        if (!isAsked(taken) && turn.isPresent()) {
            taken(session.turn().sweep(turn.get().slots().stream().noneMatch(slot -> slot.key()
                    .equals(taken.slot()))));
        }
        if (session.state().asked().asksTemperature()) {
            taken(session.readingsFirst(true));
        }
        if (!isAsked(taken)) {
            throw refused(about(notAskedHere(), taken.typed().text()));
        }
        taken(meant ? session.keep(taken.typed().text(), taken.typed().unit()) : enter(taken.typed()));
    }

    private boolean isAsked(StepEvent.ReadingTaken taken) {
        return session.state()
                .asked()
                .asReading()
                .filter(asked -> asked.slot().key().equals(taken.slot()))
                .isPresent();
    }

    void answer(StepEvent.Answered answered) throws CouldNotRun, CouldNotSave {
        if (session.state()
                .asked()
                .asQuestion()
                .filter(answered.question()::equals)
                .isEmpty()) {
            throw refused(notAskedHere());
        }
        taken(session.answer(answered.answer()));
    }

    /** @throws CouldNotRun with what was said against it */
    void taken(Reply reply) throws CouldNotRun {
        Optional<Objection> objection = reply.objection();
        if (objection.isPresent()) {
            throw refused(objection.get());
        }
    }

    private CouldNotRun refused(Objection why) {
        Message said = Message.of("as-said", objections.say(why));
        return refused(why.noSum()
                .map(because -> about(said, because))
                .orElse(why.detail().isEmpty() || why.mayBeKept() ? said : about(said, why.detail())));
    }

    private static Message notAskedHere() {
        return Message.of("refused.not-asked-here");
    }

    private static Message about(Message why, Object what) {
        return Message.of("command.walk.about", why, what);
    }

    CouldNotRun refused(Message why) {
        return new CouldNotRun(Message.of("command.walk.refused", step, why, session.id()));
    }
}
