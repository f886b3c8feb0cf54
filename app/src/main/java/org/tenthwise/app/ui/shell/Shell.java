package org.tenthwise.app.ui.shell;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.theme.Theme;

/** The window's one scene. Screens lie on one another; the topmost is in hand. Screen thread only. */
public final class Shell {

    private final Words words;
    private final StackPane desk = new StackPane();
    private final ScaledPane pane = new ScaledPane(desk);
    private final Scene scene;
    private final Deque<Screen> screens = new ArrayDeque<>();
    private final Deque<Message> waiting = new ArrayDeque<>();
    private Optional<MessageSheet> told = Optional.empty();
    private boolean focusMoved;
    /** What was typed while a message stood. */
    private String passedBy = "";

    /** Nothing is typed into a message; what a gauge sends meanwhile is told of and not lost in silence. */
    private final Typing whileTold = new Typing() {
        @Override
        public void character(String character) {
            passedBy += character;
        }

        @Override
        public void takeBack() {
            passedBy = "";
        }

        @Override
        public void enter() {
            if (!passedBy.isBlank()) {
                tell(Message.plain(words.say("shell.passed-by"), words.say("shell.passed-by.next", passedBy.strip()),
                        words.say("shell.understood")));
            }
            passedBy = "";
        }
    };

    /** @param width width of the scene to begin with; the display has the last word */
    public Shell(Theme theme, Words words, double width, double height) {
        this.words = words;
        scene = new Scene(pane, width, height);
        theme.dress(scene);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        scene.addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        pane.arrangementProperty().subscribe(
                arrangement -> screens.forEach(screen -> screen.arrange(arrangement)));
    }

    public Scene scene() {
        return scene;
    }

    /** The screen in hand; absent before the first is shown. */
    public Optional<Screen> inHand() {
        return Optional.ofNullable(screens.peek());
    }

    /** Lays {@code screen} over the one in hand; back leads to that one again. */
    public void show(Screen screen) {
        screens.push(screen);
        screen.arrange(pane.arrangementProperty().get());
        take();
    }

    /** Puts {@code screen} in the place of the one in hand. */
    public void replace(Screen screen) {
        if (!screens.isEmpty()) {
            screens.pop().onGone();
        }
        show(screen);
    }

    /** Takes the screen in hand away and shows the one under it; the undermost stays. */
    public void back() {
        if (screens.size() > 1) {
            screens.pop().onGone();
            take();
        }
    }

    /** Goes back until {@code screen} is the one in hand. */
    public void backTo(Screen screen) {
        while (screens.size() > 1 && screens.peek() != screen) {
            screens.pop().onGone();
        }
        take();
    }

    /** Tells a message now, or after those still to be answered. */
    public void tell(Message message) {
        waiting.add(message);
        if (told.isEmpty()) {
            tellNext();
        }
    }

    /** Says in plain words that something went wrong that nobody thought of. */
    public void trouble() {
        tell(Message.plain(words.say("shell.trouble"), words.say("shell.trouble.next"), words.say("shell.understood")));
    }

    private void take() {
        focusMoved = false;
        Screen screen = screens.getFirst();
        screen.root().setAccessibleText(screen.title());
        desk.getChildren().setAll(screen.root());
        told.ifPresent(desk.getChildren()::add);
        screen.onShown();
    }

    private void tellNext() {
        Message message = waiting.peek();
        if (message == null) {
            return;
        }
        MessageSheet sheet = new MessageSheet(message, this::answered);
        told = Optional.of(sheet);
        desk.getChildren().add(sheet);
        sheet.shown();
    }

    private void answered(Message.Reply reply) {
        told.ifPresent(desk.getChildren()::remove);
        told = Optional.empty();
        waiting.remove();
        reply.then().run();
        if (told.isEmpty()) {
            tellNext();
        }
    }

    private Typing typing() {
        return told.isPresent() ? whileTold : inHand().map(Screen::typing).orElse(Typing.NONE);
    }

    /**
     * Enter and backspace go to what is typed; escape goes back. Tab and arrows are the controls' own, and so is a space
     * but where words are being typed.
     */
    private void pressed(KeyEvent event) {
        KeyCode code = event.getCode();
        if (code == KeyCode.TAB || code.isArrowKey()) {
            focusMoved = true;
        }
        if (code == KeyCode.SPACE && spaceIsTyped()) {
            event.consume();
            return;
        }
        if (code == KeyCode.ENTER) {
            typing().enter();
        } else if (code == KeyCode.BACK_SPACE) {
            typing().takeBack();
        } else if (code == KeyCode.ESCAPE && told.isEmpty()) {
            back();
        } else {
            return;
        }
        event.consume();
    }

    /** In words a space is a space, until the focus is moved to a key: then it presses that key. */
    private boolean spaceIsTyped() {
        return typing().takesWords() && !focusMoved;
    }

    /** Elsewhere a space presses the key that has the focus, and is typed only where none has. */
    private void typed(KeyEvent event) {
        String character = event.getCharacter();
        boolean shortcut = event.isControlDown() || event.isAltDown() || event.isMetaDown();
        boolean pressing = character.equals(" ") && scene.getFocusOwner() instanceof ButtonBase && !spaceIsTyped();
        if (shortcut || pressing || character.isEmpty() || Character.isISOControl(character.charAt(0))) {
            return;
        }
        focusMoved = false;
        typing().character(character);
        event.consume();
    }
}
