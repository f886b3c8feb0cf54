package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.ref.WeakReference;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.app.bench.Bench;
import org.tenthwise.app.bench.BenchKind;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.ui.bench.BenchView;
import org.tenthwise.app.ui.bench.BenchViewModel;
import org.tenthwise.app.ui.shell.Deed;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.SpotText;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.TomlValue;

/** A screen that is gone leaves nothing behind, however often it was opened, and does no more work. */
class LettingGoTest extends ScreenTest {

    private static final int OFTEN = 50;
    private static final Catalogue PLANS = Catalogue.ofDemoParts();

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private Navigator client(Window window) {
        Navigator client =
                new Screens(workshop.fittings(window, () -> PLANS, spoken -> Workshop.handout(), Workshop.CLOCK));
        client.home();
        return client;
    }

    /** A way to a screen. */
    private interface Way {
        void open(Navigator client, RunSession session);
    }

    static Stream<Arguments> ways() {
        return Stream.of(
                way("begin", (client, session) -> client.begin(PLANS.plans().get(0))),
                way("run", Navigator::run),
                way("more", Navigator::more),
                way("strike", form(Deed.STRIKE)),
                way("put away", form(Deed.PUT_AWAY)),
                way("stood elsewhere", form(Deed.STOOD_ELSEWHERE)),
                way("dispose", form(Deed.DISPOSE)),
                way("sign", Navigator::sign),
                way("record", (client, session) -> client.record(session.id())),
                way("pages", (client, session) -> client.pages(session.id())),
                way("records", (client, session) -> client.records()),
                way("open matters", (client, session) -> client.matters()),
                way("reports", (client, session) -> client.reports()),
                way("new report", (client, session) -> client.newReport()),
                way("runs of a report", (client, session) -> client.reportRuns("LG-2207")),
                way("find", (client, session) -> client.find(words -> {})),
                way("licences", (client, session) -> client.licences()),
                way("name", (client, session) -> client.name(ShopNames.Kind.MACHINE)),
                way(
                        "register",
                        (client, session) -> client.register(new ShopNames.Name("Lathe 4", true, Optional.empty()))),
                way("folder", (client, session) -> client.folder(Path.of("target"), chosen -> {})),
                way("history", (client, session) -> client.history()),
                way(
                        "course",
                        (client, session) -> client.course(
                                Sought.ALL,
                                new Characteristic("LG-2207", Optional.empty(), 13, "Bore", Optional.empty()))),
                way("deviations", (client, session) -> client.deviations(Sought.ALL)),
                way(
                        "parts to find",
                        (client, session) -> client.findParts(Sought.ALL, List.of("LG-2207"), List.of(), found -> {})),
                way("guide", (client, session) -> client.guide()),
                way("settings", (client, session) -> client.settings()),
                way("about", (client, session) -> client.about()),
                way("reference", (client, session) -> client.reference()),
                way("note", (client, session) -> client.say(Navigator.Saying.NOTE, session)),
                way("doubt", (client, session) -> client.say(Navigator.Saying.DOUBT, session)),
                way("hand over", (client, session) -> client.say(Navigator.Saying.HAND_OVER, session)),
                way("gauge", Navigator::gauge),
                way("other gauge", form(Deed.OTHER_GAUGE)),
                way(
                        "wrong setting",
                        (client, session) -> client.wrongSetting(
                                session, session.state().settingsHere().get(0), SettingFault.values()[0])),
                way(
                        "calibration",
                        (client, session) -> client.calibration(
                                session, session.state().calibrated().get(0).what())),
                way("cut on these", form(Deed.CUT_ON_THESE)),
                way("machine", form(Deed.MACHINE)),
                way("balloons", (client, session) -> client.balloons("LG-2207", onDrawing(), 0)),
                way("head of a plan", (client, session) -> client.planHead("LG-2207", onDrawing())),
                way(
                        "what is proven elsewhere",
                        (client, session) -> client.planBeside(
                                elsewhere(), elsewhere().openBeside().orElseThrow())),
                way("step of a plan", (client, session) -> client.planStep("LG-2207", onDrawing(), 0)),
                way("templates", (client, session) -> client.templates(chosen -> {})),
                way("bench", (client, session) -> client.bench()),
                way("bench beside the run", Navigator::bench));
    }

    /** The demo plan with its first step on a page of a drawing that lies nowhere. */
    private static PlanInHand onDrawing() {
        PlanInHand plan = new PlanInHand(PlanText.of(DemoPart.SCREW_CARRIER.planText())
                .orElseThrow()
                .withHead(head -> head.with("drawing_file", TomlValue.text("0815.pdf"))));
        plan.changeStep(0, step -> step.with(SpotText.KEY, "[1, 320, 250]"));
        return plan;
    }

