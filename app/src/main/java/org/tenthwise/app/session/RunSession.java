package org.tenthwise.app.session;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.tenthwise.app.history.Progress;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.HoldPoints;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/**
 * One run in hand. Every verb that is taken is on the disk when it returns; a verb that is not says why and changes
 * nothing. Used from the one thread that owns the ledger.
 *
 * <p>Nothing of a run is kept here that the ledger does not hold, but the step looked at, what was typed of a gauge not
 * set yet, and the way of reading that was chosen.
 */
public final class RunSession {

    private final RunBook book;
    private final GaugeAtHand gauge;
    private final GaugeVerbs gaugeVerbs;
    private final FigureVerbs figures;
    private final MachineAtHand machine;
    private final EntryCheck gate;
    private final Plan plan;
    private final WayOfReading way = new WayOfReading();
    private final HoldPoints holds = new HoldPoints();
    private final LastParts lastParts;
    private final StepsInHand steps;

    private Step inHand;

    RunSession(Ledger ledger, Clock clock, GaugeRack rack, StepsInHand steps, Plan plan, List<Entry> entries) {
        this.book = new RunBook(ledger, clock, plan, entries);
        this.gauge = new GaugeAtHand(book, rack);
        this.gaugeVerbs = new GaugeVerbs(this, book, gauge);
        this.machine = new MachineAtHand(book);
        this.gate = new EntryCheck(plan);
        this.figures = new FigureVerbs(this, book, gauge, gate);
        this.plan = plan;
        this.lastParts = new LastParts(book);
        this.steps = steps;
        this.inHand = steps.goesOn(sheet());
    }

    public String id() {
        return sheet().run().id();
    }

    public State state() {
        return new State(
                sheet(),
                inHand,
                asked(),
                sheet().run().gauges().setting(inHand.number()),
                way.readingsFirst(pass()),
                Progress.next(sheet(), inHand),
                holds.opened(sheet()),
                lastParts.at(inHand),
                gauge.calibrated(inHand),
                book.now());
    }

    private void take(Step step) {
        inHand = step;
        steps.keep(id(), step.number());
    }

    public Reply goTo(int step) {
        take(plan.step(step));
        way.forget();
        return Reply.taken(state());
    }

    /** To the next step that is neither settled nor held; stays where there is none. */
    public Reply goOn() {
        return Progress.next(sheet(), inHand).map(step -> goTo(step.number())).orElseGet(() -> Reply.taken(state()));
    }

    /** What can be done with the gauge of the step in hand. */
    public GaugeVerbs gauge() {
        return gaugeVerbs;
    }

    /** What can be done with the turn of a run-out in hand. */
    public TurnVerbs turn() {
        return new TurnVerbs(this, book, way);
    }

    /** What can be done with a question by one tap. */
    public AnswerVerbs answers() {
        return new AnswerVerbs(this);
    }

    /** What can be done with papers that prove the step in hand. */
    public DocumentVerbs documents() {
        return new DocumentVerbs(this, book);
    }

    /** What can be done with the temperatures of the pass in hand. */
    public TemperatureVerbs temperatures() {
        return new TemperatureVerbs(this);
    }

    /** How a check that is done leads on to the next. */
    public Onwards onwards() {
        return new Onwards(this, gate);
    }

