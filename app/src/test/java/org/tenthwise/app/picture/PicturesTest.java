package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.ui.picture.Sheets;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.words.Words;

/** Every line of the demo runs, passing and failing, has a picture that can be drawn everywhere one is shown. */
class PicturesTest {

    private final Pictures pictures = new Pictures(Words.of(Locale.ENGLISH));
    private final Sheets sheets = new Sheets();

    @ParameterizedTest
    @ValueSource(strings = {"LG-2207-C-pass", "LG-2207-C-fail", "WB-118-B-pass", "WB-118-B-fail"})
    void everyLineOfADemoRunHasAPictureWithoutFaults(String sample) {
        DemoRun run = DemoRun.of(sample);
        for (Line line : run.sheet().lines()) {
            Picture picture = pictures.of(run.sheet(), line).orElseThrow();
            assertFalse(picture.spoken().isBlank());
            Stream.of(Frames.all(), Frames.low())
                    .forEach(frames -> frames.forEach((name, frame) -> assertEquals(
                            List.of(),
                            RecordingPen.of(picture, frame).faults(frame),
                            () -> sample + ", step " + line.step().number() + ", " + name)));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"LG-2207-C-fail", "WB-118-B-fail"})
    void picturesOfADemoRunAreSavedToBeLookedAt(String sample) {
        DemoRun run = DemoRun.of(sample);
        for (Line line : run.sheet().lines()) {
            if (line.step().check().means().isPresent()) {
                Picture picture = pictures.of(run.sheet(), line).orElseThrow();
                String name = "run-%s-%02d-".formatted(sample, line.step().number());
                assertTrue(Sheets.inked(
                                sheets.save(name + "100", picture, Frames.all().get("100"), Palette.DAY))
                        > 500);
                assertTrue(Sheets.inked(
                                sheets.save(name + "150", picture, Frames.all().get("150"), Palette.NIGHT))
                        > 500);
            }
        }
    }

    /** Nobody cuts by a run that takes nothing any more; what was read stays drawn. */
    @Test
    void onceTheRunIsClosedNoCutIsDrawn() {
        Staged boreTooSmall =
                Staged.carrier().master(13, "30.000").atTwenty(13).reads(13, "-0.105", "-0.106", "-0.107", "-0.105");
        Staged threadTooBig = Staged.carrier().wires(21, "3.620").reads(21, "41.460", "41.452", "41.455");
        assertTrue(((SizePicture) boreTooSmall.picture(13)).cut().isPresent());
        assertTrue(((WirePicture) threadTooBig.picture(21))
                .strip()
                .orElseThrow()
                .cut()
                .isPresent());
        SizePicture bore = (SizePicture) boreTooSmall.closed().picture(13);
        assertTrue(bore.cut().isEmpty());
        assertEquals(4, bore.taken().count());
        assertTrue(((WirePicture) threadTooBig.closed().picture(21))
                .strip()
                .orElseThrow()
                .cut()
                .isEmpty());
    }

    /** Four depths of about 1.0009, 0.0007 apart. */
    @Test
    void aDifferenceOfDepthsIsWrittenOnceAndNotFromTheFaceToTheFloor() {
        RecordingPen pen = RecordingPen.of(DemoRun.of("WB-118-B-pass").picture(7), Frame.screen(652, 452, 1));
        assertEquals(1, pen.texts().stream().filter("0.0007"::equals).count(), pen.texts()::toString);
    }

    /**
     * The flange is read in the jaws, which reach to the left edge, the barrel when it was let go. With an outline the
     * part goes on there as it is.
     */
    @Test
    void aDiameterThatIsReadReleasedStandsInNoJaws() {
        Frame frame = Frame.screen(652, 452, 1);
        assertTrue(RecordingPen.of(DemoRun.of("WB-118-B-pass").withoutOutline(5), frame).drawn().stream()
                .anyMatch(PicturesTest::isAtTheLeftEdge));
        assertFalse(RecordingPen.of(DemoRun.of("WB-118-B-pass").withoutOutline(26), frame).drawn().stream()
                .anyMatch(PicturesTest::isAtTheLeftEdge));
    }

    private static boolean isAtTheLeftEdge(RecordingPen.Drawn mark) {
        return mark.shape().bounds().left() < 10;
    }

    @Test
    void everyCharacteristicWithAPlaceOnTheOutlineIsNumbered() {
        Plan plan = DemoRun.of("LG-2207-C-pass").plan();
        Frame frame = Frame.print(698, 330);
        RecordingPen pen = RecordingPen.of(pictures.numbered(plan).orElseThrow(), frame);
        assertEquals(
                plan.steps().stream()
                        .filter(Step::isOfDrawing)
                        .map(Step::mark)
                        .filter(Optional::isPresent)
                        .count(),
                pen.lettered().size());
        assertEquals(List.of(), pen.faults(frame));
        sheets.save("record-outline", pictures.numbered(plan).orElseThrow(), frame, Palette.PRINT);
    }
}
