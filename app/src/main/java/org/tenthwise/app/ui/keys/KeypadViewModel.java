package org.tenthwise.app.ui.keys;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import org.tenthwise.model.words.Message;

/**
 * What has been typed on the number pad, and whether it can be entered.
 *
 * <p>The text is kept as typed, zeros and plus sign with it; a comma becomes a point, and a point with nothing before
 * it gets a zero. Whoever takes the figure clears the pad: until then it stays, so that nothing is lost if it cannot be
 * taken.
 *
 * <p>To a figure typed on the keys of the pad, and to no other, goes what is offered when it is begun, see
 * {@link Offer}. What stands is always the whole figure.
 */
public final class KeypadViewModel implements Typing {

    /** Why what stands on the pad can be entered or not. */
    public enum PadState {
        /** Nothing typed. */
        EMPTY,
        ENTERABLE,
        /** A sign alone, or a point with nothing after it. */
        UNFINISHED,
        /** Something was typed that is no figure, as by a gauge sending more than its number. */
        NO_FIGURE
    }

    static final String SIGN = "±";

    private final ReadOnlyStringWrapper typed = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper offered = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<PadState> state = new ReadOnlyObjectWrapper<>(PadState.EMPTY);
    private final ReadOnlyStringWrapper signKey = new ReadOnlyStringWrapper();
    private final StringProperty unit = new SimpleStringProperty("");
    private final Consumer<String> onEnter;
    /** As pressed, without what is offered. */
    private String keys = "";
    /** Whether some of it did not come by the keys of the pad. */
    private boolean asItCame;

    private Offer offer = Offer.NONE;
    /** What was offered when the figure was begun. */
    private Offer begunWith = Offer.NONE;

    /** @param onEnter is handed a plain decimal number as typed */
    public KeypadViewModel(Consumer<String> onEnter) {
        this.onEnter = onEnter;
        signKey.bind(Bindings.createStringBinding(() -> nextMark().orElse(SIGN), typed, unit));
        state.bind(Bindings.createObjectBinding(() -> typedFigure().state(), typed, unit));
    }

    public ReadOnlyStringProperty typedProperty() {
        return typed.getReadOnlyProperty();
    }

    /** What of the figure was offered, or would be of the next; empty where nothing is. */
    public ReadOnlyStringProperty offeredProperty() {
        return offered.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<PadState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** Symbol of the unit that may stand behind a figure. */
    public StringProperty unitProperty() {
        return unit;
    }

    /** What is wrong with what stands on the pad, where it can be no figure any more. */
    public Optional<TypedFigure.Unfit> unfit() {
        return typedFigure().unfit();
    }

    private TypedFigure typedFigure() {
        return new TypedFigure(typed.get(), unit.get());
    }

    /** What the key beside zero does now: turns the sign, or puts the mark an angle goes on with. */
    public ObservableValue<String> signKeyProperty() {
        return signKey;
    }

    /** The mark an angle goes on with; absent for a length. */
    public Optional<String> nextMark() {
        return typedFigure().nextMark();
    }

    /** Turns the sign: none or plus to minus, minus to none. For an angle, which has none, puts its next mark. */
    public void sign() {
        nextMark().ifPresentOrElse(this::touched, this::turnSign);
    }

    private void turnSign() {
        begin();
        if (keys.startsWith("-")) {
            put(keys.substring(1));
        } else {
            put("-" + (keys.startsWith("+") ? keys.substring(1) : keys));
        }
    }

    /**
     * What goes to the figures begun from now on. One that has something of another offer in it goes: what it rests on
     * is no more.
     */
    public void offer(Offer next) {
        if (!next.equals(begunWith)) {
            if (!asItCame && !typed.get().equals(keys)) {
                clear();
            }
            begunWith = Offer.NONE;
        }
        offer = next;
        put(keys);
    }

    /** What speaks against entering what stands, as far as it was not typed in full. */
    public Optional<Message> doubt() {
        return asItCame || keys.isEmpty() ? Optional.empty() : begunWith.against(keys);
    }

    /**
     * Takes a character as it comes. Blanks before the figure are passed over; what cannot stand in a figure at its
     * place is kept, shown and makes the whole not enterable.
     */
    @Override
    public void character(String character) {
        if (!keys.isEmpty() || !character.isBlank()) {
            keys = typed.get();
            asItCame = true;
            add(character);
        }
    }

    @Override
    public void touched(String character) {
        begin();
        add(character);
    }

    private void begin() {
        if (keys.isEmpty()) {
            begunWith = offer;
        }
    }

    private void add(String character) {
        String next = character.equals(",") ? "." : character.replace('\u2212', '-');
        boolean bare = keys.isEmpty() || keys.equals("-") || keys.equals("+");
        put(next.equals(".") && bare ? keys + "0." : keys + next);
    }

    private void put(String pressed) {
        keys = pressed;
        asItCame &= !keys.isEmpty();
        boolean put = !keys.isEmpty() && !asItCame;
        typed.set(put ? begunWith.figure(keys) : keys);
        offered.set(keys.isEmpty() ? offer.front() : put ? begunWith.frontOf(keys) : "");
    }

    /** The character pressed last; where nothing is typed, what is offered in front. */
    @Override
    public void takeBack() {
        if (keys.isEmpty()) {
            offer(offer.withoutFront());
        } else {
            put(keys.substring(0, keys.length() - 1));
        }
    }

    /** What is offered stays for the next figure. */
    public void clear() {
        put("");
    }

    /**
     * The whole figure, with the whole units of a reading before that were offered in front of it. Those of a dial
     * stay: nothing else stands on it. Nothing while no figure stands.
     */
    public void clearWithOffer() {
        if (!keys.isEmpty()) {
            clear();
            offer(offer.withoutReading());
        }
    }

    @Override
    public void enter() {
        if (state.get() == PadState.ENTERABLE) {
            onEnter.accept(typedFigure().figure());
        }
    }
}