    /** Puts the run away, or takes it up again. */
    public ShelfVerbs shelf() {
        return new ShelfVerbs(this, machine);
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
     * Takes a figure for whatever is asked: a certified size, a zero, a reading or a temperature. One that is far off
     * is not taken: {@link #keep} does that.
     *
     * @param text as typed; empty takes what is suggested, where something is
     */
    public Reply enter(String text) throws CouldNotSave {
        return figures.take(text, state().unit(), false);
    }

    /** The same for a step as whoever typed it saw it: where another is in hand by now, nothing is taken. */
    public Reply enter(int step, String text) throws CouldNotSave {
        return inHand.number() == step ? enter(text) : refuse(Objection.Kind.NOT_ASKED_HERE);
    }

    /** Takes a figure on purpose although it is far off; in everything else as {@link #enter}. */
    public Reply keep(String text) throws CouldNotSave {
        return figures.take(text, state().unit(), true);
    }

    /** As {@link #enter(String)}, read on a gauge in that unit; kept as typed, with its unit. */
    public Reply enter(String text, Unit unit) throws CouldNotSave {
        return figures.take(text, unit, false);
    }

    /** As {@link #keep(String)}, read on a gauge in that unit; kept as typed, with its unit. */
    public Reply keep(String text, Unit unit) throws CouldNotSave {
        return figures.take(text, unit, true);
    }

    public Reply answer(Answer answer) throws CouldNotSave {
        Optional<Question> wanted =
                asked().asQuestion().filter(question -> question.answers().contains(answer));
        if (wanted.isEmpty()) {
            return refuse(Objection.Kind.NOT_ASKED_HERE);
        }
        book.add(book.happening(
                gauge.withItsSetting(inHand, new StepEvent.Answered(inHand.number(), wanted.get(), answer))));
        return Reply.taken(state());
    }

    /** Begins a new pass: the readings so far stay in the record, and the step is measured anew. */
    public Reply again(StepEvent.PassBegun.Why why) throws CouldNotSave {
        Optional<Objection> against = shut().or(() -> EntryCheck.again(pass(), why))
                .or(() -> CutGate.cutting(finding(), pass()).filter(unread -> why == StepEvent.PassBegun.Why.CUT));
        if (against.isEmpty()) {
            way.forget();
        }
        return keptUnless(against, () -> new StepEvent.PassBegun(inHand.number(), why));
    }

    /** Signs for a cut on what is read so far; it lapses with any change of the step. */
    public Reply cutOnThese(String reason) throws CouldNotSave {
        return keptUnless(
                shut().or(() -> CutGate.onThese(finding(), pass())).or(() -> Signing.inReason(reason)),
                () -> new StepEvent.CutOnThese(inHand.number(), reason.strip()));
    }

    /** Says how the register of the machine counts and what is usually aimed at on it, from now on and for the shop. */
    public Reply machine(Register register, Aim.ByLimits usual) throws CouldNotSave {
        Optional<Objection> against = closed();
        if (against.isEmpty()) {
            machine.tell(register, usual);
        }
        return replied(against);
    }

    /** @param entry {@code seq} of a reading, a temperature, an answer or the setting of a gauge that still counts */
    public Reply strikeOut(long entry, String reason) throws CouldNotSave {
        return keptUnless(
                Objection.where(reason.isBlank(), Objection.Kind.BLANK)
                        .or(() -> Shut.entry(sheet(), entry))
                        .or(() -> EntryCheck.strikingOut(sheet().run(), entry)),
                () -> new Event.StruckOut(entry, reason.strip()));
    }

    public Reply flagDoubt(String words) throws CouldNotSave {
        return keptUnless(
                Objection.where(words.isBlank(), Objection.Kind.BLANK),
                () -> new StepEvent.DoubtFlagged(inHand.number(), words.strip()));
    }

    public Reply note(String words) throws CouldNotSave {
        return keptUnless(
                Objection.where(words.isBlank(), Objection.Kind.BLANK),
                () -> new StepEvent.NoteMade(inHand.number(), words.strip()));
    }

    public Reply handOver(String to) throws CouldNotSave {
        return keptUnless(
                Signing.inName(to).or(() -> Objection.where(to.isBlank(), Objection.Kind.BLANK)),
                () -> new Event.HandedOver(to.strip()));
    }

    /**
     * Signs for the finding as it stands: what changes it later, or what it rests on, makes the signature lapse.
     *
     * @param number of the concession, the approval or the nonconformance; a blank one is none. What departs from the
     *     drawing needs one
     */
    public Reply dispose(Disposition disposition, String reason, String signedBy, String number) throws CouldNotSave {
        StepEvent.DispositionSigned disposed = Dispositions.signed(inHand, disposition, reason, signedBy, number);
        return keptUnless(shut().or(() -> Dispositions.against(finding(), disposed)), () -> disposed);
    }

    /** Signs and leaves the run as open or as closed as it is. */
    public Reply sign(String signedBy, SignedAs meaning) throws CouldNotSave {
        return keptUnless(
                Signing.against(sheet(), signedBy, meaning), () -> new Event.Signed(signedBy.strip(), meaning));
    }

    /** Signs and closes the run. */
    public Reply close(String signedBy, SignedAs meaning) throws CouldNotSave {
        return keptUnless(
                closed().or(() -> Signing.against(sheet(), signedBy, meaning)),
                () -> new Event.Closed(signedBy.strip(), meaning));
    }

    Prompt asked() {
        return shut().<Prompt>map(why -> switch (why.kind()) {
                    case HELD -> new Prompt.Held(sheet().line(inHand.number()).waitingFor());
                    case NOT_IN_THIS_RUN -> new Prompt.NotInThisRun();
                    default -> new Prompt.Closed();
                })
                .orElseGet(() -> NextPrompt.next(sheet(), inHand, way, gauge));
    }

    /** What a step that is not shut wants next, whichever is in hand. */
    Prompt asked(Step step) {
        return NextPrompt.next(sheet(), step, new WayOfReading(), gauge);
    }

    /** What is said against whatever is taken at the step in hand. */
    Optional<Objection> shut() {
        return Shut.step(sheet(), inHand);
    }

    Optional<Objection> closed() {
        return Shut.run(sheet());
    }

    private Finding finding() {
        return sheet().line(inHand.number()).finding();
    }

    private Pass pass() {
        return sheet().run().pass(inHand);
    }

    private Sheet sheet() {
        return book.sheet();
    }

    Reply kept(Event event) throws CouldNotSave {
        book.add(event);
        return Reply.taken(state());
    }

    private Reply keptUnless(Optional<Objection> against, Supplier<Event> event) throws CouldNotSave {
        return against.isPresent() ? replied(against) : kept(event.get());
    }

    /** The run as it stands now, with what is said against the verb, where something is. */
    Reply replied(Optional<Objection> against) {
        return against.map(why -> Reply.refused(state(), why)).orElseGet(() -> Reply.taken(state()));
    }

    private Reply refuse(Objection.Kind kind) {
        return replied(Optional.of(Objection.of(kind)));
    }
}
