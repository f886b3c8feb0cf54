package org.tenthwise.app.ui.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Pictures;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Advice;
import org.tenthwise.app.text.Course;
import org.tenthwise.app.text.CutsTold;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.text.HoldWords;
import org.tenthwise.app.text.JawWords;
import org.tenthwise.app.text.Remarks;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.app.text.SettledWords;
import org.tenthwise.app.text.TouchWords;
import org.tenthwise.app.ui.run.RunScreenState.Finished;
import org.tenthwise.app.ui.run.RunScreenState.Found;
import org.tenthwise.app.ui.run.RunScreenState.Heads;
import org.tenthwise.app.ui.run.RunScreenState.Hold;
import org.tenthwise.app.ui.run.RunScreenState.InHand;
import org.tenthwise.app.ui.run.RunScreenState.StepLine;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Operation;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.tolerance.Origin;
import org.tenthwise.model.words.Words;

/** Puts a state of the run into the words the run screen shows. */
final class RunPresenter {

    private final Words words;
    private final Sentences sentences;
    private final Advice advice;
    private final Remarks remarks;
    private final PromptPresenter hand;
    private final Pictures pictures;

    RunPresenter(Words words) {
        this.words = words;
        this.sentences = new Sentences(words);
        this.advice = new Advice(words);
        this.remarks = new Remarks(words);
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
                hand.allowed(state),
                finished.map(
                        line -> new Finished(line.finding().verdict().standing(), new SettledWords(words).line(line))));
    }

    private Heads heads(State state) {
        Event.Begun begun = state.sheet().run().begun();
        Operation operation = state.sheet().plan().operation(state.inHand().operation());
        return new Heads(
                words.say("run.part", begun.part().number(), begun.part().revision()),
                begun.serial(),
                new Sentences(words).lot(begun),
                words.say("run.operation-of", operation.number(), operation.name()),
                state.sheet().run().by(),
                words.say("run.open", state.open().size()));
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
        String value = sentences.value(line.finding());
        String under = value.isEmpty() ? step.drawing() : value;
        String spoken =
                words.say("run.step-spoken", step.number(), step.name(), under, sentences.standing(line.finding()));
        return new StepLine(
                step.number(),
                step.name(),
                under,
                line.finding().verdict().standing(),
                step.equals(state.inHand()),
                line.held(),
                spoken,
                step.hold().isEmpty() ? Optional.empty() : Optional.of(hold(state, step, following)));
    }

    private Hold hold(State state, Step step, Optional<Line> following) {
        String title = words.say("run.hold");
        return following
                .filter(Line::held)
                .map(line ->
                        new Hold(title, words.say("run.hold.shut", line.step().number(), numbers(line.waitingFor()))))
                .orElseGet(() -> new Hold(
                        title,
                        Optional.ofNullable(state.opened().get(step.number()))
                                .map(opened -> new HoldWords(words).opened(opened, state.at()))
                                .orElse("")));
    }

    private InHand inHand(State state) {
        Step step = state.inHand();
        String drawing = step.limits()
                .flatMap(Limits::origin)
                .map(origin -> worked(step, origin))
                .orElseGet(() -> step.drawing().isEmpty() ? sentences.limits(step) : step.drawing());
        return new InHand(
                step.number(),
                step.name(),
                drawing,
                new TouchWords(words)
                        .withGauge(
                                step, new GaugeWords(words).line(state.sheet().run(), step)),
                method(state),
                step.caution().orElse(""),
                sentences.asked(state.line().finding()));
    }

    /**
     * The words of the plan; how a comparing bore gauge is read, and which way work is turned that is read by angle, is
     * said whatever it says.
     */
    private String method(State state) {
        Step step = state.inHand();
        if (step.check().asTurn().isPresent()) {
            return step.check()
                    .asTurn()
                    .filter(turn -> PromptPresenter.byAngle(state.asked()))
                    .map(turn -> (step.method() + " " + new JawWords(words).turning(turn)).strip())
                    .orElse(step.method());
        }
        boolean rocked = step.check()
                .means()
                .filter(means -> means.kind() == GaugeKind.BORE_GAUGE)
                .isPresent();
        return rocked ? (step.method() + " " + words.say("run.rock")).strip() : step.method();
    }

    /** Limits nobody wrote out: what they are and where they come from. */
    private String worked(Step step, Origin origin) {
        return step.drawing().isEmpty()
                ? words.say("run.worked-limits", sentences.limits(step), origin.designation(), origin.standard())
                : words.say("run.worked-limits.drawn", step.drawing(), sentences.limits(step), origin.standard());
    }

    private Found found(State state) {
        Line line = state.line();
        String next = state.asked().isClosed() ? advice.signed(line) : advice.next(line);
        String said = String.join(" ", remarks.inShort(line.finding()));
        boolean ahead =
                line.pass().readings().isEmpty() && line.pass().answers().isEmpty();
        return new Found(
                line.finding().verdict().standing(),
                sentences.standing(line.finding()) + ".",
                sentences.distance(line.finding()),
                next,
                together(
                        traces(state),
                        ahead ? "" : said,
                        ahead ? "" : cut(line, state.sheet().run())),
                ahead ? said : "");
    }

    private static String together(String... said) {
        return Stream.of(said).filter(part -> !part.isEmpty()).collect(Collectors.joining(" "));
    }

    /** What the last cut took off, where no advice on the next one tells it. */
    private String cut(Line line, Run run) {
        return CutSoFar.last(line)
                .filter(cut -> !advice.tellsOfTheLastCut(line))
                .map(cut -> new CutsTold(words).told(cut, line, run.register()))
                .orElse("");
    }

    /**
     * What was signed here and lapsed, what was doubted last, and how much was struck out or went with a wrong setting.
     */
    private String traces(State state) {
        Run run = state.sheet().run();
        long struck = state.line().passes().stream()
                .flatMap(Pass::struckOut)
                .filter(out -> !run.settingsStruck().containsValue(out))
                .count();
        String withdrawn = String.join(
                " ", new GaugeWords(words).withdrawn(run, state.inHand().number()));
        boolean lapsed = state.line()
                .lapsed()
                .filter(signed -> !signed.disposed().disposition().changesTheWork())
                .isPresent();
        return together(
                withdrawn,
                lapsed ? words.say("run.lapsed") : "",
                sentences.repaired(state.line()),
                new Course(words).doubt(run, state.inHand()),
                struck > 0 ? words.say("run.struck", struck) : "");
    }

    /** "4", "4 and 5", "3, 4 and 5". */
    static String list(Words words, List<Integer> numbers) {
        List<String> texts = numbers.stream().map(String::valueOf).toList();
        int last = texts.size() - 1;
        return last == 0
                ? texts.get(0)
                : words.say("run.and", String.join(", ", texts.subList(0, last)), texts.get(last));
    }

    private String numbers(List<Integer> numbers) {
        return list(words, numbers);
    }
}
