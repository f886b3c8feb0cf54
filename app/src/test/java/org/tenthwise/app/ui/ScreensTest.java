package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.device.AskedViewer;
import org.tenthwise.app.export.CsvRecord;
import org.tenthwise.app.handout.Handout;
import org.tenthwise.app.history.MatterKind;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.store.StationElsewhere;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/** The whole client by its keys: what lies on what. */
class ScreensTest extends ScreenTest {

    @TempDir
    private Path folder;

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private Window opened() {
        Window window = window(Display.DAY);
        new Screens(workshop.fittings(
                        window,
                        Catalogue::ofDemoParts,
                        spoken -> new Handout(
                                List.of(new CsvRecord()),
                                (run, as) -> folder.resolve(run),
                                scope -> Optional.empty(),
                                run -> List.of(),
                                AskedViewer.none()),
                        Workshop.CLOCK))
                .home();
        return window;
    }

    private static String title(Window window) {
        return window.shell().inHand().orElseThrow().title();
    }

    @Test
    void atADeskItOpensOnTheRecordsAndWithARunOfItsOwnAtHome() throws Exception {
        try (StationElsewhere lathe = new StationElsewhere(folder.resolve("lathe.db"), "aa11bb22")) {
            lathe.make("LG-2207-C-013");
            workshop.ledger().takeIn(lathe.bundle("LG-2207-C-013"), StationElsewhere.AT, "Inspector 1");
        }
        run(() -> assertEquals("Records", title(begun())));
        workshop.setUp("014");
        run(() -> assertEquals("Tenthwise", title(begun())));
    }

    private Window begun() {
        Window window = window(Display.DAY);
        new Screens(workshop.fittings(window)).open();
        return window;
    }

    @Test
    void fromOpeningToTheRunIsOnePress() {
        RunSession session = workshop.setUp("014");
        run(() -> {
            Window window = opened();
            press(window.scene(), "go-" + session.id());
            assertEquals("LG-2207 rev C, serial 014", title(window));
        });
    }

    @Test
    void aSpaceInWordsIsASpaceAndPressesNoKey() {
        run(() -> {
            Window window = opened();
            press(window.scene(), "begin-LG-2207-C");
            settle(window.scene());
            window.scene().lookup("#back").requestFocus();
            type(window.scene(), "014\n\nLathe");
            strike(window.scene(), KeyCode.SPACE);
            type(window.scene(), " 4\n");
            assertEquals("Start a run", title(window));
        });
    }

    @Test
    void aRunIsBegunByTypingAndOneKeyAndBackFromItLeadsHome() {
        run(() -> {
            Window window = opened();
            press(window.scene(), "begin-LG-2207-C");
            assertEquals("Start a run", title(window));
            settle(window.scene());
            type(window.scene(), "014\nAB-7731\nLathe 4\nSetter 2\n");
            assertEquals("Start a run", title(window), "a gauge that types ends its figures by the same key");
            press(window.scene(), "commit");
            assertEquals("LG-2207 rev C, serial 014", title(window));
            press(window.scene(), "back");
            assertEquals("Tenthwise", title(window));
        });
    }

    @Test
    void thePublishedCasesAreReachedFromAbout() {
        run(() -> {
            Window window = opened();
            press(window.scene(), "about");
            press(window.scene(), "reference");
            assertEquals("Published cases", title(window));
            press(window.scene(), "back");
            assertEquals("About Tenthwise", title(window));
        });
    }

    @Test
    void theRunIsLookedAtBeforeAnOpenMatterIsSignedForAndBackLeadsToTheForm() {
        RunSession session = workshop.setUp("014");
        Workshop.must(() -> session.close("Setter 1", SignedAs.MACHINED_AND_MEASURED));
        run(() -> {
            Window window = window(Display.DAY);
            Screens screens = new Screens(workshop.fittings(window));
            screens.open();
            screens.settleMatter(workshop.matterBook().open().stream()
                    .filter(matter -> matter.matter().kind() == MatterKind.SIGNATURE_MISSING)
                    .findFirst()
                    .orElseThrow());
            assertEquals("What becomes of it", title(window));
            press(window.scene(), "look");
            assertTrue(title(window).startsWith("Record"), title(window));
            press(window.scene(), "back");
            assertEquals("What becomes of it", title(window));
        });
    }

