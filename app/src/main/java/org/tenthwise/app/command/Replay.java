package org.tenthwise.app.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.session.Objection;
import org.tenthwise.app.session.Reply;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.text.Objections;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ImportEvent;
import org.tenthwise.model.run.MatterSettled;
import org.tenthwise.model.run.ReportEvent;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Words;

/**
 * Does in a run what a readings file says, by the same verbs the screens use. What a step that a hold point keeps shut
 * was read to be is refused, as it would be at the machine; so is a figure far off what is expected, unless the file
 * says that it is meant. Wires of another size than the plan's are a choice, and taken. What was taken before stays.
 */
final class Replay {

    private static final int NONE = 0;

    private final RunSession session;
    private final Words words;
    private final Objections objections;
    private final Map<String, Gauge> gauges = new HashMap<>();
    private final Map<Long, Long> entries = new HashMap<>();
    private final List<String> notTaken = new ArrayList<>();
    private int step = NONE;

    Replay(RunSession session, Words words) {
        this.session = session;
        this.words = words;
        this.objections = new Objections(words);
    }

    void play(ReadingsFile sample) throws CouldNotRun, CouldNotSave {
        List<Event> events = sample.events();
        for (int i = 0; i < events.size(); i++) {
            Event event = events.get(i);
            int next = event.at().orElse(NONE);
            if (next != NONE && next != step) {
                step = next;
                session.goTo(next);
            }
            if (next == NONE || !isPassedOver(event)) {
                event.match(new Deeds(sample.meant().contains(i))).be();
                entries.put(ReadingsFile.place(i), lastEntry());
            }
        }
    }

    private long lastEntry() {
        List<Entry> kept = session.state().sheet().run().entries();
        return kept.get(kept.size() - 1).seq();
    }

    /**
     * A gauge laid ready for a step that is still shut does no harm; whatever was done with it there is refused aloud.
     */
    private boolean isPassedOver(Event event) throws CouldNotRun {
        boolean remark = event.as(StepEvent.NoteMade.class).isPresent()
                || event.as(StepEvent.DoubtFlagged.class).isPresent();
        List<Integer> waitingFor = session.state().asked().waitingFor();
        if (remark || waitingFor.isEmpty()) {
            return false;
        }
        if (event.as(StepEvent.GaugeSet.class).isPresent()) {
            return true;
        }
        throw refused(Message.of("command.walk.held").with("checks", waitingFor).with("n", waitingFor.size()));
    }

    /** What is done for an event. */
    private interface Deed {
        void be() throws CouldNotRun, CouldNotSave;
    }

