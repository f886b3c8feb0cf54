package org.tenthwise.app.session;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.Sense;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;

/**
 * One run in hand. Every verb that is taken is on the disk when it returns; a verb that is not says why and changes
 * nothing. Used from the one thread that owns the ledger.
 *
 * <p>Nothing of a run is kept here that the ledger does not hold, but the step looked at, a gauge half set, and the choice
 * to sweep before the first reading of a pass.
 */
public final class RunSession {

    private final Ledger ledger;
    private final Clock clock;
    private final GaugeRack rack;
    private final GaugeAtHand gauge;
    private final Gate gate;
    private final Plan plan;
    private final List<Entry> entries;

    private Sheet sheet;
    private Step inHand;
    private boolean sweep;
    private Optional<String> doubted = Optional.empty();

    RunSession(Ledger ledger, Clock clock, GaugeRack rack, Plan plan, List<Entry> entries) {
        this.ledger = ledger;
        this.clock = clock;
        this.rack = rack;
        this.gauge = new GaugeAtHand(rack, plan.unit());
        this.gate = new Gate(plan);
        this.plan = plan;
        this.entries = new ArrayList<>(entries);
        this.sheet = Sheet.of(plan, new Run(entries));
        this.inHand = Whereabouts.whereItStopped(sheet);
    }

    public String id() {
        return sheet.run().id();
    }

    public State state() {
        return new State(sheet, inHand, asked(), sheet.run().setting(inHand.number()), sweeping(),
                Whereabouts.next(sheet, inHand));
    }

    public Reply goTo(int step) {
        inHand = plan.step(step);
        sweep = false;
        gauge.putDown();
        doubted = Optional.empty();
        return Reply.taken(state());
    }

    /** To the next step that is neither settled nor held; stays where there is none. */
    public Reply goOn() {
        return Whereabouts.next(sheet, inHand).map(step -> goTo(step.number())).orElseGet(() -> Reply.taken(state()));
    }

    public Reply chooseGauge(String mark) {
        return chooseGauge(mark, Optional.empty());
    }

    /**
     * Takes another gauge for the step in hand; the readings so far keep the one they were made with.
     *
     * @param reference mark of its master or of its wires; absent where they go by their nominal size
     */
    public Reply chooseGauge(String mark, Optional<String> reference) {
        Optional<Objection> shut = shut();
        if (shut.isPresent()) {
            return Reply.refused(state(), shut.get());
        }
        if (mark.isBlank()) {
            return refuse(Objection.Kind.BLANK);
        }
        if (inHand.check().means().isEmpty()) {
            return refuse(Objection.Kind.NOT_ASKED_HERE);
        }
        gauge.choose(mark.strip(), reference);
        return Reply.taken(state());
    }

    /** @param rises whether the number on the gauge rises when its plunger is pressed in, as a smaller bore presses it */
    public Reply tellSense(boolean rises) throws CouldNotSave {
        if (!(asked() instanceof Asked.WhichSense which)) {
            return refuse(Objection.Kind.NOT_ASKED_HERE);
        }
        rack.know(new Gauge(which.gauge(), which.kind(),
                Optional.of(rises ? Sense.FALLS_WITH_SIZE : Sense.RISES_WITH_SIZE)), by(), now());
        return Reply.taken(state());
    }

    /** A run-out not yet begun is read as the highest and the lowest over a full turn, or at every angle. */
    public Reply sweep(boolean wanted) {
        if (!(inHand.check() instanceof Check.RunOut) || !pass().standing().isEmpty()) {
            return refuse(Objection.Kind.NOT_ASKED_HERE);
        }
        sweep = wanted;
        return Reply.taken(state());
    }

    /**
     * Takes a figure for whatever is asked: a certified size, a zero or a reading.
     *
     * @param text as typed; empty takes what is suggested, where something is
     */
    public Reply enter(String text) throws CouldNotSave {
        Asked asked = asked();
        if (asked instanceof Asked.Certified wanted) {
            return enterCertified(text.isEmpty() ? wanted.suggested().text() : text, wanted);
        }
        if (asked instanceof Asked.Zero wanted) {
            return enterZero(text.isEmpty() ? wanted.suggested().text() : text);
        }
        if (asked instanceof Asked.Reading wanted) {
            return enterReading(text, wanted.slot());
        }
        return refuse(asked instanceof Asked.Held ? Objection.Kind.HELD
                : asked instanceof Asked.Closed ? Objection.Kind.CLOSED
                : asked instanceof Asked.Nothing ? Objection.Kind.NOTHING_ASKED : Objection.Kind.NOT_ASKED_HERE);
    }

