package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.app.ui.picture.Sheets;

class RunOutPictureTest {

    private static final Frame SHEET = Frame.screen(652, 452, 1);

    private final Sheets sheets = new Sheets();

    static Stream<Arguments> everySceneAndFrame() {
        return RunOutScenes.all().entrySet().stream().flatMap(scene -> Frames.all().entrySet().stream()
                .map(frame -> Arguments.of(scene.getKey(), frame.getKey(), scene.getValue(), frame.getValue())));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void nothingLiesOnAnythingOrOutside(String scene, String size, RunOutPicture picture, Frame frame) {
        assertEquals(List.of(), RecordingPen.of(picture, frame).faults(frame));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void theLimitAndEveryMoveAreWritten(String scene, String size, RunOutPicture picture, Frame frame) {
        List<String> texts = RecordingPen.of(picture, frame).texts();
        assertTrue(texts.contains("limit 0.020"), texts::toString);
        picture.movement().ifPresent(movement -> assertTrue(texts.contains(movement.words()), texts::toString));
        assertTrue(texts.containsAll(picture.notes()) || frame.textScale() > 1 || frame.width() < 650 && frame.textScale() == 1, texts::toString);
        picture.jaws().stream().map(RunOutPicture.Jaw::words).filter(words -> !words.isEmpty())
                .forEach(words -> assertTrue(texts.contains(words), () -> words + " is missing from " + texts));
        picture.fit().ifPresent(fit -> assertTrue(texts.containsAll(fit.words()), texts::toString));
    }

    /** The reading nearest the fitted circle lies where it says: 0 at 0° and −0.037 at 180° are 0.037 apart on radius. */
    @Test
    void readingsLieToTheScaleOfTheRing() {
        RecordingPen pen = RecordingPen.of(RunOutScenes.all().get("fail-4-jaws"), SHEET);
        List<Shape.Circle> dots = pen.drawnIn(Role.INK).stream().filter(mark -> mark.shape() instanceof Shape.Circle)
                .map(mark -> (Shape.Circle) mark.shape()).toList();
        List<Double> rims = pen.drawnIn(Role.LINE).stream().filter(mark -> mark.width() == 3 && mark.shape() instanceof Shape.Circle)
                .map(mark -> ((Shape.Circle) mark.shape()).radius()).toList();
        Point centre = ((Shape.Circle) pen.drawnIn(Role.ZONE).get(0).shape()).centre();
        double swing = dots.get(0).centre().distanceTo(centre) - dots.get(4).centre().distanceTo(centre);
        assertEquals(0.037 / 0.020, swing / (rims.get(0) - rims.get(1)), 1e-6);
    }

    @Test
    void withoutAFitThereIsNoCircleAndNoMove() {
        RecordingPen pen = RecordingPen.of(RunOutScenes.all().get("refused"), SHEET);
        assertTrue(pen.drawnIn(Role.ACCENT).isEmpty());
        assertFalse(pen.texts().stream().anyMatch(text -> text.startsWith("in ")));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void picturesAreSavedToBeLookedAt(String scene, String size, RunOutPicture picture, Frame frame) {
        assertTrue(Sheets.inked(sheets.save("run-out-" + scene + "-" + size, picture, frame, Palette.DAY)) > 1000);
        assertTrue(Sheets.inked(sheets.save("run-out-" + scene + "-" + size, picture, frame, Palette.NIGHT)) > 1000);
    }
}
