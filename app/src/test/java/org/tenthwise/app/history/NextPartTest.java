package org.tenthwise.app.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NextPartTest {

    @ParameterizedTest
    @CsvSource({
        "013, 014",
        "0, 1",
        "7, 8",
        "009, 010",
        "0099, 0100",
        "A-19, A-20",
        "LG/007, LG/008",
        "B2_041, B2_042",
        "00000000000000000000000000000000000009, 00000000000000000000000000000000000010"
    })
    void oneMoreInAsManyDigits(String last, String next) {
        assertEquals(Optional.of(next), NextPart.after(last));
    }

    /** Whether 9 is followed by 10, and 99 by 100 or 0100, the serial does not tell. */
    @ParameterizedTest
    @CsvSource({"9", "A-99", "999", "014A", "SAMPLE", "''", "12-"})
    void noneWhereNobodyCanTell(String last) {
        assertEquals(Optional.empty(), NextPart.after(last));
    }
}
