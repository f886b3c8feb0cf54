package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.picture.BalloonsOnPage.Placed;
import org.tenthwise.app.picture.BalloonsOnPage.Ring;
import org.tenthwise.model.words.Words;

class BalloonsOnPageTest {

    private static final TextMetrics LETTERING = new TextMetrics(Words.ENGLISH);
    private static final Frame ROOM = Frame.screen(800, 560, 1);

    private static List<Ring> rings(List<Placed> balloons, Frame room) {
        return new BalloonsOnPage(balloons, "").rings(new Drawing(new NullPen(), LETTERING, room));
    }

    private static Placed at(String number, double across, double down) {
        return new Placed(number, across, down, false);
    }

    @Test
    void aBalloonStandsAtItsSpot() {
        Ring ring = rings(List.of(at("12", 0.25, 0.5)), ROOM).get(0);
        assertEquals(new Point(200, 280), ring.centre());
    }

    @Test
    void severalOnOneSpotAreAllSeen() {
        for (double down : new double[] {0, 0.5, 1}) {
            List<Placed> balloons = IntStream.rangeClosed(1, 20)
                    .mapToObj(number -> at(number + "A.10(b)".substring(0, 1 + number % 6), 0.01, down))
                    .toList();
            List<Ring> rings = rings(balloons, Frame.screen(800, 560, 1.5));
            assertEquals(20, rings.size());
            for (int i = 0; i < 20; i++) {
                Ring ring = rings.get(i);
                assertTrue(ring.centre().x() - ring.radius() >= -0.01
                        && ring.centre().y() - ring.radius() >= -0.01);
                assertTrue(ring.centre().y() + ring.radius() <= 560.01);
                for (Ring other : rings.subList(0, i)) {
                    assertTrue(
                            ring.centre().distanceTo(other.centre()) >= ring.radius() + other.radius(),
                            () -> ring + " lies on " + other);
                }
            }
        }
    }

    @Test
    void whatIsOutsideOfThePartSeenIsNotDrawn() {
        RecordingPen pen =
                RecordingPen.of(new BalloonsOnPage(List.of(at("1", -0.1, 0.5), at("2", 0.5, 0.5)), ""), ROOM);
        assertEquals(
                List.of("2"),
                pen.lettered().stream().map(RecordingPen.Lettered::text).toList());
    }

    @Test
    void theOneInHandIsFilled() {
        RecordingPen pen = RecordingPen.of(
                new BalloonsOnPage(List.of(at("1", 0.2, 0.5), new Placed("2", 0.6, 0.5, true)), ""), ROOM);
        assertTrue(pen.drawn().stream().anyMatch(drawn -> drawn.role() == Role.ACCENTFILL && drawn.width() == 0));
    }
}
