package org.tenthwise.app.picture.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Palette;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.RecordingPen;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.ui.picture.Sheets;
import org.tenthwise.model.verdict.VerdictKind;

/** Capability as a bar, and all characteristics of a part on one scale. */
class BarPicturesTest {

    private final Sheets sheets = new Sheets();

    private static CapabilityPicture capability(
            String from, String observed, String to, CapabilityPicture.Shown shown) {
        return new CapabilityPicture(
                Courses.figure(from),
                new ChartFigure(Courses.figure(observed).value(), "Cpk " + observed + ", 12 parts"),
                Courses.figure(to),
                new ChartFigure(Courses.figure("1.33").value(), "1.33 asked for"),
                shown,
                "Cpk " + observed);
    }

    private static SharePicture shares(int rows) {
        List<SharePicture.ShareRow> all = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            List<SharePicture.ShareMark> marks = new ArrayList<>();
            for (int part = 0; part < 12 && i != 2; part++) {
                double percent = i == 4 ? 20 + part * 5 : (part * 37 + i * 13) % 170 - 85;
                marks.add(new SharePicture.ShareMark(percent, VerdictKind.PASS));
            }
            if (i == 1) {
                marks.add(new SharePicture.ShareMark(-240, VerdictKind.FAIL));
            }
            all.add(new SharePicture.ShareRow(
                    String.valueOf(i + 11),
                    i % 2 == 0 ? "Bore ⌀30 H7" : "Width of the groove behind the shoulder",
                    i == 2 ? "no place on the scale: one limit alone" : "12 parts",
                    i != 4,
                    marks));
        }
        return new SharePicture(all, "lower limit", "middle", "upper limit", "Nothing was read yet.", "Shares");
    }

    private static Map<String, Picture> bars() {
        Map<String, Picture> bars = new LinkedHashMap<>();
        bars.put("too-few", capability("0.52", "0.96", "1.41", CapabilityPicture.Shown.TOO_FEW));
        bars.put("supports", capability("1.41", "1.90", "2.40", CapabilityPicture.Shown.SUPPORTS));
        bars.put("contradicts", capability("0.20", "0.44", "0.68", CapabilityPicture.Shown.CONTRADICTS));
        bars.put("below-zero", capability("−1.31", "−0.84", "−0.37", CapabilityPicture.Shown.CONTRADICTS));
        bars.put("very-great", capability("8.20", "11.60", "15.00", CapabilityPicture.Shown.SUPPORTS));
        return bars;
    }

    private static Map<String, Frame> low() {
        Map<String, Frame> frames = new LinkedHashMap<>();
        frames.put("100", Frame.screen(560, 100, 1));
        frames.put("150", Frame.screen(560, 130, 1.5));
        frames.put("small", Frame.screen(330, 96, 1));
        frames.put("small-150", Frame.screen(352, 120, 1.5));
        frames.put("print", Frame.print(420, 70));
        return frames;
    }

    static Stream<Arguments> everyBar() {
        return bars().entrySet().stream().flatMap(bar -> low().entrySet().stream()
                .map(frame -> Arguments.of(bar.getKey(), frame.getKey(), bar.getValue(), frame.getValue())));
    }

    static Stream<Arguments> everyShare() {
        return Stream.of(0, 1, 3, 6).flatMap(rows -> Courses.frames().entrySet().stream()
                .filter(frame -> rows <= rowsToBeTouched(frame.getValue())
                        || frame.getKey().startsWith("print"))
                .map(frame -> Arguments.of("shares-" + rows, frame.getKey(), shares(rows), frame.getValue())));
    }

    /** Each high enough for a finger and for two lines of text, under a head of one. */
    private static int rowsToBeTouched(Frame frame) {
        double line = 26 * frame.textScale();
        return Math.max(1, (int) Math.floor((frame.height() - line - 4) / Math.max(64, 2.3 * line)));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource({"everyBar", "everyShare"})
    void nothingLiesOnAnythingOrOutside(String name, String size, Picture picture, Frame frame) {
        assertEquals(List.of(), RecordingPen.of(picture, frame).faults(frame));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource({"everyBar", "everyShare"})
    void picturesAreSavedToBeLookedAt(String name, String size, Picture picture, Frame frame) {
        assertTrue(Sheets.inked(sheets.save("chart-" + name + "-" + size, picture, frame, Palette.DAY)) > 100);
        assertTrue(Sheets.inked(sheets.save("chart-" + name + "-" + size, picture, frame, Palette.NIGHT)) > 100);
    }

    /** From 0.52 to 1.41 about 1.33: the bar lies across the line of what is asked for. */
    @Test
    void aBarThatProvesNothingLiesAcrossWhatIsAskedFor() {
        assertTrue(left("too-few") < asked("too-few") && asked("too-few") < right("too-few"));
        assertTrue(left("supports") > asked("supports"));
        assertTrue(right("contradicts") < asked("contradicts"));
    }

    private static double left(String bar) {
        return bar(bar).left();
    }

    private static double right(String bar) {
        return bar(bar).right();
    }

    private static Box bar(String bar) {
        return RecordingPen.of(bars().get(bar), low().get("100")).drawn().stream()
                .filter(mark -> List.of(Role.PRESSED, Role.ZONE, Role.FAIL).contains(mark.role()))
                .findFirst()
                .orElseThrow()
                .shape()
                .bounds();
    }

    private static double asked(String bar) {
        return RecordingPen.of(bars().get(bar), low().get("100"))
                .drawnIn(Role.ACCENT)
                .get(0)
                .shape()
                .bounds()
                .left();
    }
}
