package org.tenthwise.app.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.session.Reply;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ImportEvent;
import org.tenthwise.model.run.MatterSettled;
import org.tenthwise.model.run.ReportEvent;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Words;

/**
 * Does in a run what a readings file says, by the same verbs the screens use. What a step that a hold point keeps shut
 * was read to be is refused, as it would be at the machine; so is a figure far off what is expected, unless the file
 * says that it is meant. Wires of another size than the plan's are a choice, and taken. What was taken before stays.
 */
final class Replay {

    private final RunSession session;
    private final Words words;
    private final ReplayHand hand;
    private final Map<Long, Long> entries = new HashMap<>();
    private final List<String> notTaken = new ArrayList<>();

    Replay(RunSession session, Words words) {
        this.session = session;
        this.words = words;
        this.hand = new ReplayHand(session, words);
    }

    void play(ReadingsFile sample) throws CouldNotRun, CouldNotSave {
        List<Event> events = sample.events();
        for (int i = 0; i < events.size(); i++) {
            Event event = events.get(i);
            Optional<Integer> step = event.at();
            if (step.isPresent()) {
                hand.goTo(step.get());
            }
            if (step.isEmpty() || !isPassedOver(event)) {
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
        throw hand.refused(
                Message.of("command.walk.held").with("checks", waitingFor).with("n", waitingFor.size()));
    }

    /** What is done for an event. */
    private interface Deed {
        void be() throws CouldNotRun, CouldNotSave;
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
        public Deed gaugeKnown(ShopEvent.GaugeKnown known) {
            return () -> hand.know(known.gauge());
        }

        @Override
        public Deed calibrationKnown(ShopEvent.CalibrationKnown known) {
            return () -> hand.taken(session.gauge().calibrated(known.what(), known.calibration(), known.putsRight()));
        }

        @Override
        public Deed machineKnown(ShopEvent.MachineKnown known) {
            return () -> hand.taken(session.machine(
                    known.register(),
                    meant
                            ? known.usual()
                            : session.state().sheet().run().usualAim().orElse(known.usual())));
        }

        @Override
        public Deed cutOnThese(StepEvent.CutOnThese signed) {
            return () -> hand.taken(session.cutOnThese(signed.reason()));
        }

        @Override
        public Deed gaugeChosen(StepEvent.GaugeChosen chosen) {
            return none(chosen);
        }

        @Override
        public Deed gaugeSet(StepEvent.GaugeSet set) {
            return () -> hand.set(set.setting(), meant);
        }

        @Override
        public Deed readingTaken(StepEvent.ReadingTaken taken) {
            return () -> hand.read(taken, meant);
        }

        @Override
        public Deed temperatureTaken(StepEvent.TemperatureTaken taken) {
            return () -> hand.taken(
                    meant
                            ? session.temperatures()
                                    .keep(taken.of(), taken.read().text())
                            : session.temperatures()
                                    .take(taken.of(), taken.read().text()));
        }

        @Override
        public Deed struckOut(Event.StruckOut out) {
            return () -> hand.taken(session.strikeOut(entries.get(out.entry()), out.reason()));
        }

        @Override
        public Deed answered(StepEvent.Answered answered) {
            return () -> hand.answer(answered);
        }

        @Override
        public Deed documentGiven(StepEvent.DocumentGiven given) {
            Document document = given.document();
            return () -> hand.taken(session.documents()
                    .give(document.number(), document.dated(), document.says(), document.by(), document.figures()));
        }

        @Override
        public Deed passBegun(StepEvent.PassBegun pass) {
            return () -> hand.taken(session.again(pass.why()));
        }

        @Override
        public Deed doubtFlagged(StepEvent.DoubtFlagged doubt) {
            return () -> hand.taken(session.flagDoubt(doubt.words()));
        }

        @Override
        public Deed noteMade(StepEvent.NoteMade note) {
            return () -> hand.taken(session.note(note.words()));
        }

        @Override
        public Deed dispositionSigned(StepEvent.DispositionSigned disposed) {
            return () -> hand.taken(session.dispose(
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
