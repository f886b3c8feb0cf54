package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import javafx.scene.Scene;
import javafx.scene.control.Label;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.ui.ScreenTest;
import org.tenthwise.app.ui.Workshop;

/** The readout with something offered in front, as it is seen and as it is spoken. */
class OfferScreenTest extends RunAtHand {

    @BeforeEach
    void atTheOutside() throws Exception {
        run.setUpAndGoTo(ARun.OUTSIDE);
    }

    private static void presses(Scene scene, String... keys) {
        for (String key : keys) {
            ScreenTest.press(scene, key);
        }
    }

    /** On each display anew: one reading typed, none standing before it. */
    private RunScreen unread(Window window) {
        run.session.state().pass().standing().values().stream()
                .map(reading -> reading.entry().seq())
                .forEach(reading -> Workshop.must(() -> run.session.strikeOut(reading, "slip")));
        return screen(window);
    }

    private static void readsOnce(Scene scene, String... keys) {
        type(scene, "47.991\n");
        presses(scene, keys);
    }

    @Test
    void anOfferHoldsEverywhere() {
        seen("run", "offered", this::unread, window -> readsOnce(window.scene()));
    }

    @Test
    void aFigureBehindAnOfferHoldsEverywhere() {
        seen(
                "run",
                "offered-typed",
                this::unread,
                window -> readsOnce(window.scene(), "digit-9", "digit-9", "digit-0"));
    }

    @Test
    void aFigureThatCouldBeAnotherHoldsEverywhere() {
        seen(
                "run",
                "offered-refused",
                this::unread,
                window -> readsOnce(window.scene(), "digit-4", "digit-7", "digit-9", "digit-9", "digit-1", "commit"));
    }

    @Test
    void whatIsOfferedStandsPalerBeforeWhatIsTyped() {
        run(() -> {
            Scene scene = opened().scene();
            presses(scene, "digit-4", "digit-7", "digit-9", "digit-9", "digit-1", "commit");
            assertEquals("47.", text(scene, "reading-offered"));
            assertEquals("", text(scene, "reading"));
            assertEquals(words.say("keypad.offered", "47.", ""), spoken(scene));
            presses(scene, "digit-9", "digit-9");
            assertEquals("47.", text(scene, "reading-offered"));
            assertEquals("99", text(scene, "reading"));
            assertEquals(words.say("keypad.offered", "47.", "99"), spoken(scene));
            presses(scene, "sign");
            assertEquals("\u2212", text(scene, "reading-sign"));
            presses(scene, "sign", "point");
            assertEquals("", text(scene, "reading-offered"));
            assertEquals("99.", text(scene, "reading"));
            assertEquals("99.", spoken(scene));
        });
    }

    private static String spoken(Scene scene) {
        return ((Label) scene.lookup("#reading")).getAccessibleText();
    }
}
