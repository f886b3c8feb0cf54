package org.tenthwise.app.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Word;

/** The kinds of events there are. */
final class EventKinds {

    /** What it takes to read entries that do not say it: those of the kinds there were when entries began to. */
    static final int FORMAT_UNSAID = 3;

    private static final EventKind<Event.Begun> BEGUN = new EventKind<>(
            "begun",
            1,
            Event.Begun.class,
            (begun, to) -> {
                EventJson.write(begun.part(), to.putObject("part"));
                to.put("serial", begun.serial());
                to.put("lot", begun.lot());
                to.put("machine", begun.machine());
                EventJson.write(begun.plan(), to.putObject("plan"));
                if (begun.noLot()) {
                    to.put("no-lot", true);
                }
            },
            from -> new Event.Begun(
                    EventJson.part(from.object("part")),
                    from.text("serial"),
                    from.text("lot"),
                    from.text("machine"),
                    EventJson.plan(from.object("plan")),
                    from.isSo("no-lot")));

    private static final EventKind<Event.GaugeKnown> GAUGE_KNOWN = new EventKind<>(
            "gauge-known",
            1,
            known -> EventJson.format(known.gauge()),
            Event.GaugeKnown.class,
            (known, to) -> EventJson.write(known.gauge(), to.putObject("gauge")),
            from -> new Event.GaugeKnown(EventJson.gauge(from.object("gauge"))));

    private static final EventKind<Event.MachineKnown> MACHINE_KNOWN = new EventKind<>(
            "machine-known",
            3,
            Event.MachineKnown.class,
            (known, to) -> to.put("machine", known.machine())
                    .put("register", Word.of(known.register()))
                    .put("usual-aim", Word.of(known.usual())),
            from -> new Event.MachineKnown(
                    from.text("machine"),
                    from.word("register", Register.class),
                    from.word("usual-aim", Aim.ByLimits.class)));

    private static final EventKind<StepEvent.CutOnThese> CUT_ON_THESE = new EventKind<>(
            "cut-on-these",
            3,
            StepEvent.CutOnThese.class,
            (signed, to) -> to.put("step", signed.step()).put("reason", signed.reason()),
            from -> new StepEvent.CutOnThese(from.step("step"), from.text("reason")));

    private static final EventKind<StepEvent.GaugeChosen> GAUGE_CHOSEN = new EventKind<>(
            "gauge-chosen",
            1,
            StepEvent.GaugeChosen.class,
            (chosen, to) -> {
                to.put("step", chosen.step()).put("mark", chosen.mark());
                chosen.reference().ifPresent(reference -> to.put("reference", reference));
            },
            from -> new StepEvent.GaugeChosen(from.step("step"), from.text("mark"), from.textIfAny("reference")));

    private static final EventKind<StepEvent.GaugeSet> GAUGE_SET = new EventKind<>(
            "gauge-set",
            1,
            set -> EventJson.format(set.setting().gauge()),
            StepEvent.GaugeSet.class,
            (set, to) -> {
                to.put("step", set.step());
                EventJson.write(set.setting(), to.putObject("setting"));
            },
            from -> new StepEvent.GaugeSet(from.step("step"), EventJson.setting(from.object("setting"))));

    private static final EventKind<StepEvent.ReadingTaken> READING_TAKEN = new EventKind<>(
            "reading-taken",
            1,
            taken -> EventJson.format(taken.typed()),
            StepEvent.ReadingTaken.class,
            (taken, to) -> {
                to.put("step", taken.step());
                to.put("slot", taken.slot());
                EventJson.write(taken.typed(), to.putObject("typed"));
            },
            from -> new StepEvent.ReadingTaken(
                    from.step("step"), from.text("slot"), EventJson.written(from.object("typed"))));

    private static final EventKind<StepEvent.TemperatureTaken> TEMPERATURE_TAKEN = new EventKind<>(
            "temperature-taken",
            1,
            StepEvent.TemperatureTaken.class,
            (taken, to) ->
                    EventJson.write(taken.read(), to.put("step", taken.step()).put("of", Word.of(taken.of()))),
            from -> new StepEvent.TemperatureTaken(
                    from.step("step"), from.word("of", MeasuredBody.class), EventJson.degrees(from)));

