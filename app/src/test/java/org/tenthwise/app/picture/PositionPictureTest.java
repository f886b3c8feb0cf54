package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.app.ui.picture.Sheets;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** Invented axes in a zone of 0.1 mm, with and without a bonus. */
class PositionPictureTest {

    private static final Frame SHEET = Frame.screen(652, 452, 1);
    private static final List<String> NOTES =
            List.of("hole 2, exit: position 0.116", "X +0.050 off", "Y −0.030 off", "zone Ø0.100", "bonus 0.030");
    private static final Map<String, PositionPicture> SCENES = scenes();

    private final Sheets sheets = new Sheets();

    private static Map<String, PositionPicture> scenes() {
        Map<String, PositionPicture> scenes = new LinkedHashMap<>();
        scenes.put("nothing-yet", picture("0.1", "0.1"));
        scenes.put("inside", picture("0.1", "0.13", spot("0.05", "-0.03", true, false)));
        scenes.put(
                "leans", picture("0.1", "0.1", spot("0.01", "0.01", false, false), spot("0.03", "0.045", true, true)));
        scenes.put("far-out", picture("0.1", "0.1", spot("4", "-3", true, false)));
        scenes.put("no-zone-yet", picture("0", "0", spot("0.02", "0", true, false)));
        scenes.put("on-the-spot", picture("0.1", "0.1", spot("0", "0", true, false)));
        return scenes;
    }

    private static PositionPicture picture(String zone, String allowed, PositionPicture.Axis... spots) {
        return new PositionPicture(mm(zone), mm(allowed), List.of(spots), NOTES, "Position.");
    }

    private static PositionPicture.Axis spot(String x, String y, boolean decides, boolean sameAxis) {
        return new PositionPicture.Axis(mm(x), mm(y), decides, sameAxis);
    }

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    static Stream<Arguments> everySceneAndFrame() {
        return SCENES.entrySet().stream().flatMap(scene -> Frames.sheets().entrySet().stream()
                .map(frame -> Arguments.of(scene.getKey(), frame.getKey(), scene.getValue(), frame.getValue())));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void nothingLiesOnAnythingOrOutside(String scene, String size, PositionPicture picture, Frame frame) {
        assertEquals(List.of(), RecordingPen.of(picture, frame).faults(frame));
    }

    @Test
    void inEveryRoomOfTheRunScreenNothingLiesOnAnythingOrOutside() {
        Map<String, Frame> rooms = new LinkedHashMap<>(Frames.rooms());
        rooms.putAll(Frames.low());
        SCENES.forEach((scene, picture) -> rooms.forEach((room, frame) ->
                assertEquals(List.of(), RecordingPen.of(picture, frame).faults(frame), () -> scene + " " + room)));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void howFarItIsOffIsWritten(String scene, String size, PositionPicture picture, Frame frame) {
        List<String> texts = RecordingPen.of(picture, frame).texts();
        assertTrue(String.join(" ", texts).contains("hole 2, exit: position 0.116"), texts::toString);
    }

    /** 0.05 to the right and 0.03 down in a zone of 0.13: to one scale with its circle. */
    @Test
    void anAxisLiesInItsZoneTrueToScale() {
        RecordingPen pen = RecordingPen.of(SCENES.get("inside"), SHEET);
        Shape.Circle outer = circles(pen, Role.LINE).get(0);
        Shape.Circle dot = circles(pen, Role.ACCENT).get(0);
        double scale = outer.radius() / 0.065;
        assertEquals(0.05 * scale, dot.centre().x() - outer.centre().x(), 1e-6);
        assertEquals(0.03 * scale, dot.centre().y() - outer.centre().y(), 1e-6);
        assertEquals(0.05 * scale, circles(pen, Role.LINE).get(1).radius(), 1e-6);
    }

    @Test
    void whatLiesTooFarOutIsAnArrowAtTheEdge() {
        RecordingPen pen = RecordingPen.of(SCENES.get("far-out"), SHEET);
        assertEquals(List.of(), circles(pen, Role.ACCENT));
        assertTrue(circles(pen, Role.LINE).get(0).radius() > 50);
    }

    private static List<Shape.Circle> circles(RecordingPen pen, Role role) {
        return pen.drawnIn(role).stream()
                .map(mark -> mark.shape())
                .filter(Shape.Circle.class::isInstance)
                .map(Shape.Circle.class::cast)
                .toList();
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void picturesAreSavedToBeLookedAt(String scene, String size, PositionPicture picture, Frame frame) {
        assertTrue(Sheets.inked(sheets.save("position-" + scene + "-" + size, picture, frame, Palette.DAY)) > 1000);
        assertTrue(Sheets.inked(sheets.save("position-" + scene + "-" + size, picture, frame, Palette.NIGHT)) > 1000);
    }
}
