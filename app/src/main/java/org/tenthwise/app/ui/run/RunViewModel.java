package org.tenthwise.app.ui.run;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.Reply;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.keys.KeypadViewModel;
import org.tenthwise.app.ui.keys.Settling;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.run.RunScreenState.Act;
import org.tenthwise.app.ui.run.RunScreenState.Allowed;
import org.tenthwise.app.ui.run.RunScreenState.Commit;
import org.tenthwise.app.ui.run.RunScreenState.Meaning;
import org.tenthwise.app.ui.run.RunScreenState.PromptPanel;
import org.tenthwise.app.ui.run.RunScreenState.Strike;
import org.tenthwise.app.ui.run.RunScreenState.Undo;
import org.tenthwise.app.ui.shell.Deed;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.words.Words;

/**
 * The run in hand. Screen thread only; the session itself is used on the thread of the ledger, in the order of the
 * verbs.
 *
 * <p>What is typed goes through {@link TypedFigures}. A key whose meaning has just changed is deaf for a moment, see
 * {@link Settling}.
 */
public final class RunViewModel implements Typing {

    private final RunSession session;
    private final LedgerTasks tasks;
    private final Navigator navigator;
    private final Words words;
    private final RunPresenter showing;
    private final TypedFigures figures;
    private final Replies replies;
    private final PadLines lines;
    private final KeepOrAgain keepOrAgain;
    private final Settling committing;
    private final Settling replying;
    private final Settling striking;
    private final JustFinished finished = new JustFinished();
    private boolean asking;
    private final ReadOnlyObjectWrapper<State> state;
    private final ReadOnlyObjectWrapper<RunScreenState> shown;
    private final ReadOnlyObjectWrapper<Commit> commit = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper takesFigures = new ReadOnlyBooleanWrapper();

    /**
     * @param start state of {@code session} when the screen is made
     * @param clock tells what comes too soon
     */
    public RunViewModel(
            RunSession session, State start, LedgerTasks tasks, Navigator navigator, Words words, Clock clock) {
        this.session = session;
        this.tasks = tasks;
        this.navigator = navigator;
        this.words = words;
        this.showing = new RunPresenter(words);
        this.state = new ReadOnlyObjectWrapper<>(start);
        this.shown = new ReadOnlyObjectWrapper<>(showing.of(start));
        this.figures =
                new TypedFigures(session, tasks, navigator, words, clock, state::get, showing::saysNoMore, this::show);
        this.replies = new Replies(session, navigator, state::get, this::onwards, this::ask);
        this.lines = new PadLines(shownProperty(), pad(), figures.objectionProperty(), words);
        this.keepOrAgain = new KeepOrAgain(shownProperty(), keepableProperty(), words, clock);
        this.committing = new Settling(clock);
        this.replying = new Settling(clock, Settling.LONGER);
        this.striking = new Settling(clock);
        pad().unitProperty().bind(shown.map(now -> now.panel() instanceof PromptPanel.Pad pad ? pad.unit() : ""));
        commit.bind(Bindings.createObjectBinding(this::commitNow, shown, pad().stateProperty()));
        takesFigures.bind(Bindings.createBooleanBinding(
                () -> state.get().asked().takesFigure() || state.get().figureBeginsNext(), state));
        commit.subscribe(now -> committing.means(takes()));
        shown.subscribe(now -> committing.means(takes()));
        shown.subscribe(now -> replying.means(List.of(now.inHand().number(), now.panel())));
        shown.subscribe(now ->
                striking.means(List.of(now.allowed().undo(), now.allowed().strike())));
    }

    public ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<RunScreenState> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    public KeypadViewModel pad() {
        return figures.pad();
    }

    public ReadOnlyObjectProperty<Commit> commitProperty() {
        return commit.getReadOnlyProperty();
    }

    /** Whether figures are taken now, be it for the next check. */
    public ReadOnlyBooleanProperty takesFiguresProperty() {
        return takesFigures.getReadOnlyProperty();
    }

    /** Whether something typed stands on the pad. */
    public ObservableValue<Boolean> figureStandsProperty() {
        return pad().typedProperty().map(typed -> !typed.isEmpty());
    }

    /** What is asked for, or why what was typed was not taken. */
    public ReadOnlyStringProperty promptProperty() {
        return lines.promptProperty();
    }

    /** The figure as typed; while nothing is, what is offered of it, or the one taken last where it is to be seen. */
    public ReadOnlyStringProperty figureProperty() {
        return lines.figureProperty();
    }

    /** Looks again, after another screen had the session. */
    public void refresh() {
        tasks.run(session::state, this::show);
    }

    // what the keys of the screen do

    public void goTo(int step) {
        figures.leave();
        finished.chosen();
        ask(() -> session.goTo(step));
    }

