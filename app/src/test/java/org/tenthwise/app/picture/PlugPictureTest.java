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
import org.tenthwise.model.plan.Answer;

/** Plugs with invented sizes; the play wanted is 0.005 to 0.035 mm, and 0.0003 to 0.0015 in. */
class PlugPictureTest {

    private static final Frame SHEET = Frame.screen(652, 452, 1);
    private static final Map<String, PlugPicture> SCENES = scenes();

    private final Sheets sheets = new Sheets();

    private static Map<String, PlugPicture> scenes() {
        Map<String, PlugPicture> scenes = new LinkedHashMap<>();
        scenes.put("enters", (PlugPicture) measured().feels(14, Answer.FREELY).picture(14));
        scenes.put("drags", (PlugPicture) measured().feels(14, Answer.WITH_DRAG).picture(14));
        scenes.put("sticks-yet-clear", (PlugPicture)
                measured().feels(14, Answer.NOT_AT_ALL).picture(14));
        scenes.put("not-offered", (PlugPicture) measured().picture(14));
        scenes.put("plug-not-measured", (PlugPicture) bore().picture(14));
        scenes.put("nothing-yet", (PlugPicture) Staged.carrier().picture(14));
        scenes.put("enters-yet-tight", (PlugPicture) DemoRun.of("WB-118-B-fail").picture(11));
        scenes.put("slack", (PlugPicture) bore().micrometer(14)
                .reads(14, "29.940", "29.930")
                .feels(14, Answer.FREELY)
                .picture(14));
        return scenes;
    }

    private static Staged bore() {
        return Staged.carrier().master(13, "30.000").atTwenty(13).reads(13, "0.015", "0.014", "0.011", "0.013");
    }

    /** Least 30.011 − 29.993, most 30.015 − 29.990. */
    private static Staged measured() {
        return bore().micrometer(14).reads(14, "29.993", "29.990");
    }

    static Stream<Arguments> everySceneAndFrame() {
        return SCENES.entrySet().stream().flatMap(scene -> Frames.sheets().entrySet().stream()
                .map(frame -> Arguments.of(scene.getKey(), frame.getKey(), scene.getValue(), frame.getValue())));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void nothingLiesOnAnythingOrOutside(String scene, String size, PlugPicture picture, Frame frame) {
        assertEquals(List.of(), RecordingPen.of(picture, frame).faults(frame));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void playAndWhatTheHandFoundAreWritten(String scene, String size, PlugPicture picture, Frame frame) {
        List<String> texts = RecordingPen.of(picture, frame).texts();
        picture.strip().columns().forEach(column -> column.size()
                .ifPresent(found -> assertTrue(texts.contains(found.figures()), texts::toString)));
        picture.hand().ifPresent(hand -> assertTrue(texts.contains(hand.words()), texts::toString));
        picture.hand()
                .flatMap(PlugPicture.Hand::contradiction)
                .ifPresent(words -> assertTrue(String.join(" ", texts).contains(words), texts::toString));
    }

    /** 0.018 and 0.025 on one scale, each between a surface of the plug and one of the bore. */
    @Test
    void leastAndMostPlayAreDimensionsTrueToScale() {
        RecordingPen pen = RecordingPen.of(SCENES.get("enters"), SHEET);
        double least = dimension(pen, "0.018");
        double most = dimension(pen, "0.025");
        assertEquals(18.0 / 25, least / most, 1e-6);
        assertTrue(plug(pen).top() > wall(pen).bottom());
        assertEquals(least, plug(pen).top() - wall(pen).bottom(), 1e-6);
    }

    @Test
    void aPlugThickerThanItsBoreReachesIntoTheMetal() {
        RecordingPen pen = RecordingPen.of(SCENES.get("enters-yet-tight"), SHEET);
        assertTrue(plug(pen).top() < wall(pen).bottom());
        assertTrue(plug(pen).left() < wall(pen).right());
        assertTrue(pen.texts().contains("hand and gauges contradict each other"));
    }

    @Test
    void aPlugThatDoesNotEnterStandsOutsideThoughThereIsPlay() {
        RecordingPen pen = RecordingPen.of(SCENES.get("sticks-yet-clear"), SHEET);
        assertTrue(plug(pen).left() > wall(pen).right());
        assertTrue(plug(pen).top() > wall(pen).bottom());
        assertTrue(pen.lettered().stream()
                .filter(text -> text.role() == Role.FAIL)
                .map(RecordingPen.Lettered::text)
                .toList()
                .containsAll(List.of("does not enter", "hand and gauges contradict each other")));
        assertTrue(SCENES.get("sticks-yet-clear").spoken().contains("Hand and gauges contradict"));
    }

    @Test
    void beforeBothAreMeasuredNothingIsDimensioned() {
        List<String> texts =
                RecordingPen.of(SCENES.get("plug-not-measured"), SHEET).texts();
        assertTrue(texts.contains("bore 30.011 to 30.015"), texts::toString);
        assertTrue(SCENES.get("plug-not-measured").strip().columns().stream()
                .allMatch(column -> column.size().isEmpty()));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void picturesAreSavedToBeLookedAt(String scene, String size, PlugPicture picture, Frame frame) {
        assertTrue(Sheets.inked(sheets.save("plug-" + scene + "-" + size, picture, frame, Palette.DAY)) > 1000);
        assertTrue(Sheets.inked(sheets.save("plug-" + scene + "-" + size, picture, frame, Palette.NIGHT)) > 1000);
    }

    /** The only outline in the accent that comes back to its start. */
    private static Box plug(RecordingPen pen) {
        return pen.drawnIn(Role.ACCENT).stream()
                .filter(mark -> mark.width() > 0)
                .filter(mark -> mark.shape() instanceof Shape.Polyline chain && chain.closed())
                .findFirst()
                .orElseThrow()
                .shape()
                .bounds();
    }

    /** The upper wall: the first thick outline of some width and height. */
    private static Box wall(RecordingPen pen) {
        return pen.drawnIn(Role.LINE).stream()
                .filter(mark -> mark.width() == Stroke.OUTLINE.width())
                .map(mark -> mark.shape().bounds())
                .filter(box -> box.height() > 10 && box.width() > 10)
                .findFirst()
                .orElseThrow();
    }

    /** Distance of the tips of the two arrow heads nearest to a figure, across. */
    private static double dimension(RecordingPen pen, String figures) {
        Box text = pen.lettered().stream()
                .filter(written -> written.text().equals(figures))
                .map(RecordingPen.Lettered::box)
                .filter(box -> box.right() < 400)
                .findFirst()
                .orElseThrow();
        List<Box> heads = pen.drawn().stream()
                .filter(mark -> mark.width() == 0 && (mark.role() == Role.LINE || mark.role() == Role.ACCENT))
                .filter(mark -> mark.shape() instanceof Shape.Polyline chain
                        && chain.points().size() == 3)
                .map(mark -> ((Shape.Polyline) mark.shape()).points().get(0))
                .map(tip -> new Box(tip.x(), tip.y(), tip.x(), tip.y()))
                .filter(tip -> Math.abs(tip.left() - text.centreX()) < 1)
                .toList();
        assertEquals(2, heads.size());
        return Math.abs(heads.get(0).top() - heads.get(1).top());
    }
}
