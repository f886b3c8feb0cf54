package org.tenthwise.app.ui.keys;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.theme.Icon;
import org.tenthwise.model.words.LocaleCustoms;
import org.tenthwise.model.words.Words;

/**
 * The letters of the screen: figures and letters as the language arranges them, its other letters in their place behind
 * a key, space, shift, take-back, and the commit key it is given.
 */
public final class LetterPad extends GridPane {

    private static final int DOWN = 4;
    /** Signs of lots, marks, lists and drawings that no letters are, before the other letters. */
    private static final List<String> SIGNS = List.of("#", "+", "_", ";", "±", "°");

    private static final char BAR = '\u0304';
    private static final char BOW = '\u0306';

    private static final int ON_A_KEY = 3;
    private static final int WITHIN = 10;

    /** How far more keys side by side reach into the room around them, so that none is too narrow for a finger. */
    private static final Insets REACH = new Insets(0, -8, 0, -8);

    private final TextEntryViewModel model;
    private final Words words;
    /** Signs of the usual page, row by row, and how many lie side by side. */
    private final List<String> usual;

    private final int across;

    private final List<Node> shown = new ArrayList<>();
    private final Key others = new Key(Key.Kind.PLAIN, "", this::turn);
    private boolean showsOthers;

    public LetterPad(TextEntryViewModel model, Words words, Key commit) {
        this.model = model;
        this.words = words;
        getStyleClass().add("letters");
        setHgap(8);
        setVgap(8);
        usual = signs(words.say("letters.rows").replace(" ", ""));
        across = usual.size() / DOWN;
        if (across > WITHIN) {
            VBox.setMargin(this, REACH);
        }
        for (int column = 0; column < across; column++) {
            ColumnConstraints width = new ColumnConstraints();
            width.setPercentWidth(100.0 / across);
            getColumnConstraints().add(width);
        }
        for (int row = 0; row <= DOWN; row++) {
            RowConstraints height = new RowConstraints();
            height.setPercentHeight(100.0 / (DOWN + 1));
            getRowConstraints().add(height);
        }
        Key shift = new Key(Key.Kind.PLAIN, Icon.SHIFT, words.say("letters.shift"), model::shift);
        model.shiftedProperty().subscribe(shift::showChosen);
        Key space = new Key(Key.Kind.PLAIN, words.say("letters.space"), () -> model.character(" "));
        Key takeBack = new Key(Key.Kind.PLAIN, Icon.TAKE_BACK, words.say("letters.take-back"), model::takeBack);
        others.setId("other-letters");
        add(shift, 0, DOWN);
        add(others, 1, DOWN);
        add(space, 2, DOWN, across - 7, 1);
        add(takeBack, across - 5, DOWN, 2, 1);
        add(commit, across - 3, DOWN, 3, 1);
        show();
    }

    private void turn() {
        showsOthers = !showsOthers;
        show();
    }

    private void show() {
        List<String> letters = new LocaleCustoms(words.locale())
                .otherLetters().stream()
                        .filter(letter -> !usual.contains(letter))
                        .toList();
        boolean fits = SIGNS.size() + letters.size() <= usual.size();
        List<String> other = Stream.concat(
                        SIGNS.stream(), letters.stream().filter(letter -> fits || !hasMarkOfLength(letter)))
                .limit(usual.size())
                .toList();
        List<String> now = showsOthers ? other : usual;
        List<String> behind = showsOthers ? usual.subList(across, usual.size()) : hint(letters);
        getChildren().removeAll(shown);
        shown.clear();
        for (int place = 0; place < now.size(); place++) {
            Key key = letter(now.get(place));
            shown.add(key);
            add(key, place % across, place / across);
        }
        others.setText(String.join("", behind.subList(0, Math.min(ON_A_KEY, behind.size()))));
        others.speak(words.say(showsOthers ? "letters.usual" : "letters.others"));
    }

    /** With a bar or a bow over it, as dictionaries write long and short: the first to go where room is short. */
    private static boolean hasMarkOfLength(String letter) {
        String parts = Normalizer.normalize(letter, Normalizer.Form.NFD);
        return parts.indexOf(BAR) >= 0 || parts.indexOf(BOW) >= 0;
    }

    /** A sign of each sort. */
    private static List<String> hint(List<String> letters) {
        return Stream.concat(SIGNS.stream().limit(2), letters.stream().limit(1)).toList();
    }

    private static List<String> signs(String text) {
        return text.codePoints().mapToObj(Character::toString).toList();
    }

    private Key letter(String letter) {
        String large = letter.toUpperCase(words.locale());
        String capital = large.codePointCount(0, large.length()) == 1 ? large : letter;
        Key key = new Key(Key.Kind.PLAIN, letter, () -> model.letter(letter, capital));
        key.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> model.shiftedProperty().get() ? capital : letter, model.shiftedProperty()));
        if (!Character.isLetterOrDigit(letter.codePointAt(0))) {
            key.speak(words.say("letters."
                    + switch (letter) {
                        case "-" -> "hyphen";
                        case "/" -> "slash";
                        case "." -> "full-stop";
                        case "#" -> "number-sign";
                        case "+" -> "plus";
                        case "_" -> "underscore";
                        case ";" -> "semicolon";
                        case "±" -> "plus-minus";
                        case "°" -> "degrees";
                        default -> "comma";
                    }));
        }
        return key;
    }
}