    private static final EventKind<Event.StruckOut> STRUCK_OUT = new EventKind<>(
            "struck-out",
            1,
            Event.StruckOut.class,
            (struck, to) -> to.put("entry", struck.entry()).put("reason", struck.reason()),
            from -> new Event.StruckOut(from.whole("entry"), from.text("reason")));

    private static final EventKind<StepEvent.Answered> ANSWERED = new EventKind<>(
            "answered",
            1,
            StepEvent.Answered.class,
            (answered, to) -> to.put("step", answered.step())
                    .put("question", Word.of(answered.question()))
                    .put("answer", Word.of(answered.answer())),
            from -> new StepEvent.Answered(
                    from.step("step"), from.word("question", Question.class), from.word("answer", Answer.class)));

    private static final EventKind<StepEvent.PassBegun> PASS_BEGUN = new EventKind<>(
            "pass-begun",
            1,
            StepEvent.PassBegun.class,
            (pass, to) -> to.put("step", pass.step()).put("why", Word.of(pass.why())),
            from -> new StepEvent.PassBegun(from.step("step"), from.word("why", StepEvent.PassBegun.Why.class)));

    private static final EventKind<StepEvent.DoubtFlagged> DOUBT_FLAGGED = new EventKind<>(
            "doubt-flagged",
            1,
            StepEvent.DoubtFlagged.class,
            (doubt, to) -> to.put("step", doubt.step()).put("words", doubt.words()),
            from -> new StepEvent.DoubtFlagged(from.step("step"), from.text("words")));

    private static final EventKind<StepEvent.NoteMade> NOTE_MADE = new EventKind<>(
            "note-made",
            1,
            StepEvent.NoteMade.class,
            (note, to) -> to.put("step", note.step()).put("words", note.words()),
            from -> new StepEvent.NoteMade(from.step("step"), from.text("words")));

    private static final EventKind<StepEvent.DispositionSigned> DISPOSITION_SIGNED = new EventKind<>(
            "disposed",
            1,
            StepEvent.DispositionSigned.class,
            (disposed, to) -> {
                to.put("step", disposed.step())
                        .put("disposition", Word.of(disposed.disposition()))
                        .put("reason", disposed.reason())
                        .put("signed-by", disposed.signedBy());
                disposed.document().ifPresent(number -> to.put("number", number));
            },
            from -> new StepEvent.DispositionSigned(
                    from.step("step"),
                    from.word("disposition", Disposition.class),
                    from.text("reason"),
                    from.text("signed-by"),
                    from.textIfAny("number")));

    private static final EventKind<Event.HandedOver> HANDED_OVER = new EventKind<>(
            "handed-over",
            1,
            Event.HandedOver.class,
            (over, to) -> to.put("to", over.to()),
            from -> new Event.HandedOver(from.text("to")));

    private static final EventKind<Event.TakenOver> TAKEN_OVER =
            new EventKind<>("taken-over", 2, Event.TakenOver.class, (taken, to) -> {}, from -> new Event.TakenOver());

    private static final EventKind<Event.Signed> SIGNED = new EventKind<>(
            "signed",
            1,
            Event.Signed.class,
            (signed, to) -> to.put("signed-by", signed.signedBy()).put("meaning", Word.of(signed.meaning())),
            from -> new Event.Signed(from.text("signed-by"), from.word("meaning", SignedAs.class)));

    private static final EventKind<Event.Closed> CLOSED = new EventKind<>(
            "closed",
            1,
            Event.Closed.class,
            (closed, to) -> to.put("signed-by", closed.signedBy()).put("meaning", closed.meaning()),
            from -> new Event.Closed(from.text("signed-by"), from.text("meaning")));

