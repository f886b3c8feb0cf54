package org.tenthwise.app.ui.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.ui.Display;
import org.tenthwise.app.ui.ScreenTest;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.KeypadViewModel;
import org.tenthwise.app.ui.keys.Typing;

class ShellTest extends ScreenTest {

    private final List<String> happened = new ArrayList<>();

    private class Plain extends Screen {

        Plain(String title) {
            super(title);
            owns(() -> happened.add(title + " gone"));
        }

        @Override
        public void arrange(Arrangement arrangement) {
            happened.add(title() + " " + arrangement);
        }

        @Override
        public void onShown() {
            happened.add(title() + " shown");
        }
    }

    @Test
    void backLeadsToTheScreenUnderAndEndsAtTheUndermost() {
        run(() -> {
            Shell shell = window(Display.DAY).shell();
            shell.show(new Plain("home"));
            shell.show(new Plain("run"));
            happened.clear();
            strike(shell.scene(), KeyCode.ESCAPE);
            strike(shell.scene(), KeyCode.ESCAPE);
            assertEquals("home", shell.inHand().orElseThrow().title());
        });
        assertEquals(List.of("run gone", "home shown"), happened);
    }

    @Test
    void aReplacedScreenIsGoneForGood() {
        run(() -> {
            Shell shell = window(Display.DAY).shell();
            Screen home = new Plain("home");
            shell.show(home);
            shell.show(new Plain("begin"));
            shell.replace(new Plain("run"));
            assertTrue(happened.contains("begin gone"));
            shell.show(new Plain("sign"));
            shell.backTo(home);
            assertEquals("home", shell.inHand().orElseThrow().title());
        });
    }

    @Test
    void turningTheTabletArrangesEveryScreenAnew() {
        run(() -> {
            Shell shell = window(Display.DAY).shell();
            shell.show(new Plain("home"));
            settle(shell.scene());
            happened.clear();
            shell.scene().getRoot().resize(800, 1280);
        });
        assertEquals(List.of("home PORTRAIT"), happened);
    }

    @Test
    void aKeyIsAsManyMillimetresOnAFinerDisplay() {
        run(() -> {
            for (int width : List.of(1280, 1920)) {
                Shell shell = window(new Display("fine", width, width * 5 / 8, width * 15 / 128, Display.DAY.look()))
                        .shell();
                Plain screen = new Plain("one key");
                Key key = new Key(Key.Kind.PLAIN, "Key", () -> {});
                key.setMaxSize(64, 64);
                screen.setCenter(key);
                shell.show(screen);
                settle(shell.scene());
                // 64 of 1280 px: a twentieth of the width of the display
                assertEquals(
                        width / 20.0, key.localToScene(key.getLayoutBounds()).getWidth(), 0.01);
            }
        });
    }

    @Test
    void aLargerDisplayShowsMoreAndOneThatDoesNotKnowItsSizeIsFilled() {
        Arrangement across = Arrangement.LANDSCAPE;
        assertEquals(1, across.scaleFor(1920, 1200, 96));
        assertEquals(1.2, across.scaleFor(1920, 1200, 180));
        assertEquals(1.5, across.scaleFor(1920, 1200, 300));
        assertEquals(1.5, across.scaleFor(1920, 1200, 0));
        assertEquals(0.75, across.scaleFor(1024, 600, 96));
    }

    @Test
    void messagesWaitTheirTurnAndStayUntilAnswered() {
        run(() -> {
            Shell shell = window(Display.DAY).shell();
            shell.show(new Plain("home"));
            shell.tell(new Notice(
                    "First",
                    "It stays.",
                    List.of(
                            new Notice.NoticeKey("No", () -> happened.add("no")),
                            new Notice.NoticeKey("Yes", () -> happened.add("yes")))));
            shell.trouble();
            shell.show(new Plain("run"));
            assertEquals(List.of("No", "Yes"), keys(shell.scene()));
            key(shell.scene(), 1).fire();
            assertTrue(happened.contains("yes"));
            assertEquals(List.of("OK"), keys(shell.scene()));
            key(shell.scene(), 0).fire();
            assertEquals(List.of(), keys(shell.scene()));
        });
    }

    @Test
    void aMessageTakesNoPressInItsFirstMoment() {
        run(() -> {
            Shell shell = window(Display.DAY).shell();
            shell.show(new Plain("home"));
            shell.trouble();
            assertTrue(key(shell.scene(), 0).isMouseTransparent());
        });
    }

    @Test
    void aFigureEndedByTabOrALineFeedIsNotGluedToTheNext() {
        for (String between : List.of("\t", "\n")) {
            KeypadViewModel pad = new KeypadViewModel(happened::add);
            run(() -> {
                Shell shell = window(Display.DAY).shell();
                shell.show(new Plain("figures") {
                    @Override
                    public Typing typing() {
                        return pad;
                    }
                });
                type(shell.scene(), "4");
                Event.fireEvent(
                        shell.scene().getRoot(),
                        new KeyEvent(KeyEvent.KEY_TYPED, between, "", KeyCode.UNDEFINED, false, false, false, false));
                type(shell.scene(), "6");
            });
            assertEquals(KeypadViewModel.PadState.NO_FIGURE, pad.stateProperty().get());
        }
    }

    @Test
    void theLookOfTheSceneChangesWithTheSettings() {
        run(() -> {
            Window window = window(Display.DAY);
            Node root = window.scene().getRoot();
            PseudoClass night = PseudoClass.getPseudoClass("night");
            assertFalse(root.getPseudoClassStates().contains(night));
            window.look().nightProperty().set(true);
            assertTrue(root.getPseudoClassStates().contains(night));
        });
    }

    private static List<String> keys(Scene scene) {
        settle(scene);
        return scene.getRoot().lookupAll(".key").stream()
                .map(node -> ((Key) node).getText())
                .toList();
    }

    private static Key key(Scene scene, int index) {
        settle(scene);
        return (Key) List.copyOf(scene.getRoot().lookupAll(".key")).get(index);
    }
}
