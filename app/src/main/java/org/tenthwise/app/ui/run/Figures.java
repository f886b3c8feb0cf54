package org.tenthwise.app.ui.run;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.tenthwise.app.session.Asked;
import org.tenthwise.app.session.Objection;
import org.tenthwise.app.session.Reply;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Objections;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.keys.KeypadViewModel;
import org.tenthwise.app.ui.keys.TypedFigure;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.shell.Errands;
import org.tenthwise.app.ui.shell.Journey;

/**
 * Figures typed into the run, by fingers or by a gauge that sends as fast as it likes. Each with its Enter is an entry in its
 * order, or is said not to be taken; none is glued to another and none is taken twice. Screen thread only.
 */
final class Figures implements Typing {

    /** What comes sooner than this after a figure was meant for the same check. */
    private static final Duration SOON = Duration.ofSeconds(1);

    private final RunSession session;
    private final Errands errands;
    private final Words words;
    private final Objections objections;
    private final Untaken untaken;
    private final Clock clock;
    private final Supplier<State> state;
    private final Consumer<State> show;
    private final KeypadViewModel pad = new KeypadViewModel(this::entered);
    private final FigureQueue queue = new FigureQueue();
    private final Refusal refusal;
    private final ReadOnlyStringWrapper objection = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Optional<String>> keepable = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Instant arrived = Instant.MIN;
    private Instant begun = Instant.MIN;
    /** What was typed while nothing took figures, and when last. */
    private String passedBy = "";
    private Instant passedByAt = Instant.MIN;

    Figures(RunSession session, Errands errands, Journey journey, Words words, Clock clock, Supplier<State> state, Consumer<State> show) {
        this.session = session;
        this.errands = errands;
        this.words = words;
        this.objections = new Objections(words);
        this.untaken = new Untaken(journey, words);
        this.clock = clock;
        this.state = state;
        this.show = show;
        this.refusal = new Refusal(clock);
    }

    KeypadViewModel pad() {
        return pad;
    }

    /** Why what was typed was not taken; empty where it was. */
    ReadOnlyStringProperty objectionProperty() {
        return objection.getReadOnlyProperty();
    }

    /** The figure far off that can be kept on purpose. */
    ReadOnlyObjectProperty<Optional<String>> keepableProperty() {
        return keepable.getReadOnlyProperty();
    }

    boolean areOnTheirWay() {
        return queue.isBusy();
    }

    @Override
    public void character(String character) {
        boolean heels = refusal.onItsHeels();
        String refused = pad.typedProperty().get();
        if (refusal.stands()) {
            pad.clear();
            refusal.lift();
        }
        lift();
        if (goesOnPassingBy() || !isHeard()) {
            passedBy = goesOnPassingBy() ? passedBy + character : character;
            passedByAt = clock.instant();
            return;
        }
        passedBy = "";
        if (pad.typedProperty().get().isEmpty()) {
            begun = clock.instant();
        }
        pad.character(character);
        if (heels) {
            untaken.tell(refused, List.of(), words.say("run.untaken.refused"));
        }
    }

    private boolean goesOnPassingBy() {
        return !passedBy.isEmpty() && clock.instant().isBefore(passedByAt.plus(SOON));
    }

    private boolean isHeard() {
        return queue.isBusy() || !pad.typedProperty().get().isEmpty() || state.get().asked().takesFigure()
                || state.get().figureBeginsNext();
    }

    @Override
    public void takeBack() {
        lift();
        refusal.lift();
        pad.takeBack();
    }

    void sign() {
        lift();
        if (pad.typedProperty().get().isEmpty()) {
            character("-");
        } else {
            refusal.lift();
            pad.sign();
        }
    }

    private void lift() {
        objection.set("");
        keepable.set(Optional.empty());
    }

    /** The end of a figure, as a gauge sends it. A figure that was refused is not insisted on by it. */
    @Override
    public void enter() {
        String typed = pad.typedProperty().get();
        if (typed.isEmpty()) {
            tellPassedBy();
        } else if (queue.isBusy()) {
            pad.clear();
            queue.add(typed);
        } else if (!refusal.stands()) {
            enterTyped();
        }
    }

    private void tellPassedBy() {
        String typed = passedBy.strip();
        passedBy = "";
        if (!typed.isEmpty()) {
            untaken.tell(typed, List.of(), words.say("run.untaken.asked"));
        }
    }

    /** By the key: what stands on the pad, or what is suggested where nothing does. */
    void press() {
        if (!pad.typedProperty().get().isEmpty()) {
            enterTyped();
        } else if (queue.add("")) {
            send("");
        }
    }

    private void enterTyped() {
        if (pad.stateProperty().get() == KeypadViewModel.State.ENTERABLE) {
            pad.enter();
        } else {
            refusal.ofWhatStands();
        }
    }

