package org.tenthwise.app.ui.run;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.DocumentWords;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.text.HoldWords;
import org.tenthwise.app.text.JawWords;
import org.tenthwise.app.text.OccasionWords;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.app.ui.run.RunScreenState.Meaning;
import org.tenthwise.app.ui.run.RunScreenState.PromptPanel;
import org.tenthwise.app.ui.run.RunScreenState.ReplyKey;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.words.Words;

/** What lies under the hand for each kind of prompt. */
final class PromptPanels implements Prompt.Cases<PromptPanel> {

    private final Words words;
    private final State state;
    private final Unit unit;

    PromptPanels(Words words, State state) {
        this.words = words;
        this.state = state;
        this.unit = state.unit();
    }

    @Override
    public PromptPanel reading(Prompt.Reading reading) {
        TakenCount count = TakenCount.ofTurn(state).orElseGet(() -> new TakenCount(reading.taken(), reading.of()));
        return new PromptPanel.Pad(
                words.say("run.reading", count.read() + 1, count.all(), place(reading.slot())),
                unit.symbol(),
                last().map(measured -> words.say("run.last", comesTo(measured))).orElse(""),
                "");
    }

    @Override
    public PromptPanel certified(Prompt.Certified certified) {
        return new PromptPanel.Pad(
                words.say(words.key("run.certified", certified.reference()), certified.mark()),
                unit.symbol(),
                certified
                        .known()
                        .map(known -> words.say("run.last", known.text()))
                        .orElseGet(() ->
                                words.say("run.nominal", certified.nominal().text())),
                "");
    }

    @Override
    public PromptPanel zero(Prompt.Zero zero) {
        return new PromptPanel.Pad(
                words.say("run.zero"),
                unit.symbol(),
                words.say("run.zero.master", zero.certified().text()),
                "");
    }

    @Override
    public PromptPanel temperature(Prompt.Temperature temperature) {
        return new PromptPanel.Pad(
                whose(temperature.of()),
                state.sheet().plan().climate().orElseThrow().scale().symbol(),
                temperature
                        .suggested()
                        .map(last -> words.say("run.temperature.last", last))
                        .orElse(words.say("run.temperature.how")),
                "");
    }

    @Override
    public PromptPanel whichGauge(Prompt.WhichGauge which) {
        return new PromptPanel.Ask(
                words.say("run.which-gauge", GaugeWords.kind(words, which.kind())),
                which.known().stream()
                        .limit(3)
                        .map(gauge -> new ReplyKey(gauge.id(), new Meaning.GaugeMark(gauge.id())))
                        .toList());
    }

    @Override
    public PromptPanel whichSense(Prompt.WhichSense sense) {
        return new PromptPanel.Ask(
                words.say(sense.kind().isToldByItsPlunger() ? "run.sense" : "run.sense.by-size", sense.gauge()),
                List.of(
                        new ReplyKey(words.say("run.sense.rises"), new Meaning.Sense(true)),
                        new ReplyKey(words.say("run.sense.falls"), new Meaning.Sense(false))));
    }

    @Override
    public PromptPanel senseInFigures(Prompt.SenseInFigures figures) {
        return new PromptPanel.Ask(
                words.say(
                        figures.byPlunger()
                                ? figures.otherwiseSoFar() ? "run.sense.figure.otherwise" : "run.sense.figure"
                                : figures.otherwiseSoFar()
                                        ? "run.sense.figure.by-size.otherwise"
                                        : "run.sense.figure.by-size",
                        Figures.written(figures.reading()),
                        Figures.written(figures.size()),
                        figures.gauge()),
                List.of(
                        new ReplyKey(words.say("run.sense.figure.so"), new Meaning.SenseInFigures(true)),
                        new ReplyKey(words.say("run.sense.figure.not"), new Meaning.SenseInFigures(false))));
    }

    @Override
    public PromptPanel liesReady(Prompt.LiesReady ready) {
        String size = ready.certified().text();
        String certified = ready.part()
                .map(part -> words.say("run.ready.before", size, part))
                .orElse(size);
        ReplyKey other = new ReplyKey(
                words.say(words.key("run.ready.other", ready.reference())), new Meaning.SetOtherwise(false));
        return ready.zero()
                .map(zero -> new PromptPanel.Ask(
                        words.say("run.ready.master", ready.mark(), certified, zero.text()),
                        List.of(
                                new ReplyKey(words.say("run.ready.set", size, zero.text()), new Meaning.SetAsBefore()),
                                other,
                                new ReplyKey(
                                        words.say("run.ready.dial", zero.text()), new Meaning.SetOtherwise(true)))))
                .orElseGet(() -> new PromptPanel.Ask(
                        words.say("run.ready.wires", ready.mark(), certified),
                        List.of(new ReplyKey(words.say("run.take", size), new Meaning.SetAsBefore()), other)));
    }

    @Override
    public PromptPanel whichRegister(Prompt.WhichRegister which) {
        return new PromptPanel.Ask(
                words.say(which.machine().isEmpty() ? "run.register" : "run.register.of", which.machine()),
                Stream.of(Register.values())
                        .map(register ->
                                new ReplyKey(words.say("run.register.counts", register), new Meaning.Counts(register)))
                        .toList());
    }

