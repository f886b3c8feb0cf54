package org.tenthwise.app.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.key.PublicKeyOfStation;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ImportEvent;
import org.tenthwise.model.run.MatterSettled;
import org.tenthwise.model.run.Remark;
import org.tenthwise.model.run.ReportEvent;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** The course of a run in words: what happened, all but what was read, answered and set, in the order it happened. */
public final class EventsTold {

    private final Words words;

    public EventsTold(Words words) {
        this.words = words;
    }

    /** An entry, and what happened with it, as a sentence that names the step. */
    public record Told(Entry entry, String sentence) {}

    /** All of a run. */
    public List<Told> of(Plan plan, Run run) {
        Sentence sentence = new Sentence(words, new Sentences(words), plan);
        return run.entries().stream()
                .flatMap(entry -> entry.event().match(sentence).map(told -> new Told(entry, told)).stream())
                .toList();
    }

    /** Doubts and notes about a step, each with who entered it, beside what else is told of that step. */
    public Stream<String> remarks(Run run, Step step) {
        return run.doubtsAndNotes(step).stream()
                .map(remark -> words.say(
                        remark.kind() == Remark.Kind.DOUBT ? "sheet.doubt" : "sheet.note",
                        Sentences.within(remark.words()),
                        remark.entry().by()));
    }

    /** What was doubted last of a step; nothing where nothing was. */
    public String doubt(Run run, Step step) {
        return run.doubtsAndNotes(step).stream()
                .filter(remark -> remark.kind() == Remark.Kind.DOUBT)
                .reduce((earlier, later) -> later)
                .map(doubt -> words.say("run.doubted", Sentences.within(doubt.words())))
                .orElse("");
    }

    /** A sentence for each kind of event; none for what stands with the readings. */
    private record Sentence(Words words, Sentences sentences, Plan plan) implements Event.Cases<Optional<String>> {

        @Override
        public Optional<String> begun(Event.Begun begun) {
            return Optional.of(words.say("record.course.begun", begun.serial()));
        }

        @Override
        public Optional<String> gaugeKnown(ShopEvent.GaugeKnown known) {
            return Optional.empty();
        }

        /** The others stand in the table of gauges. */
        @Override
        public Optional<String> calibrationKnown(ShopEvent.CalibrationKnown known) {
            CalibrationWords said = CalibrationWords.ofRecord(words);
            return Optional.of(known)
                    .filter(ShopEvent.CalibrationKnown::putsRight)
                    .map(any -> words.say(
                            "record.course.calibration-put-right",
                            said.named(known.what()),
                            said.of(known.calibration())));
        }

        @Override
        public Optional<String> machineKnown(ShopEvent.MachineKnown known) {
            return Optional.of(words.say(
                    "record.course.machine",
                    words.say("record.course.machine", known.register()),
                    words.say("record.course.machine", known.usual())));
        }

        @Override
        public Optional<String> cutOnThese(StepEvent.CutOnThese signed) {
            return Optional.of(words.say("record.course.cut-on-these", step(signed.step()), signed.reason()));
        }

        @Override
        public Optional<String> gaugeChosen(StepEvent.GaugeChosen chosen) {
            return Optional.empty();
        }

        @Override
        public Optional<String> gaugeSet(StepEvent.GaugeSet set) {
            return Optional.empty();
        }

        @Override
        public Optional<String> readingTaken(StepEvent.ReadingTaken taken) {
            return Optional.empty();
        }

        @Override
        public Optional<String> temperatureTaken(StepEvent.TemperatureTaken taken) {
            return Optional.empty();
        }

        @Override
        public Optional<String> struckOut(Event.StruckOut struck) {
            return Optional.of(words.say("record.course.struck-out", struck.entry(), struck.reason()));
        }

        @Override
        public Optional<String> answered(StepEvent.Answered answered) {
            return Optional.empty();
        }

        @Override
        public Optional<String> documentGiven(StepEvent.DocumentGiven given) {
            return Optional.empty();
        }

        @Override
        public Optional<String> passBegun(StepEvent.PassBegun pass) {
            return Optional.of(words.say(words.key("record.course.pass", pass.why()), step(pass.step())));
        }

        @Override
        public Optional<String> doubtFlagged(StepEvent.DoubtFlagged doubt) {
            return Optional.of(words.say("record.course.doubt", step(doubt.step()), doubt.words()));
        }

        @Override
        public Optional<String> noteMade(StepEvent.NoteMade note) {
            return Optional.of(words.say("record.course.note", step(note.step()), note.words()));
        }

        @Override
        public Optional<String> dispositionSigned(StepEvent.DispositionSigned disposed) {
            String signed = words.say(
                    "record.course.disposed",
                    step(disposed.step()),
                    words.say("disposition", disposed.disposition()),
                    words.sentence(disposed.reason()),
                    disposed.signedBy());
            return Optional.of((signed + " " + sentences.document(disposed)).strip());
        }

        @Override
        public Optional<String> handedOver(Event.HandedOver over) {
            return Optional.of(words.say("record.course.handed-over", over.to()));
        }

        @Override
        public Optional<String> signed(Event.Signed signed) {
            return Optional.of(
                    words.say("record.course.signed", signed.signedBy(), words.say("signed-as", signed.meaning())));
        }

        @Override
        public Optional<String> closed(Event.Closed closed) {
            return Optional.of(words.say(
                    "record.course.closed", closed.signedBy(), new OutcomeWords(words).meaning(closed.meaning())));
        }

        @Override
        public Optional<String> putAway(Event.PutAway away) {
            return Optional.of(words.say("record.course.put-away", away.putAwayBy(), words.sentence(away.reason())));
        }

        @Override
        public Optional<String> takenUp(Event.TakenUp up) {
            return Optional.of(words.say("record.course.taken-up"));
        }

        @Override
        public Optional<String> takenOver(Event.TakenOver taken) {
            return Optional.of(words.say("record.course.taken-over"));
        }

        /** Of the shop: in no run there is one. */
        @Override
        public Optional<String> reportDrawnUp(ReportEvent.ReportDrawnUp drawnUp) {
            return Optional.empty();
        }

        /** Of the shop: in no run there is one. */
        @Override
        public Optional<String> reportSigned(ReportEvent.ReportSigned signed) {
            return Optional.empty();
        }

        /** Of the shop: in no run there is one. */
        @Override
        public Optional<String> matterSettled(MatterSettled settled) {
            return Optional.empty();
        }

        /** It happens to no run. */
        @Override
        public Optional<String> imported(ImportEvent.Imported imported) {
            return Optional.empty();
        }

        /** It happens to no run. */
        @Override
        public Optional<String> importLost(ImportEvent.Lost lost) {
            return Optional.empty();
        }

        @Override
        public Optional<String> sealed(Event.Sealed sealed) {
            return Optional.of(words.say(
                    "record.course.sealed", PublicKeyOfStation.shortened(sealed.fingerprint()), sealed.place()));
        }

        @Override
        public Optional<String> unknown(Event.Unknown unknown) {
            return Optional.of(words.say("record.course.unknown", unknown.kind()));
        }

        private String step(int number) {
            return number == 0
                    ? words.say("record.course.whole-run")
                    : words.say("record.course.step", number, plan.step(number).name());
        }
    }
}
