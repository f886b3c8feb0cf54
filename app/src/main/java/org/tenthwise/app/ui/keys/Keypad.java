package org.tenthwise.app.ui.keys;

import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import org.tenthwise.app.ui.theme.Icon;
import org.tenthwise.model.words.Words;

/** The number pad: ten figures, point, sign, take-back, and beside that the commit key it is given. */
public final class Keypad extends GridPane {

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
     * @param commit a key of {@link Key.Kind#COMMIT}; takes two places of the lowest row
     */
    public Keypad(Typing typed, Runnable sign, ObservableValue<String> signs, Words words, Key commit) {
        getStyleClass().add("keypad");
        setHgap(8);
        setVgap(8);
        for (int column = 0; column < 3; column++) {
            ColumnConstraints width = new ColumnConstraints();
            width.setHgrow(Priority.ALWAYS);
            width.setFillWidth(true);
            getColumnConstraints().add(width);
        }
        for (int digit = 1; digit <= 9; digit++) {
            add(digit(typed, words, digit), (digit - 1) % 3, 2 - (digit - 1) / 3);
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
        add(signKey, 0, 3);
        add(digit(typed, words, 0), 1, 3);
        add(point, 2, 3);
        Key takeBack = new Key(Key.Kind.PLAIN, Icon.TAKE_BACK, words.say("keypad.take-back"), typed::takeBack);
        takeBack.setId("take-back");
        add(takeBack, 0, 4);
        add(commit, 1, 4, 2, 1);
    }

    /**
     * A key takes the whole figure away while one stands. It lies beside take-back, and the commit key, then drawn as a
     * sign, keeps the corner; all others keep their places.
     *
     * @param commit the one this pad was given
     * @param stands whether a figure stands
     */
    public Key clearsBeside(Key commit, ObservableValue<Boolean> stands, Words words, Runnable clear) {
        Key key = new Key(Key.Kind.PLAIN, words.say("keypad.clear.sign"), clear);
        key.speak(words.say("keypad.clear"));
        key.setId("clear");
        key.getStyleClass().add("digit");
        Deaf deaf = new Deaf(key);
        add(key, 1, 4);
        commit.showSign(Icon.ENTER, stands);
        stands.subscribe(now -> {
            setColumnIndex(commit, now ? 2 : 1);
            setColumnSpan(commit, now ? 1 : 2);
            key.setVisible(now);
            if (now) {
                deaf.forAMoment();
            }
        });
        return key;
    }

    /** Whether the figures, the point and the sign can be pressed; the commit key is not touched. */
    public void takeFigures(boolean taken) {
        getChildren().stream()
                .filter(node -> node instanceof Key key && !key.getStyleClass().contains("commit"))
                .forEach(node -> node.setDisable(!taken));
    }

    private static Key digit(Typing typed, Words words, int digit) {
        Key key =
                new Key(Key.Kind.PLAIN, words.say("keypad.digit", digit), () -> typed.touched(Integer.toString(digit)));
        key.getStyleClass().add("digit");
        key.setId("digit-" + digit);
        return key;
    }
}
