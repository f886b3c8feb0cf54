package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.words.Words;

/** Pictures of readings as they come, in all rooms there are: whatever is read, what is written belongs where it is. */
class RandomPicturesTest {

    private static final long HOW_MANY = 80;

    private final Map<String, Frame> rooms = Frames.rooms();
    private final List<String> faults = new ArrayList<>();

    @Test
    void figuresOfAStripStandInOrderAtTheirLinesAndClearOfEverything() {
        LongStream.range(0, HOW_MANY).forEach(seed -> look("seed " + seed, RandomSizes.of(seed)));
        assertNoFaults();
    }

    /** Every feature of the demo parts, with readings it was never meant for. */
    @Test
    void featuresOfAPartAreDrawnWithWhateverIsRead() {
        List<SizePicture> features = Stream.of("LG-2207-C-pass", "WB-118-B-pass")
                .flatMap(sample -> pictures(sample).values().stream())
                .filter(SizePicture.class::isInstance)
                .map(SizePicture.class::cast)
                .filter(picture -> picture.feature().isPresent())
                .toList();
        for (int i = 0; i < features.size(); i++) {
            SizePicture feature = features.get(i);
            for (long seed = 1000L * i; seed < 1000L * i + 1; seed++) {
                look(
                        "seed " + seed + " on " + feature.beside(),
                        RandomSizes.of(seed, feature.feature().orElseThrow(), feature.beside()));
            }
        }
        assertNoFaults();
    }

    @ParameterizedTest
    @ValueSource(strings = {"LG-2207-C-pass", "LG-2207-C-fail", "WB-118-B-pass", "WB-118-B-fail"})
    void everyLineOfADemoRunIsDrawnInEveryRoom(String sample) {
        pictures(sample).forEach(this::look);
        assertNoFaults();
    }

    private static Map<String, Picture> pictures(String sample) {
        DemoRun run = DemoRun.of(sample);
        Pictures pictures = new Pictures(Words.of(Locale.ENGLISH));
        Map<String, Picture> all = new TreeMap<>();
        for (Line line : run.sheet().lines()) {
            pictures.of(run.sheet(), line)
                    .ifPresent(picture -> all.put(
                            sample + " " + line.step().number() + " "
                                    + line.step().name(),
                            picture));
        }
        return all;
    }

    private void look(String name, Picture picture) {
        rooms.forEach((room, frame) -> {
            RecordingPen pen = RecordingPen.of(picture, frame);
            List<String> found = picture instanceof SizePicture size
                    ? new StripOracle(size, pen, frame).faults()
                    : pen.faults(frame);
            if (!found.isEmpty()) {
                faults.add("%s, %s: %s in %s".formatted(name, room, found, pen.texts()));
            }
        });
    }

    private void assertNoFaults() {
        assertEquals(List.of(), faults.stream().limit(10).toList(), () -> faults.size() + " layouts with faults");
    }
}
