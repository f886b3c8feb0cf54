package org.tenthwise.app.ui.run;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.tenthwise.app.session.Objection;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Objections;
import org.tenthwise.app.ui.keys.KeypadViewModel;
import org.tenthwise.app.ui.keys.Offer;
import org.tenthwise.app.ui.keys.TypedFigure;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/**
 * Figures typed into the run, by fingers or by a gauge that sends as fast as it likes. Each with its Enter is an entry
 * in its order, or is said not to be taken; none is glued to another and none is taken twice. Screen thread only.
 */
final class TypedFigures implements Typing {

    /** No gauge pauses so long within a figure. */
    private static final Duration PAUSE = Duration.ofMillis(400);

    private final Words words;
    private final Objections objections;
    private final Untaken untaken;
    private final Clock clock;
    private final Supplier<State> state;
    private final KeypadViewModel pad = new KeypadViewModel(this::entered);
    private final SentFigures sent;
    private final RefusedFigure refusal;
    private final Unheard unheard;
    private final Offers offers;
    private final ReadOnlyStringWrapper objection = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Optional<String>> keepable = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Instant begun = Instant.MIN;
    private Instant wentOn = Instant.MIN;
    private boolean byFingers;
    private boolean byGauge;

    TypedFigures(
            RunSession session,
            LedgerTasks tasks,
            Navigator navigator,
            Words words,
            Clock clock,
            Supplier<State> state,
            Predicate<State> saysNoMore,
            Consumer<State> show) {
        this.words = words;
        this.objections = new Objections(words);
        this.untaken = new Untaken(navigator, words);
        this.clock = clock;
        this.state = state;
        this.sent = new SentFigures(this, session, tasks, words, untaken, clock, state, saysNoMore, show);
        this.refusal = new RefusedFigure(clock);
        this.unheard = new Unheard(clock);
        this.offers = new Offers(state.get());
        offer();
    }

    /** What goes to the next figure that a finger begins: nothing while one before it may yet change what is asked. */
    void offer() {
        pad.offer(areOnTheirWay() ? Offer.NONE : offers.of(state.get()));
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
        return sent.areOnTheirWay();
    }

    /** Whether a figure stands on the pad, finished or not. */
    boolean isBegun() {
        return !pad.typedProperty().get().isEmpty();
    }

    /** A figure as the pad would have it. */
    TypedFigure asOnThePad(String figure) {
        return new TypedFigure(figure, pad.unitProperty().get());
    }

    @Override
    public void character(String character) {
        typed(character, false);
    }

    @Override
    public void touched(String character) {
        typed(character, true);
    }

    private void typed(String character, boolean fingers) {
        boolean heels = refusal.onItsHeels();
        String refused = pad.typedProperty().get();
        if (refusal.stands()) {
            pad.clear();
            refusal.lift();
        }
        lift();
        if (unheard.goesOn() || !isHeard()) {
            unheard.character(character);
            return;
        }
        unheard.forget();
        if (!isBegun()) {
            begun = clock.instant();
            byFingers = false;
            byGauge = false;
        }
        wentOn = clock.instant();
        byFingers |= fingers;
        byGauge |= !fingers;
        if (fingers) {
            pad.touched(character);
        } else {
            pad.character(character);
        }
        if (heels) {
            untaken.tell(refused, List.of(), words.say("run.untaken.refused"));
        }
    }

    private boolean isHeard() {
        return sent.areOnTheirWay()
                || isBegun()
                || state.get().asked().takesFigure()
                || state.get().figureBeginsNext();
    }

    @Override
    public void takeBack() {
        lift();
        refusal.lift();
        pad.takeBack();
    }

    /** By the key. Not in the middle of what a gauge types: the rest of it would be another figure. */
    void clearTyped() {
        if (!isInTheMiddleOfAGaugesFigure()) {
            pad.clearWithOffer();
            clear();
        }
    }

    void sign() {
        lift();
        Optional<String> mark = pad.nextMark();
        if (mark.isPresent()) {
            mark.filter(any -> isBegun()).ifPresent(this::touched);
        } else if (isBegun()) {
            refusal.lift();
            pad.sign();
        } else {
            touched("-");
        }
    }

