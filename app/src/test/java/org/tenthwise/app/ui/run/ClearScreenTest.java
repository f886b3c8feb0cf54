package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.ui.Display;

/** A whole figure taken away by one key. */
class ClearScreenTest extends RunAtHand {

    private static final double DECIDING = 96;
    private static final double LEAST = 76;
    private static final Set<String> SMALL = Set.of("take-back", "clear");

    @BeforeEach
    void atTheOutside() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
    }

    @Test
    void aFigureThatStandsHoldsEverywhere() {
        seen("run", "figure-stands", this::screen, window -> type(window.scene(), "47.991"));
    }

    @Test
    void aFigureRefusedHoldsEverywhere() {
        seen("run", "figure-refused", this::screen, window -> type(window.scene(), "47991\n"));
    }

    /** A finger that goes to it by habit presses nothing else where no figure stands. */
    @Test
    void theKeyHasItsPlaceAlwaysAndNoOtherMoves() {
        for (Display display : Display.ALL) {
            run(() -> {
                Window window = window(display);
                window.shell().show(screen(window));
                Scene scene = window.scene();
                settle(scene);
                assertTrue(scene.lookup("#clear").isDisabled());
                Map<String, Bounds> before = places(scene);
                press(scene, "digit-4");
                settle(scene);
                assertFalse(scene.lookup("#clear").isDisabled());
                assertEquals(before, places(scene), display.name());
                before.forEach((key, place) -> {
                    double least = SMALL.contains(key) ? LEAST : DECIDING;
                    Bounds bounds = scene.lookup("#" + key).getLayoutBounds();
                    assertTrue(shown(scene.lookup("#" + key)), key);
                    assertTrue(bounds.getWidth() >= least && bounds.getHeight() >= DECIDING, key + bounds);
                    before.forEach((other, there) -> assertTrue(other.equals(key) || !there.intersects(place), key));
                });
                press(scene, "clear");
                settle(scene);
                assertTrue(scene.lookup("#clear").isDisabled());
                assertEquals(before, places(scene), display.name());
                assertEquals("", text(scene, "reading"));
            });
        }
    }

    private static Map<String, Bounds> places(Scene scene) {
        return Stream.concat(
                        IntStream.range(0, 10).mapToObj(digit -> "digit-" + digit),
                        Stream.of("sign", "point", "take-back", "clear", "commit"))
                .collect(Collectors.toMap(Function.identity(), key -> place(scene.lookup("#" + key))));
    }

    private static Bounds place(Node key) {
        return key.localToScene(key.getLayoutBounds());
    }

    @Test
    void whatIsTypedAfterItIsAFigureOfItsOwn() {
        run(() -> {
            Scene scene = opened().scene();
            for (String key : List.of("digit-4", "digit-8", "point", "digit-9", "clear", "digit-4", "digit-7")) {
                press(scene, key);
            }
            assertEquals("47", text(scene, "reading"));
        });
    }

    /** The rest of it would be read as a size. */
    @Test
    void aFigureThatAGaugeIsTypingIsNotTornApart() {
        clock.hold();
        RunViewModel model = atOnce();
        sends(model, "47.9");
        clock.pass(100);
        model.clear();
        sends(model, "91\n");
        assertEquals(List.of("47.991"), readings());
    }

    @Test
    void aSecondTapTakesNothing() throws Exception {
        run.setUpAndGoTo(ARun.BORE).session.gauge().tellSense(true);
        run.enter("30.001");
        clock.hold();
        RunViewModel model = atOnce();
        clock.pass(400);
        model.touched("3");
        clock.pass(1000);
        model.clear();
        clock.pass(300);
        model.press();
        assertTrue(run.session.state().asked().takesFigure());
        assertEquals("Zero", run.session.state().asked().getClass().getSimpleName());
    }

    @Test
    void aFigureRefusedGoesWithWhatWasSaidAgainstIt() {
        RunViewModel model = atOnce();
        sends(model, "47991\n");
        assertTrue(model.keepableProperty().get().isPresent());
        model.clear();
        assertTrue(model.keepableProperty().get().isEmpty());
        sends(model, "47.991\n");
        assertEquals(List.of("47.991"), readings());
        assertEquals(List.of(), ways.told);
    }
}
