package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Pictures of readings as they come, in all rooms there are: whatever is read, what is written belongs where it is. */
class RandomPicturesTest {

    private static final long HOW_MANY = 150;

    @Test
    void figuresOfAStripStandInOrderAtTheirLinesAndClearOfEverything() {
        List<String> faults = new ArrayList<>();
        Map<String, Frame> frames = Frames.rooms();
        LongStream.range(0, HOW_MANY).forEach(seed -> {
            SizePicture picture = RandomSizes.of(seed);
            frames.forEach((name, frame) -> {
                RecordingPen pen = RecordingPen.of(picture, frame);
                List<String> found = new StripOracle(picture, pen, frame).faults();
                if (!found.isEmpty()) {
                    faults.add("seed %d, %s: %s in %s".formatted(seed, name, found, pen.texts()));
                }
            });
        });
        assertEquals(List.of(), faults.stream().limit(10).toList(), () -> faults.size() + " layouts with faults");
    }
}