    private void entered(String figure) {
        refusal.lift();
        lift();
        pad.clear();
        if (!queue.add(figure)) {
            return;
        }
        if (state.get().asked().takesFigure()) {
            send(figure);
        } else if (state.get().figureBeginsNext()) {
            open(figure);
        } else {
            queue.stop();
            untaken.tell(figure, List.of(), words.say("run.untaken.asked"));
        }
    }

    /** A figure when the check is full: the first of the next, if it does not come too soon and fits there. */
    private void open(String figure) {
        int step = state.get().inHand().number();
        if (begun.isBefore(arrived.plus(SOON))) {
            queue.stop();
            askWhetherItOpens(figure);
        } else {
            work(() -> session.enterNext(step, figure), figure, true);
        }
    }

    private void send(String figure) {
        int step = state.get().inHand().number();
        work(() -> session.enter(step, figure), figure, state.get().asked() instanceof Asked.Reading);
    }

    /** Takes the figure that is far off, on purpose. */
    void keep() {
        if (keepable.get().isEmpty()) {
            return;
        }
        String figure = keepable.get().get();
        int step = state.get().inHand().number();
        if (queue.add(figure)) {
            refusal.lift();
            lift();
            pad.clear();
            work(() -> session.state().inHand().number() == step ? session.keep(figure) : session.enter(step, figure), figure, false);
        }
    }

    private void work(Callable<Reply> verb, String figure, boolean reading) {
        errands.runOr(verb, reply -> reply.objection().ifPresentOrElse(
                why -> refused(reply, why, figure), () -> taken(reply, reading)), () -> failed(figure));
    }

    private void taken(Reply reply, boolean reading) {
        arrived = clock.instant();
        show.accept(reply.state());
        if (queue.waiting() == 0) {
            queue.stop();
        } else if (reading && reply.state().asked() instanceof Asked.Reading next && next.taken() > 0) {
            sendNext();
        } else {
            List<String> left = queue.stop();
            if (left.size() == 1 && reply.state().figureBeginsNext()) {
                askWhetherItOpens(left.get(0));
            } else {
                untaken.tell(left, words.say("run.untaken.stopped"));
            }
        }
    }

    private void sendNext() {
        TypedFigure next = new TypedFigure(queue.next(), pad.unitProperty().get());
        if (next.state() == KeypadViewModel.State.ENTERABLE) {
            send(next.figure());
        } else {
            untaken.tell(next.typed(), queue.stop(), words.say("run.objection", Objection.Kind.NOT_A_NUMBER));
        }
    }

    private void refused(Reply reply, Objection why, String figure) {
        List<String> left = queue.stop();
        boolean followed = !left.isEmpty() || !pad.typedProperty().get().isEmpty();
        show.accept(reply.state());
        if (why.kind() == Objection.Kind.OPENS_NEXT && left.isEmpty()) {
            askWhetherItOpens(figure);
        } else if (followed) {
            untaken.tell(figure, left, objections.say(why));
        } else {
            giveBack(figure);
            refusal.ofWhatStands();
            objection.set(objections.inShort(why));
            if (why.mayBeKept()) {
                keepable.set(Optional.of(figure.isEmpty() ? why.detail() : figure));
            }
            if (why.kind() == Objection.Kind.NO_SUM) {
                untaken.tellWhyNoSum(why.detail());
            }
        }
    }

    void object(Objection why) {
        objection.set(objections.inShort(why));
    }

    private void failed(String figure) {
        List<String> left = queue.stop();
        if (left.isEmpty() && pad.typedProperty().get().isEmpty()) {
            giveBack(figure);
            refusal.ofWhatStands();
        } else {
            untaken.tell(figure, left, words.say("run.untaken.stopped"));
        }
    }

    private void giveBack(String figure) {
        figure.chars().mapToObj(Character::toString).forEach(pad::character);
    }

    private void askWhetherItOpens(String figure) {
        int here = state.get().inHand().number();
        int next = state.get().next().orElseThrow().number();
        untaken.askWhetherItOpens(figure, here, next, () -> openWith(here, next, figure));
    }

    private void openWith(int here, int next, String figure) {
        if (queue.add(figure)) {
            work(() -> {
                if (session.state().inHand().number() == here) {
                    session.goTo(next);
                }
                return session.enter(next, figure);
            }, figure, true);
        }
    }

    /** A step left in the middle of a figure: the rest of the figure still belongs to what was typed of it. */
    void leave() {
        if (!refusal.stands()) {
            passedBy += pad.typedProperty().get();
            passedByAt = clock.instant();
        }
        pad.clear();
    }

    /** Another state of the run is shown. */
    void shown(State now, boolean sameStep) {
        if (refusal.stands()) {
            pad.clear();
            refusal.lift();
        }
        lift();
        if (!now.asked().takesFigure() && !sameStep) {
            leave();
        }
    }

    @Override
    public String interrupted() {
        String half = refusal.stands() ? "" : passedBy + pad.typedProperty().get();
        if (!half.isEmpty()) {
            passedBy = "";
            pad.clear();
        }
        return half;
    }
}