    static final List<EventKind<?>> ALL = List.of(
            BEGUN,
            GAUGE_KNOWN,
            MACHINE_KNOWN,
            CUT_ON_THESE,
            GAUGE_CHOSEN,
            GAUGE_SET,
            READING_TAKEN,
            TEMPERATURE_TAKEN,
            STRUCK_OUT,
            ANSWERED,
            PASS_BEGUN,
            DOUBT_FLAGGED,
            NOTE_MADE,
            DISPOSITION_SIGNED,
            HANDED_OVER,
            TAKEN_OVER,
            SIGNED,
            CLOSED,
            ShelfKinds.PUT_AWAY,
            ShelfKinds.TAKEN_UP);

    /**
     * The newest format of an entry this release reads: it rises with each kind, and with each word or field of one.
     */
    static final int NEWEST_FORMAT = Math.max(
            EventJson.FORMAT_OF_ANGLES,
            ALL.stream().mapToInt(EventKind::format).max().orElseThrow());

    private static final Map<String, EventKind<?>> BY_NAME =
            ALL.stream().collect(Collectors.toMap(EventKind::name, kind -> kind));

    private static final Event.Cases<EventKind<?>> OF = new Event.Cases<>() {

        @Override
        public EventKind<?> begun(Event.Begun event) {
            return BEGUN;
        }

        @Override
        public EventKind<?> gaugeKnown(Event.GaugeKnown event) {
            return GAUGE_KNOWN;
        }

        @Override
        public EventKind<?> machineKnown(Event.MachineKnown event) {
            return MACHINE_KNOWN;
        }

        @Override
        public EventKind<?> cutOnThese(StepEvent.CutOnThese event) {
            return CUT_ON_THESE;
        }

        @Override
        public EventKind<?> gaugeChosen(StepEvent.GaugeChosen event) {
            return GAUGE_CHOSEN;
        }

        @Override
        public EventKind<?> gaugeSet(StepEvent.GaugeSet event) {
            return GAUGE_SET;
        }

        @Override
        public EventKind<?> readingTaken(StepEvent.ReadingTaken event) {
            return READING_TAKEN;
        }

        @Override
        public EventKind<?> temperatureTaken(StepEvent.TemperatureTaken event) {
            return TEMPERATURE_TAKEN;
        }

        @Override
        public EventKind<?> struckOut(Event.StruckOut event) {
            return STRUCK_OUT;
        }

        @Override
        public EventKind<?> answered(StepEvent.Answered event) {
            return ANSWERED;
        }

        @Override
        public EventKind<?> passBegun(StepEvent.PassBegun event) {
            return PASS_BEGUN;
        }

        @Override
        public EventKind<?> doubtFlagged(StepEvent.DoubtFlagged event) {
            return DOUBT_FLAGGED;
        }

        @Override
        public EventKind<?> noteMade(StepEvent.NoteMade event) {
            return NOTE_MADE;
        }

        @Override
        public EventKind<?> dispositionSigned(StepEvent.DispositionSigned event) {
            return DISPOSITION_SIGNED;
        }

        @Override
        public EventKind<?> handedOver(Event.HandedOver event) {
            return HANDED_OVER;
        }

        @Override
        public EventKind<?> signed(Event.Signed event) {
            return SIGNED;
        }

        @Override
        public EventKind<?> closed(Event.Closed event) {
            return CLOSED;
        }

        @Override
        public EventKind<?> putAway(Event.PutAway event) {
            return ShelfKinds.PUT_AWAY;
        }

        @Override
        public EventKind<?> takenUp(Event.TakenUp event) {
            return ShelfKinds.TAKEN_UP;
        }

        @Override
        public EventKind<?> takenOver(Event.TakenOver event) {
            return TAKEN_OVER;
        }

        @Override
        public EventKind<?> unknown(Event.Unknown event) {
            throw new IllegalArgumentException("An entry of an unknown kind is kept and never written");
        }
    };

    private EventKinds() {}

    static EventKind<?> of(Event event) {
        return event.match(OF);
    }

    /** Absent for a kind this release does not know. */
    static Optional<EventKind<?>> named(String name) {
        return Optional.ofNullable(BY_NAME.get(name));
    }
}
