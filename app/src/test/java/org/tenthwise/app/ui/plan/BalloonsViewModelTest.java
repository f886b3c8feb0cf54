package org.tenthwise.app.ui.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.drawing.FolderOfDrawings;
import org.tenthwise.app.drawing.InventedDrawing;
import org.tenthwise.app.drawing.PagePart;
import org.tenthwise.app.drawing.PageReading;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.plan.BalloonsViewModel.BalloonToPlace;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.SpotText;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.model.plan.DrawingFile;
import org.tenthwise.model.plan.PageSpot;
import org.tenthwise.model.words.Words;

class BalloonsViewModelTest {

    private static final String NAME = "carrier";

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    @TempDir
    private Path folder;

    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private PlanDesk desk;
    private PlanInHand plan;

    @BeforeEach
    void aPlanWithADrawing() {
        InventedDrawing.in(folder, "T-1.pdf");
        desk = new PlanDesk(folder);
        plan = new PlanInHand(PlanText.of(DemoPart.SCREW_CARRIER.planText())
                .orElseThrow()
                .withHead(head -> head.with("drawing_file", TomlValue.text("T-1.pdf"))));
    }

    private BalloonsViewModel model(int place, Background aside) {
        BalloonsViewModel model = new BalloonsViewModel(
                NAME,
                plan,
                place,
                desk,
                new FolderOfDrawings(folder),
                new LedgerTasks(aside, Words.ENGLISH, workshop),
                workshop.tasks,
                Words.ENGLISH);
        model.load();
        return model;
    }

    private BalloonsViewModel model(int place) {
        return model(place, new Background(Runnable::run, Runnable::run));
    }

    private Optional<PageSpot> spot(int place) {
        return SpotText.of(plan.steps().get(place));
    }

    private static BalloonsState.Seen seen(BalloonsViewModel model) {
        return assertInstanceOf(BalloonsState.Seen.class, model.stateProperty().get());
    }

    private static String without(BalloonsViewModel model) {
        return assertInstanceOf(
                        BalloonsState.Without.class, model.stateProperty().get())
                .sentence();
    }

    @Test
    void aBalloonIsPlacedByOneTapAndTheNextIsInHand() throws IOException {
        BalloonsViewModel model = model(0);
        model.tap(0.25, 0.3004);
        assertEquals(Optional.of(new PageSpot(1, 250, 300)), spot(0));
        assertEquals(1, model.inHandProperty().get());
        model.tap(0.5, 1);
        assertEquals(Optional.of(new PageSpot(1, 500, 1000)), spot(1));
        assertEquals(plan.text().text(), desk.open(NAME).orElseThrow().text(), "kept as a draft at once");
        assertTrue(plan.plan().isPresent(), "what is written is a plan");
    }

    @Test
    void thePlanLeadsToTheBalloonOfTheStepInHand() {
        PlanViewModel steps = new PlanViewModel(NAME, plan, desk, workshop.tasks, Words.ENGLISH, workshop);
        steps.take(4);
        steps.balloons();
        assertEquals("balloons 4 of carrier", workshop.asked.get(workshop.asked.size() - 1));
    }

    @Test
    void aBalloonIsMovedByItsRowAndAnotherTap() {
        BalloonsViewModel model = model(0);
        model.tap(0.25, 0.3);
        model.take(0);
        assertEquals(
                "Balloon 1 has its place. Tap another to move it",
                model.toDoProperty().get());
        model.tap(0.75, 0.8);
        assertEquals(Optional.of(new PageSpot(1, 750, 800)), spot(0));
    }

    @Test
    void aPlaceIsTakenBackAndNothingElse() {
        plan.changeStep(4, step -> step.with("name", TomlValue.text("Other")));
        BalloonsViewModel model = model(2);
        assertFalse(model.canUndo(), "what was changed before was not changed here");
        model.tap(0.25, 0.3);
        model.undo();
        assertEquals(Optional.empty(), spot(2));
        assertEquals(2, model.inHandProperty().get());
        assertFalse(model.canUndo());
        assertEquals(Optional.of("Other"), plan.steps().get(4).says("name"));
    }

    @Test
    void onAnEnlargedPartASpotIsWhereItIsOnThePage() {
        BalloonsViewModel model = model(0);
        model.enlarge();
        assertTrue(model.choosingProperty().get());
        model.tap(0.9, 0.5);
        assertEquals(Optional.empty(), spot(0), "that tap chose what to enlarge");
        PagePart part = seen(model).part();
        assertEquals(2.0 / 3, part.left(), 1e-9, "no further than the edge of the page");
        model.tap(part.pageX(0.5), part.pageY(0.5));
        assertEquals(Optional.of(new PageSpot(1, 833, 500)), spot(0));
        model.enlarge();
        assertEquals(PagePart.WHOLE, seen(model).part());
    }

