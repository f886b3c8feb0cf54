package org.tenthwise.app.ui.run;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.JawWords;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.app.ui.run.RunScreenState.Act;
import org.tenthwise.app.ui.run.RunScreenState.Allowed;
import org.tenthwise.app.ui.run.RunScreenState.Commit;
import org.tenthwise.app.ui.run.RunScreenState.Meaning;
import org.tenthwise.app.ui.run.RunScreenState.OtherWay;
import org.tenthwise.app.ui.run.RunScreenState.Panel;
import org.tenthwise.app.ui.run.RunScreenState.Reply;
import org.tenthwise.model.compute.roundness.TruingUp;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.Plausible;
import org.tenthwise.model.record.Proposal;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.record.WiresFinding;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** Puts what the step in hand wants next into the words and keys that lie under the hand. */
final class PromptPresenter {

    private final Words words;

    PromptPresenter(Words words) {
        this.words = words;
    }

    Panel panel(State state) {
        Prompt asked = state.asked();
        String unit = state.sheet().plan().unit().symbol();
        if (asked instanceof Prompt.Reading reading) {
            return new Panel.Pad(
                    words.say("run.reading", reading.taken() + 1, reading.of(), place(state, reading.slot())),
                    unit,
                    last(state)
                            .map(measured -> words.say("run.last", comesTo(state, measured)))
                            .orElse(""),
                    "");
        }
        if (asked instanceof Prompt.Certified certified) {
            return new Panel.Pad(
                    words.say(words.key("run.certified", certified.reference()), certified.mark()),
                    unit,
                    certified
                            .known()
                            .map(known -> words.say("run.last", known.text()))
                            .orElseGet(() ->
                                    words.say("run.nominal", certified.nominal().text())),
                    "");
        }
        if (asked instanceof Prompt.Zero zero) {
            return new Panel.Pad(
                    words.say("run.zero"),
                    unit,
                    words.say("run.zero.master", zero.certified().text()),
                    "");
        }
        if (asked instanceof Prompt.Temperature temperature) {
            return new Panel.Pad(
                    whose(state, temperature.of()),
                    state.sheet().plan().climate().orElseThrow().scale().symbol(),
                    temperature
                            .suggested()
                            .map(last -> words.say("run.temperature.last", last))
                            .orElse(words.say("run.temperature.how")),
                    "");
        }
        if (asked instanceof Prompt.WhichGauge which) {
            return new Panel.Ask(
                    words.say("run.which-gauge", words.say("gauge-kind", which.kind())),
                    which.known().stream()
                            .limit(3)
                            .map(gauge -> new Reply(gauge.id(), new Meaning.Gauge(gauge.id())))
                            .toList());
        }
        if (asked instanceof Prompt.WhichSense sense) {
            return new Panel.Ask(
                    words.say("run.sense", sense.gauge()),
                    List.of(
                            new Reply(words.say("run.sense.rises"), new Meaning.Sense(true)),
                            new Reply(words.say("run.sense.falls"), new Meaning.Sense(false))));
        }
        if (asked instanceof Prompt.SenseInFigures figures) {
            return new Panel.Ask(
                    words.say(
                            figures.otherwiseSoFar() ? "run.sense.figure.otherwise" : "run.sense.figure",
                            Figures.written(figures.reading()),
                            Figures.written(figures.size()),
                            figures.gauge()),
                    List.of(
                            new Reply(words.say("run.sense.figure.so"), new Meaning.SenseInFigures(true)),
                            new Reply(words.say("run.sense.figure.not"), new Meaning.SenseInFigures(false))));
        }
        if (asked instanceof Prompt.WhichRegister which) {
            return new Panel.Ask(
                    words.say(which.machine().isEmpty() ? "run.register" : "run.register.of", which.machine()),
                    Stream.of(Register.values())
                            .map(register ->
                                    new Reply(words.say("run.register.counts", register), new Meaning.Counts(register)))
                            .toList());
        }
        if (asked instanceof Prompt.Answering answering) {
            return question(answering.question());
        }
        if (asked instanceof Prompt.Held held) {
            return new Panel.Ask(words.say("run.held", RunPresenter.list(words, held.waitingFor())), List.of());
        }
        return asked instanceof Prompt.Closed ? new Panel.Ask(closed(state), List.of()) : done(state, unit);
    }

    private String closed(State state) {
        return state.sheet().run().unknown().isEmpty() ? words.say("run.closed") : words.say("run.newer");
    }

    private String place(State state, Slot slot) {
        return new JawWords(words).place(state.inHand().check(), slot);
    }

    /** The master or the wires lie with the gauge, and are as warm. */
    private String whose(State state, MeasuredBody body) {
        return body == MeasuredBody.PART
                ? words.say("run.temperature.part")
                : words.say(
                        "run.temperature.gauge",
                        state.inHand().check().means().orElseThrow().kind().reference());
    }

