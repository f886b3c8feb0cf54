package org.tenthwise.app.ui.run;

import java.util.Optional;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.run.RunScreenState.Act;
import org.tenthwise.app.ui.run.RunScreenState.Allowed;
import org.tenthwise.app.ui.run.RunScreenState.Commit;
import org.tenthwise.app.ui.run.RunScreenState.Meaning;
import org.tenthwise.app.ui.run.RunScreenState.OtherWay;
import org.tenthwise.app.ui.run.RunScreenState.PromptPanel;
import org.tenthwise.app.ui.run.RunScreenState.Strike;
import org.tenthwise.app.ui.run.RunScreenState.Undo;
import org.tenthwise.model.compute.roundness.TruingUp;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Plausible;
import org.tenthwise.model.record.Proposal;
import org.tenthwise.model.record.ReadOtherwise;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** Puts what the step in hand wants next into the words and keys that lie under the hand. */
final class PromptPresenter {

    private final Words words;

    PromptPresenter(Words words) {
        this.words = words;
    }

    PromptPanel panel(State state) {
        return state.asked().match(new PromptPanels(words, state));
    }

    /** The commit key while nothing is typed. */
    Commit first(State state) {
        return state.asked().match(new FirstKeys(state));
    }

    /** That key, kind by kind. */
    private final class FirstKeys implements Prompt.Cases<Commit> {

        private final State state;

        FirstKeys(State state) {
            this.state = state;
        }

        @Override
        public Commit certified(Prompt.Certified certified) {
            return certified.known().map(known -> take(known.text())).orElseGet(() -> unsettled(state));
        }

        @Override
        public Commit zero(Prompt.Zero zero) {
            return take(zero.suggested().text());
        }

        @Override
        public Commit temperature(Prompt.Temperature temperature) {
            return temperature.suggested().map(last -> take(last.text())).orElseGet(() -> unsettled(state));
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
            return unsettled(state);
        }

        @Override
        public Commit answering(Prompt.Answering answering) {
            return unsettled(state);
        }

        @Override
        public Commit forDocument(Prompt.ForDocument prompt) {
            return Commit.of(Act.DOCUMENT, words.say("run.document"), "");
        }

        @Override
        public Commit nothing(Prompt.Nothing nothing) {
            boolean done =
                    state.sheet().run().closed().isPresent() && state.line().settled();
            return done ? Commit.of(Act.RECORD, words.say("run.record"), "") : settled(state);
        }

        @Override
        public Commit held(Prompt.Held held) {
            return goTo(held.waitingFor().get(0), state);
        }

        @Override
        public Commit closed(Prompt.Closed closed) {
            return Commit.of(Act.RECORD, words.say("run.record"), "");
        }
    }

    private Commit settled(State state) {
        if (!state.line().settled()) {
            return unsettled(state);
        }
        return state.next()
                .map(step -> Commit.of(
                        Act.NEXT, words.say("run.next"), words.say("run.number-name", step.number(), step.name())))
                .orElseGet(() -> Commit.of(Act.SIGN, words.say("run.sign"), ""));
    }

    /**
     * Something is out although readings or answers may still be missing, or something is missing; what is signed for
     * is read no further unasked.
     */
    private Commit unsettled(State state) {
        Finding finding = state.line().finding();
        VerdictKind standing = finding.verdict().standing();
        if (state.line().settled() && state.asked().asReading().isPresent()) {
            return settled(state);
        }
        if (finding.settledFirst().isPresent()) {
            return goTo(finding.settledFirst().get(), state);
        }
        if (standing != VerdictKind.OPEN && Plausible.spoils(finding)) {
            return readAgain();
        }
        boolean toCut = standing == VerdictKind.CUT_AGAIN
                || standing == VerdictKind.UNPROVEN && finding.proposal().isPresent();
        if (toCut && state.mayCut() && isContradicted(state)) {
            return readAgain();
        }
        if (cutAgainstTheThread(state)) {
            return finding.measuredFirst().map(step -> goTo(step, state)).orElseGet(() -> readAgain());
        }
        if (toCut && state.mayCut()) {
            return cut(state, standing);
        }
        if (standing == VerdictKind.FAIL && finding.asTurn().isPresent()) {
            return trued(state, finding.asTurn().get());
        }
        if (standing == VerdictKind.FAIL && state.inHand().stepClass() == StepClass.SET_UP) {
            return Commit.of(Act.READ_AGAIN, words.say("run.put-right"), words.say("run.put-right.line"));
        }
        if (standing == VerdictKind.FAIL) {
            return state.inHand().stepClass() == StepClass.DRAWING ? givenUp(state) : dispose();
        }
        if (standing == VerdictKind.UNPROVEN && state.asked().asReading().isEmpty()) {
            return readAgain();
        }
        if (state.asked().isNothing() && !finding.step().check().restsOn().isEmpty()) {
            return goTo(finding.step().check().restsOn().get(0), state);
        }
        return Commit.of(Act.WAIT, words.say(state.asked().takesFigure() ? "run.enter" : "run.next"), "");
    }

    /** By the last cut, or by an earlier round: no cut goes by readings of which one is wrong. */
    private static boolean isContradicted(State state) {
        return CutSoFar.contradicted(state.line())
                || ReadOtherwise.of(state.line(), state.sheet().run()).isPresent();
    }

    /** What is advised is what the key takes as done; where nothing may come off, it is read again, then signed for. */
    private Commit cut(State state, VerdictKind standing) {
        boolean unproven = standing == VerdictKind.UNPROVEN;
        return switch (way(state).orElse(Proposal.Way.EVEN_CUT)) {
            case EVEN_CUT, AT_MOST, PAST_THE_LIMIT -> cutTaken(unproven ? "run.light-cut-taken" : "run.cut-taken");
            case SPRING_PASS -> cutTaken("run.spring-pass-taken");
            case NONE -> unproven ? readAgain() : givenUp(state);
        };
    }

