package org.tenthwise.app.ui.shell;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.theme.Theme;
import org.tenthwise.model.words.Words;

/** The window's one scene. Screens lie on one another; the topmost is in hand. Screen thread only. */
public final class Shell {

    private static final List<String> BETWEEN = List.of("\t", "\n");

    private final StackPane desk = new StackPane();
    private final ScaledPane pane;
    private final Scene scene;
    private final Deque<Screen> screens = new ArrayDeque<>();
    private final Deque<Notice> waiting = new ArrayDeque<>();
    private Words words;
    private Optional<NoticeSheet> told = Optional.empty();
    /** Nothing is typed into a message; what a gauge sends meanwhile is told of after it. */
    private final PassedBy whileTold = new PassedBy(() -> {});
    /** Nor into a screen that takes no typing; that is told of at once. */
    private final PassedBy unheard = new PassedBy(this::tellUnheard);

    /**
     * @param width width of the scene to begin with; the display has the last word
     * @param dotsPerInch of the display; 0 where that is not known
     */
    public Shell(Theme theme, Words words, double width, double height, double dotsPerInch) {
        this.words = words;
        pane = new ScaledPane(desk, dotsPerInch);
        scene = new Scene(pane, width, height);
        theme.dress(scene);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        scene.addEventFilter(KeyEvent.KEY_RELEASED, this::released);
        scene.addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        pane.arrangementProperty().subscribe(arrangement -> screens.forEach(screen -> screen.arrange(arrangement)));
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
            screens.pop().letGo();
        }
        show(screen);
    }

    /** Lets go of every screen and begins with another, in other words: a message told before stays as it was said. */
    public void beginAnew(Words otherWords, Screen screen) {
        words = otherWords;
        screens.forEach(Screen::letGo);
        screens.clear();
        show(screen);
    }

    /** Takes the screen in hand away and shows the one under it; the undermost stays. */
    public void back() {
        if (screens.size() > 1) {
            screens.pop().letGo();
            take();
        }
    }

    /** Goes back until {@code screen} is the one in hand. */
    public void backTo(Screen screen) {
        while (screens.size() > 1 && screens.peek() != screen) {
            screens.pop().letGo();
        }
        take();
    }

    /** Goes back until {@code under} would be the one in hand, and lays {@code screen} on it before it is shown. */
    public void showOver(Screen under, Screen screen) {
        while (screens.size() > 1 && screens.peek() != under) {
            screens.pop().letGo();
        }
        show(screen);
    }

    /** Tells a message now, or after those still to be answered. */
    public void tell(Notice message) {
        waiting.add(message);
        if (told.isEmpty()) {
            tellNext();
        }
    }

    /** Says in plain words that something went wrong that nobody thought of. */
    public void trouble() {
        tell(Notice.plain(words.say("shell.trouble"), words.say("shell.trouble.next"), words.say("shell.understood")));
    }

    private void take() {
        Screen screen = screens.getFirst();
        screen.setAccessibleText(screen.title());
        desk.getChildren().setAll(screen);
        told.ifPresent(desk.getChildren()::add);
        screen.onShown();
    }

    private void tellNext() {
        Notice message = waiting.peek();
        if (message == null) {
            return;
        }
        whileTold.begin(inHand().map(Screen::typing).map(Typing::interrupted).orElse(""));
        NoticeSheet sheet = new NoticeSheet(message, this::answered);
        told = Optional.of(sheet);
        desk.getChildren().add(sheet);
        sheet.shown();
    }

    private void answered(Notice.NoticeKey reply) {
        told.ifPresent(desk.getChildren()::remove);
        told = Optional.empty();
        waiting.remove();
        List<String> passedBy = whileTold.takeOut();
        reply.then().run();
        if (!passedBy.isEmpty()) {
            tell(notTaken("shell.passed-by.next", passedBy));
        }
        if (told.isEmpty()) {
            tellNext();
        }
        if (told.isEmpty()) {
            whileTold.half().codePoints().mapToObj(Character::toString).forEach(half -> typing().character(half));
        }
    }

    private void tellUnheard() {
        tell(notTaken("shell.unheard", unheard.takeOut()));
    }

    private Notice notTaken(String why, List<String> figures) {
        return Notice.plain(
                words.say("shell.passed-by"), words.say(why, figures, figures.size()), words.say("shell.understood"));
    }

    private Typing typing() {
        Typing wanted = inHand().map(Screen::typing).orElse(Typing.NONE);
        return told.isPresent() ? whileTold : wanted == Typing.NONE ? unheard : wanted;
    }

    /**
     * What a gauge can send is typed and nothing else: figures, letters, blanks and Enter press no key of the screen. A
     * key is pressed from the keyboard by Ctrl and Enter, once Tab or an arrow has moved the focus to it; Escape goes
     * back. A gauge may end its figure by Tab or a line feed: that counts as a blank, so that the next figure is not
     * glued to it.
     */
    private void pressed(KeyEvent event) {
        KeyCode code = event.getCode();
        if (code == KeyCode.ENTER && event.isControlDown()) {
            pressFocused();
        } else if (code == KeyCode.ENTER) {
            typing().enter();
        } else if (code == KeyCode.BACK_SPACE) {
            typing().takeBack();
        } else if (code == KeyCode.ESCAPE && told.isEmpty()) {
            back();
        } else if (code != KeyCode.SPACE) {
            return;
        }
        event.consume();
    }

    private void pressFocused() {
        if (scene.getFocusOwner() instanceof ButtonBase key
                && !key.isDisabled()
                && !(told.isPresent() && key.isMouseTransparent())) {
            key.fire();
        }
    }

    private void released(KeyEvent event) {
        if (event.getCode() == KeyCode.SPACE || event.getCode() == KeyCode.ENTER) {
            event.consume();
        }
    }

    private void typed(KeyEvent event) {
        String character = BETWEEN.contains(event.getCharacter()) ? " " : event.getCharacter();
        boolean shortcut = event.isControlDown() || event.isAltDown() || event.isMetaDown();
        if (shortcut || character.isEmpty() || Character.isISOControl(character.charAt(0))) {
            return;
        }
        typing().character(character);
        event.consume();
    }
}
