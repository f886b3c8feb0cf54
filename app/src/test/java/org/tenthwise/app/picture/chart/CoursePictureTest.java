package org.tenthwise.app.picture.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Palette;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.RecordingPen;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Shape;
import org.tenthwise.app.ui.picture.Sheets;

class CoursePictureTest {

    private static final Frame SHEET = Frame.screen(890, 480, 1);
    private static final Map<String, CoursePicture> ALL = Courses.all();

    private final Sheets sheets = new Sheets();

    static Stream<Arguments> everyCourseAndFrame() {
        return ALL.entrySet().stream().flatMap(course -> Courses.frames().entrySet().stream()
                .map(frame -> Arguments.of(course.getKey(), frame.getKey(), course.getValue(), frame.getValue())));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everyCourseAndFrame")
    void nothingLiesOnAnythingOrOutside(String name, String size, CoursePicture course, Frame frame) {
        assertEquals(List.of(), RecordingPen.of(course, frame).faults(frame));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everyCourseAndFrame")
    void picturesAreSavedToBeLookedAt(String name, String size, CoursePicture course, Frame frame) {
        assertTrue(Sheets.inked(sheets.save("course-" + name + "-" + size, course, frame, Palette.DAY)) > 300);
        assertTrue(Sheets.inked(sheets.save("course-" + name + "-" + size, course, frame, Palette.NIGHT)) > 300);
    }

    /** 30.012 in 30.000 to 30.021: 12 of 21 of the way from the lower limit to the upper. */
    @Test
    void aSizeLiesBetweenItsLimitsTrueToScale() {
        RecordingPen pen = RecordingPen.of(ALL.get("one"), SHEET);
        List<Double> limits = limits(pen);
        double disc = circles(pen, Role.PASS).get(0).centre().y();
        assertEquals(12.0 / 21, (limits.get(1) - disc) / (limits.get(1) - limits.get(0)), 1e-6);
        assertTrue(pen.texts().containsAll(List.of("30.000", "30.021", "30.012")), pen.texts()::toString);
    }

    private static List<Double> limits(RecordingPen pen) {
        return pen.drawn().stream()
                .filter(mark -> mark.width() == 3 && mark.role() == Role.INK && !mark.dashed())
                .map(mark -> mark.shape().bounds())
                .filter(line -> line.height() == 0 && line.width() > 100)
                .map(line -> line.top())
                .distinct()
                .sorted()
                .toList();
    }

    private static List<Shape.Circle> circles(RecordingPen pen, Role role) {
        return pen.drawnIn(role).stream()
                .map(mark -> mark.shape())
                .filter(Shape.Circle.class::isInstance)
                .map(Shape.Circle.class::cast)
                .toList();
    }

    /** No run-out lies below zero: neither is it allowed there nor has the scale a figure. */
    @Test
    void whereZeroIsBestNothingIsShadedBelowIt() {
        RecordingPen pen = RecordingPen.of(ALL.get("run-out"), SHEET);
        double none = circles(pen, Role.PASS).get(1).centre().y();
        Box zone = pen.drawnIn(Role.ZONE).get(0).shape().bounds();
        assertEquals(none, zone.bottom(), 0.5);
        assertTrue(pen.texts().stream().noneMatch(text -> text.startsWith("\u2212")), pen.texts()::toString);
    }

    /** Of one stretch behind the other: two limits, then two others. */
    @Test
    void limitsThatChangedAreSteps() {
        assertEquals(6, limits(RecordingPen.of(ALL.get("changed"), SHEET)).size());
        List<String> texts = RecordingPen.of(ALL.get("changed"), SHEET).texts();
        assertTrue(texts.containsAll(List.of("30.000", "30.021", "30.005", "30.026")), texts::toString);
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everyCourseAndFrame")
    void noLimitOfTheProcessLooksLikeATolerance(String name, String size, CoursePicture course, Frame frame) {
        RecordingPen pen = RecordingPen.of(course, frame);
        pen.drawn().stream()
                .filter(mark -> mark.dashed() && mark.role() == Role.INK)
                .forEach(mark -> assertFalse(mark.width() > 2, mark::toString));
        if (course.process().isPresent()) {
            long dashed = pen.drawn().stream()
                    .filter(mark -> mark.dashed() && mark.role() == Role.INK2)
                    .count();
            assertTrue(dashed >= 3, () -> dashed + " lines of the process");
            assertTrue(String.join(" ", pen.texts()).contains(" parts: "), pen.texts()::toString);
        }
    }

    @Test
    void aBreakEndsTheLineFromPartToPart() {
        long whole = lines(RecordingPen.of(
                Courses.course(Courses.bores(12, 16, 21, 9), ALL.get("four").allowed(), List.of()), SHEET));
        long broken = lines(RecordingPen.of(ALL.get("four"), SHEET));
        assertEquals(3, whole);
        assertEquals(2, broken);
    }

    private static long lines(RecordingPen pen) {
        return pen.drawnIn(Role.INK2).stream()
                .filter(mark -> mark.width() == 1.5 && !mark.dashed())
                .count();
    }

    @Test
    void everyBreakIsTold() {
        List<String> texts = RecordingPen.of(ALL.get("twelve"), SHEET).texts();
        assertTrue(
                texts.containsAll(List.of("edge 2, holder CR-16", "edge 3", "Setter 2", "lot 2207-4")),
                texts::toString);
    }

    /** In the picture or in its key, in every room but the lowest. */
    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everyCourseAndFrame")
    void whenToMeasureAgainIsAlwaysTold(String name, String size, CoursePicture course, Frame frame) {
        if (course.drift().isPresent()) {
            assertTrue(String.join(" ", RecordingPen.of(course, frame).texts())
                    .contains("measure again after 2 more parts"));
        }
    }

    @Test
    void breaksThereIsNoRoomForHaveALetterEach() {
        List<String> texts = RecordingPen.of(ALL.get("fifty-broken"), SHEET).texts();
        for (char letter = 'a'; letter <= 'x'; letter++) {
            assertTrue(texts.contains(String.valueOf(letter)), texts::toString);
        }
        assertTrue(String.join(" ", texts).contains("w\u00a0gauge BG-46, Setter 46"), texts::toString);
    }

    @Test
    void aSizeFarOutIsAnArrowWithItsFigure() {
        List<String> texts = RecordingPen.of(ALL.get("far-out"), SHEET).texts();
        assertTrue(texts.containsAll(List.of("30.090", "29.930")), texts::toString);
    }

    @Test
    void everyPartIsAMarkOfItsOwn() {
        assertEquals(
                50, circles(RecordingPen.of(ALL.get("fifty"), SHEET), Role.PASS).size());
        assertEquals(
                50,
                circles(RecordingPen.of(ALL.get("fifty"), Courses.frames().get("small")), Role.PASS)
                        .size());
    }

    @Test
    void whatIsTouchedIsThePartThatIsDrawnThere() {
        Courses.frames().values().forEach(frame -> {
            List<Shape.Circle> discs = circles(RecordingPen.of(ALL.get("fifty"), frame), Role.PASS);
            Set<OptionalInt> touched = discs.stream()
                    .map(disc -> ALL.get("fifty").nearest(frame, disc.centre()))
                    .collect(Collectors.toSet());
            assertEquals(50, touched.size());
        });
        assertEquals(OptionalInt.of(0), ALL.get("twelve").nearest(SHEET, new Point(0, 0)));
        assertEquals(OptionalInt.of(11), ALL.get("twelve").nearest(SHEET, new Point(889, 0)));
        assertEquals(OptionalInt.empty(), ALL.get("none").nearest(SHEET, new Point(1, 1)));
    }

    @Test
    void whereThereIsNoPartASentenceSaysSo() {
        assertTrue(String.join(" ", RecordingPen.of(ALL.get("none"), SHEET).texts())
                .contains(Courses.WORDS.none()));
    }

    @Test
    void aPartWithoutASizeIsARingAtTheFoot() {
        RecordingPen pen = RecordingPen.of(ALL.get("unread"), SHEET);
        assertTrue(circles(pen, Role.OPEN).size() >= 2);
        assertTrue(pen.texts().contains(Courses.WORDS.unread()));
    }
}
