package org.tenthwise.app.ui.keys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.css.PseudoClass;
import javafx.geometry.Bounds;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.ui.Display;
import org.tenthwise.app.ui.ScreenTest;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Heading;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.app.ui.shell.Screen;

/** The building blocks of the screens, on every display. */
class BlocksScreenTest extends ScreenTest {

    private final List<String> entered = new ArrayList<>();

    private static final class Shown extends Screen {

        private final Typing typing;

        Shown(Region root, Typing typing) {
            super("Blocks");
            this.typing = typing;
            setCenter(root);
        }

        @Override
        public Typing typing() {
            return typing;
        }

        @Override
        public void arrange(Arrangement arrangement) {
            pseudoClassStateChanged(PseudoClass.getPseudoClass("tall"), arrangement == Arrangement.PORTRAIT);
        }
    }

    private Screen pad(Window window, KeypadViewModel model) {
        Key commit = new Key(
                Key.Kind.COMMIT,
                new ReadOnlyStringWrapper("Next check"),
                new ReadOnlyStringWrapper("14 Plug"),
                model::enter);
        Readout readout = new Readout(
                new ReadOnlyStringWrapper("Gauge reads, at 38 and 90°"),
                model.typedProperty(),
                new ReadOnlyStringWrapper("mm"),
                new ReadOnlyStringWrapper("30.000 master: bore 30.013"),
                words);
        Keypad keypad = new Keypad(model, words, commit);
        keypad.clears(model.typedProperty().map(typed -> !typed.isEmpty()), words, model::clear);
        keypad.setMinWidth(window.look().largeTextProperty().get() ? 400 : 352);
        VBox column = new VBox(8, readout, keypad);
        readout.maxWidthProperty().bind(keypad.widthProperty());
        VBox.setVgrow(readout, Priority.ALWAYS);
        keypad.setMinHeight(Region.USE_PREF_SIZE);
        BorderPane root = new BorderPane();
        root.setRight(column);
        root.setTop(new Heading()
                .back(words, () -> {})
                .cell("Part", new ReadOnlyStringWrapper("LG-2207 rev C"))
                .cell("Operation", new ReadOnlyStringWrapper("30 Bore, second side"))
                .end(new Key(Key.Kind.STOP, "Flag a doubt", () -> {})));
        return new Shown(root, model);
    }

    @Test
    void thePadHoldsEverywhere() {
        seen("blocks", "pad", window -> {
            KeypadViewModel model = new KeypadViewModel(entered::add);
            "-0.0135".chars().mapToObj(Character::toString).forEach(model::character);
            return pad(window, model);
        });
    }

    @Test
    void theLettersHoldEverywhere() {
        seen("blocks", "letters", window -> {
            TextEntryViewModel model = new TextEntryViewModel("", 20, entered::add);
            model.letter("s", "S");
            Label line = new Label();
            line.getStyleClass().addAll("typed-line", "heading");
            line.setMaxWidth(Double.MAX_VALUE);
            line.textProperty().bind(model.typedProperty());
            VBox root =
                    new VBox(16, line, new LetterPad(model, words, new Key(Key.Kind.COMMIT, "Take it", model::enter)));
            root.setPadding(new Insets(24));
            return new Shown(root, model);
        });
    }

    @Test
    void theOtherLettersHoldEverywhereAndAreTyped() {
        TextEntryViewModel model = new TextEntryViewModel("Ren", 100, entered::add);
        seen(
                "blocks",
                "other-letters",
                window -> {
                    VBox root =
                            new VBox(new LetterPad(model, words, new Key(Key.Kind.COMMIT, "Take it", model::enter)));
                    root.setPadding(new Insets(24));
                    return new Shown(root, model);
                },
                window -> {
                    model.startAnew("Ren");
                    press(window.scene(), "other-letters");
                    letter(window, "é");
                    model.shift();
                    letter(window, "Ö");
                    List.of(";", "°", "±", "ü").forEach(sign -> letter(window, sign));
                    assertEquals("RenéÖ;°±ü", model.typedProperty().get(), "places, angles and limits are typed too");
                });
    }

    private static void letter(Window window, String letter) {
        window.scene().getRoot().lookupAll(".key").stream()
                .map(Key.class::cast)
                .filter(key -> key.getText().equals(letter))
                .findFirst()
                .orElseThrow()
                .fire();
    }

