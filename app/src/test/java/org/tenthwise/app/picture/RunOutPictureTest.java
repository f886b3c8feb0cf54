package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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

class RunOutPictureTest {

    private static final Frame SHEET = Frame.screen(652, 452, 1);

    private final Sheets sheets = new Sheets();

    /** The room on the run screen of the reference tablet, and with large text. */
    private static final Frame RUN = Frame.screen(646, 313, 1);

    private static final Frame RUN_LARGE = Frame.screen(600, 285, 1.5);
    private static final Frame TOO_SMALL = Frame.screen(420, 110, 1.5);

    static Stream<Arguments> everySceneAndFrame() {
        Map<String, Frame> frames = new LinkedHashMap<>(Frames.sheets());
        frames.put("run", RUN);
        frames.put("run-150", RUN_LARGE);
        frames.put("run-small", Frame.screen(668, 250, 1.5));
        return RunOutScenes.all().entrySet().stream().flatMap(scene -> frames.entrySet().stream()
                .map(frame -> Arguments.of(scene.getKey(), frame.getKey(), scene.getValue(), frame.getValue())));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void nothingLiesOnAnythingOrOutside(String scene, String size, RunOutPicture picture, Frame frame) {
        RecordingPen pen = RecordingPen.of(picture, frame);
        assertEquals(List.of(), pen.faults(frame));
        List<Box> jaws = jaws(pen);
        assertEquals(RunOutMarks.gripping(picture).size(), jaws.size());
        for (Box jaw : jaws) {
            assertTrue(jaws.stream().noneMatch(other -> other != jaw && other.meets(jaw)), jaws::toString);
            assertTrue(
                    pen.lettered().stream()
                            .noneMatch(text ->
                                    text.text().length() > 1 && text.box().meets(jaw)),
                    pen.texts()::toString);
        }
    }

    private static List<Box> jaws(RecordingPen pen) {
        return pen.drawn().stream()
                .filter(mark -> mark.width() == 0 && (mark.role() == Role.PAPER || mark.role() == Role.ACCENTFILL))
                .map(mark -> mark.shape().bounds())
                .toList();
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void theLimitAndEveryMoveAreWritten(String scene, String size, RunOutPicture picture, Frame frame) {
        List<String> texts = RecordingPen.of(picture, frame).texts();
        assertTrue(texts.contains("limit 0.020"), texts::toString);
        picture.movement()
                .ifPresent(movement -> assertTrue(
                        texts.contains(movement.words())
                                || texts.containsAll(List.of(movement.words().split(" "))),
                        texts::toString));
        boolean roomForLoosening = frame.textScale() == 1;
        picture.jaws().stream()
                .filter(jaw -> roomForLoosening || jaw.in().signum() > 0)
                .map(RunOutPicture.Jaw::words)
                .filter(words -> !words.isEmpty())
                .forEach(words -> assertTrue(
                        texts.contains(words) || texts.containsAll(List.of(words.split(" "))),
                        () -> words + " is missing from " + texts));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void theTableGivesWayFirstThenTheNotesThenHowFarOffCentre(
            String scene, String size, RunOutPicture picture, Frame frame) {
        List<String> texts = RecordingPen.of(picture, frame).texts();
        boolean table = picture.readings().stream()
                .filter(RunOutPicture.Reading::extreme)
                .allMatch(reading -> texts.contains(reading.angleWords()));
        boolean notes = texts.containsAll(picture.notes());
        boolean offCentre =
                picture.fit().map(fit -> texts.containsAll(fit.words())).orElse(true);
        boolean ringOutgrowsTable = scene.equals("fail-4-jaws-at-45") && frame.equals(RUN); // no jaw above or under it
        assertTrue(table || ringOutgrowsTable || frame.textScale() > 1 || frame.width() < 500, texts::toString);
        assertTrue(notes || !table || picture.readings().isEmpty(), texts::toString);
        assertTrue(offCentre || !notes || picture.notes().isEmpty(), texts::toString);
    }

    static Stream<Arguments> everyFrame() {
        return everySceneAndFrame()
                .filter(scene -> scene.get()[0].equals("sweep"))
                .map(scene -> Arguments.of(scene.get()[1], scene.get()[3]));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everyFrame")
    void twoSectionsStandSideBySideUnderTheirNames(String size, Frame frame) {
        RunOutSections picture = RunOutScenes.sections();
        RecordingPen pen = RecordingPen.of(picture, frame);
        assertEquals(List.of(), pen.faults(frame));
        assertTrue(pen.texts().containsAll(List.of("near the jaws, 20", "far out, 150")), pen.texts()::toString);
        assertEquals(2, pen.texts().stream().filter("limit 0.020"::equals).count(), pen.texts()::toString);
        boolean moves = Stream.of("in 0.018", "in 0.006", "mallet 0.062")
                .allMatch(move -> pen.texts().stream().anyMatch(text -> text.contains(move))
                        || pen.texts().containsAll(List.of(move.split(" "))));
        boolean rings = pen.drawnIn(Role.ZONE).size() == 2;
        assertTrue(rings || moves, pen.texts()::toString);
        assertTrue(moves || frame.width() < 500 || frame.height() < 250, pen.texts()::toString);
        assertTrue(Sheets.inked(sheets.save("run-out-sections-" + size, picture, frame, Palette.DAY)) > 1000);
        assertTrue(Sheets.inked(sheets.save("run-out-sections-" + size, picture, frame, Palette.NIGHT)) > 1000);
    }

    /** Two lines of moves and three of remarks leave this much over them: the rings are needed most there. */
    @Test
    void besideTheWholeAdviceBothRingsAreDrawnWithTheJawsThatGoIn() {
        Frame besideAdvice = Frame.screen(652, 245, 1);
        RecordingPen pen = RecordingPen.of(RunOutScenes.sections(), besideAdvice);
        assertEquals(2, pen.drawnIn(Role.ZONE).size());
        assertTrue(pen.texts().containsAll(List.of("in 0.018", "in", "0.006", "mallet 0.062")), pen.texts()::toString);
        assertEquals(List.of(), pen.faults(besideAdvice));
    }

    /** With large text the advice leaves less than the rings need beside large words. */
    @Test
    void largeTextGivesWayBeforeTheRingsDo() {
        Frame room = Frame.screen(684, 246, 1.5);
        RecordingPen pen = RecordingPen.of(RunOutScenes.sections(), room);
        assertEquals(2, pen.drawnIn(Role.ZONE).size(), pen.texts()::toString);
        assertEquals(List.of(), pen.faults(room));
    }

    @Test
    void lettersAreAsLargeAsTheScreenWantsThemWhereThereIsRoom() {
        RecordingPen pen = RecordingPen.of(RunOutScenes.sections(), Frame.screen(1200, 900, 1.5));
        assertEquals(
                20 * 1.5,
                pen.lettered().stream()
                        .filter(text -> text.text().equals("limit 0.020"))
                        .findFirst()
                        .orElseThrow()
                        .size(),
                1e-9);
    }

    /** Outer limit circle and the jaws above and under it fill the height; the readings stand beside them. */
    @Test
    void onTheRunScreenTheRingTakesNearlyTheWholeHeight() {
        RecordingPen pen = RecordingPen.of(RunOutScenes.all().get("fail-4-jaws"), RUN);
        double ring = pen.drawnIn(Role.ZONE).get(0).shape().bounds().height();
        assertTrue(ring > 0.65 * RUN.height(), () -> "The ring is %.0f across".formatted(ring));
        assertTrue(
                pen.texts().containsAll(List.of("315\u00b0", "\u22120.009", "out of round 0.002", "off centre")),
                pen.texts()::toString);
    }

    @Test
    void withLargeTextTheRingKeepsMoreThanHalfTheHeight() {
        RecordingPen pen = RecordingPen.of(RunOutScenes.all().get("fail-4-jaws"), RUN_LARGE);
        double ring = pen.drawnIn(Role.ZONE).get(0).shape().bounds().height();
        assertTrue(ring > 0.5 * RUN_LARGE.height(), () -> "The ring is %.0f across".formatted(ring));
    }

    @Test
    void whereARingWouldBeASpeckThereAreWordsOnly() {
        RecordingPen pen = RecordingPen.of(RunOutScenes.all().get("fail-4-jaws"), TOO_SMALL);
        assertEquals(List.of("run-out 0.037", "limit 0.020", "jaw 1 in 0.018", "jaw 2 in 0.006"), pen.texts());
        assertEquals(List.of(), pen.drawn());
        assertEquals(List.of(), pen.faults(TOO_SMALL));
    }

    /** Of three jaws one needs no shim, and nothing is said there. */
    @Test
    void ofThreeJawsTwoAreShimmedAndOneIsSilent() {
        List<String> texts =
                RecordingPen.of(RunOutScenes.all().get("fail-3-jaws"), RUN).texts();
        assertEquals(2, texts.stream().filter(text -> text.startsWith("shim")).count(), texts::toString);
        assertFalse(texts.contains("shim 0.000"));
    }

    /**
     * The reading nearest the fitted circle lies where it says: 0 at 0° and −0.037 at 180° are 0.037 apart on radius.
     */
    @Test
    void readingsLieToTheScaleOfTheRing() {
        RecordingPen pen = RecordingPen.of(RunOutScenes.all().get("fail-4-jaws"), SHEET);
        List<Shape.Circle> dots = pen.drawnIn(Role.INK).stream()
                .filter(mark -> mark.shape() instanceof Shape.Circle)
                .map(mark -> (Shape.Circle) mark.shape())
                .toList();
        List<Double> rims = pen.drawnIn(Role.LINE).stream()
                .filter(mark -> mark.width() == 3 && mark.shape() instanceof Shape.Circle)
                .map(mark -> ((Shape.Circle) mark.shape()).radius())
                .toList();
        Point centre = ((Shape.Circle) pen.drawnIn(Role.ZONE).get(0).shape()).centre();
        double swing =
                dots.get(0).centre().distanceTo(centre) - dots.get(4).centre().distanceTo(centre);
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
