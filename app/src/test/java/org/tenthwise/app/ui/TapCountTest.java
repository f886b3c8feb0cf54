package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.scene.Scene;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.device.AskedViewer;
import org.tenthwise.app.export.CsvRecord;
import org.tenthwise.app.handout.Handout;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.begin.BeginView;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.KeypadViewModel;
import org.tenthwise.app.ui.run.RunViewModel;
import org.tenthwise.app.ui.sign.SignViewModel;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.StepEvent;

/**
 * How many taps of a finger the demo's screw carrier costs, from the list of parts to its record, where every check
 * passes at its first reading: 35 checks, 56 readings, 16 answers, 6 temperatures, three settings, one signature. What
 * they are spent on is logged by screen and key.
 */
class TapCountTest extends ScreenTest {

    private static final System.Logger LOG = System.getLogger(TapCountTest.class.getName());

    @TempDir
    private Path folder;

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private final Map<String, Integer> taps = new TreeMap<>();
    private Window window;

    /** Where figures come from. */
    private enum By {
        FINGER,
        TYPING_GAUGE
    }

    private By by = By.FINGER;

    @Test
    void byFinger() {
        partMadeBefore();
        int counted = walk(By.FINGER);
        assertTrue(counted <= 292, () -> counted + " taps: " + taps);
    }

    @Test
    void withAGaugeThatTypes() {
        partMadeBefore();
        int counted = walk(By.TYPING_GAUGE);
        assertTrue(counted <= 45, () -> counted + " taps: " + taps);
    }

    @Test
    void theFirstPartOfAShop() {
        int counted = walk(By.FINGER);
        assertTrue(counted <= 347, () -> counted + " taps: " + taps);
    }

    /** The shop made a whole part: it knows its people, machine, lot, gauges, rings and wires. */
    private void partMadeBefore() {
        RunSession before = workshop.begin(DemoPart.SCREW_CARRIER, "013");
        RightFirstTime.keep(before);
        assertEquals(Outcome.CONFORMS, workshop.shop.sheet(before.id()).outcome());
    }

    private int walk(By how) {
        by = how;
        run(() -> {
            window = window(Display.DAY);
            new Screens(workshop.fittings(
                            window,
                            Catalogue::ofDemoParts,
                            spoken -> new Handout(
                                    List.of(new CsvRecord()),
                                    (run, as) -> folder.resolve(run),
                                    scope -> Optional.empty(),
                                    run -> List.of(),
                                    AskedViewer.none()),
                            new Watch()))
                    .home();
            begin(RightFirstTime.sample());
            RightFirstTime.events().forEach(this::play);
        });
        assertEquals(
                Outcome.CONFORMS,
                Workshop.must(() ->
                                workshop.shop.sheet(RightFirstTime.PLAN.part().number() + "-C-014"))
                        .outcome());
        int all = taps.values().stream().mapToInt(Integer::intValue).sum();
        LOG.log(System.Logger.Level.INFO, () -> "%d taps, figures by %s: %s".formatted(all, how, taps));
        return all;
    }

    private Scene scene() {
        return window.scene();
    }

    private State state() {
        return ((RunViewModel) window.shell().inHand().orElseThrow().typing())
                .stateProperty()
                .get();
    }

    private void tap(String key) {
        String title = window.shell().inHand().orElseThrow().getClass().getSimpleName();
        press(scene(), key);
        taps.merge(title + " " + (key.matches("digit.*|point|sign") ? "figure" : key), 1, Integer::sum);
    }

    private void begin(ReadingsFile sample) {
        tap("begin-LG-2207-C");
        for (String answer : List.of(
                sample.begun().serial(), sample.begun().lot(), sample.begun().machine(), sample.by())) {
            if (window.shell().inHand().orElseThrow() instanceof BeginView) { // what the shop knows lies ready
                answer(answer);
            }
        }
    }

    /** A ready answer where there is one, which leads on; the letters otherwise. */
    private void answer(String text) {
        settle(scene());
        Optional<Key> ready = keys().filter(key -> key.getText().lines().anyMatch(line -> isReady(line, text)))
                .findFirst();
        if (ready.isPresent()) {
            tap(ready.get().getId());
            return;
        }
        if (keys().anyMatch(key -> "type".equals(key.getId()))) {
            tap("type");
        }
        text.chars().mapToObj(Character::toString).forEach(this::letter);
        tap("commit");
    }

    private boolean isReady(String line, String text) {
        return line.equals(text) || line.equals(words.say("begin.next.starts", text));
    }

    private void letter(String letter) {
        String spoken =
                switch (letter) {
                    case " " -> words.say("letters.space");
                    case "-" -> words.say("letters.hyphen");
                    default -> letter;
                };
        if (keys().noneMatch(key -> key.getAccessibleText().equals(spoken))) {
            tapLetter(words.say("letters.shift"));
        }
        tapLetter(spoken);
    }

    private void tapLetter(String spoken) {
        keys().filter(key -> key.getAccessibleText().equals(spoken))
                .findFirst()
                .orElseThrow(() -> new AssertionError(
                        spoken + " among " + keys().map(Key::getAccessibleText).toList()))
                .fire();
        taps.merge("letters", 1, Integer::sum);
    }