    /** The same with a form proven at a place that is still to be said. */
    private static PlanInHand elsewhere() {
        PlanInHand plan = onDrawing();
        plan.change(text -> text.appended(TableText.ofList("elsewhere")
                .with("number", "99")
                .with("name", TomlValue.text("Cylindricity"))
                .with("requirement", TomlValue.text("\u232d 0.01"))));
        return plan;
    }

    /** In a window, which lets go of what was taken out of it at its next pulse. */
    private static Stage shown(Window window) {
        Stage stage = new Stage();
        stage.setScene(window.scene());
        stage.show();
        return stage;
    }

    private static Way form(Deed deed) {
        return (client, session) -> client.form(deed, session);
    }

    private static Arguments way(String name, Way way) {
        return Arguments.of(name, way);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ways")
    void ofAScreenThatIsGoneNothingIsLeft(String name, Way way) throws InterruptedException {
        assertNothingIsLeft(name, way, workshop.atTheBore("014", "-0.013"));
    }

    @Test
    void ofAPieceOfTheDrawingThatIsGoneNothingIsLeft() throws InterruptedException {
        RunSession session = workshop.setUp(onDrawing().plan().orElseThrow(), "014");
        Workshop.must(() -> session.goTo(1));
        assertNothingIsLeft("drawing", Navigator::drawing, session);
    }

    private void assertNothingIsLeft(String name, Way way, RunSession session) throws InterruptedException {
        List<WeakReference<Object>> opened = Collections.synchronizedList(new ArrayList<>());
        Window window = on(() -> window(Display.DAY));
        Stage stage = on(() -> shown(window));
        Navigator client = on(() -> client(window));
        Screen under = on(() -> window.shell().inHand().orElseThrow());
        for (int i = 0; i < OFTEN; i++) {
            boolean first = i == 0;
            run(() -> {
                way.open(client, session);
                if (first) {
                    settle(window.scene());
                }
                Screen over = window.shell().inHand().orElseThrow();
                assertTrue(over != under, name);
                opened.add(new WeakReference<>(over));
                client.back();
            });
        }
        assertEquals(0, alive(opened), "alive of " + OFTEN);
        run(stage::close);
    }

    @Test
    void aSumOfTheBenchIsLaidOutOnceHoweverOftenItIsChosen() {
        Set<Object> views = Collections.newSetFromMap(new IdentityHashMap<>());
        Window window = on(() -> window(Display.DAY));
        eachTimeTheSumIsShown(
                window, () -> views.add(window.scene().lookup("#sum-title").getParent()));
        assertEquals(1, views.size());
    }

    @Test
    void aKeyChangesNoMoreWordsAfterManySumsThanAfterOne() {
        Set<Label> heard = Collections.newSetFromMap(new IdentityHashMap<>());
        int[] changes = new int[1];
        List<Integer> byKey = new ArrayList<>();
        Window window = on(() -> window(Display.DAY));
        eachTimeTheSumIsShown(window, () -> {
            window.scene().getRoot().lookupAll(".label").stream()
                    .filter(Label.class::isInstance)
                    .map(Label.class::cast)
                    .filter(heard::add)
                    .forEach(label -> label.textProperty().subscribe((was, is) -> changes[0]++));
            changes[0] = 0;
            type(window.scene(), byKey.size() % 2 == 0 ? "1" : "2");
            byKey.add(changes[0]);
            strike(window.scene(), KeyCode.BACK_SPACE);
        });
        assertTrue(byKey.get(0) > 0, "nothing was typed");
        assertEquals(Collections.nCopies(OFTEN, byKey.get(0)), byKey);
    }

    private void eachTimeTheSumIsShown(Window window, Runnable then) {
        BenchViewModel model = BenchViewModel.alone(new Bench(Handbook.sums(), words), words, workshop);
        run(() -> window.shell().show(new BenchView(model, window.pictures(), words)));
        for (int i = 0; i < OFTEN; i++) {
            run(() -> {
                model.choose(BenchKind.FIT);
                settle(window.scene());
                then.run();
                model.list();
            });
        }
    }

    /** How many of what was opened are held by anything, after what nobody holds was given the time to go. */
    private static long alive(List<WeakReference<Object>> opened) throws InterruptedException {
        long alive = 1;
        for (int tries = 0; tries < 200 && alive > 0; tries++) {
            System.gc();
            Thread.sleep(20);
            alive = opened.stream().filter(one -> one.get() != null).count();
        }
        return alive;
    }
}
