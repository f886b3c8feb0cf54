package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.text.MadeUpLanguage;
import org.tenthwise.app.ui.sign.SignViewModel;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** Another language in the middle of a run: the run goes on, and what it comes to is the same. */
class LanguageSwitchTest extends ScreenTest {

    private static final Words OTHER = MadeUpLanguage.words();

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private final List<String> handedOutIn = new ArrayList<>();

    private Window opened() {
        Window window = window(Display.DAY);
        new Screens(workshop.fittings(
                        window,
                        Catalogue::ofDemoParts,
                        spoken -> {
                            handedOutIn.add(spoken.words().say("language.name"));
                            return Workshop.handout();
                        },
                        Workshop.CLOCK))
                .home();
        return window;
    }

    private static String title(Window window) {
        return window.shell().inHand().orElseThrow().title();
    }

    private List<Line> lines(RunSession session) {
        return workshop.shop.sheet(session.id()).lines();
    }

    private List<String> findings(RunSession session) {
        return lines(session).stream()
                .map(line -> line.finding().verdict() + " "
                        + line.finding().measured().stream()
                                .map(read -> read.value() + " " + read.forTemperature())
                                .toList())
                .toList();
    }

    @Test
    void theScreensAreBuiltAnewAndTheSettingsAreInHand() {
        run(() -> {
            Window window = opened();
            press(window.scene(), "settings");
            press(window.scene(), "choice-1");
            assertEquals(OTHER.say("settings.title"), title(window));
            press(window.scene(), "back");
            assertEquals(OTHER.say("home.title"), title(window));
            press(window.scene(), "settings");
            press(window.scene(), "choice-0");
            assertEquals("Settings", title(window));
        });
    }

    @Test
    void aRunGoesOnWhereItWasAndComesToTheSame() {
        RunSession english = workshop.atTheBore("012", "-0.013", "-0.011", "-0.012", "-0.010");
        RunSession session = workshop.atTheBore("014", "-0.013", "-0.011");
        Workshop.must(() -> session.note("Bar sings"));
        run(() -> {
            Window window = opened();
            press(window.scene(), "settings");
            press(window.scene(), "choice-1");
            press(window.scene(), "back");
            press(window.scene(), "go-" + session.id());
            type(window.scene(), "-0.012\n");
            type(window.scene(), "-0.010\n");
            press(window.scene(), "record");
            press(window.scene(), "sign");
            settle(window.scene());
            type(window.scene(), "Inspector 1\n");
            for (int choice : new int[] {
                SignViewModel.MEANINGS.indexOf(SignedAs.NOT_ACCEPTED), SignViewModel.End.values().length - 1
            }) {
                press(window.scene(), "choice-" + choice);
                press(window.scene(), "commit");
            }
        });
        assertEquals(findings(english), findings(session));
        assertEquals(Set.of(OTHER.say("language.name")), Set.copyOf(handedOutIn));
        assertEquals(
                List.of(SignedAs.NOT_ACCEPTED),
                workshop.shop.sheet(session.id()).run().entries().stream()
                        .flatMap(entry -> entry.event().as(Event.Signed.class).stream())
                        .map(Event.Signed::meaning)
                        .toList());
        assertEquals(
                List.of("Bar sings"),
                workshop.shop.sheet(session.id()).run().entries().stream()
                        .flatMap(entry -> entry.event().as(StepEvent.NoteMade.class).stream())
                        .map(StepEvent.NoteMade::words)
                        .toList());
        assertTrue(workshop.isWhole());
    }
}
