package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
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
    private final Workshop workshop = new Workshop(words);

    private ReferenceViewModel model;

    @BeforeEach
    void runTheCases() {
        model = new ReferenceViewModel(new Comparison(Handbook.sums()), workshop.tasks, words);
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

    /** Every row of a long list is seen, from the first to the last, and the pages lead back to the first. */
    @Test
    void allPagesTogetherShowEveryFigure() {
        open("wires");
        openSource(0);
        int figures = Set.copyOf(model.shownProperty().get().lines()).size();
        run(() -> {
            Window window = window(Display.DAY);
            window.shell().show(screen(window));
            Set<String> seen = new HashSet<>(shownRows(window));
            int pages = 1;
            while (!window.scene().lookup("#lines #later").isDisabled()) {
                press(window.scene(), "lines #later");
                seen.addAll(shownRows(window));
                pages++;
            }
            assertEquals(figures, seen.size());
            for (int i = 1; i < pages; i++) {
                press(window.scene(), "lines #earlier");
            }
            settle(window.scene());
            assertEquals(true, window.scene().lookup("#lines #earlier").isDisabled());
        });
    }

    private static List<String> shownRows(Window window) {
        settle(window.scene());
        return window.scene().getRoot().lookupAll(".reference-agreement").stream()
                .map(node -> node.getParent().getParent().getParent())
                .filter(Node::isVisible)
                .map(Node::getAccessibleText)
                .toList();
    }
}
