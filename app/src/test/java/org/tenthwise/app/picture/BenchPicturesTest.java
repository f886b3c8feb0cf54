package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.model.compute.dovetail.DovetailSide;
import org.tenthwise.model.compute.gear.ToothSide;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.worked.BetweenCentres;

/**
 * Zones as bars, a drill set, a rod warm and at 20 °C, sketches of what is measured; figures of ISO 286-2 for the
 * zones, invented ones otherwise.
 */
class BenchPicturesTest {

    private static final Frame SHEET = Frame.screen(652, 330, 1);

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static SizePicture.Sized sized(String figures) {
        return new SizePicture.Sized(mm(figures), figures);
    }

    private static ZoneBars.Bar bar(String name, boolean inside, String from, String greatest, String least) {
        return new ZoneBars.Bar(name, inside, mm(from), Optional.of(sized(greatest)), Optional.of(sized(least)));
    }

    /** 30 H7: +0.021 and 0. 30 g6: -0.007 and -0.020. */
    private static ZoneBars zones() {
        return new ZoneBars(
                List.of(bar("H7", true, "30", "30.021", "30.000"), bar("g6", false, "30", "29.993", "29.980")),
                Optional.of("⌀30"),
                List.of(new ZoneBars.Between("tolerance", mm("30.000"), mm("30.021"), "0.021")),
                "Zones");
    }

    private static FitPicture fit(String boreLeast, String boreGreatest, String plugGreatest, String plugLeast) {
        return new FitPicture(
                side("min. clearance", boreLeast, plugGreatest),
                side("max. clearance", boreGreatest, plugLeast),
                Optional.of(sized("30.000")),
                "Fit");
    }

    private static FitPicture.Side side(String name, String bore, String plug) {
        return new FitPicture.Side(
                name,
                sized(bore),
                sized(plug),
                mm(bore).minus(mm(plug)).millimetres().toPlainString());
    }

    private static FitPicture fit() {
        return fit("30.000", "30.021", "29.993", "29.980");
    }

    private static Map<String, Picture> scenes() {
        Map<String, Picture> scenes = new LinkedHashMap<>();
        scenes.put("fit", fit());
        scenes.put("fit-interference", fit("30.000", "30.021", "30.048", "30.035"));
        scenes.put("fit-transition", fit("30.000", "30.021", "30.015", "30.002"));
        scenes.put("fit-none", fit("30.000", "30.000", "30.000", "30.000"));
        scenes.put("zones", zones());
        scenes.put(
                "zone",
                new ZoneBars(
                        List.of(bar("H7", true, "30", "30.021", "30.000")), Optional.of("⌀30"), List.of(), "Zone"));
        scenes.put(
                "thread",
                new ZoneBars(
                        List.of(
                                bar("major", false, "40", "40.000", "39.550"),
                                bar("pitch", false, "36.5", "36.375", "36.020"),
                                new ZoneBars.Bar(
                                        "minor", false, mm("32"), Optional.of(sized("32.000")), Optional.empty())),
                        Optional.of("basic"),
                        List.of(),
                        "Thread"));
        scenes.put(
                "drills",
                new DrillPicture(
                        mm("210"),
                        mm("30"),
                        List.of(drill("30", "90", "115"), drill("90", "150", "175"), drill("150", "210", "235")),
                        "reach",
                        "Drills"));
        scenes.put(
                "drills-close",
                new DrillPicture(
                        mm("100"),
                        mm("0"),
                        Stream.iterate(10, to -> to <= 100, to -> to + 10)
                                .map(to -> drill(String.valueOf(to - 10), String.valueOf(to), String.valueOf(to + 30)))
                                .toList(),
                        "reach",
                        "Drills"));
        scenes.put(
                "rod",
                new RodPicture(
                        "as read, part at 23.7 °C",
                        "500.035",
                        "at 20 °C",
                        "500.0134",
                        mm("-0.0216"),
                        "−0.0216",
                        "Rod"));
        scenes.put(
                "rod-cold",
                new RodPicture(
                        "as read, part at 12 °C", "500.035", "at 20 °C", "500.0812", mm("0.0462"), "+0.0462", "Rod"));
        scenes.put(
                "bolt-circle", new BoltCirclePicture(List.of(15.0, 75.0, 135.0, 195.0, 255.0, 315.0), "Bolt circle"));
        scenes.put(
                "bolt-circle-many",
                new BoltCirclePicture(
                        Stream.iterate(0.0, at -> at < 360, at -> at + 10).toList(), "Bolt circle"));
        scenes.put("sine-bar", SketchPicture.sineBar("≈50.6411", "Sine bar"));
        scenes.put("taper", SketchPicture.taper("40.000", "32.000", "Taper"));
        scenes.put("taper-slope", SketchPicture.taper(0.05, "Taper"));
        scenes.put("rollers", SketchPicture.rollers(true, "52.140", "58.920", "Taper"));
        scenes.put("balls", SketchPicture.balls("76", "8", "Taper by balls"));
        scenes.put("chord", SketchPicture.chord("≈12.345", "Radius"));
        scenes.put("rolls-outside", SketchPicture.rolls("60.000", "Radius"));
        scenes.put("rolls-inside", SketchPicture.rolls("60.000", "4.2", "Radius"));
        scenes.put("dovetail", SketchPicture.dovetail(DovetailSide.MALE, "≈23.6077", "Dovetail"));
        scenes.put("keyway", SketchPicture.keyway("≈32.7326", "≈42.3846", "Keyway"));
        scenes.put("over-pins", SketchPicture.overPins(24, ToothSide.EXTERNAL, "≈54.2176", "Over pins"));
        scenes.put("between-pins", SketchPicture.overPins(24, ToothSide.INTERNAL, "≈44.2176", "Between pins"));
        scenes.put("span", SketchPicture.span(24, 4, "≈21.1793", "Span"));
        scenes.put("tap-hole", SketchPicture.tapHole("10.2", "12", "Tap drill"));
        scenes.put("centres", SketchPicture.centres(BetweenCentres.Read.OVER, "96.305", "Centre distance"));
        scenes.put("polygon", SketchPicture.polygon(6, "≈27.7128", "24", "Across corners"));
        scenes.put("tailstock", SketchPicture.tailstock("6.000", "Tailstock"));
        scenes.put("tooth", SketchPicture.tooth("≈3.1393", Optional.of("≈2.0514"), "Tooth chord"));
        scenes.put("profile", SketchPicture.profile("0.800", "4.000", "Settings"));
        return scenes;
    }

