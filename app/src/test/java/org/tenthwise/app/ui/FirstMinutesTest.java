package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.ShopBook;
import org.tenthwise.model.run.SignedAs;

/** A client that is opened the first time, by its keys. */
class FirstMinutesTest extends ScreenTest {

    private static final String GUIDE = "First minutes";
    private static final String HOME = "Tenthwise";

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private final ShopBook book = ShopBook.inMemory(ShopBook.Shop.NEW);

    private Window opened() {
        workshop.keepIn(book);
        Window window = window(Display.DAY);
        new Screens(workshop.fittings(window)).open();
        return window;
    }

    private static String title(Window window) {
        return window.shell().inHand().orElseThrow().title();
    }

    @Test
    void aNewShopIsShownThePagesUntilItLeavesThem() {
        run(() -> {
            assertEquals(GUIDE, title(opened()));
            Window again = opened();
            assertEquals(GUIDE, title(again), "the client was closed before they were left");
            press(again.scene(), "leave");
            assertEquals(HOME, title(again));
            assertEquals(HOME, title(opened()));
        });
    }

    @Test
    void theKeyboardLeavesThemToo() {
        run(() -> {
            Window window = opened();
            strike(window.scene(), KeyCode.ESCAPE);
            assertEquals(HOME, title(window));
            assertEquals(HOME, title(opened()));
        });
    }

    @Test
    void aStoreWithARunIsNoNewShop() {
        workshop.setUp("014");
        run(() -> assertEquals(HOME, title(opened())));
    }

    /** No row before and none after: what is said where there is none still changes. */
    @Test
    void aShopIsNoNewOneAnyMoreOnceItsOnlyRunIsClosed() {
        run(() -> {
            Window window = opened();
            press(window.scene(), "leave");
            settle(window.scene());
            assertNotNull(window.scene().lookup("#guide"));
            Workshop.must(() -> workshop.setUp("014").close("Inspector 1", SignedAs.NOT_ACCEPTED));
            press(window.scene(), "records");
            press(window.scene(), "back");
            settle(window.scene());
            assertEquals(HOME, title(window));
            assertNull(window.scene().lookup("#guide"));
        });
    }

    @Test
    void everyPageIsReachedItsKeysWorkAndTheNamesAreOfferedAtTheStart() {
        run(() -> {
            Window window = opened();
            press(window.scene(), "guide-begin");
            assertEquals("Start a run", title(window));
            press(window.scene(), "back");
            press(window.scene(), "guide-next");
            press(window.scene(), "about");
            assertEquals("About Tenthwise", title(window));
            press(window.scene(), "back");
            press(window.scene(), "guide-next");
            press(window.scene(), "cautions");
            press(window.scene(), "back");
            press(window.scene(), "guide-next");
            for (String kind : List.of("machine", "person")) {
                press(window.scene(), "name-" + kind);
                settle(window.scene());
                type(window.scene(), "New " + kind);
                press(window.scene(), "commit");
                assertEquals(GUIDE, title(window));
            }
            press(window.scene(), "guide-next");
            assertEquals(HOME, title(window));
            press(window.scene(), "begin-LG-2207-C");
            settle(window.scene());
            press(window.scene(), "field-machine");
            press(window.scene(), "choice-0");
            press(window.scene(), "field-person");
            press(window.scene(), "choice-0");
            settle(window.scene());
            assertTrue(
                    window.scene().lookup("#field-person").getAccessibleText().contains("New person"));
            assertTrue(
                    window.scene().lookup("#field-machine").getAccessibleText().contains("New machine"));
        });
    }

    @Test
    void theyAreFoundAgain() {
        run(() -> {
            Window window = opened();
            press(window.scene(), "leave");
            press(window.scene(), "guide");
            assertEquals(GUIDE, title(window));
            press(window.scene(), "back");
            press(window.scene(), "about");
            press(window.scene(), "guide");
            assertEquals(GUIDE, title(window));
        });
    }
}
