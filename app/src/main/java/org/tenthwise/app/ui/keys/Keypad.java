package org.tenthwise.app.ui.keys;

import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.tenthwise.app.ui.theme.Icon;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.model.words.Words;

/**
 * The number pad: ten figures, point, sign, and in its lowest row take-back, clear and the commit key it is given.
 * Every key has its place always: a finger that goes there by habit meets no other.
 */
public final class Keypad extends GridPane {

    private static final int ACROSS = 3;

    private final BooleanProperty taken = new SimpleBooleanProperty(true);
    private final HBox lowest = new HBox(ScreenSizes.GAP);

    /** The pad of a view model that takes figures at any time. */
    public Keypad(KeypadViewModel model, Words words, Key commit) {
        this(model, model::sign, model.signKeyProperty(), words, commit);
    }

    /** A pad for lengths and other plain numbers. */
    public Keypad(Typing typed, Runnable sign, Words words, Key commit) {
        this(typed, sign, new ReadOnlyStringWrapper(KeypadViewModel.SIGN), words, commit);
    }

    /**
     * @param typed is handed figures, point and take-back
     * @param sign turns the sign, or puts the next mark of an angle
     * @param signs what stands on the key for that
     * @param commit a key of {@link Key.Kind#COMMIT}; takes about half of the lowest row
     */
    public Keypad(Typing typed, Runnable sign, ObservableValue<String> signs, Words words, Key commit) {
        getStyleClass().add("keypad");
        setHgap(ScreenSizes.GAP);
        setVgap(ScreenSizes.GAP);
        for (int column = 0; column < ACROSS; column++) {
            ColumnConstraints width = new ColumnConstraints();
            width.setHgrow(Priority.ALWAYS);
            width.setFillWidth(true);
            getColumnConstraints().add(width);
        }
        for (int digit = 1; digit <= 9; digit++) {
            addFigure(digit(typed, words, digit), (digit - 1) % ACROSS, 2 - (digit - 1) / ACROSS);
        }
        Key signKey = new Key(Key.Kind.PLAIN, "", sign);
        signs.subscribe(shown -> {
            signKey.setText(shown);
            signKey.speak(words.say(shown.equals(KeypadViewModel.SIGN) ? "keypad.sign" : "keypad.mark"));
        });
        Key point = new Key(Key.Kind.PLAIN, ".", () -> typed.touched("."));
        point.speak(words.say("keypad.point"));
        signKey.setId("sign");
        point.setId("point");
        signKey.getStyleClass().add("digit");
        point.getStyleClass().add("digit");
        addFigure(signKey, 0, 3);
        addFigure(digit(typed, words, 0), 1, 3);
        addFigure(point, 2, 3);
        Key takeBack = new Key(Key.Kind.PLAIN, Icon.TAKE_BACK, words.say("keypad.take-back"), typed::takeBack);
        takeBack.setId("take-back");
        takeBack.disableProperty().bind(taken.not());
        addLowest(takeBack);
        addLowest(commit);
        add(lowest, 0, 4, ACROSS, 1);
    }

    private void addFigure(Key key, int column, int row) {
        key.disableProperty().bind(taken.not());
        add(key, column, row);
    }

    private void addLowest(Key key) {
        key.getStyleClass().add("lowest");
        HBox.setHgrow(key, Priority.ALWAYS);
        lowest.getChildren().add(key);
    }

    /**
     * The key that takes the whole figure away, between take-back and the commit key; pale while none stands.
     *
     * @param stands whether a figure stands
     */
    public Key clears(ObservableValue<Boolean> stands, Words words, Runnable clear) {
        Key key = new Key(Key.Kind.PLAIN, words.say("keypad.clear.sign"), clear);
        key.speak(words.say("keypad.clear"));
        key.setId("clear");
        key.getStyleClass().add("digit");
        key.disableProperty()
                .bind(Bindings.createBooleanBinding(() -> !taken.get() || !stands.getValue(), taken, stands));
        addLowest(key);
        lowest.getChildren().get(1).toFront();
        return key;
    }

    /** Whether the figures, the point and the sign can be pressed; the commit key is not touched. */
    public void takeFigures(boolean now) {
        taken.set(now);
    }

    private static Key digit(Typing typed, Words words, int digit) {
        Key key =
                new Key(Key.Kind.PLAIN, words.say("keypad.digit", digit), () -> typed.touched(Integer.toString(digit)));
        key.getStyleClass().add("digit");
        key.setId("digit-" + digit);
        return key;
    }
}
