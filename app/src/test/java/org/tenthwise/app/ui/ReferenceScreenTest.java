package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.reference.Comparison;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.ui.reference.ReferenceLine;
import org.tenthwise.app.ui.reference.ReferenceView;
import org.tenthwise.app.ui.reference.ReferenceViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Screen;

/** The published cases in their lists, on every display. */
class ReferenceScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private ReferenceViewModel model;

    @BeforeEach
    void runTheCases() {
        model = new ReferenceViewModel(new Comparison(Handbook.sums()), workshop.errands, words);
        model.load();
    }

    private Screen screen(Window window) {
        return new ReferenceView(model, words, window.look(), workshop);
    }

    private void open(String chapter) {
        model.chaptersValue().getValue().stream()
                .filter(one -> one.id().equals(chapter))
                .findFirst()
                .orElseThrow()
                .open()
                .run();
    }

    private void openSource(int place) {
        ((ReferenceLine.Source) model.shownProperty().get().lines().get(place))
                .open()
                .run();
    }

    @Test
    void theSourcesOfATopicHoldEverywhere() {
        open("statistics");
        seen("reference", "sources", this::screen);
    }

    @Test
    void theFiguresOfASourceHoldEverywhere() {
        open("wires");
        openSource(0);
        seen("reference", "figures", this::screen);
    }

    @Test
    void whatIsSetAsideHoldsEverywhere() {
        open("aside");
        seen("reference", "aside", this::screen);
    }

    @Test
    void whatIsLeftOutHoldsEverywhere() {
        open("left-out");
        seen("reference", "left-out", this::screen);
    }

    @Test
    void beforeTheCasesAreRunItSaysThatTheyAre() {
        LedgerTasks busy = new LedgerTasks(new Background(work -> {}, Runnable::run), words, workshop);
        seen(
                "reference",
                "running",
                window -> new ReferenceView(
                        new ReferenceViewModel(new Comparison(Handbook.sums()), busy, words),
                        words,
                        window.look(),
                        workshop));
    }

    /** Every row of a long list is seen once, from the first to the last, and the pages lead back to the first. */
    @Test
    void allPagesTogetherShowEveryFigure() {
        open("wires");
        openSource(0);
        int figures = model.shownProperty().get().lines().size();
        run(() -> {
            Window window = window(Display.DAY);
            window.shell().show(screen(window));
            int seen = shownRows(window);
            int pages = 1;
            while (!window.scene().lookup("#later-lines").isDisabled()) {
                press(window.scene(), "later-lines");
                seen += shownRows(window);
                pages++;
            }
            assertEquals(figures, seen);
            for (int i = 1; i < pages; i++) {
                press(window.scene(), "earlier-lines");
            }
            settle(window.scene());
            assertEquals(true, window.scene().lookup("#earlier-lines").isDisabled());
        });
    }

    private static int shownRows(Window window) {
        settle(window.scene());
        return (int) window.scene().getRoot().lookupAll(".reference-agreement").stream()
                .filter(node -> node.getParent().getParent().getParent().isVisible())
                .count();
    }
}
