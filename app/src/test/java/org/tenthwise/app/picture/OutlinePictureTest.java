package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.Mark;

class OutlinePictureTest {

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # width, height, text
            698,     290,    1
            698,     290,    1.5
            440,     300,    1
            1000,    260,    1.5
            """)
    void numbersLieApartAndInsideTheFrame(double width, double height, double text) {
        Frame frame = Frame.screen(width, height, text);
        RecordingPen pen = RecordingPen.of(numbered(), frame);
        assertEquals(List.of(), pen.faults(frame));
        assertEquals(10, pen.lettered().size());
    }

    @Test
    void theUpperHalfIsHatchedAndTheLowerIsNot() {
        RecordingPen pen = RecordingPen.of(plain(Optional.empty()), Frame.screen(400, 260, 1));
        List<RecordingPen.Drawn> hatch = pen.drawnIn(Role.HATCH);
        assertTrue(hatch.size() > 20);
        assertTrue(hatch.stream().allMatch(line -> line.shape().bounds().bottom() <= 130.01));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # at, diameter, left, right   millimetres of the feature that is drawn in the accent
            90,   30,       58,   104
            88,   24,       78,   98
            84,   48,       72,   104
            30,   36,       4,    53
            72,   60,       72,   72
            66,   55,       63.5, 68.5
            1,    30,       0,    0
            104,  40,       104,  104
            """)
    void theFeatureInHandIsTheNearestToItsMark(String at, String diameter, double left, double right) {
        RecordingPen pen =
                RecordingPen.of(plain(Optional.of(DemoShapes.mark(at, diameter))), Frame.screen(1064, 800, 1));
        Box accent = pen.drawnIn(Role.ACCENT).get(0).shape().bounds();
        double scale = 1040 / 104.0;
        assertEquals(left, (accent.left() - 12) / scale, 0.1);
        assertEquals(right, (accent.right() - 12) / scale, 0.1);
    }

    @Test
    void aPartKeepsItsProportions() {
        Box wide = new HalfSection(DemoShapes.carrier(), new Box(0, 0, 2000, 200)).box();
        assertEquals(104.0 / 68, wide.width() / wide.height(), 1e-9);
    }

    private static OutlinePicture numbered() {
        return new OutlinePicture(DemoShapes.carrier(), Optional.empty(), DemoShapes.carrierNumbers(), "Half section");
    }

    private static OutlinePicture plain(Optional<Mark> inHand) {
        return OutlinePicture.small(DemoShapes.carrier(), inHand, "Half section");
    }
}
