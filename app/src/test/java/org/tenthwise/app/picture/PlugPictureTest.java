package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.text.Words;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.PlugFinding;

class PlugPictureTest {

    private static final Frame SHEET = Frame.screen(652, 452, 1);

    @Test
    void thereIsPlayBetweenAPlugAndABiggerBore() {
        Box plug = plug("LG-2207-C-pass");
        assertTrue(gap("LG-2207-C-pass") > 2);
        assertTrue(plug.height() > 50);
    }

    @Test
    void aPlugBiggerThanItsBoreReachesIntoTheMetal() {
        assertTrue(gap("WB-118-B-fail") < 0);
    }

    @Test
    void boreAndPlugAndWhatTheHandFeltAreWritten() {
        List<String> texts = pen("LG-2207-C-fail").texts();
        assertTrue(texts.stream().anyMatch(text -> text.startsWith("bore 30.0")), texts::toString);
        assertTrue(texts.stream().anyMatch(text -> text.startsWith("plug ")), texts::toString);
        assertTrue(texts.contains("does not enter"), texts::toString);
    }

    @Test
    void bothEndsOfThePlayAreColumnsOfTheStrip() {
        DemoRun run = DemoRun.of("LG-2207-C-pass");
        PlugPicture picture = (PlugPicture) new Pictures(Words.of(Locale.ENGLISH)).of(run.plan(), line(run)).orElseThrow();
        PlugFinding finding = (PlugFinding) line(run).finding();
        assertEquals(List.of(finding.clearance().orElseThrow().least(), finding.clearance().orElseThrow().greatest()),
                picture.strip().columns().stream().map(column -> column.size().orElseThrow().size()).toList());
    }

    private static Line line(DemoRun run) {
        return run.sheet().lines().stream().filter(line -> line.finding() instanceof PlugFinding).findFirst().orElseThrow();
    }

    private static RecordingPen pen(String sample) {
        DemoRun run = DemoRun.of(sample);
        return RecordingPen.of(new Pictures(Words.of(Locale.ENGLISH)).of(run.plan(), line(run)).orElseThrow(), SHEET);
    }

    /** The only outline in the accent that comes back to its start. */
    private static Box plug(String sample) {
        return pen(sample).drawnIn(Role.ACCENT).stream().filter(mark -> mark.width() > 0)
                .filter(mark -> mark.shape() instanceof Shape.Chain chain && chain.closed()).findFirst().orElseThrow().shape().bounds();
    }

    /** From the inside of the upper wall to the plug. */
    private static double gap(String sample) {
        Box wall = pen(sample).drawnIn(Role.LINE).stream().filter(mark -> mark.width() == Stroke.OUTLINE.width())
                .map(mark -> mark.shape().bounds()).filter(box -> box.height() > 10 && box.width() > 10).findFirst().orElseThrow();
        return plug(sample).top() - wall.bottom();
    }
}