    @Test
    void thePagesAreTurnedAndAPlaceIsOnThePageThatIsSeen() {
        BalloonsViewModel model = model(3);
        assertFalse(seen(model).before());
        model.next();
        assertEquals("Page 2 of 2", seen(model).said());
        assertFalse(seen(model).after());
        model.tap(0.1, 0.1);
        assertEquals(Optional.of(new PageSpot(2, 100, 100)), spot(3));
        model.previous();
        assertEquals("Page 1 of 2", seen(model).said());
        model.take(3);
        assertEquals("Page 2 of 2", seen(model).said(), "the page of the balloon in hand");
    }

    @Test
    void aPageThatWasTurnedAwayFromIsNotShown() {
        BalloonsViewModel model = model(0, new Background(waiting::add, Runnable::run));
        waiting.poll().run();
        model.next();
        model.tap(0.5, 0.5);
        assertEquals(Optional.empty(), spot(0), "nothing is placed on a page that is not seen");
        assertEquals("The page is being drawn.", without(model));
        plan.changeStep(2, step -> step.with(SpotText.KEY, SpotText.written(new PageSpot(1, 5, 5))));
        BalloonsViewModel again = model(2, new Background(waiting::add, Runnable::run));
        again.next();
        waiting.forEach(Runnable::run);
        assertEquals("Page 1 of 2", seen(again).said());
    }

    @Test
    void withoutAFileOfTheDrawingThatIsSaid() {
        plan.change(text -> text.withHead(head -> head.without("drawing_file")));
        BalloonsViewModel model = model(0);
        assertTrue(without(model).startsWith("No file of the drawing is named."));
        model.tap(0.5, 0.5);
        assertEquals(Optional.empty(), spot(0));
    }

    @Test
    void aFileThatIsNotThereIsSaidQuietly() {
        plan.change(text -> text.withHead(head -> head.with("drawing_file", TomlValue.text("T-9.pdf"))));
        assertEquals("T-9.pdf is not in the folder of the plans.", without(model(0)));
        assertEquals(List.of(), workshop.told);
    }

    @Test
    void whereThePlanHasBalloonsOnlyTheirStepsAreThere() {
        plan.changeStep(1, step -> step.with("balloon", TomlValue.text("12A")));
        plan.changeStep(3, step -> step.with("balloon", "7"));
        assertEquals(
                List.of("12A", "7"),
                model(3).rowsProperty().get().stream()
                        .map(BalloonToPlace::number)
                        .toList());
        assertEquals(1, model(3).inHandProperty().get());
    }

    private Optional<String> hash() {
        return plan.text().head().says("drawing_file_sha256");
    }

    private boolean isSeenAtTheRun() {
        DrawingFile file = plan.plan().orElseThrow().drawing().file().orElseThrow();
        return new FolderOfDrawings(folder).page(file, 1) instanceof PageReading.Readable;
    }

    private void anotherDrawing() throws IOException {
        Files.write(folder.resolve("T-1.pdf"), new byte[] {'\n'}, StandardOpenOption.APPEND);
    }

    @Test
    void theFirstPlaceKeepsWhichFileItIsOn() throws IOException {
        BalloonsViewModel model = model(0);
        model.tap(0.25, 0.3);
        assertTrue(hash().isPresent());
        assertFalse(model.isReplaced());
        assertTrue(isSeenAtTheRun());
        anotherDrawing();
        assertFalse(isSeenAtTheRun(), "the places are those on the file before");
    }

    @Test
    void onAnotherFileNoPlaceCountsBeforeAllAreConfirmed() throws IOException {
        model(0).tap(0.25, 0.3);
        model(1).tap(0.5, 0.5);
        Optional<String> before = hash();
        anotherDrawing();
        BalloonsViewModel model = model(0);
        assertTrue(model.isReplaced());
        assertTrue(model.toDoProperty().get().startsWith("Not confirmed on this file"));
        model.tap(0.3, 0.3);
        assertEquals(before, hash(), "the other place was not looked at");
        assertFalse(isSeenAtTheRun());
        model.allAreRight();
        assertFalse(model.isReplaced());
        assertTrue(isSeenAtTheRun());
        model.undo();
        assertEquals(before, hash());
        assertTrue(model.isReplaced());
    }

    @Test
    void placesTypedByHandAreConfirmedToo() {
        plan.changeStep(3, step -> step.with(SpotText.KEY, "[1, 100, 100]"));
        BalloonsViewModel model = model(0);
        assertTrue(model.isReplaced());
        model.tap(0.25, 0.3);
        assertEquals(Optional.empty(), hash());
        model.allAreRight();
        assertFalse(model.isReplaced());
    }
}