    /**
     * Whether fingers and a gauge have both made what stands: a sign or a digit touched by chance before its figure
     * makes another size of it.
     */
    private boolean isGlued() {
        return isBegun() && byFingers && byGauge;
    }

    /** Behind a figure on its way it is told, for what is shown after that one would wipe it off the pad. */
    private void refuseGlued() {
        if (sent.areOnTheirWay()) {
            String typed = pad.typedProperty().get();
            pad.clear();
            untaken.tell(typed, List.of(), words.say("run.glued"));
        } else {
            refuse(words.say("run.glued"));
        }
    }

    private void refuse(String why) {
        refusal.ofWhatStands();
        objection.set(why);
    }

    private void lift() {
        objection.set("");
        keepable.set(Optional.empty());
    }

    /** The end of a figure, as a gauge sends it. A figure that was refused is not insisted on by it. */
    @Override
    public void enter() {
        if (!isBegun()) {
            tellUnheard();
        } else if (isGlued()) {
            refuseGlued();
        } else if (sent.areOnTheirWay()) {
            String typed = pad.typedProperty().get();
            pad.clear();
            sent.follow(typed);
        } else if (!refusal.stands()) {
            enterTyped();
        }
    }

    private void tellUnheard() {
        String typed = unheard.typed().strip();
        unheard.forget();
        if (!typed.isEmpty()) {
            untaken.tell(typed, List.of(), words.say("run.untaken.asked"));
        }
    }

    /**
     * By the key: what stands on the pad, or what is suggested where nothing does. Not in the middle of what a gauge
     * types: the half of a figure is another size, and the rest of it would be read at the next place.
     */
    void press() {
        if (isInTheMiddleOfAGaugesFigure()) {
            return;
        }
        if (isGlued()) {
            refuseGlued();
        } else if (isBegun()) {
            enterTyped();
        } else {
            sent.suggested();
        }
    }

    private boolean isInTheMiddleOfAGaugesFigure() {
        return isBegun() && byGauge && clock.instant().isBefore(wentOn.plus(PAUSE));
    }

    private void enterTyped() {
        if (pad.stateProperty().get() == KeypadViewModel.PadState.ENTERABLE) {
            pad.doubt().map(words::say).ifPresentOrElse(this::refuse, pad::enter);
        } else {
            refusal.ofWhatStands();
        }
    }

    private void entered(String figure) {
        clear();
        sent.take(figure, begun);
        offer();
    }

    /** Takes the figure that is far off, on purpose. */
    void keep() {
        keepable.get().ifPresent(sent::keep);
    }

    /** Nothing stands on the pad any more, and nothing is said against it. */
    void clear() {
        refusal.lift();
        lift();
        pad.clear();
    }

    /** What was sent and refused stands on the pad again, with why. */
    void giveBack(String figure, Objection why) {
        giveBack(figure);
        object(why);
        if (why.mayBeKept()) {
            keepable.set(Optional.of(figure.isEmpty() ? why.detail() : figure));
        }
    }

    void giveBack(String figure) {
        figure.chars().mapToObj(Character::toString).forEach(pad::character);
        refusal.ofWhatStands();
    }

    void object(Objection why) {
        objection.set(objections.inShort(why));
    }

    /** A step left in the middle of a figure: the rest of the figure still belongs to what was typed of it. */
    void leave() {
        if (!refusal.stands()) {
            unheard.begin(pad.typedProperty().get());
        }
        pad.clear();
    }

    /** Another state of the run is shown. A figure refused so shortly before that nobody can have seen why is told. */
    void shown(State was, State now) {
        if (refusal.stands()) {
            String refused = pad.typedProperty().get();
            boolean unseen = refusal.onItsHeels() && isGlued();
            pad.clear();
            refusal.lift();
            if (unseen) {
                untaken.tell(refused, List.of(), words.say("run.glued"));
            }
        }
        lift();
        if (!now.asked().takesFigure() && !was.inHand().equals(now.inHand())) {
            leave();
        }
        offers.shown(was, now);
        offer();
    }

    @Override
    public String interrupted() {
        String half =
                refusal.stands() ? "" : unheard.typed() + pad.typedProperty().get();
        if (!half.isEmpty()) {
            unheard.forget();
            pad.clear();
        }
        return half;
    }
}