    /** The commit key. While figures are on their way it does nothing but enter one more. */
    public void press() {
        Commit now = commit.get();
        if (!committing.settled() || figures.areOnTheirWay() && now.act() != Act.ENTER) {
            return;
        }
        switch (now.act()) {
            case WAIT -> {}
            case ENTER -> figures.press();
            case NEXT -> ask(session::goOn);
            case CUT_TAKEN -> ask(() -> session.again(Why.CUT));
            case JAWS_MOVED -> ask(() -> session.again(Why.MOVED));
            case READ_AGAIN -> again();
            case DISPOSE -> navigator.form(Deed.DISPOSE, session);
            case SIGN -> navigator.sign(session);
            case GO_TO -> goTo(now.step());
            case OTHER_GAUGE -> navigator.form(Deed.OTHER_GAUGE, session);
            case DOCUMENT -> navigator.form(Deed.DOCUMENT, session);
            case RECORD -> navigator.record(state.get().sheet().run().id());
        }
    }

    /** What the commit key means; of two suggestions that look alike, each for what it is suggested. */
    private List<Object> takes() {
        Commit now = commit.get();
        boolean suggested = now.act() == Act.ENTER && now.equals(shown.get().first());
        return List.of(now.word() + now.line(), suggested ? state.get().asked() : "");
    }

    /** A key that answers. */
    public void reply(Meaning meaning) {
        if (replying.settled()) {
            replies.act(meaning);
        }
    }

    /**
     * The key that keeps a figure far off, leads to another way, or measures anew: what it says and whether it acts.
     */
    KeepOrAgain keepOrAgainKey() {
        return keepOrAgain;
    }

    /** What that key does. */
    public void keepOrAgain() {
        if (!keepOrAgain.isSettled()) {
            return;
        }
        if (keepableProperty().get().isPresent()) {
            figures.keep();
        } else if (!figures.areOnTheirWay()) {
            keepOrAgain.otherWay().ifPresentOrElse(way -> replies.act(way.meaning()), this::again);
        }
    }

    /** The figure far off that can be kept on purpose; absent where none was refused. */
    public ReadOnlyObjectProperty<Optional<String>> keepableProperty() {
        return figures.keepableProperty();
    }

    private void again() {
        ask(() -> session.again(Why.MEASURED_AGAIN));
    }

    public void gauge() {
        navigator.gauge(session);
    }

    public void dispose() {
        navigator.form(Deed.DISPOSE, session);
    }

    /**
     * Takes the answer given last back, where that can be done by one tap; otherwise leads to striking out, at the
     * check that gave way to this one while nothing is taken here.
     */
    public void undoOrStrike() {
        if (striking.settled()) {
            Allowed allowed = shown.get().allowed();
            allowed.undo().ifPresentOrElse(this::undo, () -> allowed.strike().ifPresent(this::strike));
        }
    }

    private void strike(Strike taken) {
        if (taken.step() != state.get().inHand().number()) {
            goTo(taken.step());
        }
        navigator.form(Deed.STRIKE, session);
    }

    private void undo(Undo answer) {
        ask(() -> session.answers().undo(answer.entry(), words.say("run.undone")));
    }

    public void note() {
        navigator.say(Navigator.Saying.NOTE, session);
    }

    /** What else there is to say of the step in hand, and what is wanted rarely. */
    public void more() {
        navigator.more(session);
    }

    /** The record as it stands, from where the run can be handed over or closed too. */
    public void record() {
        navigator.record(session.id());
    }

    public void doubt() {
        navigator.say(Navigator.Saying.DOUBT, session);
    }

    public void back() {
        navigator.back();
    }

    // what is typed

    public void sign() {
        figures.sign();
    }

    /** Takes the whole figure away that stands on the pad. */
    public void clear() {
        figures.clearTyped();
    }

    @Override
    public void character(String character) {
        figures.character(character);
    }

    @Override
    public void touched(String character) {
        figures.touched(character);
    }

    @Override
    public void takeBack() {
        figures.takeBack();
    }

    @Override
    public void enter() {
        figures.enter();
    }

    @Override
    public String interrupted() {
        return figures.interrupted();
    }

    /** From a check that is done, by itself. On the thread of the ledger. */
    private Reply onwards(Reply done) {
        return session.onwards().after(done, showing::saysNoMore);
    }

    /**
     * One verb at a time: a second tap before the first is on the disk would answer what is asked after it, which
     * nobody has seen.
     */
    private void ask(Callable<Reply> verb) {
        if (!asking) {
            asking = true;
            tasks.run(verb, this::took, () -> asking = false);
        }
    }

    private void took(Reply reply) {
        show(reply.state());
        reply.objection().ifPresent(figures::object);
    }

    private void show(State now) {
        State was = state.get();
        finished.shown(was, now);
        state.set(now);
        shown.set(showing.of(now, finished.in(now)));
        figures.shown(was, now);
    }

    private Commit commitNow() {
        return switch (pad().stateProperty().get()) {
            case EMPTY -> shown.get().first();
            case ENTERABLE -> Commit.of(Act.ENTER, words.say("run.enter"), "");
            case UNFINISHED, NO_FIGURE -> Commit.of(Act.WAIT, words.say("run.enter"), "");
        };
    }
}