    private void set(Setting setting, boolean meant) throws CouldNotRun, CouldNotSave {
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

    private void read(StepEvent.ReadingTaken taken, boolean meant) throws CouldNotRun, CouldNotSave {
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

    private void answer(StepEvent.Answered answered) throws CouldNotRun, CouldNotSave {
        if (session.state()
                .asked()
                .asQuestion()
                .filter(answered.question()::equals)
                .isEmpty()) {
            throw refused(notAskedHere());
        }
        taken(session.answer(answered.answer()));
    }

    /** Signatures that were refused, a sentence each; everything else was done all the same. */
    List<String> notTaken() {
        return List.copyOf(notTaken);
    }

    private void signed(Reply reply, String signedBy) {
        reply.objection()
                .ifPresent(objection -> notTaken.add(words.say(
                        "command.walk.signature-not-taken", signedBy, words.say("refused", objection.kind()))));
    }

    private void taken(Reply reply) throws CouldNotRun {
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

    private CouldNotRun refused(Message why) {
        return new CouldNotRun(Message.of("command.walk.refused", step, why, session.id()));
    }

    /** A deed for each kind of event a readings file can have. */
    private final class Deeds implements Event.Cases<Deed> {

        private final boolean meant;

        /**
         * @param meant whether the figure of the event is meant although far off, or the usual aim of a machine is said
         */
        private Deeds(boolean meant) {
            this.meant = meant;
        }

        @Override
        public Deed begun(Event.Begun begun) {
            return none(begun);
        }

        @Override
        public Deed gaugeKnown(Event.GaugeKnown known) {
            return () -> gauges.put(known.gauge().id(), known.gauge());
        }

        @Override
        public Deed calibrationKnown(Event.CalibrationKnown known) {
            return () -> taken(session.gauge().calibrated(known.what(), known.calibration(), known.putsRight()));
        }

        @Override
        public Deed machineKnown(Event.MachineKnown known) {
            return () -> taken(session.machine(
                    known.register(),
                    meant
                            ? known.usual()
                            : session.state().sheet().run().usualAim().orElse(known.usual())));
        }

        @Override
        public Deed cutOnThese(StepEvent.CutOnThese signed) {
            return () -> taken(session.cutOnThese(signed.reason()));
        }

        @Override
        public Deed gaugeChosen(StepEvent.GaugeChosen chosen) {
            return none(chosen);
        }

        @Override
        public Deed gaugeSet(StepEvent.GaugeSet set) {
            return () -> set(set.setting(), meant);
        }

        @Override
        public Deed readingTaken(StepEvent.ReadingTaken taken) {
            return () -> read(taken, meant);
        }

        @Override
        public Deed temperatureTaken(StepEvent.TemperatureTaken taken) {
            return () -> taken(
                    meant
                            ? session.temperatures()
                                    .keep(taken.of(), taken.read().text())
                            : session.temperatures()
                                    .take(taken.of(), taken.read().text()));
        }

        @Override
        public Deed struckOut(Event.StruckOut out) {
            return () -> taken(session.strikeOut(entries.get(out.entry()), out.reason()));
        }

        @Override
        public Deed answered(StepEvent.Answered answered) {
            return () -> answer(answered);
        }

        @Override
        public Deed documentGiven(StepEvent.DocumentGiven given) {
            Document document = given.document();
            return () -> taken(session.documents()
                    .give(document.number(), document.dated(), document.says(), document.by(), document.figures()));
        }

        @Override
        public Deed passBegun(StepEvent.PassBegun pass) {
            return () -> taken(session.again(pass.why()));
        }

        @Override
        public Deed doubtFlagged(StepEvent.DoubtFlagged doubt) {
            return () -> taken(session.flagDoubt(doubt.words()));
        }

        @Override
        public Deed noteMade(StepEvent.NoteMade note) {
            return () -> taken(session.note(note.words()));
        }

        @Override
        public Deed dispositionSigned(StepEvent.DispositionSigned disposed) {
            return () -> taken(session.dispose(
                    disposed.disposition(),
                    disposed.reason(),
                    disposed.signedBy(),
                    disposed.document().orElse("")));
        }

        @Override
        public Deed handedOver(Event.HandedOver over) {
            return none(over);
        }

        @Override
        public Deed signed(Event.Signed signed) {
            return () -> Replay.this.signed(session.sign(signed.signedBy(), signed.meaning()), signed.signedBy());
        }

        @Override
        public Deed closed(Event.Closed closed) {
            return () -> Replay.this.signed(session.close(closed.signedBy(), closed.as()), closed.signedBy());
        }

        @Override
        public Deed putAway(Event.PutAway away) {
            return none(away);
        }

        @Override
        public Deed takenUp(Event.TakenUp up) {
            return none(up);
        }

        @Override
        public Deed takenOver(Event.TakenOver taken) {
            return none(taken);
        }

        @Override
        public Deed reportDrawnUp(ReportEvent.ReportDrawnUp drawnUp) {
            return none(drawnUp);
        }

        @Override
        public Deed reportSigned(ReportEvent.ReportSigned signed) {
            return none(signed);
        }

        @Override
        public Deed matterSettled(MatterSettled settled) {
            return none(settled);
        }

        @Override
        public Deed sealed(Event.Sealed sealed) {
            return none(sealed);
        }

        @Override
        public Deed imported(ImportEvent.Imported imported) {
            return none(imported);
        }

        @Override
        public Deed importLost(ImportEvent.Lost lost) {
            return none(lost);
        }

        @Override
        public Deed unknown(Event.Unknown unknown) {
            return none(unknown);
        }

        private Deed none(Event event) {
            throw new IllegalArgumentException(
                    "A readings file has no " + event.getClass().getSimpleName());
        }
    }
}
