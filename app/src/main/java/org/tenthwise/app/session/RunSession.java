package org.tenthwise.app.session;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Body;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.record.Warmth;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.SignedAs;

/**
 * One run in hand. Every verb that is taken is on the disk when it returns; a verb that is not says why and changes
 * nothing. Used from the one thread that owns the ledger.
 *
 * <p>Nothing of a run is kept here that the ledger does not hold, but the step looked at, what was typed of a gauge not set
 * yet, and the way of reading that was chosen.
 */
public final class RunSession {

    private final RunBook book;
    private final GaugeAtHand gauge;
    private final GaugeVerbs gaugeVerbs;
    private final MachineAtHand machine;
    private final Gate gate;
    private final Plan plan;
    private final WayOfReading way = new WayOfReading();

    private Step inHand;

    RunSession(Ledger ledger, Clock clock, GaugeRack rack, Plan plan, List<Entry> entries) {
        this.book = new RunBook(ledger, clock, plan, entries);
        this.gauge = new GaugeAtHand(book, rack);
        this.gaugeVerbs = new GaugeVerbs(this, book, gauge);
        this.machine = new MachineAtHand(book);
        this.gate = new Gate(plan);
        this.plan = plan;
        this.inHand = Whereabouts.whereItStopped(book.sheet());
    }

    public String id() {
        return sheet().run().id();
    }

    public State state() {
        return new State(sheet(), inHand, asked(), sheet().run().setting(inHand.number()), way.readingsFirst(pass()), Whereabouts.next(sheet(), inHand));
    }

    public Reply goTo(int step) {
        inHand = plan.step(step);
        way.forget();
        return Reply.taken(state());
    }

    /** To the next step that is neither settled nor held; stays where there is none. */
    public Reply goOn() {
        return Whereabouts.next(sheet(), inHand).map(step -> goTo(step.number())).orElseGet(() -> Reply.taken(state()));
    }

    /** What can be done with the gauge of the step in hand. */
    public GaugeVerbs gauge() {
        return gaugeVerbs;
    }

    /** What can be done with the turn of a run-out in hand. */
    public TurnVerbs turn() {
        return new TurnVerbs(this, book, way);
    }

    /** The temperatures of a pass not yet begun are taken before its readings, or wait until everything is read. */
    public Reply readingsFirst(boolean wanted) {
        if (!state().turnable()) {
            return refuse(Objection.Kind.NOT_ASKED_HERE);
        }
        way.readingsFirst(wanted);
        return Reply.taken(state());
    }

    /**
     * Takes a figure for whatever is asked: a certified size, a zero, a reading or a temperature. One that is far off is not
     * taken: {@link #keep} does that.
     *
     * @param text as typed; empty takes what is suggested, where something is
     */
    public Reply enter(String text) throws CouldNotSave {
        return take(text, plan.unit(), false);
    }

    /** The same for a step as whoever typed it saw it: where another is in hand by now, nothing is taken. */
    public Reply enter(int step, String text) throws CouldNotSave {
        return inHand.number() == step ? enter(text) : refuse(Objection.Kind.NOT_ASKED_HERE);
    }

    /**
     * Takes a figure as the first of the next check, where that asks for a reading and the figure lies within a few tolerances
     * of it; otherwise stays, and asks.
     *
     * @param step the one in hand as whoever typed it saw it
     */
    public Reply enterNext(int step, String text) throws CouldNotSave {
        Step before = inHand;
        if (before.number() == step && state().figureBeginsNext()) {
            goOn();
            if (asked() instanceof Asked.Reading && gate.opens(inHand, text, sheet().run().setting(inHand.number()))) {
                return enter(text);
            }
        }
        inHand = before;
        return Reply.refused(state(), new Objection(Objection.Kind.OPENS_NEXT, text));
    }

    /** Takes a figure on purpose although it is far off; in everything else as {@link #enter}. */
    public Reply keep(String text) throws CouldNotSave {
        return take(text, plan.unit(), true);
    }

    /** As {@link #enter(String)}, read on a gauge in that unit; kept as typed, with its unit. */
    public Reply enter(String text, Unit unit) throws CouldNotSave {
        return take(text, unit, false);
    }

    /** As {@link #keep(String)}, read on a gauge in that unit; kept as typed, with its unit. */
    public Reply keep(String text, Unit unit) throws CouldNotSave {
        return take(text, unit, true);
    }

