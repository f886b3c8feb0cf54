package org.tenthwise.app.ui.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Pictures;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.State;
import org.tenthwise.app.story.StepStory;
import org.tenthwise.app.text.BesideVerdict;
import org.tenthwise.app.text.CalibrationWords;
import org.tenthwise.app.text.DrawingWords;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.text.HoldWords;
import org.tenthwise.app.text.MethodWords;
import org.tenthwise.app.text.OccasionWords;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.app.text.SettledWords;
import org.tenthwise.app.ui.run.RunScreenState.Finished;
import org.tenthwise.app.ui.run.RunScreenState.Found;
import org.tenthwise.app.ui.run.RunScreenState.Heads;
import org.tenthwise.app.ui.run.RunScreenState.Hold;
import org.tenthwise.app.ui.run.RunScreenState.InHand;
import org.tenthwise.app.ui.run.RunScreenState.StepLine;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Instances;
import org.tenthwise.model.plan.Operation;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.GaugesUsed;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.tolerance.Origin;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** Puts a state of the run into the words the run screen shows. */
final class RunPresenter {

    private final Words words;
    private final Sentences sentences;
    private final PromptPresenter hand;
    private final Pictures pictures;

    RunPresenter(Words words) {
        this.words = words;
        this.sentences = new Sentences(words);
        this.hand = new PromptPresenter(words);
        this.pictures = new Pictures(words);
    }

    RunScreenState of(State state) {
        return of(state, Optional.empty());
    }

    /** @param finished the check that gave way to the one in hand, where it is to be seen still */
    RunScreenState of(State state, Optional<Line> finished) {
        return new RunScreenState(
                heads(state),
                steps(state),
                inHand(state),
                pictures.of(state.sheet(), state.line()),
                found(state),
                hand.panel(state),
                hand.first(state),
                hand.allowed(state, finished),
                finished.map(line -> new Finished(
                        line.step().number(),
                        line.finding().verdict().standing(),
                        new SettledWords(words).line(line))));
    }

    /** Whether nothing is to be said of the step in hand but its verdict. */
    boolean saysNoMore(State state) {
        return !beside(state).isToBeRead();
    }

    private BesideVerdict.Split beside(State state) {
        return new BesideVerdict(words)
                .of(
                        state.sheet(),
                        state.line(),
                        state.asked().isClosed(),
                        state.asked().asReading().map(Prompt.Reading::slot));
    }

    private Heads heads(State state) {
        Event.Begun begun = state.sheet().run().begun();
        return new Heads(
                words.say("run.part", begun.part().number(), begun.part().revision()),
                begun.serial(),
                sentences.lot(begun),
                operation(state.sheet().plan(), state.inHand()),
                state.sheet().run().by(),
                words.say("run.open", state.open().size()),
                new OccasionWords(words).inShort(begun.occasion()));
    }

    private String operation(Plan plan, Step step) {
        Operation operation = plan.operation(step.operation());
        return step.check().isInOrder()
                ? words.say("run.operation-of", operation.number(), operation.name())
                : words.say("run.elsewhere");
    }

