package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.words.Words;

/** A picture that says it is true to scale has its lines as far apart as its figures say. */
class TrueToScaleTest {

    private static final String CLAIM = "true to scale";
    /** The picture leaves the lead angle out, which moves a wire by less. */
    private static final double TOLERANCE = 0.004;

    private final List<String> faults = new ArrayList<>();
    private int claims;

    @Test
    void whatSaysItIsDrawnSo() {
        Stream.of("LG-2207-C-pass", "LG-2207-C-fail", "WB-118-B-pass", "WB-118-B-fail")
                .forEach(this::demo);
        WireScenes.all().forEach(this::look);
        for (long seed = 0; seed < 60; seed++) {
            look("seed " + seed, wires(new Random(seed)));
        }
        assertEquals(List.of(), faults.stream().limit(8).toList(), () -> faults.size() + " untrue");
        assertTrue(claims > 100, () -> "said " + claims + " times");
    }

    private void demo(String sample) {
        DemoRun run = DemoRun.of(sample);
        Pictures pictures = new Pictures(Words.of(Locale.ENGLISH));
        for (Line line : run.sheet().lines()) {
            pictures.of(run.sheet(), line)
                    .ifPresent(picture -> look(sample + " " + line.step().number(), picture));
        }
    }

    /** Threads as they come, readings as they come, some of another part. */
    private static WirePicture wires(Random random) {
        double diameter = 6 + random.nextInt(60);
        double pitch = 0.5 + random.nextInt(8) * 0.75;
        ScrewThread thread =
                new ScrewThread(WireScenes.all().get("metric").thread().form(), mm(diameter), mm(pitch), 1);
        double pitchDiameter = diameter - pitch * (0.3 + random.nextDouble() * 0.7);
        double wire = pitch * (0.45 + random.nextDouble() * 0.4);
        double over = pitchDiameter + 3 * wire - pitch * Math.sqrt(3) / 2;
        return new WirePicture(
                thread,
                mm(pitchDiameter),
                mm(diameter - pitch * (0.9 + random.nextDouble() * 0.6)),
                new WirePicture.Wire(mm(wire), true),
                Optional.of(new WirePicture.Shown(
                        "",
                        CLAIM,
                        String.format(Locale.ROOT, "%.3f", over),
                        Optional.of(String.format(Locale.ROOT, "%.3f", pitchDiameter)))),
                Optional.empty(),
                List.of("wires"),
                Optional.empty(),
                "Thread");
    }

    private static Length mm(double figure) {
        return Length.of(String.format(Locale.ROOT, "%.4f", figure), Unit.MILLIMETRE);
    }

    private void look(String name, Picture picture) {
        Map<String, Frame> rooms = new LinkedHashMap<>(Frames.sheets());
        rooms.putAll(Frames.low());
        rooms.put("tall", Frame.screen(300, 900, 1));
        rooms.put("wide", Frame.screen(1200, 300, 1));
        rooms.forEach((room, frame) -> {
            RecordingPen pen = RecordingPen.of(picture, frame);
            if (pen.texts().stream().noneMatch(text -> text.endsWith(CLAIM))) {
                return;
            }
            claims++;
            String fault = picture instanceof WirePicture wires ? measure(wires, pen) : "nothing to measure it by";
            if (!fault.isEmpty()) {
                faults.add("%s, %s: %s".formatted(name, room, fault));
            }
        });
    }

    /** One scale for the wires, over them, between the pitch lines and along the thread; empty where it is. */
    private static String measure(WirePicture picture, RecordingPen pen) {
        List<Shape.Circle> wires = pen.drawn().stream()
                .filter(mark -> mark.width() > 0 && mark.shape() instanceof Shape.Circle)
                .map(mark -> (Shape.Circle) mark.shape())
                .sorted(Comparator.comparingDouble(
                        (Shape.Circle wire) -> wire.centre().y()))
                .toList();
        List<Box> pitchLines = pen.drawnIn(Role.ACCENT).stream()
                .filter(RecordingPen.Drawn::dashed)
                .map(mark -> mark.shape().bounds())
                .sorted(Comparator.comparingDouble(Box::top))
                .toList();
        WirePicture.Shown shown = picture.shown().orElseThrow();
        double unit = Math.rint(picture.thread().diameter().millimetres().doubleValue()
                                / Double.parseDouble(shown.overWires())
                                / 25.4)
                        > 0
                ? 25.4
                : 1;
        double scale = 2
                * wires.get(0).radius()
                / picture.wire().diameter().millimetres().doubleValue();
        double over = wires.get(2).centre().y()
                + wires.get(2).radius()
                - (wires.get(0).centre().y() - wires.get(0).radius());
        double along =
                Math.abs(wires.get(0).centre().x() - wires.get(1).centre().x());
        double between = pitchLines.get(1).top() - pitchLines.get(0).top();
        Map<String, double[]> pairs = new LinkedHashMap<>();
        pairs.put("over wires", new double[] {over, Double.parseDouble(shown.overWires()) * unit});
        pairs.put(
                "along",
                new double[] {along, picture.thread().pitch().millimetres().doubleValue()});
        shown.pitchDiameter()
                .ifPresent(figure -> pairs.put("between", new double[] {between, Double.parseDouble(figure) * unit}));
        StringBuilder fault = new StringBuilder();
        pairs.forEach((what, pair) -> {
            if (Math.abs(pair[0] / scale / pair[1] - 1) > TOLERANCE) {
                fault.append("%s is %.3f and drawn as %.3f; ".formatted(what, pair[1], pair[0] / scale));
            }
        });
        return fault.toString();
    }
}
