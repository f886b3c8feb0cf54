package org.tenthwise.app.ui.theme;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ElidedTest {

    /** Room is counted in signs. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Bore Ø30 H7                  | 20 | Bore Ø30 H7",
                "Run-out 0.010 before the thread | 20 | Run-out 0.010…",
                "Run-out at the chuck         | 16 | Run-out at the…",
                "Run-out, turned round        | 12 | Run-out…",
                "Length over all 166          | 15 | Length… 166",
                "Plug LG-2207-P enters freely | 16 | Plug LG-2207-P…",
                "Plug LG-2207-P enters freely | 12 | …LG-2207-P…",
                "clear 0.005 to 0.035         | 15 | …0.005 to 0.035",
                "clear 0.005 to 0.035         | 14 | …0.005… 0.035",
                "Plug LG-2207-P enters freely | 8  | Plug…",
                "Rundlaufabweichung           | 10 | Rundlaufa…",
                "014-second-half-of-the-pair  | 10 | 014-secon…",
                "/media/stick2/backups        | 14 | /media/stick2…",
                "CYLINDRICITY .0004           | 10 | … .0004",
                "36.0205                      | 4  | 36.0205"
            })
    void aFigureIsKeptWholeOrLeftOut(String text, int room, String shown) {
        assertEquals(shown, Elided.fitted(text, cut -> cut.length() <= room));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "30.050 30.046 30.049 mm | 23 | 30.050 30.046 30.049 mm",
                "30.050 30.046 30.049 mm | 22 | … 30.046 30.049 mm",
                "30.050 30.046 30.049 mm | 12 | … 30.049 mm",
            })
    void ofSeveralFiguresTheLastAreSeen(String text, int room, String shown) {
        assertEquals(shown, Elided.fittedToTheLast(text, cut -> cut.length() <= room));
    }
}
