package org.tenthwise.app.ui.run;

import java.util.Optional;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.run.RunScreenState.Act;
import org.tenthwise.app.ui.run.RunScreenState.Commit;
import org.tenthwise.model.compute.roundness.TruingUp;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Plausible;
import org.tenthwise.model.record.Proposal;
import org.tenthwise.model.record.ReadOtherwise;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * The commit key while nothing is typed: what the step in hand wants done next, kind by kind of what is asked, and by
 * what was found so far.
 */
final class CommitKeys implements Prompt.Cases<Commit> {

    private final Words words;
    private final State state;

    CommitKeys(Words words, State state) {
        this.words = words;
        this.state = state;
    }

    @Override
    public Commit certified(Prompt.Certified certified) {
        return certified.known().map(known -> take(known.text())).orElseGet(this::unsettled);
    }

    @Override
    public Commit zero(Prompt.Zero zero) {
        return take(zero.suggested().text());
    }

    @Override
    public Commit temperature(Prompt.Temperature temperature) {
        return temperature.suggested().map(last -> take(last.text())).orElseGet(this::unsettled);
    }

    private Commit take(String figure) {
        return Commit.of(Act.ENTER, words.say("run.take", figure), "");
    }

    @Override
    public Commit whichSense(Prompt.WhichSense sense) {
        return toBeAnswered();
    }

    @Override
    public Commit senseInFigures(Prompt.SenseInFigures figures) {
        return toBeAnswered();
    }

    @Override
    public Commit liesReady(Prompt.LiesReady ready) {
        return toBeAnswered();
    }

    @Override
    public Commit whichRegister(Prompt.WhichRegister which) {
        return toBeAnswered();
    }

    private Commit toBeAnswered() {
        return Commit.of(Act.WAIT, words.say("run.next"), "");
    }

    @Override
    public Commit whichGauge(Prompt.WhichGauge which) {
        return Commit.of(Act.OTHER_GAUGE, words.say("run.other-gauge"), "");
    }

    @Override
    public Commit reading(Prompt.Reading reading) {
        return unsettled();
    }

    @Override
    public Commit answering(Prompt.Answering answering) {
        return unsettled();
    }

    @Override
    public Commit forDocument(Prompt.ForDocument prompt) {
        return Commit.of(Act.DOCUMENT, words.say("run.document"), "");
    }

    @Override
    public Commit nothing(Prompt.Nothing nothing) {
        boolean done = state.sheet().run().closed().isPresent() && state.line().settled();
        return done ? Commit.of(Act.RECORD, words.say("run.record"), "") : settled();
    }

    @Override
    public Commit notInThisRun(Prompt.NotInThisRun prompt) {
        return onwards();
    }

    @Override
    public Commit held(Prompt.Held held) {
        return goTo(held.waitingFor().get(0));
    }

    @Override
    public Commit closed(Prompt.Closed closed) {
        return Commit.of(Act.RECORD, words.say("run.record"), "");
    }

    private Commit settled() {
        if (!state.line().settled()) {
            return unsettled();
        }
        return onwards();
    }

    private Commit onwards() {
        return state.next()
                .map(step -> Commit.of(
                        Act.NEXT, words.say("run.next"), words.say("run.number-name", step.number(), step.name())))
                .orElseGet(() -> Commit.of(Act.SIGN, words.say("run.sign"), ""));
    }

    /**
     * Something is out although readings or answers may still be missing, or something is missing; what is signed for
     * is read no further unasked.
     */
    private Commit unsettled() {
        Finding finding = state.line().finding();
        VerdictKind standing = finding.verdict().standing();
        if (state.line().settled() && state.asked().asReading().isPresent()) {
            return settled();
        }
        if (finding.settledFirst().isPresent()) {
            return goTo(finding.settledFirst().get());
        }
        if (standing != VerdictKind.OPEN && Plausible.spoils(finding)) {
            return readAgain();
        }
        boolean toCut = standing == VerdictKind.CUT_AGAIN
                || standing == VerdictKind.UNPROVEN && finding.proposal().isPresent();
        if (toCut && state.mayCut() && isContradicted()) {
            return readAgain();
        }
        if (isForbidden(state)) {
            return finding.measuredFirst().map(step -> goTo(step)).orElseGet(this::forbidden);
        }
        if (toCut && state.mayCut()) {
            return cut(standing);
        }
        if (standing == VerdictKind.FAIL && finding.asTurn().isPresent()) {
            return trued(finding.asTurn().get());
        }
        if (standing == VerdictKind.FAIL && state.inHand().stepClass() == StepClass.SET_UP) {
            return Commit.of(Act.READ_AGAIN, words.say("run.put-right"), words.say("run.put-right.line"));
        }
        if (standing == VerdictKind.FAIL) {
            return state.inHand().stepClass() == StepClass.DRAWING ? givenUp() : dispose();
        }
        if (standing == VerdictKind.UNPROVEN && state.asked().asReading().isEmpty()) {
            return finding.provenByAnotherTry() ? readAgain() : dispose();
        }
        if (state.asked().isNothing() && !finding.step().check().restsOn().isEmpty()) {
            return goTo(finding.step().check().restsOn().get(0));
        }
        return Commit.of(Act.WAIT, words.say(state.asked().takesFigure() ? "run.enter" : "run.next"), "");
    }

