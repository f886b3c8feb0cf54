package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.app.ui.Display;
import org.tenthwise.app.ui.ScreenTest;
import org.tenthwise.app.ui.Watch;
import org.tenthwise.app.ui.Ways;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.checklists.rules.SampleReader;
import org.tenthwise.checklists.rules.SampleReading;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * The demo's screw carrier from its first check to its last on the run screen: by its keys, by keyboard, by a gauge
 * that types.
 */
class WholePartTest extends ScreenTest {

    private static final Plan PLAN = DemoPart.SCREW_CARRIER.plan();
    private static final int MOST_KEYS = 80;

    @TempDir
    private Path dir;

    private final Ways ways = new Ways();

    /** How the one at the machine gets something into the screen. */
    private interface Hand {

        void press(Scene scene, String key);

        /** @param text a figure, sign and all */
        void enter(Scene scene, String text);

        /** Whether a figure goes on to the next check without a key pressed first. */
        default boolean walksOn() {
            return false;
        }
    }

    /** Fires the keys of the screen; the pad knows no plus. */
    private static final Hand KEYS = new Hand() {
        @Override
        public void press(Scene scene, String key) {
            ScreenTest.press(scene, key);
        }

        @Override
        public void enter(Scene scene, String text) {
            for (char sign : text.toCharArray()) {
                switch (sign) {
                    case '+' -> {}
                    case '-' -> fire(scene, "sign");
                    case '.' -> fire(scene, "point");
                    default -> fire(scene, "digit-" + sign);
                }
            }
            press(scene, "commit");
        }

        private void fire(Scene scene, String key) {
            Button button = (Button) scene.lookup("#" + key);
            assertFalse(button.isDisabled(), key);
            button.fire();
        }
    };

    /** Goes from key to key with the tabulator and presses with Ctrl and Enter; figures are typed. */
    private static final Hand KEYBOARD = new Hand() {
        @Override
        public void press(Scene scene, String key) {
            settle(scene);
            for (int struck = 0; struck < MOST_KEYS; struck++) {
                if (scene.getFocusOwner() != null
                        && key.equals(scene.getFocusOwner().getId())) {
                    pressFocused(scene);
                    return;
                }
                strike(scene, KeyCode.TAB);
            }
            throw new AssertionError("The tabulator does not come to " + key);
        }

        @Override
        public void enter(Scene scene, String text) {
            type(scene, text + "\n");
        }
    };

    /** Sends its figure and Enter, wherever the focus is; all else is done with the keys of the screen. */
    private static final Hand TYPING_GAUGE = new Hand() {
        @Override
        public void press(Scene scene, String key) {
            KEYS.press(scene, key);
        }

        @Override
        public void enter(Scene scene, String text) {
            type(scene, text + "\n");
        }

        @Override
        public boolean walksOn() {
            return true;
        }
    };

    @Test
    void byTheKeysOfTheScreen() throws Exception {
        walk(KEYS, text -> text.startsWith("+") ? text.substring(1) : text);
    }

    @Test
    void byKeyboardAlone() throws Exception {
        walk(KEYBOARD, UnaryOperator.identity());
    }

    @Test
    void byAGaugeThatTypes() throws Exception {
        walk(TYPING_GAUGE, UnaryOperator.identity());
    }

    /** @param kept what the ledger should hold of a figure */
    private void walk(Hand hand, UnaryOperator<String> kept) throws Exception {
        ReadingsFile sample =
                ((SampleReading.Good) new SampleReader().read(DemoPart.SCREW_CARRIER.passingReadings(), PLAN)).sample();
        Path store = dir.resolve("s.db");
        try (ARun run = new ARun(store, PLAN)) {
            run(() -> {
                Scene scene = opened(run);
                sample.events().forEach(event -> play(hand, scene, run, event));
                goOn(hand, scene);
            });
        }
        assertTrue(ways.told.isEmpty(), ways.told::toString);
        try (Ledger ledger = new SqliteStores().open(store)) {
            String id = ledger.runs().get(0);
            assertEquals(List.of("sign " + id), ways.asked);
            assertEquals(
                    done(sample.events(), kept),
                    done(ledger.entries(id).stream().map(Entry::event).toList(), text -> text));
            Sheet sheet = Runs.sheet(ledger, id);
            assertEquals(PLAN.steps().size(), sheet.lines().size());
            sheet.lines()
                    .forEach(line -> assertEquals(
                            VerdictKind.PASS,
                            line.finding().verdict().standing(),
                            line.step().name()));
        }
    }

