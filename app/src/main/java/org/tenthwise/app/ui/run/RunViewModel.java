package org.tenthwise.app.ui.run;

import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.tenthwise.app.session.Objection;
import org.tenthwise.app.session.Reply;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Objections;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.keys.KeypadViewModel;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.run.RunShown.Act;
import org.tenthwise.app.ui.run.RunShown.Commit;
import org.tenthwise.app.ui.run.RunShown.Meaning;
import org.tenthwise.app.ui.run.RunShown.Panel;
import org.tenthwise.app.ui.shell.Errands;
import org.tenthwise.app.ui.shell.Journey;
import org.tenthwise.app.ui.shell.Message;
import org.tenthwise.model.run.Event.PassBegun.Why;

/**
 * The run in hand. Screen thread only; the session itself is used on the thread of the ledger, in the order of the verbs.
 *
 * <p>A figure leaves the pad the moment it is entered and comes back to it if it was not taken or could not be kept, so that a
 * second Enter on its heels cannot take it twice and nothing typed is lost.
 */
public final class RunViewModel implements Typing {

    private final RunSession session;
    private final Errands errands;
    private final Journey journey;
    private final Words words;
    private final Objections objections;
    private final Showing showing;
    private final KeypadViewModel pad = new KeypadViewModel(this::take);
    private final ReadOnlyObjectWrapper<State> state;
    private final ReadOnlyObjectWrapper<RunShown> shown;
    private final ReadOnlyObjectWrapper<Commit> commit = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper takesFigures = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper objection = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper prompt = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper figure = new ReadOnlyStringWrapper("");
    private boolean taking;
    private boolean givenBack;
    private final Refusal refusal = new Refusal();
    /** What was typed while nothing took figures. */
    private String passedBy = "";

    /** @param start state of {@code session} when the screen is made */
    public RunViewModel(RunSession session, State start, Errands errands, Journey journey, Words words) {
        this.session = session;
        this.errands = errands;
        this.journey = journey;
        this.words = words;
        this.objections = new Objections(words);
        this.showing = new Showing(words);
        this.state = new ReadOnlyObjectWrapper<>(start);
        this.shown = new ReadOnlyObjectWrapper<>(showing.of(start));
        commit.bind(Bindings.createObjectBinding(this::commitNow, shown, pad.stateProperty()));
        takesFigures.bind(Bindings.createBooleanBinding(
                () -> state.get().asked().takesFigure() || state.get().figureBeginsNext(), state));
        prompt.bind(Bindings.createStringBinding(this::promptNow, shown, objection, pad.stateProperty()));
        figure.bind(Bindings.createStringBinding(this::figureNow, shown, pad.typedProperty()));
    }

    public ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<RunShown> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    public KeypadViewModel pad() {
        return pad;
    }

    public ReadOnlyObjectProperty<Commit> commitProperty() {
        return commit.getReadOnlyProperty();
    }

    /** Whether figures are taken now, be it for the next check. */
    public ReadOnlyBooleanProperty takesFiguresProperty() {
        return takesFigures.getReadOnlyProperty();
    }

    /** What is asked for, or why what was typed was not taken. */
    public ReadOnlyStringProperty promptProperty() {
        return prompt.getReadOnlyProperty();
    }

    /** The figure as typed; while nothing is typed, the one taken last where it is to be seen. */
    public ReadOnlyStringProperty figureProperty() {
        return figure.getReadOnlyProperty();
    }

    /** Looks again, after another screen had the session. */
    public void refresh() {
        errands.run(session::state, this::show);
    }

    // what the keys of the screen do

    public void goTo(int step) {
        pad.clear();
        ask(() -> session.goTo(step));
    }

    public void press() {
        Commit now = commit.get();
        switch (now.act()) {
            case WAIT -> { }
            case ENTER -> enterTypedOrSuggested();
            case NEXT -> ask(session::goOn);
            case CUT_TAKEN -> ask(() -> session.again(Why.CUT));
            case JAWS_MOVED -> ask(() -> session.again(Why.MOVED));
            case READ_AGAIN -> again();
            case DISPOSE -> journey.dispose(session);
            case SIGN -> journey.sign(session);
            case GO_TO -> goTo(now.step());
            case OTHER_GAUGE -> journey.otherGauge(session);
            case RECORD -> journey.record(state.get().sheet().run().id());
        }
    }

    public void reply(Meaning meaning) {
        if (meaning instanceof Meaning.Answered answered) {
            ask(() -> session.answer(answered.answer()));
        } else if (meaning instanceof Meaning.Sense sense) {
            ask(() -> session.gauge().tellSense(sense.rises()));
        } else if (meaning instanceof Meaning.SenseInFigures figures) {
            ask(() -> session.gauge().confirmSense(figures.so()));
        } else if (meaning instanceof Meaning.Gauge gauge) {
            ask(() -> session.gauge().choose(gauge.mark()));
        } else if (meaning instanceof Meaning.Sweep sweep) {
            ask(() -> session.sweep(sweep.on()));
        } else if (meaning instanceof Meaning.ReadingsFirst first) {
            ask(() -> session.readingsFirst(first.on()));
        }
    }

    /** Measures the step anew; where the pass is not begun and can be read in another way, does that instead. */
    public void againOrOtherWay() {
        shown.get().allowed().otherWay().ifPresentOrElse(way -> reply(way.meaning()), this::again);
    }

    private void again() {
        ask(() -> session.again(Why.MEASURED_AGAIN));
    }