    private Reply enterCertified(String text, Asked.Certified wanted) {
        Optional<Objection> objection = standing(gate.certified(inHand, text, wanted.suggested()), text);
        if (objection.isPresent()) {
            return Reply.refused(state(), objection.get());
        }
        gauge.certify(new Written(text, plan.unit()));
        doubted = Optional.empty();
        return Reply.taken(state());
    }

    private Reply enterZero(String text) throws CouldNotSave {
        if (!Written.isPlainDecimal(text)) {
            return Reply.refused(state(), new Objection(Objection.Kind.NOT_A_NUMBER, text));
        }
        set(gauge.onMaster(inHand, sheet.run(), new Written(text, plan.unit())));
        return Reply.taken(state());
    }

    private Reply enterReading(String text, Slot slot) throws CouldNotSave {
        Optional<Setting> toSet = gauge.settingToMake(inHand, sheet.run());
        Optional<Setting> setting = toSet.or(() -> sheet.run().setting(inHand.number()));
        Optional<Objection> objection = standing(gate.reading(inHand, text, setting), text);
        if (objection.isPresent()) {
            return Reply.refused(state(), objection.get());
        }
        Event.ReadingTaken taken = new Event.ReadingTaken(inHand.number(), slot.key(), new Written(text, plan.unit()));
        Optional<Objection> noSum = Gate.turn(pass(), taken).or(() -> gate.sum(withNext(toSet, taken)));
        if (noSum.isPresent()) {
            return Reply.refused(state(), noSum.get());
        }
        if (toSet.isPresent()) {
            set(toSet.get());
        }
        return kept(taken);
    }

    private List<Entry> withNext(Optional<Setting> setting, Event.ReadingTaken reading) {
        List<Entry> next = new ArrayList<>(entries);
        long seq = entries.get(entries.size() - 1).seq();
        setting.ifPresent(s -> next.add(entry(seq + 1, new Event.GaugeSet(inHand.number(), s))));
        next.add(entry(seq + 2, reading));
        return next;
    }

    /** What is left of an objection when the same was entered before: one that may be insisted on is gone then. */
    private Optional<Objection> standing(Optional<Objection> objection, String text) {
        return objection.filter(raised -> !(raised.kind().mayInsist() && insistedOn(text)));
    }

    private boolean insistedOn(String text) {
        boolean insisted = doubted.filter(text::equals).isPresent();
        doubted = Optional.of(text);
        return insisted;
    }

    public Reply answer(Answer answer) throws CouldNotSave {
        if (!(asked() instanceof Asked.Answering wanted) || !wanted.question().answers().contains(answer)) {
            return refuse(Objection.Kind.NOT_ASKED_HERE);
        }
        Optional<Setting> toSet = gauge.settingToMake(inHand, sheet.run());
        if (toSet.isPresent()) {
            set(toSet.get());
        }
        return kept(new Event.Answered(inHand.number(), wanted.question(), answer));
    }

    /** Begins a new pass: the readings so far stay in the record, and the step is measured anew. */
    public Reply again(Event.PassBegun.Why why) throws CouldNotSave {
        Optional<Objection> shut = shut();
        if (shut.isPresent()) {
            return Reply.refused(state(), shut.get());
        }
        if (pass().isEmpty()) {
            return refuse(Objection.Kind.NOTHING_ASKED);
        }
        sweep = false;
        return kept(new Event.PassBegun(inHand.number(), why));
    }

    /** @param entry {@code seq} of a reading or an answer of this run that still counts */
    public Reply strikeOut(long entry, String reason) throws CouldNotSave {
        if (reason.isBlank()) {
            return refuse(Objection.Kind.BLANK);
        }
        if (sheet.run().closed().isPresent()) {
            return refuse(Objection.Kind.CLOSED);
        }
        if (entries.stream().anyMatch(e -> e.event() instanceof Event.StruckOut out && out.entry() == entry)) {
            return refuse(Objection.Kind.ALREADY_STRUCK);
        }
        boolean strikable = entries.stream().anyMatch(e -> e.seq() == entry
                && (e.event() instanceof Event.ReadingTaken || e.event() instanceof Event.Answered));
        if (!strikable) {
            return refuse(Objection.Kind.NOT_ASKED_HERE);
        }
        return kept(new Event.StruckOut(entry, reason.strip()));
    }

