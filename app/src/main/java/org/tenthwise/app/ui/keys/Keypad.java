package org.tenthwise.app.ui.keys;

import javafx.scene.layout.GridPane;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.theme.Icon;

/** The number pad: ten figures, point, sign, take-back, and beside that the commit key it is given. */
public final class Keypad extends GridPane {

    /** @param commit a key of {@link Key.Kind#COMMIT}; takes two places of the lowest row */
    public Keypad(KeypadViewModel model, Words words, Key commit) {
        getStyleClass().add("keypad");
        setHgap(8);
        setVgap(8);
        for (int digit = 1; digit <= 9; digit++) {
            add(digit(model, words, digit), (digit - 1) % 3, 2 - (digit - 1) / 3);
        }
        Key sign = new Key(Key.Kind.PLAIN, "±", model::sign);
        sign.accessibleTextProperty().unbind();
        sign.setAccessibleText(words.say("keypad.sign"));
        Key point = new Key(Key.Kind.PLAIN, ".", model::point);
        point.accessibleTextProperty().unbind();
        point.setAccessibleText(words.say("keypad.point"));
        sign.getStyleClass().add("digit");
        point.getStyleClass().add("digit");
        add(sign, 0, 3);
        add(digit(model, words, 0), 1, 3);
        add(point, 2, 3);
        Key takeBack = new Key(Key.Kind.PLAIN, Icon.TAKE_BACK, words.say("keypad.take-back"), model::takeBack);
        takeBack.setId("take-back");
        add(takeBack, 0, 4);
        add(commit, 1, 4, 2, 1);
    }

    private static Key digit(KeypadViewModel model, Words words, int digit) {
        Key key = new Key(Key.Kind.PLAIN, words.say("keypad.digit", digit), () -> model.digit(digit));
        key.getStyleClass().add("digit");
        key.setId("digit-" + digit);
        return key;
    }
}