    private static DrillPicture.Drill drill(String from, String to, String reach) {
        return new DrillPicture.Drill(mm(from), mm(to), mm(reach), to, reach);
    }

    static Stream<Arguments> everySceneAndFrame() {
        return scenes().entrySet().stream().flatMap(scene -> Frames.sheets().entrySet().stream()
                .map(frame -> Arguments.of(scene.getKey(), frame.getKey(), scene.getValue(), frame.getValue())));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("everySceneAndFrame")
    void nothingLiesOnAnythingOrOutside(String scene, String size, Picture picture, Frame frame) {
        assertEquals(List.of(), RecordingPen.of(picture, frame).faults(frame));
    }

    @Test
    void barsAreToOneScale() {
        List<Box> zones = RecordingPen.of(zones(), SHEET).drawnIn(Role.ZONE).stream()
                .map(mark -> mark.shape().bounds())
                .toList();
        assertEquals(2, zones.size());
        assertEquals(0.021 / 0.013, zones.get(0).height() / zones.get(1).height(), 0.01);
        assertTrue(zones.get(0).bottom() < zones.get(1).top(), zones::toString);
    }

    @Test
    void everySizeAndBothClearancesAreWritten() {
        for (Frame frame : List.of(SHEET, Frame.screen(552, 150, 1.5))) {
            assertTrue(
                    RecordingPen.of(fit(), frame)
                            .texts()
                            .containsAll(List.of("30.021", "30.000", "29.993", "29.980", "0.041", "0.007")),
                    frame::toString);
        }
    }

    /** The gap is to one scale at both sides, and a plug that is the larger lies over the wall of its bore. */
    @Test
    void theClearanceIsDrawnAsTheGapItIs() {
        assertEquals(0.041 / 0.007, gap(fit(), 1) / gap(fit(), 0), 0.01);
        FitPicture tight = fit("30.000", "30.021", "30.048", "30.035");
        assertTrue(gap(tight, 0) < 0 && gap(tight, 1) < 0);
        assertEquals(0, gap(fit("30.000", "30.000", "30.000", "30.000"), 0), 1e-9);
    }

    /** From the surface of the bore down to that of the plug. */
    private static double gap(FitPicture fit, int side) {
        RecordingPen pen = RecordingPen.of(fit, SHEET);
        return surfaces(pen, Role.ACCENT).get(side) - surfaces(pen, Role.LINE).get(side);
    }

    private static List<Double> surfaces(RecordingPen pen, Role role) {
        return pen.drawnIn(role).stream()
                .filter(mark -> mark.width() == 3)
                .map(mark -> mark.shape().bounds().top())
                .toList();
    }

    @Test
    void everyDrillReachesAsFarAsItIsDrawn() {
        RecordingPen pen = RecordingPen.of(scenes().get("drills"), SHEET);
        List<Box> stages = pen.drawnIn(Role.ACCENTFILL).stream()
                .map(mark -> mark.shape().bounds())
                .toList();
        assertEquals(3, stages.size());
        assertEquals(stages.get(0).right(), stages.get(1).left(), 0.5);
        assertEquals(stages.get(1).width(), stages.get(2).width(), 0.5);
        assertTrue(pen.texts().containsAll(List.of("115", "175", "235", "90", "150", "210")), pen.texts()::toString);
    }

    @Test
    void drillsThereIsNoRoomForAreToldByDots() {
        RecordingPen pen = RecordingPen.of(scenes().get("drills-close"), Frame.screen(460, 300, 1.5));
        int drawn = pen.drawnIn(Role.ACCENTFILL).size();
        assertTrue(0 < drawn && drawn < 10, () -> drawn + " drawn");
        assertEquals(2, pen.texts().stream().filter("…"::equals).count());
        assertFalse(RecordingPen.of(scenes().get("drills"), SHEET).texts().contains("…"));
    }

    @Test
    void theRodReadWarmIsTheLonger() {
        RecordingPen pen = RecordingPen.of(scenes().get("rod"), SHEET);
        Box warm = pen.drawn().stream()
                .filter(mark -> mark.role() == Role.LINE && mark.width() == 3)
                .findFirst()
                .orElseThrow()
                .shape()
                .bounds();
        Box cold = pen.drawnIn(Role.ACCENT).stream()
                .filter(mark -> mark.width() == 3)
                .findFirst()
                .orElseThrow()
                .shape()
                .bounds();
        assertTrue(warm.right() > cold.right());
        assertEquals(warm.left(), cold.left());
    }
}