    /** All is taken: the last figure stays to be seen, or what was answered. */
    private Panel done(State state, String unit) {
        List<Run.Answering> answers = state.pass().answers();
        boolean asksLast = !state.inHand().check().questions().isEmpty();
        if (asksLast && !answers.isEmpty()) {
            Run.Answering answer = answers.get(answers.size() - 1);
            return new Panel.Ask(
                    words.say("run.answered", words.say(words.key("run.answer", answer.question()), answer.answer())),
                    List.of());
        }
        return last(state)
                .<Panel>map(measured -> new Panel.Pad(
                        words.say("run.taken", place(state, measured.slot())),
                        unit,
                        corrected(state, measured),
                        Figures.read(
                                measured.reading().typed(), state.sheet().plan().unit())))
                .orElseGet(() -> new Panel.Ask(words.say("run.taken-all"), List.of()));
    }

    private Panel question(Question question) {
        return new Panel.Ask(
                words.say("run.ask", question),
                question.answers().stream()
                        .map(answer -> reply(question, answer))
                        .toList());
    }

    private Reply reply(Question question, Answer answer) {
        return new Reply(words.say(words.key("run.answer", question), answer), new Meaning.Answered(answer));
    }

    /** The reading taken last of those that count. */
    private static Optional<Measured> last(State state) {
        return StepFigures.measured(state.line().finding()).stream()
                .max(Comparator.comparing(measured -> measured.reading().entry().seq()));
    }

    private String comesTo(State state, Measured measured) {
        String typed =
                Figures.read(measured.reading().typed(), state.sheet().plan().unit());
        boolean asRead = measured.isAsRead()
                && measured.reading().typed().unit() == state.sheet().plan().unit();
        return asRead
                ? typed
                : words.say(
                        "run.typed-is",
                        typed,
                        StepFigures.of(state.line().finding()).size(measured.value()));
    }

    private String corrected(State state, Measured measured) {
        return measured.isAsRead()
                ? ""
                : words.say(
                        "run.comes-to", StepFigures.of(state.line().finding()).size(measured.value()));
    }

    /** The commit key while nothing is typed. */
    Commit first(State state) {
        Prompt asked = state.asked();
        if (asked instanceof Prompt.Certified certified && certified.known().isPresent()) {
            return Commit.of(
                    Act.ENTER, words.say("run.take", certified.known().get().text()), "");
        }
        if (asked instanceof Prompt.Zero zero) {
            return Commit.of(Act.ENTER, words.say("run.take", zero.suggested().text()), "");
        }
        if (asked instanceof Prompt.Temperature temperature
                && temperature.suggested().isPresent()) {
            return Commit.of(
                    Act.ENTER,
                    words.say("run.take", temperature.suggested().get().text()),
                    "");
        }
        if (asked instanceof Prompt.WhichSense
                || asked instanceof Prompt.SenseInFigures
                || asked instanceof Prompt.WhichRegister) {
            return Commit.of(Act.WAIT, words.say("run.next"), "");
        }
        if (asked instanceof Prompt.WhichGauge) {
            return Commit.of(Act.OTHER_GAUGE, words.say("run.other-gauge"), "");
        }
        if (asked instanceof Prompt.Held held) {
            return goTo(held.waitingFor().get(0), state);
        }
        if (asked instanceof Prompt.Closed) {
            return Commit.of(Act.RECORD, words.say("run.record"), "");
        }
        return asked instanceof Prompt.Nothing ? settled(state) : unsettled(state);
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
        if (state.line().settled() && state.asked() instanceof Prompt.Reading) {
            return settled(state);
        }
        if (standing != VerdictKind.OPEN && Plausible.spoils(finding)) {
            return Commit.of(Act.READ_AGAIN, words.say("run.read-again"), "");
        }
        boolean toCut = standing == VerdictKind.CUT_AGAIN
                || standing == VerdictKind.UNPROVEN && finding.proposal().isPresent();
        if (toCut && state.mayCut() && CutSoFar.contradicted(state.line())) {
            return Commit.of(Act.READ_AGAIN, words.say("run.read-again"), "");
        }
        if (cutAgainstTheRoot(state)) {
            WiresFinding wires = (WiresFinding) finding;
            return wires.rootStale()
                    ? goTo(wires.check().minorStep().orElseThrow(), state)
                    : Commit.of(Act.READ_AGAIN, words.say("run.read-again"), "");
        }
        if (standing == VerdictKind.CUT_AGAIN
                && finding.proposal().filter(Proposal::leavesNothing).isPresent()) {
            return Commit.of(Act.DISPOSE, words.say("run.dispose"), words.say("run.dispose.line"));
        }
        if (standing == VerdictKind.CUT_AGAIN && state.mayCut()) {
            return Commit.of(Act.CUT_TAKEN, words.say("run.cut-taken"), words.say("run.cut-taken.line"));
        }
        if (standing == VerdictKind.FAIL && finding instanceof RunOutFinding runOut) {
            return trued(state, runOut);
        }
        if (standing == VerdictKind.FAIL && state.inHand().stepClass() == StepClass.SET_UP) {
            return Commit.of(Act.READ_AGAIN, words.say("run.put-right"), words.say("run.put-right.line"));
        }
        if (standing == VerdictKind.FAIL) {
            return Commit.of(Act.DISPOSE, words.say("run.dispose"), words.say("run.dispose.line"));
        }
        if (standing == VerdictKind.UNPROVEN
                && state.mayCut()
                && finding.proposal()
                        .filter(proposal -> !proposal.leavesNothing())
                        .isPresent()) {
            return Commit.of(Act.CUT_TAKEN, words.say("run.light-cut-taken"), words.say("run.cut-taken.line"));
        }
        if (standing == VerdictKind.UNPROVEN && !(state.asked() instanceof Prompt.Reading)) {
            return Commit.of(Act.READ_AGAIN, words.say("run.read-again"), "");
        }
        if (state.asked() instanceof Prompt.Nothing
                && !finding.step().check().restsOn().isEmpty()) {
            return goTo(finding.step().check().restsOn().get(0), state);
        }
        return Commit.of(Act.WAIT, words.say(state.asked().takesFigure() ? "run.enter" : "run.next"), "");
    }

