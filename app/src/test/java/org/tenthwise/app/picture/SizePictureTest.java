package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.ui.picture.Sheets;
import org.tenthwise.model.words.Words;

class SizePictureTest {

    private static final Frame SHEET = Frame.screen(652, 452, 1);

    private final Sheets sheets = new Sheets();

    static Stream<Arguments> everySceneAndFrame() {
        return SizeScenes.all().entrySet().stream().flatMap(scene -> Frames.sheets().entrySet().stream()
                .map(frame -> Arguments.of(scene.getKey(), frame.getKey(), scene.getValue(), frame.getValue())));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void nothingLiesOnAnythingOrOutside(String scene, String size, SizePicture picture, Frame frame) {
        assertEquals(List.of(), RecordingPen.of(picture, frame).faults(frame));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void limitsTheSizeJudgedAndTheNextCutAreWritten(String scene, String size, SizePicture picture, Frame frame) {
        List<String> texts = RecordingPen.of(picture, frame).texts();
        picture.lower().ifPresent(limit -> assertTrue(texts.contains(limit.figures()), texts::toString));
        picture.upper().ifPresent(limit -> assertTrue(texts.contains(limit.figures()), texts::toString));
        picture.judged().ifPresent(judged -> assertTrue(texts.contains(judged.figures()), texts::toString));
        picture.cut()
                .ifPresentOrElse(
                        cut -> assertTrue(texts.contains(cut.figures()), texts::toString), () -> picture.distance()
                                .filter(distance -> distance.length().signum() > 0)
                                .ifPresent(
                                        distance -> assertTrue(texts.contains(distance.figures()), texts::toString)));
    }

    /** A plate over the free end would break the part open there. */
    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void noDiameterLiesOnTheFreeEndOfAShaft(String scene, String size, SizePicture picture, Frame frame) {
        RecordingPen pen = RecordingPen.of(picture, frame);
        List<Box> ends = pen.drawnIn(Role.LINE).stream()
                .filter(mark -> mark.width() > 2)
                .map(mark -> mark.shape().bounds())
                .filter(line -> line.width() < 0.01)
                .toList();
        assertEquals(
                List.of(),
                pen.lettered().stream()
                        .filter(written -> written.text().startsWith("Ø"))
                        .filter(written -> ends.stream()
                                .anyMatch(end -> end.meets(written.box().grown(2))))
                        .map(RecordingPen.Lettered::text)
                        .toList());
    }

    /** Before a cut one wants the size that the last one left, and sees what the cut did to it. */
    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneInEveryRoom")
    void whatTheLastCutCameToIsWrittenInItsColumn(String scene, String size, SizePicture picture, Frame frame) {
        List<String> earlier = picture.columns().stream()
                .filter(column -> column.kind() == SizePicture.Kind.EARLIER)
                .map(column -> column.size().orElseThrow().figures())
                .toList();
        List<String> written = RecordingPen.of(picture, frame).texts().stream()
                .filter(earlier::contains)
                .toList();
        assertEquals(earlier.subList(earlier.size() - written.size(), earlier.size()), written);
        assertFalse(written.isEmpty());
    }

    static Stream<Arguments> everySceneInEveryRoom() {
        return Stream.of("bore-cut-again", "bore-third-cut", "outside-cut-again")
                .flatMap(scene -> Frames.rooms().entrySet().stream()
                        .filter(frame -> frame.getValue().height()
                                >= 110 * frame.getValue().textScale())
                        .map(frame -> Arguments.of(
                                scene, frame.getKey(), SizeScenes.all().get(scene), frame.getValue())));
    }

    static Stream<Arguments> everySceneOnALowSheet() {
        return SizeScenes.all().entrySet().stream().flatMap(scene -> Frames.low().entrySet().stream()
                .map(frame -> Arguments.of(scene.getKey(), frame.getKey(), scene.getValue(), frame.getValue())));
    }

    /** Where there is no room for everything, what can be read in the sentence gives way, never a size. */
    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneOnALowSheet")
    void aLowSheetWritesTheLimitsAndTheSizeJudgedAboveOneAnother(
            String scene, String size, SizePicture picture, Frame frame) {
        RecordingPen pen = RecordingPen.of(picture, frame);
        assertEquals(List.of(), pen.faults(frame));
        List<SizePicture.Sized> sizes = Stream.of(picture.upper(), picture.lower(), picture.judged())
                .flatMap(Optional::stream)
                .sorted((one, other) -> other.size().compareTo(one.size()))
                .toList();
        List<Double> heights = sizes.stream()
                .map(wanted -> pen.lettered().stream()
                        .filter(text -> text.text().equals(wanted.figures()))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(wanted + " is missing from " + pen.texts()))
                        .box()
                        .centreY())
                .toList();
        for (int i = 1; i < sizes.size(); i++) {
            assertTrue(
                    sizes.get(i).size().equals(sizes.get(i - 1).size()) || heights.get(i) > heights.get(i - 1),
                    sizes + " at " + heights);
        }
        sheets.save("size-" + scene + "-" + size, picture, frame, Palette.DAY);
    }

    /** A letter at the strip that the section lacks would magnify a spot nobody finds. */
    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void theSpotThatTheStripMagnifiesIsLetteredInTheSectionToo(
            String scene, String size, SizePicture picture, Frame frame) {
        List<String> texts = RecordingPen.of(picture, frame).texts();
        assertTrue(!texts.contains(SizePicture.DETAIL + " ") || texts.contains(SizePicture.DETAIL), texts::toString);
    }

    @Test
    void metalIsHatchedAboveABoreAndBelowAnOutside() {
        StripScale bore = strip("bore-pass").scale();
        assertTrue(bore.y(DemoShapes.mm("30.021")) < bore.y(DemoShapes.mm("30.000")));
        assertTrue(SizeScenes.all().get("bore-pass").metalAbove());
        assertTrue(!SizeScenes.all().get("outside-cut-again").metalAbove());
        assertTrue(RecordingPen.of(SizeScenes.all().get("bore-pass"), SHEET)
                        .drawnIn(Role.HATCH)
                        .size()
                > 40);
    }

    @Test
    void theStripIsTrueToScale() {
        StripScale scale = strip("bore-pass").scale();
        double tolerance = scale.y(DemoShapes.mm("30.000")) - scale.y(DemoShapes.mm("30.021"));
        double margin = scale.y(DemoShapes.mm("30.015")) - scale.y(DemoShapes.mm("30.021"));
        assertEquals(6.0 / 21, margin / tolerance, 1e-9);
    }

    /** The dimension of the distance ends at the reading and at the limit. */
    @Test
    void theDistanceIsADimensionBetweenReadingAndLimit() {
        StripScale scale = strip("bore-pass").scale();
        List<Box> upright = RecordingPen.of(SizeScenes.all().get("bore-pass"), SHEET).drawnIn(Role.LINE).stream()
                .filter(mark -> mark.width() == Stroke.THIN.width())
                .map(mark -> mark.shape().bounds())
                .toList();
        assertTrue(
                upright.stream()
                        .anyMatch(line -> line.width() < 0.01
                                && Math.abs(line.top() - scale.y(DemoShapes.mm("30.021"))) < 0.01
                                && Math.abs(line.bottom() - scale.y(DemoShapes.mm("30.015"))) < 0.01),
                upright::toString);
    }

    /** Depths 0.0007 apart are no depth of 0.0007. */
    @ParameterizedTest
    @ValueSource(strings = {"depth-spread", "bore-spread", "outside-spread"})
    void howFarReadingsLieApartIsWrittenOnTheStripAloneNotAsASizeOfThePart(String scene) {
        SizePicture picture = SizeScenes.all().get(scene);
        String figure = picture.judged().orElseThrow().figures();
        List<RecordingPen.Lettered> written = RecordingPen.of(picture, SHEET).lettered().stream()
                .filter(text -> text.text().endsWith(figure))
                .toList();
        assertEquals(1, written.size(), written::toString);
        assertTrue(written.get(0).box().left() > 652 / 2.0, written::toString);
    }

    @Test
    void stockAndGuardBandAreHatchedInTheirOwnColours() {
        assertTrue(RecordingPen.of(SizeScenes.all().get("outside-cut-again"), SHEET)
                        .drawnIn(Role.CUTFILL)
                        .size()
                > 10);
        assertTrue(RecordingPen.of(SizeScenes.all().get("bore-guarded"), SHEET)
                        .drawnIn(Role.UNPROVEN)
                        .size()
                > 10);
        assertTrue(RecordingPen.of(SizeScenes.all().get("bore-pass"), SHEET)
                .drawnIn(Role.UNPROVEN)
                .isEmpty());
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void picturesAreSavedToBeLookedAt(String scene, String size, SizePicture picture, Frame frame) {
        assertTrue(Sheets.inked(sheets.save("size-" + scene + "-" + size, picture, frame, Palette.DAY)) > 1000);
        assertTrue(Sheets.inked(sheets.save("size-" + scene + "-" + size, picture, frame, Palette.NIGHT)) > 1000);
    }

    private static Strip strip(String scene) {
        SizePicture picture = SizeScenes.all().get(scene);
        Drawing drawing = new Drawing(new NullPen(), new TextMetrics(Words.ENGLISH), SHEET);
        return new Strip(picture, drawing, SHEET.box(), StripLane.width(picture, drawing), true);
    }
}