    private Scene opened(ARun run) {
        Window window = window(Display.DAY);
        LedgerTasks tasks = new LedgerTasks(new Background(Runnable::run, Runnable::run), words, ways);
        RunViewModel model = new RunViewModel(run.session, run.session.state(), tasks, ways, words, new Watch());
        window.shell().show(new RunScreen(model, window.pictures(), words));
        settle(window.scene());
        return window.scene();
    }

    private static void play(Hand hand, Scene scene, ARun run, Event event) {
        if (event instanceof StepEvent.GaugeSet set) {
            set(hand, scene, run, set);
        } else if (event instanceof StepEvent.ReadingTaken taken) {
            if (!hand.walksOn()) {
                goTo(hand, scene, run, taken.step());
            }
            hand.enter(scene, taken.typed().text());
        } else if (event instanceof StepEvent.TemperatureTaken taken) {
            goTo(hand, scene, run, taken.step());
            hand.enter(scene, taken.read().text());
        } else if (event instanceof StepEvent.Answered answered) {
            goTo(hand, scene, run, answered.step());
            hand.press(scene, "reply-" + answered.question().answers().indexOf(answered.answer()));
        } else if (event instanceof StepEvent.PassBegun) {
            if (run.session.state().asked() instanceof Prompt.WhichRegister) {
                hand.press(scene, "reply-" + Register.DIAMETER.ordinal());
            }
            goOn(hand, scene);
        }
    }

    /**
     * The gauge the plan names is at hand; which way its number goes, where that is not known yet, and what it is set
     * on, are told.
     */
    private static void set(Hand hand, Scene scene, ARun run, StepEvent.GaugeSet set) {
        Setting setting = set.setting();
        if (setting.gauge().sense().isPresent() || setting.certified().isPresent()) {
            goTo(hand, scene, run, set.step());
        }
        if (run.session.state().asked() instanceof Prompt.LiesReady) {
            hand.press(scene, "reply-0");
            return;
        }
        if (run.session.state().asked() instanceof Prompt.WhichSense) {
            setting.gauge()
                    .sense()
                    .ifPresent(sense ->
                            hand.press(scene, sense == ReadingDirection.FALLS_WITH_SIZE ? "reply-0" : "reply-1"));
        }
        setting.certified().ifPresent(certified -> hand.enter(scene, certified.text()));
        setting.zero().ifPresent(zero -> {
            hand.enter(scene, zero.text());
            if (run.session.state().asked() instanceof Prompt.SenseInFigures) {
                hand.press(scene, "reply-0");
            }
        });
    }

    private static void goTo(Hand hand, Scene scene, ARun run, int step) {
        if (run.session.state().inHand().number() != step) {
            goOn(hand, scene);
            assertEquals(step, run.session.state().inHand().number());
        }
    }

    private static void goOn(Hand hand, Scene scene) {
        settle(scene);
        hand.press(scene, scene.lookup("#commit-answered").getParent().isVisible() ? "commit-answered" : "commit");
    }

    /** What was read, answered and begun anew, a line each. */
    private static List<String> done(List<Event> events, UnaryOperator<String> kept) {
        List<String> done = new ArrayList<>();
        for (Event event : events) {
            if (event instanceof StepEvent.ReadingTaken taken) {
                done.add("%d %s %s"
                        .formatted(
                                taken.step(),
                                taken.slot(),
                                kept.apply(taken.typed().text())));
            } else if (event instanceof StepEvent.TemperatureTaken taken) {
                done.add("%d %s %s".formatted(taken.step(), taken.of(), taken.read()));
            } else if (event instanceof StepEvent.Answered answered) {
                done.add("%d %s %s".formatted(answered.step(), answered.question(), answered.answer()));
            } else if (event instanceof StepEvent.PassBegun begun) {
                done.add("%d %s".formatted(begun.step(), begun.why()));
            }
        }
        return done;
    }
}