    public void gauge() {
        journey.gauge(session);
    }

    public void dispose() {
        journey.dispose(session);
    }

    public void strike() {
        journey.strike(session);
    }

    public void note() {
        journey.say(Journey.Saying.NOTE, session);
    }

    /** The sums of the bench with the figures of the step in hand. */
    public void bench() {
        journey.bench(session);
    }

    /** The record as it stands, from where the run can be handed over or closed too. */
    public void record() {
        journey.record(session.id());
    }

    public void doubt() {
        journey.say(Journey.Saying.DOUBT, session);
    }

    public void back() {
        journey.back();
    }

    // what is typed

    public void sign() {
        if (pad.typedProperty().get().isEmpty()) {
            character("-");
        } else {
            objection.set("");
            refusal.lift();
            pad.sign();
        }
    }

    /** A character typed when all is taken begins the next check, where that one takes figures. */
    @Override
    public void character(String character) {
        if (refusal.stands()) {
            pad.clear();
            refusal.lift();
        }
        boolean on = pad.typedProperty().get().isEmpty() && state.get().figureBeginsNext();
        if (on) {
            ask(session::goOn);
        }
        boolean begun = !pad.typedProperty().get().isEmpty();
        if (on || begun || state.get().asked().takesFigure()) {
            objection.set("");
            pad.character(character);
        } else {
            passedBy += character;
        }
    }

    @Override
    public void takeBack() {
        objection.set("");
        refusal.lift();
        pad.takeBack();
    }

    /**
     * Enters what is typed, as a gauge does at the end of its figure. A figure that was refused is not insisted on by it,
     * and one that nothing takes is told of. With nothing typed it goes on to the next check, and does nothing else.
     */
    @Override
    public void enter() {
        if (!pad.typedProperty().get().isEmpty()) {
            enterOnce();
        } else if (!passedBy.isBlank()) {
            journey.tell(Message.plain(words.say("run.passed-by"), words.say("run.passed-by.line", passedBy.strip()),
                    words.say("shell.understood")));
            passedBy = "";
        } else if (commit.get().act() == Act.NEXT && state.get().figureBeginsNext()) {
            press();
        }
    }

    private void enterOnce() {
        if (pad.stateProperty().get() != KeypadViewModel.State.ENTERABLE) {
            refusal.ofWhatStands();
        } else if (refusal.isOf(pad.typedProperty().get())) {
            refusal.ofWhatStands();
            objection.set(refusal.why());
        } else if (!refusal.stands()) {
            pad.enter();
        }
    }

    private void enterTypedOrSuggested() {
        if (pad.typedProperty().get().isEmpty()) {
            take("");
        } else {
            pad.enter();
        }
    }

    /** One figure at a time: while one is on its way to the ledger, the next stays on the pad until it is entered again. */
    private void take(String text) {
        if (taking) {
            return;
        }
        taking = true;
        refusal.lift();
        pad.clear();
        errands.run(() -> session.enter(text), reply -> took(reply, text), () -> {
            taking = false;
            giveBack(text);
        });
    }

    /** Puts the figure back on the pad until it is known to be taken, unless something else is being typed there by now. */
    private void giveBack(String text) {
        givenBack = pad.typedProperty().get().isEmpty();
        if (givenBack) {
            text.chars().mapToObj(Character::toString).forEach(pad::character);
        }
    }

    private void took(Reply reply, String text) {
        if (reply.objection().isEmpty() && givenBack && pad.typedProperty().get().equals(text)) {
            pad.clear();
        }
        took(reply);
        reply.objection().ifPresent(why -> refusal.of(text, objection.get()));
    }

    private void ask(Callable<Reply> verb) {
        errands.run(verb, this::took);
    }

    private void took(Reply reply) {
        show(reply.state());
        reply.objection().ifPresent(this::object);
    }

    private void object(Objection why) {
        if (why.kind() == Objection.Kind.NO_SUM) {
            journey.tell(Message.plain(words.say("run.no-sum"), why.detail(), words.say("shell.understood")));
        }
        objection.set(objections.inShort(why));
    }

    private void show(State now) {
        boolean sameStep = now.inHand().equals(state.get().inHand());
        if (refusal.stands()) {
            pad.clear();
        }
        refusal.forget();
        passedBy = "";
        objection.set("");
        state.set(now);
        shown.set(showing.of(now));
        if (!now.asked().takesFigure() && !sameStep) {
            pad.clear();
        }
    }

    private Commit commitNow() {
        return switch (pad.stateProperty().get()) {
            case EMPTY -> shown.get().first();
            case ENTERABLE -> Commit.of(Act.ENTER, words.say("run.enter"), "");
            case UNFINISHED, NO_FIGURE -> Commit.of(Act.WAIT, words.say("run.enter"), "");
        };
    }

    private String promptNow() {
        if (!objection.get().isEmpty()) {
            return objection.get();
        }
        if (pad.stateProperty().get() == KeypadViewModel.State.NO_FIGURE) {
            return words.say("run.objection", Objection.Kind.NOT_A_NUMBER);
        }
        return padShown().map(Panel.Pad::prompt).orElse("");
    }

    private String figureNow() {
        String typed = pad.typedProperty().get();
        return typed.isEmpty() ? padShown().map(Panel.Pad::last).orElse("") : typed;
    }

    private Optional<Panel.Pad> padShown() {
        return shown.get().panel() instanceof Panel.Pad shownPad ? Optional.of(shownPad) : Optional.empty();
    }
}