    @Test
    void aNoteLeadsBackToTheRun() {
        RunSession session = workshop.setUp("014");
        run(() -> {
            Window window = opened();
            press(window.scene(), "go-" + session.id());
            press(window.scene(), "note");
            settle(window.scene());
            type(window.scene(), "Bar sings");
            press(window.scene(), "commit");
            assertEquals("LG-2207 rev C, serial 014", title(window));
            assertEquals(
                    List.of("Bar sings"),
                    workshop.shop.sheet(session.id()).run().entries().stream()
                            .map(entry -> entry.event())
                            .filter(StepEvent.NoteMade.class::isInstance)
                            .map(event -> ((StepEvent.NoteMade) event).words())
                            .toList());
        });
    }

    @Test
    void anUnfinishedRunIsClosedFromItsRecordAfterTheWarning() {
        RunSession session = workshop.setUp("014");
        run(() -> {
            Window window = opened();
            press(window.scene(), "go-" + session.id());
            press(window.scene(), "record");
            press(window.scene(), "sign");
            settle(window.scene());
            type(window.scene(), "Inspector 1\n");
            press(window.scene(), "choice-3");
            press(window.scene(), "commit");
            press(window.scene(), "choice-0");
            press(window.scene(), "commit");
            assertEquals("Sign", title(window));
            assertTrue(workshop.shop.sheet(session.id()).run().closed().isEmpty());
        });
    }

    @Test
    void aBenchSumIsDoneByKeysBesideTheRunAndNotedInIt() {
        RunSession session = workshop.setUp("014");
        run(() -> {
            Window window = opened();
            press(window.scene(), "go-" + session.id());
            press(window.scene(), "more");
            press(window.scene(), "bench");
            assertEquals("Bench sums", title(window));
            press(window.scene(), "bench-temperature");
            for (String figure : List.of("30.013", "23.7", "11.7", "20", "11.5")) {
                for (char key : figure.toCharArray()) {
                    press(window.scene(), key == '.' ? "point" : "digit-" + key);
                }
                press(window.scene(), "next");
            }
            press(window.scene(), "note-sum");
            press(window.scene(), "back");
            press(window.scene(), "back");
            press(window.scene(), "back");
            assertEquals("LG-2207 rev C, serial 014", title(window));
            List<String> notes = workshop.shop.sheet(session.id()).run().entries().stream()
                    .map(entry -> entry.event())
                    .filter(StepEvent.NoteMade.class::isInstance)
                    .map(event -> ((StepEvent.NoteMade) event).words())
                    .toList();
            assertEquals(1, notes.size());
            assertTrue(
                    notes.get(0).contains("reading 30.013 mm") && notes.get(0).contains("Source: ISO 1"),
                    notes::toString);
        });
    }

    @Test
    void theBenchIsOpenWithoutARun() {
        run(() -> {
            Window window = opened();
            press(window.scene(), "bench");
            assertEquals("Bench sums", title(window));
            press(window.scene(), "bench-zone");
            press(window.scene(), "back");
            press(window.scene(), "back");
            assertEquals("Tenthwise", title(window));
        });
    }

    @Test
    void whatAGaugeTypesWhileTheStoryIsReadIsToldAndTakenNowhere() {
        RunSession session = workshop.atTheBore("014");
        long before = taken(session);
        run(() -> {
            Window window = opened();
            press(window.scene(), "go-" + session.id());
            press(window.scene(), "more");
            type(window.scene(), "0.013\n");
            settle(window.scene());
            assertTrue(
                    window.scene().getRoot().lookupAll(".label").stream()
                            .map(node -> ((Label) node).getText())
                            .anyMatch(text -> text.startsWith("0.013 was typed where no reading is taken.")),
                    "the figure is told");
            ((Button) window.scene().lookup("#message").lookup(".key")).fire();
            press(window.scene(), "back");
            assertEquals("LG-2207 rev C, serial 014", title(window));
            settle(window.scene());
            assertEquals("", ((Label) window.scene().lookup("#reading")).getText());
        });
        assertEquals(before, taken(session));
    }

    private long taken(RunSession session) {
        return workshop.shop.sheet(session.id()).run().entries().size();
    }

    @Test
    void theStoryIsOpenedAndLeftByTheKeyboard() {
        RunSession session = workshop.atTheBore("014");
        run(() -> {
            Window window = opened();
            press(window.scene(), "go-" + session.id());
            settle(window.scene());
            window.scene().lookup("#more").requestFocus();
            pressFocused(window.scene());
            assertEquals("More", title(window));
            settle(window.scene());
            window.scene().lookup("#later").requestFocus();
            strike(window.scene(), KeyCode.ESCAPE);
            assertEquals("LG-2207 rev C, serial 014", title(window));
        });
    }
}