    @Test
    void rowsToChooseFromHoldEverywhere() {
        seen("blocks", "choice", window -> {
            ChoiceViewModel<String> model = new ChoiceViewModel<>(IntStream.rangeClosed(1, 20)
                    .mapToObj(i -> "Reason number " + i)
                    .toList());
            model.choose("Reason number 2");
            Choice<String> choice = new Choice<>(model, words, reason -> reason);
            choice.setPadding(new Insets(24));
            return new Shown(choice, Typing.NONE);
        });
    }

    private Screen told(Window window) {
        window.shell()
                .tell(new Notice(
                        "Not saved",
                        "Your readings are still here. Free some space, then try again.",
                        List.of(
                                new Notice.NoticeKey("Leave it", () -> {}),
                                new Notice.NoticeKey("Try again", () -> {}))));
        return pad(window, new KeypadViewModel(entered::add));
    }

    @Test
    void aMessageHoldsEverywhere() {
        seen("blocks", "message", this::told);
    }

    /** A key that takes no press does not look as if it did. */
    @Test
    void allThatLiesUnderAMessageIsDimmed() {
        run(() -> {
            Window window = window(Display.DAY);
            window.shell().show(told(window));
            settle(window.scene());
            Bounds veil = window.scene().lookup(".message-veil").getBoundsInParent();
            assertTrue(
                    veil.getWidth() >= Display.DAY.width() && veil.getHeight() >= Display.DAY.height(), veil::toString);
        });
    }

    @Test
    void aGaugeTypesItsFigureAndEnter() {
        run(() -> {
            Window window = window(Display.DAY);
            window.shell().show(pad(window, new KeypadViewModel(entered::add)));
            settle(window.scene());
            type(window.scene(), "+0.013\n");
        });
        assertEquals(List.of("+0.013"), entered);
    }

    @Test
    void aMessageTakesNoTyping() {
        run(() -> {
            Window window = window(Display.DAY);
            window.shell().show(pad(window, new KeypadViewModel(entered::add)));
            window.shell().trouble();
            settle(window.scene());
            type(window.scene(), "5\n");
        });
        assertEquals(List.of(), entered);
    }

    @Test
    void rowsAreTurnedAPageAtATime() {
        run(() -> {
            Window window = window(Display.DAY);
            PagedRows rows = new PagedRows(words);
            rows.show(IntStream.rangeClosed(1, 20)
                    .mapToObj(i -> new Key(Key.Kind.PLAIN, "Row " + i, () -> {}))
                    .toList());
            window.shell().show(new Shown(rows, Typing.NONE));
            Scene scene = window.scene();
            settle(scene);
            List<String> first = visible(rows);
            assertEquals("Row 1", first.get(0));
            press(scene, "later");
            settle(scene);
            assertEquals("Row " + (first.size() + 1), visible(rows).get(0));
            press(scene, "earlier");
            settle(scene);
            assertEquals(first, visible(rows));
            rows.reveal(19);
            settle(scene);
            assertTrue(visible(rows).contains("Row 20"));
        });
    }

    @Test
    void ofALongListOnlyTheRowsOfAPageAreMade() {
        run(() -> {
            Window window = window(Display.DAY);
            PagedRows rows = new PagedRows(words);
            rows.show(10_000, place -> new Key(Key.Kind.PLAIN, "Row " + (place + 1), () -> {}));
            window.shell().show(new Shown(rows, Typing.NONE));
            Scene scene = window.scene();
            settle(scene);
            int page = visible(rows).size();
            for (int turned = 1; turned < 20; turned++) {
                press(scene, "later");
                settle(scene);
                assertEquals("Row " + (page * turned + 1), visible(rows).get(0));
            }
            rows.reveal(9_999);
            settle(scene);
            assertEquals("Row 10000", visible(rows).get(page - 1));
            int made = rows.getChildrenUnmodifiable().size();
            assertTrue(made < 4 * page, () -> made + " rows for a page of " + page);
        });
    }

    private static List<String> visible(PagedRows rows) {
        return rows.getChildrenUnmodifiable().stream()
                .filter(Node::isVisible)
                .map(row -> ((Key) row).getText())
                .filter(text -> !text.isEmpty())
                .toList();
    }
}