    /** Nobody gives a part up on what was read, tried or looked at once; a document says what it says. */
    private Commit givenUp(State state) {
        boolean again = state.inHand().check().asDocument().isPresent()
                || state.pass().why().filter(Why.MEASURED_AGAIN::equals).isPresent();
        return again ? dispose() : readAgain();
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

    private static Optional<Proposal.Way> way(State state) {
        Finding finding = state.line().finding();
        return finding.proposal()
                .map(proposal -> proposal.way(finding.check().asSize().orElseThrow(), CutSoFar.last(state.line())));
    }

    /**
     * Where nothing is to be moved, or figures contradict each other, it is only read again; what is still asked is
     * read first.
     */
    private Commit trued(State state, RunOutFinding runOut) {
        if (movesNothing(runOut)) {
            return readAgain();
        }
        return state.asked().asReading().isPresent()
                ? Commit.of(Act.WAIT, words.say("run.enter"), "")
                : Commit.of(Act.JAWS_MOVED, moved(runOut), words.say("run.jaws-moved.line"));
    }

    private static boolean movesNothing(RunOutFinding runOut) {
        return runOut.truingUp()
                .filter(advice -> advice.state() != TruingUp.Case.MOVE)
                .isPresent();
    }

    private String moved(RunOutFinding runOut) {
        return words.say(runOut.check().holding() == Holding.FOUR_JAW ? "run.jaws-moved" : "run.trued");
    }

    /** Over its limit by a full turn, work can be trued up by the needle alone, without a reading by angle. */
    private Optional<OtherWay> truedByTheNeedle(State state) {
        return state.line()
                .finding()
                .asTurn()
                .filter(turn -> byAngle(state.asked())
                        && turn.swept()
                        && !movesNothing(turn)
                        && turn.verdict().standing() == VerdictKind.FAIL)
                .map(turn -> new OtherWay(moved(turn), new Meaning.Moved()));
    }

    /** Whether a reading is asked for at an angle of a turn. */
    static boolean byAngle(Prompt asked) {
        return asked.asReading()
                .flatMap(reading -> reading.slot().place().angle())
                .isPresent();
    }

    /**
     * Whether the root or the flanks of a thread forbid a cut that could be taken; with another tool it may have been
     * all the same.
     */
    private static boolean cutAgainstTheThread(State state) {
        Finding finding = state.line().finding();
        return finding.forbidsCutting() && finding.verdict().standing() == VerdictKind.CUT_AGAIN && state.mayCut();
    }

    /** The same where nothing that this tool cuts may come off. */
    private static boolean cutAgainstTheAdvice(State state) {
        return cutAgainstTheThread(state)
                || state.line().finding().verdict().standing() == VerdictKind.CUT_AGAIN
                        && state.mayCut()
                        && way(state).filter(Proposal.Way.NONE::equals).isPresent();
    }

    private Commit goTo(int step, State state) {
        return new Commit(
                Act.GO_TO,
                words.say("run.go-to", step),
                words.readable(state.sheet().plan().step(step).name()),
                step);
    }

    /** @param finished the check that gave way to the one in hand, where it is to be seen still */
    Allowed allowed(State state, Optional<Line> finished) {
        boolean open = !state.asked().isShut();
        VerdictKind standing = state.line().finding().verdict().standing();
        boolean out = standing != VerdictKind.PASS && standing != VerdictKind.OPEN;
        boolean gauged = state.inHand()
                .check()
                .means()
                .map(Check.Means::kind)
                .filter(kind -> !kind.equals(GaugeKind.LIMIT_GAUGE))
                .isPresent();
        return new Allowed(
                state.mayBeginPass(),
                gauged && (open || !state.settingsHere().isEmpty()),
                open && out,
                strike(state, finished).filter(any -> open),
                otherWay(state),
                undo(state));
    }

    private Optional<Strike> strike(State state, Optional<Line> finished) {
        return state.pass().isEmpty()
                ? finished.map(line -> line.step().number())
                        .map(before -> new Strike(before, words.say("run.strike.before", before)))
                : Optional.of(new Strike(state.inHand().number(), words.say("run.strike")));
    }

    private Optional<Undo> undo(State state) {
        return state.undoable()
                .map(answer -> new Undo(
                        answer.seq(), words.say("run.undo", answer.event().at().orElseThrow())));
    }

    private Optional<OtherWay> otherWay(State state) {
        if (state.mayCutOnThese() && state.line().finding().verdict().standing() == VerdictKind.CUT_AGAIN) {
            return Optional.of(new OtherWay(words.say("run.cut-on-these"), new Meaning.CutOnThese()));
        }
        if (cutAgainstTheAdvice(state)) {
            return Optional.of(new OtherWay(words.say("run.cut-taken"), new Meaning.CutTaken()));
        }
        if (state.turnable()) {
            return Optional.of(new OtherWay(
                    words.say(state.readingsFirst() ? "run.temperature.first" : "run.temperature.after"),
                    new Meaning.ReadingsFirst(!state.readingsFirst())));
        }
        if (state.movable().isPresent()) {
            return Optional.of(new OtherWay(words.say("run.stood"), new Meaning.StoodElsewhere()));
        }
        return state.otherTurn()
                .map(sweep ->
                        new OtherWay(words.say(sweep ? "run.sweep.on" : "run.sweep.off"), new Meaning.Sweep(sweep)))
                .or(() -> truedByTheNeedle(state));
    }
}
