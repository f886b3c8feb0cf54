package org.tenthwise.app.ui.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShortenedTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Repair, not to the drawing, then measure again | 28 | Repair, not to the drawing…",
                "Repair, not to the drawing, then measure again | 29 | Repair, not to the drawing…",
                "Repair, not to the drawing, then measure again | 31 | Repair, not to the drawing, th…",
                "Lathe 4, Lathe 5                               | 16 | Lathe 4, Lathe 5"
            })
    void nothingButTheSignOfItFollowsTheLastWord(String text, int longest, String shown) {
        assertEquals(shown, Shortened.to(longest, text));
    }
}
