package org.tenthwise.app.ui.keys;

import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.tenthwise.model.plan.Signs;

/** A line of text as it is typed, on the letters of the screen or on a hardware keyboard. */
public final class TextEntryViewModel implements Typing {

    private final ReadOnlyStringWrapper typed;
    private final ReadOnlyBooleanWrapper shifted = new ReadOnlyBooleanWrapper(true);
    private final int most;
    private final boolean inCapitals;
    private final Consumer<String> onEnter;

    /**
     * @param start text to begin with; may be empty
     * @param most most characters of the text
     * @param onEnter is handed the text, not blank, without blanks at its ends
     */
    public TextEntryViewModel(String start, int most, Consumer<String> onEnter) {
        this(start, most, false, onEnter);
    }

    /** @param inCapitals whether letters stay capitals until they are turned, as in a mark or a lot */
    public TextEntryViewModel(String start, int most, boolean inCapitals, Consumer<String> onEnter) {
        this.typed = new ReadOnlyStringWrapper(start);
        this.most = most;
        this.inCapitals = inCapitals;
        this.onEnter = onEnter;
        shifted.set(inCapitals || start.isEmpty());
    }

    public ReadOnlyStringProperty typedProperty() {
        return typed.getReadOnlyProperty();
    }

    /**
     * Whether the next letter of the screen comes as a capital; on at the beginning, off after a letter unless in
     * capitals.
     */
    public ReadOnlyBooleanProperty shiftedProperty() {
        return shifted.getReadOnlyProperty();
    }

    /** Another text instead of what is typed. */
    public void startAnew(String text) {
        typed.set(text);
        shifted.set(inCapitals || text.isEmpty());
    }

    public void shift() {
        shifted.set(!shifted.get());
    }

    /** A letter of the screen, small or as a capital. */
    public void letter(String small, String capital) {
        character(shifted.get() ? capital : small);
        shifted.set(inCapitals && shifted.get());
    }

    @Override
    public void character(String character) {
        if (Signs.hiddenIn(character).isEmpty() && typed.get().length() + character.length() <= most) {
            typed.set(typed.get() + character);
        }
    }

    @Override
    public void takeBack() {
        String text = typed.get();
        typed.set(text.isEmpty() ? text : text.substring(0, text.offsetByCodePoints(text.length(), -1)));
    }

    @Override
    public void enter() {
        if (!typed.get().isBlank()) {
            onEnter.accept(typed.get().strip());
        }
    }
}
