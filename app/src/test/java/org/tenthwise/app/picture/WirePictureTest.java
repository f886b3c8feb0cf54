package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.text.Words;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.WiresFinding;

class WirePictureTest {

    private static final Frame SHEET = Frame.screen(652, 452, 1);

    @Test
    void wiresAndGroovesHaveOneScale() {
        RecordingPen pen = pen("LG-2207-C-pass");
        Box wire = wires(pen, Role.ACCENT).get(0).shape().bounds();
        // wires 3.620 in grooves 7 apart, from the plan and the readings file
        assertEquals(7 / 3.620, (wires(pen, Role.ACCENT).get(1).shape().bounds().left() - wire.left()) / wire.width(), 0.01);
    }

    /** The dimension of the measurement goes from the outside of the upper wires to the outside of the lower one. */
    @Test
    void theMeasurementEndsAtTheWires() {
        RecordingPen pen = pen("LG-2207-C-pass");
        List<RecordingPen.Drawn> wires = wires(pen, Role.ACCENT);
        double top = wires.get(0).shape().bounds().top();
        double bottom = wires.get(2).shape().bounds().bottom();
        assertTrue(pen.drawnIn(Role.LINE).stream().map(mark -> mark.shape().bounds()).anyMatch(line -> line.width() < 0.01
                && Math.abs(line.top() - top) < 0.01 && Math.abs(line.bottom() - bottom) < 0.01));
    }

    @Test
    void aWireOnTheRootIsUnprovenAndSaysSo() {
        RecordingPen pen = pen("WB-118-B-fail");
        assertEquals(3, wires(pen, Role.UNPROVEN).size());
        assertTrue(pen.texts().contains("wire on the root"));
        assertTrue(wires(pen("WB-118-B-pass"), Role.UNPROVEN).isEmpty());
    }

    @Test
    void measurementAndPitchDiameterAreBothWritten() {
        DemoRun run = DemoRun.of("LG-2207-C-pass");
        WiresFinding finding = (WiresFinding) line(run).finding();
        List<String> texts = pen("LG-2207-C-pass").texts();
        assertTrue(texts.contains(finding.deciding().orElseThrow().reading().typed().text()), texts::toString);
        assertFalse(texts.stream().filter(text -> text.startsWith("36.")).toList().isEmpty());
    }

    private static Line line(DemoRun run) {
        return run.sheet().lines().stream().filter(line -> line.finding() instanceof WiresFinding).findFirst().orElseThrow();
    }

    private static RecordingPen pen(String sample) {
        DemoRun run = DemoRun.of(sample);
        return RecordingPen.of(new Pictures(Words.of(Locale.ENGLISH)).of(run.plan(), line(run)).orElseThrow(), SHEET);
    }

    private static List<RecordingPen.Drawn> wires(RecordingPen pen, Role role) {
        return pen.drawnIn(role).stream().filter(mark -> mark.shape() instanceof Shape.Circle && mark.width() > 0).toList();
    }
}
