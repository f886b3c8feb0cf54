package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.Outline;

/** What is drawn is what the outline has, and nothing where it has nothing. */
class FeaturePictureTest {

    private static final Frame SHEET = Frame.screen(652, 452, 1);

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # run,         step, drawn as,    which is
            LG-2207-C-pass, 7,   Turned,      a collar
            LG-2207-C-pass, 9,   Turned,      an outside behind it
            LG-2207-C-pass, 10,  Along,       a shoulder
            LG-2207-C-pass, 12,  Along,       the floor of a bore
            LG-2207-C-pass, 13,  Turned,      a blind bore
            LG-2207-C-pass, 18,  Along,       a deep drilled hole
            LG-2207-C-pass, 20,  Turned,      the crest of a thread
            LG-2207-C-pass, 22,  ThreadDepth, the depth of a thread
            LG-2207-C-pass, 26,  InPocket,    the width of a pocket
            LG-2207-C-pass, 27,  PocketFloor, the depth of a pocket
            LG-2207-C-pass, 28,  InPocket,    the length of a pocket
            LG-2207-C-pass, 29,  Along,       the end of a pocket
            LG-2207-C-pass, 31,  Along,       the edge of a cross hole
            LG-2207-C-pass, 33,  Along,       a length over all
            LG-2207-C-pass, 34,  Along,       the width of a collar
            WB-118-B-pass,  6,   Turned,      a counterbore
            WB-118-B-pass,  7,   Part,        how even a floor is
            WB-118-B-pass,  8,   Along,       the depth of a counterbore
            WB-118-B-pass,  13,  Turned,      a through bore
            WB-118-B-pass,  21,  Turned,      the root of a thread
            WB-118-B-pass,  23,  Along,       the length of a thread
            WB-118-B-pass,  27,  Along,       the width of a flange
            """)
    void theFeatureDrawnIsTheFeature(String sample, int step, String drawnAs) {
        SizePicture picture = (SizePicture) DemoRun.of(sample).picture(step);
        assertEquals(drawnAs, picture.beside().getClass().getSimpleName());
    }

    /** Where the outline has nothing as large as the limits say, it is not made to look as if it had. */
    @ParameterizedTest
    @CsvSource({"30, 15.0, true, false", "30, 30.02, true, true", "48, 60, false, false", "36, 40, false, false"})
    void whatTheOutlineDoesNotHaveIsNotTakenFromIt(String mark, String size, boolean isBore, boolean found) {
        Outline outline = DemoRun.of("LG-2207-C-pass").plan().outline().orElseThrow();
        assertEquals(
                found,
                TurnedStretch.of(DemoShapes.mark("150", mark), outline, isBore, DemoShapes.mm(size))
                        .isPresent());
    }

    /** Between the shoulder at 104 and the face at 166 there are 62, and no edge lies 63 from the shoulder. */
    @ParameterizedTest
    @CsvSource({"62.05, true", "63, false"})
    void aLengthTheOutlineDoesNotHaveIsDrawnBetweenNoTwoFaces(String length, boolean found) {
        Outline outline = DemoRun.of("LG-2207-C-pass").plan().outline().orElseThrow();
        assertEquals(
                found,
                OutlineSpan.of(DemoShapes.mark("108", "60"), outline, DemoShapes.mm(length))
                        .isPresent());
    }

    /**
     * A bore that is open where a tool comes in, with solid metal behind; one that goes on narrower, out of a wider
     * one.
     */
    @Test
    void whatLiesBeforeAndBehindABoreIsThatOfTheOutline() {
        TurnedStretch blind = stretch("LG-2207-C-pass", 13);
        assertEquals(Optional.empty(), blind.front());
        assertEquals(Optional.of(0.0), blind.back());
        assertEquals(46, blind.length(), 1e-9);
        assertEquals(48, blind.outside(), 1e-9);
        TurnedStretch stepped = stretch("WB-118-B-pass", 10);
        assertEquals(1.9 * 25.4, stepped.front().orElseThrow(), 1e-9);
        assertEquals(0.75 * 25.4, stepped.back().orElseThrow(), 1e-9);
        TurnedStretch collar = stretch("LG-2207-C-pass", 7);
        assertEquals(
                Set.of(40.0, 48.0),
                Set.of(collar.front().orElseThrow(), collar.back().orElseThrow()));
    }

    private static TurnedStretch stretch(String sample, int step) {
        return ((SizePicture) DemoRun.of(sample).picture(step)).stretch().orElseThrow();
    }

    /** The angles of a bore stand in its wall or in its opening, in any room; never over the line of its floor. */
    @Test
    void noAngleIsWrittenOverTheFloorOfABore() {
        Picture bore = unread((SizePicture) DemoRun.of("LG-2207-C-pass").picture(13));
        Frames.rooms().forEach((room, frame) -> {
            RecordingPen pen = RecordingPen.of(bore, frame);
            List<Box> upright = pen.drawnIn(Role.LINE).stream()
                    .filter(mark -> mark.width() > Stroke.THIN.width())
                    .map(mark -> mark.shape().bounds())
                    .filter(box -> box.width() < 0.01)
                    .toList();
            pen.lettered().stream()
                    .filter(text -> text.text().endsWith("°"))
                    .forEach(text -> assertTrue(
                            upright.stream().noneMatch(text.box()::meets),
                            () -> room + ": " + text + " on " + upright));
        });
    }

    private static SizePicture unread(SizePicture read) {
        List<SizePicture.ReadingColumn> missing = read.columns().stream()
                .filter(column -> column.kind() == SizePicture.Kind.TAKEN)
                .map(column -> new SizePicture.ReadingColumn(
                        SizePicture.Kind.MISSING,
                        column.label(),
                        column.group(),
                        Optional.empty(),
                        false,
                        column.depth(),
                        column.angle()))
                .toList();
        return new SizePicture(
                read.feature(),
                read.unit(),
                read.lower(),
                read.upper(),
                read.guardBand(),
                missing,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                read.isHeld(),
                read.beside(),
                read.said(),
                read.spoken());
    }

    /** The shoulder is 62 from the face: as far from it on the sheet as 62 to the length shown. */
    @Test
    void aLengthIsDrawnTrueToScaleBetweenItsTwoFaces() {
        SizePicture.Beside.Along along = (SizePicture.Beside.Along)
                ((SizePicture) DemoRun.of("LG-2207-C-pass").picture(10)).beside();
        assertEquals(DemoShapes.mm("104"), along.span().feature());
        assertEquals(DemoShapes.mm("166"), along.span().reference());
        RecordingPen pen = RecordingPen.of(DemoRun.of("LG-2207-C-pass").picture(10), SHEET);
        Box face = pen.drawnIn(Role.ACCENT).stream()
                .filter(mark -> mark.width() == Stroke.READ.width())
                .map(mark -> mark.shape().bounds())
                .filter(box -> box.width() == 0)
                .findFirst()
                .orElseThrow();
        double perMillimetre = face.height() / ((70 - 48) / 2.0);
        assertTrue(
                pen.drawnIn(Role.LINE).stream()
                        .map(mark -> mark.shape().bounds())
                        .anyMatch(line ->
                                line.width() == 0 && Math.abs(line.left() - face.left() - 62 * perMillimetre) < 0.5),
                "no face 62 further on");
    }

    /** The free end of the barrel, 6 from the flange: on the sheet the last upright edge. */
    @Test
    void aLengthOverAllLightsTheEndItIsReadTo() {
        RecordingPen pen = RecordingPen.of(DemoRun.of("WB-118-B-pass").picture(29), SHEET);
        List<Box> lit = pen.drawnIn(Role.ACCENT).stream()
                .map(mark -> mark.shape().bounds())
                .filter(box -> box.width() == 0)
                .toList();
        double end = pen.drawnIn(Role.HATCH).stream()
                .mapToDouble(mark -> mark.shape().bounds().right())
                .filter(x -> x < lit.get(0).right() + 1)
                .max()
                .orElseThrow();
        assertEquals(1, lit.size());
        assertEquals(end, lit.get(0).right(), 3);
    }

    /** Whether the metal of a length lies above its surface or below is known only where the plan lets it be cut. */
    @Test
    void theStripOfALengthThatIsNotCutShowsNoMetal() {
        assertTrue(hatchedRightOf("WB-118-B-pass", 29).isEmpty());
        assertFalse(hatchedRightOf("LG-2207-C-pass", 10).isEmpty());
    }

    private static List<RecordingPen.Drawn> hatchedRightOf(String sample, int step) {
        RecordingPen pen = RecordingPen.of(DemoRun.of(sample).picture(step), SHEET);
        double strip = pen.lettered().stream()
                .filter(text -> text.text().startsWith("1 line"))
                .findFirst()
                .orElseThrow()
                .box()
                .left();
        return pen.drawnIn(Role.HATCH).stream()
                .filter(mark -> mark.shape().bounds().left() > strip)
                .toList();
    }

    @Test
    void withoutAnOutlineTheStripStandsAlone() {
        Picture alone = DemoRun.of("LG-2207-C-pass").withoutOutline(10);
        assertEquals(SizePicture.Beside.NOTHING, ((SizePicture) alone).beside());
        RecordingPen pen = RecordingPen.of(alone, SHEET);
        assertTrue(pen.texts().containsAll(List.of("62.05", "61.95", "62.02")), pen.texts()::toString);
        assertEquals(List.of(), pen.faults(SHEET));
        assertEquals(
                1,
                pen.lettered().stream()
                        .filter(text ->
                                text.role() == Role.ACCENT && text.text().equals("62.02"))
                        .count());
    }

    /**
     * The point of a drill of 118° is as long as its radius over tan 59°, and lies beyond the depth of the full
     * diameter.
     */
    @Test
    void aDrilledHoleIsDrawnWithItsPoint() {
        RecordingPen pen = RecordingPen.of(DemoRun.of("LG-2207-C-pass").picture(18), SHEET);
        Box floor = pen.drawnIn(Role.ACCENT).stream()
                .filter(mark -> mark.width() == Stroke.READ.width())
                .map(mark -> mark.shape().bounds())
                .filter(box -> box.width() == 0)
                .findFirst()
                .orElseThrow();
        assertTrue(
                pen.drawnIn(Role.LINE).stream()
                        .map(mark -> mark.shape().bounds())
                        .anyMatch(line -> Math.abs(line.left() - floor.left()) < 0.01
                                && Math.abs(line.bottom() - floor.bottom()) < 0.01
                                && Math.abs(line.width() - floor.height() / Math.tan(Math.toRadians(59))) < 0.01),
                "no point beyond the floor");
    }
}
