package org.tenthwise.app.ui.keys;

import java.util.List;
import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.RowConstraints;
import org.tenthwise.app.ui.theme.Icon;
import org.tenthwise.model.words.Words;

/**
 * The letters of the screen: figures, letters, hyphen, slash, full stop, comma, space, shift, take-back, and the commit
 * key it is given.
 */
public final class LetterPad extends GridPane {

    private static final List<String> ROWS = List.of("1234567890", "qwertyuiop", "asdfghjkl-", "zxcvbnm.,/");
    private static final int ACROSS = 10;

    public LetterPad(TextEntryViewModel model, Words words, Key commit) {
        getStyleClass().add("letters");
        setHgap(8);
        setVgap(8);
        for (int column = 0; column < ACROSS; column++) {
            ColumnConstraints width = new ColumnConstraints();
            width.setPercentWidth(100.0 / ACROSS);
            getColumnConstraints().add(width);
        }
        for (int row = 0; row < ROWS.size(); row++) {
            for (int column = 0; column < ACROSS; column++) {
                add(letter(model, words, ROWS.get(row).substring(column, column + 1)), column, row);
            }
        }
        for (int row = 0; row <= ROWS.size(); row++) {
            RowConstraints height = new RowConstraints();
            height.setPercentHeight(100.0 / (ROWS.size() + 1));
            getRowConstraints().add(height);
        }
        Key shift = new Key(Key.Kind.PLAIN, Icon.SHIFT, words.say("letters.shift"), model::shift);
        model.shiftedProperty().subscribe(shift::showChosen);
        Key space = new Key(Key.Kind.PLAIN, words.say("letters.space"), () -> model.character(" "));
        Key takeBack = new Key(Key.Kind.PLAIN, Icon.TAKE_BACK, words.say("letters.take-back"), model::takeBack);
        add(shift, 0, ROWS.size());
        add(space, 1, ROWS.size(), 4, 1);
        add(takeBack, 5, ROWS.size(), 2, 1);
        add(commit, 7, ROWS.size(), 3, 1);
    }

    private static Key letter(TextEntryViewModel model, Words words, String letter) {
        Key key = new Key(Key.Kind.PLAIN, letter, () -> model.letter(letter));
        key.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> model.shiftedProperty().get() ? letter.toUpperCase(Locale.ROOT) : letter,
                        model.shiftedProperty()));
        if (!Character.isLetterOrDigit(letter.charAt(0))) {
            key.speak(words.say("letters."
                    + switch (letter) {
                        case "-" -> "hyphen";
                        case "/" -> "slash";
                        case "." -> "full-stop";
                        default -> "comma";
                    }));
        }
        return key;
    }
}
