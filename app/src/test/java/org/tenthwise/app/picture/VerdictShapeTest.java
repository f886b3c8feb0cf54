package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

class VerdictShapeTest {

    @ParameterizedTest
    @EnumSource(VerdictKind.class)
    void staysWithinItsRadius(VerdictKind standing) {
        assertTrue(drawn(standing).drawn().stream()
                .allMatch(mark ->
                        new Box(30, 30, 30, 30).grown(24.5).holds(mark.shape().bounds())));
    }

    /** The kinds of mark each is made of differ, so the shapes differ in grey as well. */
    @Test
    void noTwoAreMadeOfTheSameMarks() {
        assertEquals(
                VerdictKind.values().length,
                Arrays.stream(VerdictKind.values())
                        .map(standing -> drawn(standing).drawn().stream()
                                .map(mark -> mark.shape().getClass().getSimpleName() + (mark.width() > 0))
                                .collect(Collectors.joining()))
                        .distinct()
                        .count());
    }

    private static RecordingPen drawn(VerdictKind standing) {
        RecordingPen pen = new RecordingPen();
        VerdictShape.draw(
                new Drawing(pen, new TextMetrics(Words.ENGLISH), Frame.screen(60, 60, 1)),
                standing,
                new Point(30, 30),
                24);
        return pen;
    }
}
