package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.words.Words;

/** A depth is drawn down to a floor where the plan says that there is one, and nowhere else. */
class DepthPictureTest {

    private static final Frame SHEET = Frame.screen(652, 452, 1);

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # run,        floors of bores and pockets,                          drilled,            shoulders, lengths,
            # threads, ends of pockets
            LG-2207-C-pass, Bore depth 46;Pocket depth,                         'Oil hole Ø8, depth', 'Shoulder 62;Thread depth;Pocket from the face;Cross hole, place;Length over all 166;Collar 14 wide'
            WB-118-B-pass,  Counterbore floor;Counterbore depth;Bore depth 2.3;Pocket depth, '',    Pocket from the face;Thread length;Flange 0.8 thick;Shoulder 3.1;Length over all 6
            """)
    void onlyAFloorIsDrawnAsOne(String sample, String floors, String drilled, String others) {
        DemoRun run = DemoRun.of(sample);
        assertEquals(floors, shownAs(run, SizePicture.Beside.CutOpen.class));
        assertEquals(drilled, shownAs(run, SizePicture.Beside.Drilled.class));
        assertEquals(others, shownAs(run, SizePicture.Beside.Part.class));
    }

    private static String shownAs(DemoRun run, Class<? extends SizePicture.Beside> beside) {
        return run.sheet().lines().stream()
                .filter(line -> line.finding() instanceof SizeFinding size
                        && size.check()
                                .asSize()
                                .filter(cut -> cut.feature() == Feature.DEPTH)
                                .isPresent())
                .filter(line ->
                        beside.isInstance(((SizePicture) run.picture(line.step().number())).beside()))
                .map(line -> line.step().name())
                .collect(Collectors.joining(";"));
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
        Picture alone = shoulderWithoutOutline();
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

    private static Picture shoulderWithoutOutline() {
        DemoRun run = DemoRun.of("LG-2207-C-pass");
        Plan plan = run.plan();
        Plan bare = new Plan(
                plan.part(),
                plan.issue(),
                plan.name(),
                plan.material(),
                plan.drawing(),
                plan.unit(),
                plan.remark(),
                plan.operations(),
                plan.steps(),
                Optional.empty(),
                plan.source(),
                plan.climate(),
                plan.lotAsked());
        Line line = run.sheet().lines().stream()
                .filter(each -> each.step().number() == 10)
                .findFirst()
                .orElseThrow();
        return new Pictures(Words.of(Locale.ENGLISH))
                .of(Sheet.of(bare, run.sheet().run()), line)
                .orElseThrow();
    }

    /**
     * The point of a drill of 118° is as long as its radius over tan 59°, and lies beyond the depth of the full
     * diameter.
     */
    @Test
    void aDrilledHoleIsDrawnWithItsPoint() {
        RecordingPen pen = RecordingPen.of(DemoRun.of("LG-2207-C-pass").picture(18), SHEET);
        List<Point> point = pen.drawn().stream()
                .filter(mark ->
                        mark.role() == Role.LINE && mark.shape() instanceof Shape.Polyline chain && !chain.closed())
                .map(mark -> ((Shape.Polyline) mark.shape()).points())
                .filter(points -> points.size() == 3
                        && points.get(0).x() == points.get(2).x()
                        && points.get(1).x() < points.get(0).x())
                .findFirst()
                .orElseThrow();
        double radius = (point.get(2).y() - point.get(0).y()) / 2;
        assertEquals(
                radius / Math.tan(Math.toRadians(59)),
                point.get(0).x() - point.get(1).x(),
                0.01);
    }
}
