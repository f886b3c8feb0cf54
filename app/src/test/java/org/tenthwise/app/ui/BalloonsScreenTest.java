package org.tenthwise.app.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.event.Event;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.PickResult;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.drawing.FolderOfDrawings;
import org.tenthwise.app.drawing.InventedDrawing;
import org.tenthwise.app.ui.plan.BalloonsView;
import org.tenthwise.app.ui.plan.BalloonsViewModel;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.SpotText;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.model.plan.PageSpot;

/** Balloons placed on the page of an invented drawing, on every display. */
class BalloonsScreenTest extends ScreenTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop(words);

    @TempDir
    private Path folder;

    @BeforeEach
    void aDrawing() {
        InventedDrawing.in(folder, "0815.pdf");
    }

    /** Five are placed, three of them on one spot; one has a long number. */
    private static PlanInHand plan(String file) {
        PlanInHand plan = new PlanInHand(PlanText.of(DemoPart.SCREW_CARRIER.planText())
                .orElseThrow()
                .withHead(head -> head.with("drawing_file", TomlValue.text(file))));
        List<PageSpot> spots = List.of(
                new PageSpot(1, 320, 270),
                new PageSpot(1, 320, 270),
                new PageSpot(1, 320, 270),
                new PageSpot(1, 620, 330),
                new PageSpot(1, 740, 900));
        for (int place = 0; place < plan.steps().size(); place++) {
            String balloon = place == 3 ? "104.12A" : String.valueOf(place + 1);
            plan.changeStep(place, step -> step.with("balloon", TomlValue.text(balloon)));
        }
        for (int place = 0; place < spots.size(); place++) {
            PageSpot spot = spots.get(place);
            plan.changeStep(place, step -> step.with(SpotText.KEY, SpotText.written(spot)));
        }
        return plan;
    }

    /** The same, confirmed on the file as it lies there. */
    private PlanInHand confirmed() {
        PlanInHand plan = plan("0815.pdf");
        BalloonsViewModel model = model(plan, 0);
        model.load();
        model.allAreRight();
        return plan;
    }

    private BalloonsViewModel model(PlanInHand plan, int place) {
        return new BalloonsViewModel(
                "LG-2207-C",
                plan,
                place,
                new PlanDesk(folder),
                new FolderOfDrawings(folder),
                workshop.tasks,
                workshop.tasks,
                words);
    }

    private Screen screen(BalloonsViewModel model, Window window) {
        return new BalloonsView(model, words, window.pictures(), workshop);
    }

    @Test
    void balloonsOnThePageHoldEverywhere() {
        seen("balloons", "placed", window -> screen(model(confirmed(), 3), window));
    }

    @Test
    void theNextBalloonToPlaceHoldsEverywhere() {
        seen("balloons", "next", window -> screen(model(confirmed(), 5), window));
    }

    @Test
    void anEnlargedPartHoldsEverywhere() {
        seen("balloons", "enlarged", window -> {
            BalloonsViewModel model = model(confirmed(), 0);
            Screen screen = screen(model, window);
            model.load();
            model.enlarge();
            model.tap(0.35, 0.3);
            return screen;
        });
    }

    @Test
    void placesThatNobodyConfirmedOnThisFileHoldEverywhere() {
        seen("balloons", "unconfirmed", window -> screen(model(plan("0815.pdf"), 5), window));
        PlanInHand plan = plan("0815.pdf");
        run(() -> {
            Window window = window(Display.DAY);
            window.shell().show(screen(model(plan, 5), window));
            settle(window.scene());
            assertTrue(shown(window.scene().lookup("#all-right")));
            press(window.scene(), "all-right");
            settle(window.scene());
            assertFalse(shown(window.scene().lookup("#all-right")));
        });
    }

    @Test
    void aFileThatIsNotThereIsSaidEverywhere() {
        seen("balloons", "missing", window -> screen(model(plan("0816.pdf"), 0), window));
    }

    @Test
    void aTapIsWhereTheFingerIs() {
        PlanInHand plan = plan("0815.pdf");
        for (Display display : displays()) {
            run(() -> {
                Window window = window(display);
                BalloonsViewModel model = model(plan, 7);
                window.shell().show(screen(model, window));
                settle(window.scene());
                Node page = window.scene().lookup("#drawing-page");
                Node over = page.lookup("PictureView");
                Point2D inPage = over.localToParent(
                        over.getLayoutBounds().getWidth() * 0.25,
                        over.getLayoutBounds().getHeight() * 0.75);
                Event.fireEvent(page, click(page, inPage));
            });
            assertEquals(
                    Optional.of(new PageSpot(1, 250, 750)),
                    SpotText.of(plan.steps().get(7)),
                    display.name());
            plan.undo();
        }
    }

    private static MouseEvent click(Node node, Point2D at) {
        Point2D scene = node.localToScene(at);
        return new MouseEvent(
                node,
                node,
                MouseEvent.MOUSE_CLICKED,
                scene.getX(),
                scene.getY(),
                scene.getX(),
                scene.getY(),
                MouseButton.PRIMARY,
                1,
                false,
                false,
                false,
                false,
                true,
                false,
                false,
                true,
                false,
                true,
                new PickResult(node, at.getX(), at.getY()));
    }
}
