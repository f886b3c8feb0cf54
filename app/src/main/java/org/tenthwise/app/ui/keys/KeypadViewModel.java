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

/**
 * What has been typed on the number pad, and whether it can be entered.
 *
 * <p>The text is kept as typed, zeros and plus sign with it; a comma becomes a point, and a point with nothing before
 * it gets a zero. Whoever takes the figure clears the pad: until then it stays, so that nothing is lost if it cannot be
 * taken.
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
    private final ReadOnlyObjectWrapper<PadState> state = new ReadOnlyObjectWrapper<>(PadState.EMPTY);
    private final ReadOnlyStringWrapper signKey = new ReadOnlyStringWrapper();
    private final StringProperty unit = new SimpleStringProperty("");
    private final Consumer<String> onEnter;

    /** @param onEnter is handed a plain decimal number as typed */
    public KeypadViewModel(Consumer<String> onEnter) {
        this.onEnter = onEnter;
        signKey.bind(Bindings.createStringBinding(() -> nextMark().orElse(SIGN), typed, unit));
        state.bind(Bindings.createObjectBinding(() -> typedFigure().state(), typed, unit));
    }

    public ReadOnlyStringProperty typedProperty() {
        return typed.getReadOnlyProperty();
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
        nextMark().ifPresentOrElse(this::character, this::turnSign);
    }

    private void turnSign() {
        String text = typed.get();
        if (text.startsWith("-")) {
            typed.set(text.substring(1));
        } else {
            typed.set("-" + (text.startsWith("+") ? text.substring(1) : text));
        }
    }

    /**
     * Takes a character as it comes. Blanks before the figure are passed over; what cannot stand in a figure at its
     * place is kept, shown and makes the whole not enterable.
     */
    @Override
    public void character(String character) {
        String text = typed.get();
        String next = character.equals(",") ? "." : character.replace('\u2212', '-');
        if (text.isEmpty() && next.isBlank()) {
            return;
        }
        boolean bare = text.isEmpty() || text.equals("-") || text.equals("+");
        typed.set(next.equals(".") && bare ? text + "0." : text + next);
    }

    @Override
    public void takeBack() {
        String text = typed.get();
        typed.set(text.isEmpty() ? text : text.substring(0, text.length() - 1));
    }

    public void clear() {
        typed.set("");
    }

    @Override
    public void enter() {
        if (state.get() == PadState.ENTERABLE) {
            onEnter.accept(typedFigure().figure());
        }
    }
}