    /**
     * Where nothing is to be moved, or figures contradict each other, it is only read again; what is still asked is
     * read first.
     */
    private Commit trued(State state, RunOutFinding runOut) {
        if (movesNothing(runOut)) {
            return Commit.of(Act.READ_AGAIN, words.say("run.read-again"), "");
        }
        return state.asked() instanceof Prompt.Reading
                ? Commit.of(Act.WAIT, words.say("run.enter"), "")
                : Commit.of(Act.JAWS_MOVED, moved(runOut), words.say("run.jaws-moved.line"));
    }

    private static boolean movesNothing(RunOutFinding runOut) {
        return runOut.truingUp()
                .filter(advice -> advice.state() != TruingUp.State.MOVE)
                .isPresent();
    }

    private String moved(RunOutFinding runOut) {
        return words.say(runOut.check().holding() == Holding.FOUR_JAW ? "run.jaws-moved" : "run.trued");
    }

    /** Over its limit by a full turn, work can be trued up by the needle alone, without a reading by angle. */
    private Optional<OtherWay> truedByTheNeedle(State state) {
        boolean byAngle = state.asked() instanceof Prompt.Reading reading
                && reading.slot().place().angle().isPresent();
        return byAngle
                        && state.line().finding() instanceof RunOutFinding runOut
                        && runOut.swept()
                        && !movesNothing(runOut)
                        && runOut.verdict().standing() == VerdictKind.FAIL
                ? Optional.of(new OtherWay(moved(runOut), new Meaning.Moved()))
                : Optional.empty();
    }

    /**
     * Whether the root of a thread forbids a cut that could be taken; with another tool it may have been all the same.
     */
    private static boolean cutAgainstTheRoot(State state) {
        return state.line().finding() instanceof WiresFinding wires
                && wires.rootForbidsCutting()
                && wires.verdict().standing() == VerdictKind.CUT_AGAIN
                && state.mayCut();
    }

    private Commit goTo(int step, State state) {
        return new Commit(
                Act.GO_TO,
                words.say("run.go-to", step),
                state.sheet().plan().step(step).name(),
                step);
    }

    Allowed allowed(State state) {
        boolean open = !(state.asked() instanceof Prompt.Held) && !(state.asked() instanceof Prompt.Closed);
        VerdictKind standing = state.line().finding().verdict().standing();
        boolean out = standing != VerdictKind.PASS && standing != VerdictKind.OPEN;
        boolean gauged = state.inHand()
                .check()
                .means()
                .map(Check.Means::kind)
                .filter(kind -> kind != GaugeKind.LIMIT_GAUGE)
                .isPresent();
        return new Allowed(
                state.mayBeginPass(),
                gauged && (open || !state.settingsHere().isEmpty()),
                open && out,
                !state.pass().isEmpty() && open,
                otherWay(state));
    }

    private Optional<OtherWay> otherWay(State state) {
        if (state.mayCutOnThese() && state.line().finding().verdict().standing() == VerdictKind.CUT_AGAIN) {
            return Optional.of(new OtherWay(words.say("run.cut-on-these"), new Meaning.CutOnThese()));
        }
        if (cutAgainstTheRoot(state)) {
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
