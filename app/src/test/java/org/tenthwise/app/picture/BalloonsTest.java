package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.words.Words;

/** Parts as they come with numbers as they come, 5 to 60, in the rooms the record has for them. */
class BalloonsTest {

    private static final int HOW_MANY = 56;
    private static final Frame PRINT = Frame.print(698, 290);
    private static final Frame BESIDE_THE_ROWS = Frame.screen(408, 280, 1);
    private static final Map<String, Frame> ROOMS = Map.of(
            "print",
            PRINT,
            "beside the rows",
            BESIDE_THE_ROWS,
            "large text",
            Frame.screen(760, 330, 1.5),
            "low",
            Frame.screen(408, 180, 1.5));

    private static Stream<RandomOutline> parts() {
        return LongStream.range(0, HOW_MANY).mapToObj(seed -> RandomOutline.of(seed, 5 + (int) (seed * 13 % 56)));
    }

    @Test
    void everyLeaderRunsClearFromItsFeatureToItsNumbers() {
        List<String> faults = new ArrayList<>();
        parts().forEach(part -> ROOMS.forEach((room, frame) -> {
            List<String> found = look(part, frame).faults();
            if (!found.isEmpty()) {
                faults.add("%d numbers, %s: %s".formatted(part.puts().size(), room, found));
            }
        }));
        assertEquals(List.of(), faults.stream().limit(5).toList(), () -> faults.size() + " pictures with faults");
    }

    /** A feature can lie so that no leader gets to it past the others; that is rare. */
    @Test
    void onPaperHardlyANumberIsLeftOut() {
        int asked = parts().mapToInt(part -> part.puts().size()).sum();
        int shown = parts().mapToInt(part -> look(part, PRINT).shown()).sum();
        assertTrue(shown > asked * 0.98, () -> shown + " of " + asked);
    }

    @Test
    void noFeatureIsLeftOutWhileAnotherHasTwoNumbers() {
        RandomOutline part = RandomOutline.of(3, 60);
        Set<String> shown =
                new HashSet<>(RecordingPen.of(part.picture(), BESIDE_THE_ROWS).texts());
        assertTrue(shown.size() < part.puts().size());
        assertEquals(
                part.puts().stream().map(RandomOutline.Put::feature).distinct().count(),
                part.puts().stream()
                        .filter(put -> shown.contains(put.number().number()))
                        .map(RandomOutline.Put::feature)
                        .distinct()
                        .count());
    }

    @ParameterizedTest
    @ValueSource(strings = {"LG-2207-C-pass", "WB-118-B-pass"})
    void everyCharacteristicOfADemoPartIsNumberedOnItsRecord(String sample) {
        Plan plan = DemoRun.of(sample).plan();
        List<String> numbers = plan.steps().stream()
                .filter(step -> step.isOfDrawing() && step.mark().isPresent())
                .map(Step::number)
                .map(String::valueOf)
                .toList();
        for (Frame frame : List.of(PRINT, BESIDE_THE_ROWS)) {
            RecordingPen pen = RecordingPen.of(
                    new Pictures(Words.of(Locale.ENGLISH)).numbered(plan).orElseThrow(), frame);
            assertEquals(Set.copyOf(numbers), Set.copyOf(pen.texts()));
            assertEquals(List.of(), pen.faults(frame));
        }
    }

    private static BalloonOracle look(RandomOutline part, Frame frame) {
        return new BalloonOracle(part, RecordingPen.of(part.picture(), frame), frame);
    }
}