    private Reply take(String text, Unit unit, boolean onPurpose) throws CouldNotSave {
        Asked asked = asked();
        if (asked instanceof Asked.Certified wanted) {
            return takeCertified(text.isEmpty() ? wanted.suggested().text() : text, unit, wanted, onPurpose);
        }
        if (asked instanceof Asked.Zero wanted) {
            return takeZero(text.isEmpty() ? wanted.suggested().text() : text, unit, wanted, onPurpose);
        }
        if (asked instanceof Asked.Reading wanted) {
            return takeReading(text, unit, wanted.slot(), onPurpose);
        }
        if (asked instanceof Asked.Temperature wanted) {
            return takeTemperature(wanted.of(), text.isEmpty() ? wanted.suggested().map(Degrees::text).orElse("") : text, onPurpose);
        }
        return refuse(asked instanceof Asked.Held ? Objection.Kind.HELD
                : asked instanceof Asked.Closed ? Objection.Kind.CLOSED
                : asked instanceof Asked.Nothing ? Objection.Kind.NOTHING_ASKED : Objection.Kind.NOT_ASKED_HERE);
    }

    private Reply takeCertified(String text, Unit unit, Asked.Certified wanted, boolean onPurpose) throws CouldNotSave {
        Optional<Objection> objection = standing(gate.certified(inHand, text, unit, wanted.suggested()), onPurpose);
        if (objection.isPresent()) {
            return Reply.refused(state(), objection.get());
        }
        gauge.certify(inHand, new Written(text, unit));
        return Reply.taken(state());
    }

    private Reply takeZero(String text, Unit unit, Asked.Zero wanted, boolean onPurpose) throws CouldNotSave {
        Optional<Objection> objection = standing(gate.zero(text, unit, wanted.certified()), onPurpose);
        if (objection.isPresent()) {
            return Reply.refused(state(), objection.get());
        }
        gauge.zero(inHand, new Written(text, unit));
        return Reply.taken(state());
    }

    private Reply takeReading(String text, Unit unit, Slot slot, boolean onPurpose) throws CouldNotSave {
        Optional<Setting> toSet = gauge.settingToMake(inHand);
        Optional<Setting> setting = toSet.or(() -> sheet().run().setting(inHand.number()));
        Supplier<Event.ReadingTaken> taken = () -> new Event.ReadingTaken(inHand.number(), slot.key(), new Written(text, unit));
        Optional<Objection> objection = standing(gate.reading(inHand, text, unit, setting, pass()), onPurpose)
                .or(() -> Gate.turn(inHand, pass(), setting, taken.get())).or(() -> gate.sum(sheet().run().entries(), toSet, taken.get()));
        if (objection.isPresent()) {
            return Reply.refused(state(), objection.get());
        }
        if (toSet.isPresent()) {
            book.add(new Event.GaugeSet(inHand.number(), toSet.get()));
        }
        return kept(taken.get());
    }

    /**
     * Takes a temperature for the pass in hand, where one is needed; it need not be asked for yet, and one taken before is
     * replaced.
     */
    public Reply temperature(Body of, String text) throws CouldNotSave {
        return takeTemperature(of, text, false);
    }

    /** Takes a temperature on purpose although it is far off; in everything else as {@link #temperature}. */
    public Reply keepTemperature(Body of, String text) throws CouldNotSave {
        return takeTemperature(of, text, true);
    }

    private Reply takeTemperature(Body of, String text, boolean onPurpose) throws CouldNotSave {
        Optional<Warmth> needed = finding().warmth().filter(Warmth::needed);
        if (shut().isPresent() || needed.isEmpty()) {
            return Reply.refused(state(), shut().orElseGet(() -> Objection.of(Objection.Kind.NOT_ASKED_HERE)));
        }
        Optional<Objection> objection = standing(Thermometer.objection(text, needed.get().climate()), onPurpose);
        return objection.isPresent() ? Reply.refused(state(), objection.get())
                : kept(new Event.TemperatureTaken(inHand.number(), of, Degrees.of(text, needed.get().climate().scale())));
    }

    /** What is left of an objection to a figure that is kept on purpose. */
    private static Optional<Objection> standing(Optional<Objection> objection, boolean onPurpose) {
        return objection.filter(raised -> !(onPurpose && raised.mayBeKept()));
    }

    public Reply answer(Answer answer) throws CouldNotSave {
        if (!(asked() instanceof Asked.Answering wanted) || !wanted.question().answers().contains(answer)) {
            return refuse(Objection.Kind.NOT_ASKED_HERE);
        }
        Optional<Setting> toSet = gauge.settingToMake(inHand);
        if (toSet.isPresent()) {
            book.add(new Event.GaugeSet(inHand.number(), toSet.get()));
        }
        return kept(new Event.Answered(inHand.number(), wanted.question(), answer));
    }

    /** Begins a new pass: the readings so far stay in the record, and the step is measured anew. */
    public Reply again(Event.PassBegun.Why why) throws CouldNotSave {
        Optional<Objection> against = shut().or(() -> Gate.again(pass(), why))
                .or(() -> CutGate.cutting(finding(), pass()).filter(unread -> why == Event.PassBegun.Why.CUT));
        if (against.isPresent()) {
            return Reply.refused(state(), against.get());
        }
        way.forget();
        return kept(new Event.PassBegun(inHand.number(), why));
    }