    private List<StepLine> steps(State state) {
        List<Line> lines = state.sheet().lines();
        List<StepLine> steps = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            Optional<Line> following = i + 1 < lines.size() ? Optional.of(lines.get(i + 1)) : Optional.empty();
            steps.add(step(state, line, following));
        }
        return steps;
    }

    private StepLine step(State state, Line line, Optional<Line> following) {
        Step step = line.step();
        String value = sentences.listed(line.finding());
        String notHere =
                new OccasionWords(words).notHere(state.sheet().run().begun().occasion());
        String under = !line.asked()
                ? notHere
                : value.isEmpty() ? words.readable(step.drawing().requirement()) : value;
        String spoken = words.say(
                "run.step-spoken",
                step.number(),
                spokenName(step),
                line.asked() ? under : words.readable(step.drawing().requirement()),
                line.asked() ? sentences.standing(line.finding()) : notHere);
        return new StepLine(
                step.number(),
                balloon(step),
                words.readable(step.name()),
                under,
                line.finding().verdict().standing(),
                step.equals(state.inHand()),
                line.held(),
                line.asked(),
                spoken,
                step.hold().isEmpty() ? Optional.empty() : Optional.of(hold(state, step, following)));
    }

    private String spokenName(Step step) {
        return DrawingWords.apart(step)
                .map(balloon -> words.spoken(new DrawingWords(words).balloon(balloon), words.readable(step.name())))
                .orElseGet(() -> words.readable(step.name()));
    }

    private static Optional<String> balloon(Step step) {
        return DrawingWords.apart(step).map(BalloonNumber::text);
    }

    private Hold hold(State state, Step step, Optional<Line> following) {
        return following
                .filter(Line::held)
                .map(line -> new Hold(words.say("run.hold.shut", new HoldWords(words).checks(line.waitingFor())), true))
                .orElseGet(() -> new Hold(
                        Optional.ofNullable(state.opened().get(step.number()))
                                .map(opened -> new HoldWords(words).opened(opened, state.at()))
                                .orElseGet(() -> words.say("run.hold.open")),
                        false));
    }

    private InHand inHand(State state) {
        Step step = state.inHand();
        String drawing = step.limits()
                .flatMap(Limits::origin)
                .map(origin -> worked(step, origin))
                .orElseGet(() -> step.drawing().requirement().isEmpty()
                        ? sentences.limits(step)
                        : words.readable(step.drawing().requirement()));
        boolean byAngle = step.check().asTurn().isPresent() && PromptPresenter.byAngle(state.asked());
        return new InHand(
                step.number(),
                balloon(step),
                words.readable(step.name()),
                taken(state),
                drawing,
                new GaugeWords(words).brief(state.sheet().run(), step),
                new MethodWords(words).of(step, byAngle),
                byAngle || state.pass().standing().isEmpty(),
                words.readable(step.caution().orElse("")),
                sentences.asked(state.line().finding()));
    }

    private String taken(State state) {
        TakenCount count = TakenCount.of(state);
        Instances instances = state.inHand().drawing().instances();
        if (count.all() == 0 && instances.areSeveral()) { // one answer is for all of them
            return words.say("run.all-of", instances.count());
        }
        return count.all() == 0 ? "" : words.say("run.taken-of", count.read(), count.all());
    }

    /** Limits nobody wrote out. */
    private String worked(Step step, Origin origin) {
        return step.drawing().requirement().isEmpty()
                ? words.say("run.worked-limits", sentences.limits(step), origin.designation())
                : words.say("run.worked-limits.drawn", step.drawing().requirement(), sentences.limits(step));
    }

    private Found found(State state) {
        Line line = state.line();
        BesideVerdict.Split beside = beside(state);
        return new Found(
                line.finding().verdict().standing(),
                words.sentence(sentences.standing(line.finding())),
                distance(state),
                beside.next(),
                Stream.of(pastDue(state), beside.shown().stream(), lastPart(state))
                        .flatMap(Function.identity())
                        .toList(),
                beside.rest());
    }

    private String distance(State state) {
        Finding finding = state.line().finding();
        return TakenCount.ofTurn(state)
                .filter(turn -> finding.verdict().standing() == VerdictKind.OPEN)
                .map(turn -> words.say("distance.missing", turn.missing()))
                .orElseGet(() -> sentences.distance(finding));
    }

    /** What is known before the next reading; where what counts was read so already, that is said instead. */
    private Stream<String> pastDue(State state) {
        List<GaugeOrMaster> said = GaugesUsed.pastDue(state.sheet(), state.line()).stream()
                .map(GaugesUsed.Used::what)
                .toList();
        return state.asked().isNothing()
                ? Stream.empty()
                : state.pastDue().stream()
                        .filter(here -> !said.contains(here.what()))
                        .map(here -> new CalibrationWords(words).pastDue(here.what(), here.calibration()));
    }

    /** The size of the part before, until something is read of this one; then it is under More. */
    private Stream<String> lastPart(State state) {
        boolean begun =
                state.line().passes().size() > 1 || !state.pass().standing().isEmpty();
        boolean measured = !state.inHand().check().slots().isEmpty();
        return measured && !begun && !state.asked().isShut()
                ? StepStory.lastPart(state, words).stream()
                : Stream.empty();
    }
}
