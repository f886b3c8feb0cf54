package org.tenthwise.model.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SignsTest {

    /**
     * NUL, BEL, line feed, delete, a control sign of the second set, marks and overrides of direction, a blank without
     * width, separators, half a sign.
     */
    @ParameterizedTest
    @ValueSource(
            ints = {
                0x0000, 0x0007, 0x000A, 0x007F, 0x0085, 0x061C, 0x200B, 0x200E, 0x200F, 0x202A, 0x202E, 0x2028, 0x2029,
                0x2066, 0x2069, 0xD800, 0xFEFF
            })
    void aNameDoesNotHoldWhatNobodySees(int sign) {
        assertEquals(Optional.of("U+%04X".formatted(sign)), Signs.hiddenIn("S" + Character.toString(sign) + "1"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Bore Ø20 H7", "014 / 3", "Größe", "部品 7", "नि\u200D", "=1+2", "🔧", ""})
    void aNameHoldsEveryOtherSign(String name) {
        assertEquals(Optional.empty(), Signs.hiddenIn(name));
        assertEquals(name, Signs.shown(name));
    }

    @Test
    void aSentenceMayStandOnSeveralLines() {
        assertEquals(Optional.empty(), Signs.hiddenInProse("Two depths,\n\ttwo ways."));
        assertEquals(Optional.of("U+000D"), Signs.hiddenInProse("Two\rways."));
    }

    @Test
    void whatNobodySeesIsWrittenOut() {
        assertEquals("100<U+202E>3.1<U+000A>", Signs.shown("100\u202E3.1\n"));
    }
}