    /** By the last cut, or by an earlier round: no cut goes by readings of which one is wrong. */
    private boolean isContradicted() {
        return CutSoFar.contradicted(state.line())
                || ReadOtherwise.of(state.line(), state.sheet().run()).isPresent();
    }

    /** What is advised is what the key takes as done; where nothing may come off, it is read again, then signed for. */
    private Commit cut(VerdictKind standing) {
        boolean unproven = standing == VerdictKind.UNPROVEN;
        return switch (way(state).orElse(Proposal.Way.EVEN_CUT)) {
            case EVEN_CUT, AT_MOST, PAST_THE_LIMIT -> cutTaken(unproven ? "run.light-cut-taken" : "run.cut-taken");
            case SPRING_PASS -> cutTaken("run.spring-pass-taken");
            case NONE -> unproven ? readAgain() : givenUp();
        };
    }

    /** Nobody gives a part up on what was read, tried or looked at once; a document says what it says. */
    private Commit givenUp() {
        boolean again = state.inHand().check().asDocument().isPresent()
                || state.pass().why().filter(Why.MEASURED_AGAIN::equals).isPresent();
        return again ? dispose() : readAgain();
    }

    /** Another tool may cut the thread; nothing brings uneven teeth in. */
    private Commit forbidden() {
        return state.inHand().check().asWorked().isPresent() ? givenUp() : readAgain();
    }

    private Commit readAgain() {
        return Commit.of(Act.READ_AGAIN, words.say("run.read-again"), "");
    }

    private Commit dispose() {
        return Commit.of(Act.DISPOSE, words.say("run.dispose"), words.say("run.dispose.line"));
    }

    private Commit cutTaken(String key) {
        return Commit.of(Act.CUT_TAKEN, words.say(key), words.say("run.cut-taken.line"));
    }

    static Optional<Proposal.Way> way(State state) {
        Finding finding = state.line().finding();
        return finding.proposal()
                .map(proposal -> proposal.way(finding.check().asSize().orElseThrow(), CutSoFar.last(state.line())));
    }

    /**
     * Where nothing is to be moved, or figures contradict each other, it is only read again; what is still asked is
     * read first.
     */
    private Commit trued(RunOutFinding runOut) {
        if (movesNothing(runOut)) {
            return readAgain();
        }
        return state.asked().asReading().isPresent()
                ? Commit.of(Act.WAIT, words.say("run.enter"), "")
                : Commit.of(Act.JAWS_MOVED, words.say(moved(runOut)), words.say("run.jaws-moved.line"));
    }

    static boolean movesNothing(RunOutFinding runOut) {
        return runOut.truingUp()
                .filter(advice -> advice.state() != TruingUp.Case.MOVE)
                .isPresent();
    }

    /** What is said to be done once the work is trued, by its key. */
    static String moved(RunOutFinding runOut) {
        return runOut.check().holding() == Holding.FOUR_JAW ? "run.jaws-moved" : "run.trued";
    }

    /**
     * Whether the root or the flanks of a thread forbid a cut that could be taken, or teeth that no one cut brings in;
     * with another tool it may have been all the same.
     */
    static boolean isForbidden(State state) {
        Finding finding = state.line().finding();
        return finding.forbidsCutting() && finding.verdict().standing() == VerdictKind.CUT_AGAIN && state.mayCut();
    }

    private Commit goTo(int step) {
        return new Commit(
                Act.GO_TO,
                words.say("run.go-to", step),
                words.readable(state.sheet().plan().step(step).name()),
                step);
    }
}
