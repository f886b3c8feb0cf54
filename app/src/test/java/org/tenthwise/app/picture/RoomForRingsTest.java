package org.tenthwise.app.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rule of thumb against the rings as they are drawn: the room it prefers has the larger smallest ring. */
class RoomForRingsTest {

    @ParameterizedTest(name = "{0} × {1} rather than {2} × {3}")
    @CsvSource({"650, 300, 310, 440", "980, 240, 430, 360", "650, 300, 650, 260", "400, 800, 400, 500"})
    void theRoomItPrefersHasTheLargerRings(double width, double height, double otherWidth, double otherHeight) {
        assertTrue(RoomForRings.worth(width, height, 2) > RoomForRings.worth(otherWidth, otherHeight, 2));
        assertTrue(smallest(width, height) > smallest(otherWidth, otherHeight));
    }

    @Test
    void oneRingHasAllOfTheRoom() {
        assertEquals(1.25 * 300, RoomForRings.worth(400, 300, 1));
        assertEquals(1.25 * 200, RoomForRings.worth(250, 300, 1));
    }

    private static double smallest(double width, double height) {
        return RecordingPen.of(RunOutScenes.sections(), Frame.screen(width, height, 1)).drawnIn(Role.ZONE).stream()
                .mapToDouble(ring -> ring.shape().bounds().width())
                .min()
                .orElse(0);
    }
}
