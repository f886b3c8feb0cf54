package org.tenthwise.app.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ImportEvent;
import org.tenthwise.model.run.MatterSettled;
import org.tenthwise.model.run.ReportEvent;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Word;

/** The kinds of events there are; those that happen at a step are written and read by {@link StepEventKinds}. */
final class EventKinds {

    /** What it takes to read entries that do not say it: those of the kinds there were when entries began to. */
    static final int FORMAT_UNSAID = 3;

    private static final EventKind<Event.Begun> BEGUN = new EventKind<>(
            "begun",
            1,
            begun -> begun.earlier().isPresent() ? OccasionJson.FORMAT : OccasionJson.format(begun.occasion()),
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
                OccasionJson.write(begun.occasion(), to);
                EarlierJson.write(begun.earlier(), to);
            },
            from -> new Event.Begun(
                    EventJson.part(from.object("part")),
                    from.text("serial"),
                    from.text("lot"),
                    from.text("machine"),
                    EventJson.plan(from.object("plan")),
                    from.isSo("no-lot"),
                    OccasionJson.read(from),
                    EarlierJson.read(from)));

    private static final EventKind<ShopEvent.GaugeKnown> GAUGE_KNOWN = new EventKind<>(
            "gauge-known",
            1,
            known -> EventJson.format(known.gauge()),
            ShopEvent.GaugeKnown.class,
            (known, to) -> EventJson.write(known.gauge(), to.putObject("gauge")),
            from -> new ShopEvent.GaugeKnown(EventJson.gauge(from.object("gauge"))));

    private static final EventKind<ShopEvent.CalibrationKnown> CALIBRATION_KNOWN = new EventKind<>(
            "calibration-known",
            16,
            ShopEvent.CalibrationKnown.class,
            (known, to) -> {
                to.put("mark", known.what().mark());
                known.what().kind().ifPresent(kind -> to.put("kind", kind));
                EventJson.write(known.calibration(), to);
                if (known.putsRight()) {
                    to.put("puts-right", true);
                }
            },
            from -> new ShopEvent.CalibrationKnown(
                    new GaugeOrMaster(from.text("mark"), from.textIfAny("kind")),
                    EventJson.calibration(from),
                    from.isSo("puts-right")));

    private static final EventKind<ShopEvent.MachineKnown> MACHINE_KNOWN = new EventKind<>(
            "machine-known",
            3,
            ShopEvent.MachineKnown.class,
            (known, to) -> to.put("machine", known.machine())
                    .put("register", Word.of(known.register()))
                    .put("usual-aim", Word.of(known.usual())),
            from -> new ShopEvent.MachineKnown(
                    from.text("machine"),
                    from.word("register", Register.class),
                    from.word("usual-aim", Aim.ByLimits.class)));

    private static final EventKind<Event.StruckOut> STRUCK_OUT = new EventKind<>(
            "struck-out",
            1,
            Event.StruckOut.class,
            (struck, to) -> to.put("entry", struck.entry()).put("reason", struck.reason()),
            from -> new Event.StruckOut(from.whole("entry"), from.text("reason")));

    private static final EventKind<Event.HandedOver> HANDED_OVER = new EventKind<>(
            "handed-over",
            1,
            Event.HandedOver.class,
            (over, to) -> to.put("to", over.to()),
            from -> new Event.HandedOver(from.text("to")));

    private static final EventKind<Event.PutAway> PUT_AWAY = new EventKind<>(
            "put-away",
            5,
            Event.PutAway.class,
            (away, to) -> to.put("put-away-by", away.putAwayBy()).put("reason", away.reason()),
            from -> new Event.PutAway(from.text("put-away-by"), from.text("reason")));

    private static final EventKind<Event.TakenUp> TAKEN_UP =
            new EventKind<>("taken-up", 6, Event.TakenUp.class, (up, to) -> {}, from -> new Event.TakenUp());

    private static final EventKind<Event.TakenOver> TAKEN_OVER =
            new EventKind<>("taken-over", 2, Event.TakenOver.class, (taken, to) -> {}, from -> new Event.TakenOver());

    private static final EventKind<Event.Sealed> SEALED = new EventKind<>(
            "sealed",
            10,
            Event.Sealed.class,
            (seal, to) -> to.put("place", seal.place())
                    .put("head", seal.head())
                    .put("fingerprint", seal.fingerprint())
                    .put("key", seal.key())
                    .put("signature", seal.signature()),
            from -> new Event.Sealed(
                    from.whole("place"),
                    from.text("head"),
                    from.text("fingerprint"),
                    from.text("key"),
                    from.text("signature")));

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
            CALIBRATION_KNOWN,
            StepEventKinds.CUT_ON_THESE,
            StepEventKinds.GAUGE_CHOSEN,
            StepEventKinds.GAUGE_SET,
            StepEventKinds.READING_TAKEN,
            StepEventKinds.TEMPERATURE_TAKEN,
            STRUCK_OUT,
            StepEventKinds.ANSWERED,
            StepEventKinds.DOCUMENT_GIVEN,
            StepEventKinds.PASS_BEGUN,
            StepEventKinds.DOUBT_FLAGGED,
            StepEventKinds.NOTE_MADE,
            StepEventKinds.DISPOSITION_SIGNED,
            HANDED_OVER,
            TAKEN_OVER,
            SIGNED,
            CLOSED,
            PUT_AWAY,
            TAKEN_UP,
            SEALED,
            ImportEventKinds.IMPORTED,
            ImportEventKinds.LOST,
            ReportEventKinds.REPORT_DRAWN_UP,
            ReportEventKinds.REPORT_SIGNED,
            MatterEventKind.MATTER_SETTLED);

    /**
     * The newest format of an entry this release reads: it rises with each kind, and with each word or field of one.
     */
    static final int NEWEST_FORMAT = Math.max(
            OccasionJson.FORMAT, ALL.stream().mapToInt(EventKind::format).max().orElseThrow());

    private static final Map<String, EventKind<?>> BY_NAME =
            ALL.stream().collect(Collectors.toMap(EventKind::name, kind -> kind));

    private static final Event.Cases<EventKind<?>> OF = new Event.Cases<>() {

        @Override
        public EventKind<?> begun(Event.Begun event) {
            return BEGUN;
        }

        @Override
        public EventKind<?> gaugeKnown(ShopEvent.GaugeKnown event) {
            return GAUGE_KNOWN;
        }

        @Override
        public EventKind<?> calibrationKnown(ShopEvent.CalibrationKnown event) {
            return CALIBRATION_KNOWN;
        }

        @Override
        public EventKind<?> machineKnown(ShopEvent.MachineKnown event) {
            return MACHINE_KNOWN;
        }

        @Override
        public EventKind<?> cutOnThese(StepEvent.CutOnThese event) {
            return StepEventKinds.CUT_ON_THESE;
        }

        @Override
        public EventKind<?> gaugeChosen(StepEvent.GaugeChosen event) {
            return StepEventKinds.GAUGE_CHOSEN;
        }

        @Override
        public EventKind<?> gaugeSet(StepEvent.GaugeSet event) {
            return StepEventKinds.GAUGE_SET;
        }

        @Override
        public EventKind<?> readingTaken(StepEvent.ReadingTaken event) {
            return StepEventKinds.READING_TAKEN;
        }

        @Override
        public EventKind<?> temperatureTaken(StepEvent.TemperatureTaken event) {
            return StepEventKinds.TEMPERATURE_TAKEN;
        }

        @Override
        public EventKind<?> struckOut(Event.StruckOut event) {
            return STRUCK_OUT;
        }

        @Override
        public EventKind<?> answered(StepEvent.Answered event) {
            return StepEventKinds.ANSWERED;
        }

        @Override
        public EventKind<?> documentGiven(StepEvent.DocumentGiven event) {
            return StepEventKinds.DOCUMENT_GIVEN;
        }

        @Override
        public EventKind<?> passBegun(StepEvent.PassBegun event) {
            return StepEventKinds.PASS_BEGUN;
        }

        @Override
        public EventKind<?> doubtFlagged(StepEvent.DoubtFlagged event) {
            return StepEventKinds.DOUBT_FLAGGED;
        }

        @Override
        public EventKind<?> noteMade(StepEvent.NoteMade event) {
            return StepEventKinds.NOTE_MADE;
        }

        @Override
        public EventKind<?> dispositionSigned(StepEvent.DispositionSigned event) {
            return StepEventKinds.DISPOSITION_SIGNED;
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
            return PUT_AWAY;
        }

        @Override
        public EventKind<?> takenUp(Event.TakenUp event) {
            return TAKEN_UP;
        }

        @Override
        public EventKind<?> takenOver(Event.TakenOver event) {
            return TAKEN_OVER;
        }

        @Override
        public EventKind<?> reportDrawnUp(ReportEvent.ReportDrawnUp event) {
            return ReportEventKinds.REPORT_DRAWN_UP;
        }

        @Override
        public EventKind<?> reportSigned(ReportEvent.ReportSigned event) {
            return ReportEventKinds.REPORT_SIGNED;
        }

        @Override
        public EventKind<?> matterSettled(MatterSettled event) {
            return MatterEventKind.MATTER_SETTLED;
        }

        @Override
        public EventKind<?> sealed(Event.Sealed event) {
            return SEALED;
        }

        @Override
        public EventKind<?> imported(ImportEvent.Imported event) {
            return ImportEventKinds.IMPORTED;
        }

        @Override
        public EventKind<?> importLost(ImportEvent.Lost event) {
            return ImportEventKinds.LOST;
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