    @Override
    public PromptPanel answering(Prompt.Answering answering) {
        return question(answering.question());
    }

    @Override
    public PromptPanel forDocument(Prompt.ForDocument prompt) {
        return new PromptPanel.Ask(words.say("run.paper"), documents());
    }

    @Override
    public PromptPanel nothing(Prompt.Nothing nothing) {
        return done();
    }

    @Override
    public PromptPanel notInThisRun(Prompt.NotInThisRun prompt) {
        return new PromptPanel.Ask(
                new OccasionWords(words).notHere(state.sheet().run().begun().occasion()), List.of());
    }

    @Override
    public PromptPanel held(Prompt.Held held) {
        return new PromptPanel.Ask(words.say("run.held", new HoldWords(words).checks(held.waitingFor())), List.of());
    }

    @Override
    public PromptPanel closed(Prompt.Closed closed) {
        Optional<Event.PutAway> away = state.sheet().putAway();
        if (away.isPresent() && state.sheet().run().unknown().isEmpty()) {
            return new PromptPanel.Ask(
                    words.say("run.put-away", away.get().putAwayBy(), away.get().reason()),
                    List.of(new ReplyKey(words.say("run.take-up"), new Meaning.TakenUp())));
        }
        if (!state.sheet().run().unknown().isEmpty()) {
            return new PromptPanel.Ask(words.say("run.newer"), List.of());
        }
        boolean elsewhere = state.sheet().documents().stream()
                .anyMatch(line -> !line.step().check().isInOrder());
        return elsewhere
                ? new PromptPanel.Ask(words.say("run.closed.documents"), documents())
                : new PromptPanel.Ask(words.say("run.closed"), List.of());
    }

    /** Leads to all that documents prove. */
    private List<ReplyKey> documents() {
        long open = state.sheet().documents().stream()
                .filter(line -> !line.settled())
                .count();
        return List.of(new ReplyKey(words.say("run.documents", open), new Meaning.Documents()));
    }

    private String place(Slot slot) {
        return new JawWords(words).place(state.inHand().check(), slot);
    }

    /** The master or the wires lie with the gauge, and are as warm. */
    private String whose(MeasuredBody body) {
        return body == MeasuredBody.PART
                ? words.say("run.temperature.part")
                : words.say(
                        "run.temperature.gauge",
                        state.inHand().check().means().orElseThrow().kind().reference());
    }

    /** All is taken: the last figure stays to be seen, or what was answered. */
    private PromptPanel done() {
        if (state.inHand().check().asDocument().isPresent()) {
            return new PromptPanel.Ask(
                    state.pass()
                            .giving()
                            .map(given -> new DocumentWords(words).whole(given.document()))
                            .orElseThrow(),
                    documents());
        }
        List<Pass.Answering> answers = state.pass().answers();
        boolean asksLast = !state.inHand().check().questions().isEmpty();
        if (asksLast && !answers.isEmpty()) {
            Pass.Answering answer = answers.get(answers.size() - 1);
            return new PromptPanel.Ask(
                    words.say("run.answered", words.say(words.key("run.answer", answer.question()), answer.answer())),
                    List.of());
        }
        if (state.inHand().check().isTakenElsewhere()) {
            return new PromptPanel.Ask(words.say("run.taken-elsewhere"), List.of());
        }
        return last().<PromptPanel>map(measured -> new PromptPanel.Pad(
                        words.say("run.taken", place(measured.slot())),
                        unit(measured).symbol(),
                        corrected(measured),
                        Figures.read(measured.reading().typed(), unit(measured))))
                .orElseGet(() -> new PromptPanel.Ask(words.say("run.taken-all"), List.of()));
    }

    private PromptPanel question(Question question) {
        return new PromptPanel.Ask(
                words.say("run.ask", question),
                question.answers().stream()
                        .map(answer -> reply(question, answer))
                        .toList());
    }

    private ReplyKey reply(Question question, Answer answer) {
        return new ReplyKey(words.say(words.key("run.answer", question), answer), new Meaning.Answered(answer));
    }

    /** The reading taken last of those that count. */
    private Optional<Measured> last() {
        return state.line().finding().measured().stream()
                .max(Comparator.comparing(measured -> measured.reading().entry().seq()));
    }

    private String comesTo(Measured measured) {
        String typed = Figures.read(measured.reading().typed(), unit);
        boolean asRead =
                measured.isAsRead() && measured.reading().typed().unit().equals(unit(measured));
        return asRead
                ? typed
                : words.say(
                        isBroughtToTwenty(measured) ? "run.typed-at-20" : "run.typed-is",
                        typed,
                        StepFigures.of(state.line().finding()).size(measured));
    }

    private Unit unit(Measured measured) {
        return state.sheet().plan().unit(state.inHand(), measured.slot());
    }

    private static boolean isBroughtToTwenty(Measured measured) {
        return measured.forTemperature().filter(by -> by.signum() != 0).isPresent();
    }

    private String corrected(Measured measured) {
        return measured.isAsRead()
                ? ""
                : words.say(
                        "run.comes-to", StepFigures.of(state.line().finding()).size(measured));
    }
}
