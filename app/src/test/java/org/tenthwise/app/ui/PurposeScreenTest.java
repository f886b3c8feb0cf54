package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.store.Occasions;
import org.tenthwise.app.ui.begin.BeginView;
import org.tenthwise.app.ui.begin.BeginViewModel;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.more.MoreView;
import org.tenthwise.app.ui.more.MoreViewModel;
import org.tenthwise.app.ui.record.RecordRow;
import org.tenthwise.app.ui.record.RecordView;
import org.tenthwise.app.ui.record.RecordViewModel;
import org.tenthwise.app.ui.run.RunScreen;
import org.tenthwise.app.ui.run.RunViewModel;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.run.Baseline;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Purpose;

/** What a run is for: before it begins, in its heading, and whole under More. */
class PurposeScreenTest extends ScreenTest {

    private static final Baseline BEFORE = new Baseline("LG-2207-C-013", "47".repeat(32));

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    private RunSession begun(DemoPart part, Occasion occasion) {
        return Workshop.must(() -> workshop.shop.begin(
                new RunHeader(part.plan(), "014", "AB-7731", "Lathe 4", "Setter 2").begunFor(occasion)));
    }

    private Screen run(Window window, RunSession session) {
        return new RunScreen(
                new RunViewModel(session, session.state(), workshop.tasks, workshop, words, Workshop.CLOCK),
                window.pictures(),
                words);
    }

    private static Occasion partial() {
        return Occasions.under(
                "4500-118",
                List.of("Change 12"),
                Occasions.partialFirstArticle(BEFORE, "New boring bar, other overhang", List.of(9, 13, 14)));
    }

    @Test
    void theHeadingOfARunHoldsEverywhere() {
        RunSession first = begun(DemoPart.SCREW_CARRIER, partial());
        seen("purpose", "run-partial", window -> run(window, first));
        RunSession fifth = begun(DemoPart.WINCH_BARREL_END, Occasions.inProcess(125));
        fifth.goTo(10);
        seen("purpose", "run-in-process", window -> run(window, fifth));
    }

    /** It is neither open nor still to come. */
    @Test
    void whatIsNotInARunIsSaidToBeSoInItsRecord() {
        RunSession fifth = begun(DemoPart.WINCH_BARREL_END, Occasions.inProcess(5));
        List<Integer> left = fifth.state().sheet().lines().stream()
                .filter(line -> !line.asked())
                .map(line -> line.step().number())
                .toList();
        assertTrue(!left.isEmpty());
        RecordViewModel model = record(fifth);
        model.load();
        String notHere = words.say("occasion.not-here");
        assertEquals(
                left,
                model.rowsValue().getValue().stream()
                        .filter(row -> row.standing().isEmpty()
                                && row.verdict().equals(notHere)
                                && row.distance().isEmpty())
                        .map(RecordRow::step)
                        .toList());
        seen(
                "purpose",
                "record-in-process",
                window -> new RecordView(record(fifth), words, window.pictures(), workshop));
    }

    private RecordViewModel record(RunSession session) {
        return new RecordViewModel(
                session.id(), workshop.shop, Workshop.handout(), workshop.tasks, words, workshop, Workshop.CLOCK);
    }

    @Test
    void whatStandsBehindAPartialOneIsWholeUnderMore() {
        RunSession session = begun(DemoPart.SCREW_CARRIER, partial());
        session.goTo(9);
        seen(
                "purpose",
                "more-partial",
                window -> new MoreView(
                        new MoreViewModel(session, session.state(), workshop.tasks, workshop, words),
                        words,
                        window.pictures()));
    }

    @SuppressWarnings("unchecked")
    private static <T> Field<T> field(BeginViewModel model, String id) {
        return (Field<T>) model.form().fields().stream()
                .filter(field -> field.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private Screen begin(Window window, Consumer<BeginViewModel> then) {
        BeginViewModel model = new BeginViewModel(
                DemoPart.WINCH_BARREL_END.plan(), workshop.shop, workshop.tasks, words, workshop, Workshop.CLOCK);
        BeginView view = new BeginView(model, words, window.pictures(), workshop);
        model.load();
        "016".chars().mapToObj(Character::toString).forEach(model.form()::character);
        then.accept(model);
        return view;
    }

    @Test
    void howMuchARunAsksHoldsEverywhere() {
        seen(
                "purpose",
                "begin-open",
                window -> begin(window, model -> {
                    model.purpose().choice().choose(Purpose.IN_PROCESS);
                    model.form().goTo(model.purpose());
                }));
        seen(
                "purpose",
                "begin-in-process",
                window -> begin(window, model -> {
                    model.purpose().choice().choose(Purpose.IN_PROCESS);
                    model.form().goTo(field(model, "piece"));
                    model.form().character("2");
                }));
    }

    private static List<String> read(Window window) {
        settle(window.scene());
        return window.scene().getRoot().lookupAll(".label").stream()
                .filter(ScreenTest::shown)
                .map(node -> ((Label) node).getText())
                .toList();
    }

    /** On each display the same cells as in a run of which nobody said anything; what is not stated claims nothing. */
    @Test
    void thePurposeIsToldInTheHeadingAndCostsNothingElseThere() {
        RunSession said = begun(DemoPart.SCREW_CARRIER, Occasions.fullFirstArticle("new part"));
        RunSession unsaid = begun(DemoPart.SCREW_CARRIER, Occasion.NOT_STATED);
        String purpose = words.say("occasion.short.first-article-full");
        List<String> told = new ArrayList<>();
        for (Display display : displays()) {
            run(() -> {
                Window window = window(display);
                window.shell().show(run(window, unsaid));
                List<String> without = read(window);
                window.shell().show(run(window, said));
                List<String> with = read(window);
                if (with.contains(purpose)) {
                    told.add(display.name());
                }
                List<String> others = without.stream()
                        .filter(text -> !text.equals(words.say("run.head.part")))
                        .toList();
                assertTrue(with.containsAll(others), display.name());
            });
        }
        assertEquals(displays().stream().map(Display::name).toList(), told);
    }
}