    /** Signs for a cut on what is read so far; it lapses with any change of the step. */
    public Reply cutOnThese(String reason) throws CouldNotSave {
        Optional<Objection> against = shut().or(() -> CutGate.onThese(finding(), pass())).or(() -> Signing.inReason(reason));
        return against.isPresent() ? Reply.refused(state(), against.get()) : kept(new Event.CutOnThese(inHand.number(), reason.strip()));
    }

    /** Says how the register of the machine counts and what is usually aimed at on it, from now on and for the shop. */
    public Reply machine(Register register, Aim.ByLimits usual) throws CouldNotSave {
        if (sheet().run().closed().isPresent()) {
            return refuse(Objection.Kind.CLOSED);
        }
        machine.tell(register, usual);
        return Reply.taken(state());
    }

    /** @param entry {@code seq} of a reading, a temperature, an answer or the setting of a gauge that still counts */
    public Reply strikeOut(long entry, String reason) throws CouldNotSave {
        if (reason.isBlank() || sheet().run().closed().isPresent()) {
            return refuse(reason.isBlank() ? Objection.Kind.BLANK : Objection.Kind.CLOSED);
        }
        Optional<Objection> against = Gate.strikingOut(sheet().run(), entry);
        return against.isPresent() ? Reply.refused(state(), against.get()) : kept(new Event.StruckOut(entry, reason.strip()));
    }

    public Reply flagDoubt(String words) throws CouldNotSave {
        return words.isBlank() ? refuse(Objection.Kind.BLANK)
                : kept(new Event.DoubtFlagged(inHand.number(), words.strip()));
    }

    public Reply note(String words) throws CouldNotSave {
        return words.isBlank() ? refuse(Objection.Kind.BLANK) : kept(new Event.NoteMade(inHand.number(), words.strip()));
    }

    public Reply handOver(String to) throws CouldNotSave {
        Optional<Objection> hidden = Signing.inName(to);
        if (hidden.isPresent()) {
            return Reply.refused(state(), hidden.get());
        }
        return to.isBlank() ? refuse(Objection.Kind.BLANK) : kept(new Event.HandedOver(to.strip()));
    }

    /**
     * Signs for the finding as it stands: what changes it later, or what it rests on, makes the signature lapse.
     *
     * @param number of the concession, the approval or the nonconformance; a blank one is none. What departs from the drawing needs one
     */
    public Reply dispose(Disposition disposition, String reason, String signedBy, String number) throws CouldNotSave {
        Event.Disposed disposed = Dispositions.signed(inHand, disposition, reason, signedBy, number);
        Optional<Objection> against = shut().or(() -> Dispositions.against(sheet().line(inHand.number()).finding(), disposed));
        return against.isPresent() ? Reply.refused(state(), against.get()) : kept(disposed);
    }

    /** Signs and leaves the run as open or as closed as it is. */
    public Reply sign(String signedBy, SignedAs meaning) throws CouldNotSave {
        Optional<Objection> against = Signing.against(sheet(), signedBy, meaning);
        return against.isPresent() ? Reply.refused(state(), against.get()) : kept(new Event.Signed(signedBy.strip(), meaning));
    }

    /** Signs and closes the run. */
    public Reply close(String signedBy, SignedAs meaning) throws CouldNotSave {
        if (sheet().run().closed().isPresent()) {
            return refuse(Objection.Kind.CLOSED);
        }
        Optional<Objection> against = Signing.against(sheet(), signedBy, meaning);
        return against.isPresent() ? Reply.refused(state(), against.get()) : kept(new Event.Closed(signedBy.strip(), meaning));
    }

    Asked asked() {
        return shut().<Asked>map(why -> why.kind() == Objection.Kind.CLOSED ? new Asked.Closed()
                        : new Asked.Held(sheet().line(inHand.number()).waitingFor()))
                .orElseGet(() -> Asking.next(sheet(), inHand, way, gauge));
    }

    Optional<Objection> shut() {
        if (sheet().run().closed().isPresent()) {
            return Optional.of(Objection.of(Objection.Kind.CLOSED));
        }
        return sheet().line(inHand.number()).held() ? Optional.of(Objection.of(Objection.Kind.HELD)) : Optional.empty();
    }

    private Finding finding() {
        return sheet().line(inHand.number()).finding();
    }

    private Run.Pass pass() {
        return sheet().run().pass(inHand);
    }

    private Reply kept(Event event) throws CouldNotSave {
        book.add(event);
        return Reply.taken(state());
    }

    private Sheet sheet() {
        return book.sheet();
    }

    private Reply refuse(Objection.Kind kind) {
        return Reply.refused(state(), Objection.of(kind));
    }
}
