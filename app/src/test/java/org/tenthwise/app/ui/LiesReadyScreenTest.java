package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Scene;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.run.RunScreen;
import org.tenthwise.app.ui.run.RunViewModel;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/** A gauge is set as before by one key that says size and dial; what the gauge itself sends sets nothing. */
class LiesReadyScreenTest extends ScreenTest {

    private static final int BORE = 13;
    private static final int THREAD = 21;

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private RunSession atTheNext(int step) {
        RunSession before = workshop.atTheBore("013", "0.012", "0.012", "0.011", "0.011");
        Workshop.toTheThread(before);
        Workshop.must(() -> before.enter("3.620"));
        RunSession next = workshop.atTheBore("014", "0.012", "0.012", "0.011", "0.011");
        if (step == THREAD) {
            return Workshop.toTheThread(next);
        }
        RunSession third = workshop.setUp("015");
        third.goTo(step);
        return third;
    }

    private Scene opened(RunSession session) {
        Window window = window(Display.DAY);
        window.shell().show(screen(window, session));
        settle(window.scene());
        return window.scene();
    }

    private RunScreen screen(Window window, RunSession session) {
        RunViewModel model = new RunViewModel(session, session.state(), workshop.tasks, workshop, words, new Watch());
        return new RunScreen(model, window.pictures(), words);
    }

    @Test
    void oneKeyTakesRingAndDial() {
        RunSession session = atTheNext(BORE);
        run(() -> {
            Scene scene = opened(session);
            type(scene, "30.011\n");
            assertTrue(session.state().asked().asLyingReady().isPresent());
            assertEquals(1, workshop.told.size(), workshop.told::toString);
            press(scene, "reply-0");
            assertTrue(Stream.<Node>iterate(scene.lookup("#digit-0"), Objects::nonNull, Node::getParent)
                    .anyMatch(Node::isMouseTransparent));
        });
        Setting setting = session.state().setting().orElseThrow();
        assertEquals(Optional.of(new Written("30.000", Unit.MILLIMETRE)), setting.certified());
        assertEquals(Optional.of(new Written("0", Unit.MILLIMETRE)), setting.zero());
    }

    @Test
    void otherKeysLeadToTheSizeAndToTheDial() {
        RunSession session = atTheNext(BORE);
        run(() -> {
            Scene scene = opened(session);
            press(scene, "reply-2");
            assertTrue(session.state().asked() instanceof Prompt.Zero);
        });
        RunSession other = workshop.setUp("016");
        other.goTo(BORE);
        run(() -> press(opened(other), "reply-1"));
        assertTrue(other.state().asked() instanceof Prompt.Certified);
    }

    @Test
    void aRingThatLiesReadyHoldsEverywhere() {
        RunSession bore = atTheNext(BORE);
        seen("run", "ring-ready-asked", window -> screen(window, bore));
    }

    @Test
    void wiresThatLieReadyHoldEverywhere() {
        RunSession thread = atTheNext(THREAD);
        assertTrue(thread.state().asked().asLyingReady().isPresent());
        seen("run", "wires-ready-asked", window -> screen(window, thread));
    }
}