    private Stream<Key> keys() {
        settle(scene());
        return scene().getRoot().lookupAll(".key").stream()
                .filter(node -> node instanceof Key key && !key.isDisabled() && shown(key))
                .map(Key.class::cast);
    }

    private void play(Event event) {
        if (event instanceof StepEvent.GaugeSet set) {
            set(set);
        } else if (event instanceof StepEvent.ReadingTaken taken) {
            boolean begins = by == By.TYPING_GAUGE || shown(scene().lookup("#digit-0"));
            if (!state().figureBeginsNext() || !begins) {
                goTo(taken.step());
            }
            figure(taken.typed().text(), by);
            assertEquals(taken.typed().length(), lastReadAt(taken.step()).length());
        } else if (event instanceof StepEvent.TemperatureTaken taken) {
            goTo(taken.step());
            temperature(taken.read().text());
        } else if (event instanceof StepEvent.Answered answered) {
            goTo(answered.step());
            tap("reply-" + answered.question().answers().indexOf(answered.answer()));
        } else if (event instanceof Event.Closed closed) {
            goOn();
            answer(closed.signedBy());
            tap("choice-" + SignViewModel.MEANINGS.indexOf(closed.as()));
            tap("choice-" + SignViewModel.End.CLOSE.ordinal());
        }
    }

    private Written lastReadAt(int step) {
        List<Pass.Reading> readings = state().sheet().line(step).pass().readings();
        return readings.get(readings.size() - 1).typed();
    }

    private void set(StepEvent.GaugeSet set) {
        Setting setting = set.setting();
        if (setting.gauge().sense().isPresent() || setting.certified().isPresent()) {
            goTo(set.step());
        }
        if (liesReadyAs(setting)) {
            tap("reply-0");
            return;
        }
        boolean told = state().asked().asksSense();
        if (told) {
            tap(setting.gauge().sense().orElseThrow() == ReadingDirection.FALLS_WITH_SIZE ? "reply-0" : "reply-1");
        }
        setting.certified().ifPresent(certified -> proposed(certified.text()));
        setting.zero().ifPresent(zero -> proposed(zero.text()));
        if (told) {
            tap("reply-0");
        }
    }

    private boolean liesReadyAs(Setting setting) {
        return state().asked()
                .asLyingReady()
                .filter(ready -> ready.certified()
                        .length()
                        .equals(setting.certified().orElseThrow().length()))
                .isPresent();
    }

    /** What is typed by a finger, where it does not lie ready. */
    private void proposed(String figure) {
        Prompt asked = state().asked();
        Optional<Length> ready = asked instanceof Prompt.Certified certified
                ? certified.known().map(Written::length)
                : asked instanceof Prompt.Zero zero
                        ? Optional.of(zero.suggested().length())
                        : Optional.empty();
        if (ready.equals(Optional.of(Length.of(figure, Unit.MILLIMETRE)))) {
            tap("commit");
        } else {
            figure(figure, By.FINGER);
        }
    }

    private void temperature(String figure) {
        if (state().asked() instanceof Prompt.Temperature wanted
                && wanted.suggested()
                        .filter(known -> known.text().equals(figure))
                        .isPresent()) {
            tap("commit");
        } else {
            figure(figure, By.FINGER);
        }
    }

    private void figure(String text, By how) {
        if (how == By.TYPING_GAUGE) {
            type(scene(), text + "\n");
            return;
        }
        String figure = text.replace("+", "");
        if (!typed(withOffer(figure), figure)) {
            assertTrue(typed(figure, figure), figure);
        }
        tap("commit");
    }

    /** What is offered is not typed, nor is the point where it may come by itself. */
    private String withOffer(String figure) {
        String offered = pad().offeredProperty().get();
        return offered.isEmpty() ? figure.replace(".", "") : figure.replaceFirst(Pattern.quote(offered), "");
    }

    /** Types it; what does not come to the figure is taken back, and was never typed by who knows the pad. */
    private boolean typed(String keys, String figure) {
        Map<String, Integer> before = new TreeMap<>(taps);
        for (char sign : keys.toCharArray()) {
            switch (sign) {
                case '-' -> tap("sign");
                case '.' -> tap("point");
                default -> tap("digit-" + sign);
            }
        }
        boolean comes =
                pad().typedProperty().get().equals(figure) && pad().doubt().isEmpty();
        if (!comes) {
            taps.clear();
            taps.putAll(before);
            keys.chars().forEach(key -> press(scene(), "take-back"));
        }
        return comes;
    }

    private KeypadViewModel pad() {
        return ((RunViewModel) window.shell().inHand().orElseThrow().typing()).pad();
    }

    private void goTo(int step) {
        if (state().inHand().number() != step) {
            goOn();
            assertEquals(step, state().inHand().number());
        }
    }

    private void goOn() {
        settle(scene());
        tap(scene().lookup("#commit-answered").getParent().isVisible() ? "commit-answered" : "commit");
    }
}