    public Reply flagDoubt(String words) throws CouldNotSave {
        return words.isBlank() ? refuse(Objection.Kind.BLANK)
                : kept(new Event.DoubtFlagged(inHand.number(), words.strip()));
    }

    public Reply note(String words) throws CouldNotSave {
        return words.isBlank() ? refuse(Objection.Kind.BLANK) : kept(new Event.NoteMade(inHand.number(), words.strip()));
    }

    public Reply handOver(String to) throws CouldNotSave {
        return to.isBlank() ? refuse(Objection.Kind.BLANK) : kept(new Event.HandedOver(to.strip()));
    }

    public Reply dispose(Disposition disposition, String reason, String signedBy) throws CouldNotSave {
        if (reason.isBlank() || signedBy.isBlank()) {
            return refuse(Objection.Kind.BLANK);
        }
        Optional<Objection> shut = shut();
        return shut.isPresent() ? Reply.refused(state(), shut.get())
                : kept(new Event.Disposed(inHand.number(), disposition, reason.strip(), signedBy.strip()));
    }

    /** @param meaning what the signature says, as printed: "made and measured", "released" */
    public Reply close(String signedBy, String meaning) throws CouldNotSave {
        if (signedBy.isBlank() || meaning.isBlank()) {
            return refuse(Objection.Kind.BLANK);
        }
        return sheet.run().closed().isPresent() ? refuse(Objection.Kind.CLOSED)
                : kept(new Event.Closed(signedBy.strip(), meaning.strip()));
    }

    private Asked asked() {
        Optional<Objection> shut = shut();
        if (shut.isPresent()) {
            return shut.get().kind() == Objection.Kind.CLOSED ? new Asked.Closed()
                    : new Asked.Held(sheet.line(inHand.number()).waitingFor());
        }
        Map<String, Run.Reading> standing = pass().standing();
        List<Slot> slots = slots();
        List<Slot> missing = slots.stream().filter(slot -> !standing.containsKey(slot.key())).toList();
        Optional<Question> question = inHand.check().questions().stream()
                .filter(q -> pass().answer(q).isEmpty()).findFirst();
        if (missing.isEmpty() && question.isEmpty()) {
            return new Asked.Nothing();
        }
        return gauge.asked(inHand, sheet.run()).orElseGet(() -> missing.isEmpty()
                ? new Asked.Answering(question.orElseThrow())
                : new Asked.Reading(missing.get(0), slots.size() - missing.size(), slots.size(), plan.unit()));
    }

    private List<Slot> slots() {
        return inHand.check() instanceof Check.RunOut runOut && sweeping() ? runOut.sweepSlots()
                : inHand.check().slots();
    }

    private boolean sweeping() {
        return inHand.check() instanceof Check.RunOut runOut && (sweep
                || runOut.sweepSlots().stream().anyMatch(slot -> pass().standing().containsKey(slot.key())));
    }

    private Optional<Objection> shut() {
        if (sheet.run().closed().isPresent()) {
            return Optional.of(Objection.of(Objection.Kind.CLOSED));
        }
        return sheet.line(inHand.number()).held() ? Optional.of(Objection.of(Objection.Kind.HELD)) : Optional.empty();
    }

    private Run.Pass pass() {
        return sheet.run().pass(inHand.number());
    }

    private void set(Setting setting) throws CouldNotSave {
        append(new Event.GaugeSet(inHand.number(), setting));
        gauge.putDown();
    }

    private Reply kept(Event event) throws CouldNotSave {
        append(event);
        return Reply.taken(state());
    }

    private void append(Event event) throws CouldNotSave {
        entries.add(ledger.append(id(), now(), by(), event));
        sheet = Sheet.of(plan, new Run(entries));
        doubted = Optional.empty();
    }

    private Entry entry(long seq, Event event) {
        return new Entry(seq, id(), now(), by(), event);
    }

    private String by() {
        return sheet.run().by();
    }

    private OffsetDateTime now() {
        return OffsetDateTime.now(clock);
    }

    private Reply refuse(Objection.Kind kind) {
        return Reply.refused(state(), Objection.of(kind));
    }
}
