package org.tenthwise.model.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each sign stands for: ISO 1101:2017, tables 1 to 3; ASME Y14.5-2018, section 6. */
class DrawingSignTest {

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        '4X ⌴ Ø15',         '4X CBORE Ø15'
        '4X⌴Ø15↧8',         '4X CBORE Ø15 DEPTH 8'
        '⌵⌀12X90°',         'CSK Ø12X90°'
        '□12',              'SQUARE 12'
        '⌖ ⌀0.1 Ⓜ A Ⓜ',     'POSITION Ø0.1 (M) A (M)'
        '⌖⌀0.1ⓂA',          'POSITION Ø0.1 (M) A'
        '⟂ 0.02 A',         'SQUARE TO 0.02 A'
        '⊥0.02',            'SQUARE TO 0.02'
        '⌰ 0.05 A-B',       'TOTAL RUN-OUT 0.05 A-B'
        '⌴.500±.005, see ⌴.', 'CBORE .500±.005, see CBORE.'
        '⌴-0.1 (⌵)',        'CBORE -0.1 (CSK)'
        '⌲1:10',            'TAPER 1:10'
        '▢12 ⊕⌀0.1 ◯0.01 ▱0.02 ⇗0.05', 'SQUARE 12 POSITION Ø0.1 ROUNDNESS 0.01 FLATNESS 0.02 TOTAL RUN-OUT 0.05'
        'see ③',            'see (3)'
        'face A → B',       'face A -> B'
        'A↔B',              'A TO B'
        '4X⌾15, ⌲',         '4X (sign, see drawing) 15, TAPER'
        'Ø30 H7 ±0.01',     'Ø30 H7 ±0.01'
        '√Ra 1.6 ≤ 3 −1 ∆', '√Ra 1.6 ≤ 3 −1 ∆'
        """)
    void aSignIsSaidInTheWordsOfTheTrade(String drawn, String said) {
        assertEquals(said, Words.ENGLISH.readable(drawn));
    }

    @Test
    void whatNeedsNoWordsStaysTheSame() {
        String plain = "12.3 -0.05/0 THRU";
        assertSame(plain, Words.ENGLISH.readable(plain));
    }

    @Test
    void onlyLetteredWordsSayTheSignsOfWhatFillsAGap() {
        assertEquals("⌴, 8", Words.ENGLISH.list(List.of("⌴", 8)));
        assertEquals("CBORE, 8", Words.ENGLISH.lettered().list(List.of("⌴", 8)));
    }
}
