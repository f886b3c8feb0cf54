package org.tenthwise.model.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class ThreadDesignationTest {

    /** ISO 965-1 and ISO 2904 on designation. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # designation,          form,        diameter, pitch, starts, class, side
            M10x1.5-6g,             METRIC,      10,       1.5,   1,      6g,    EXTERNAL
            M10 × 1.5 – 6g,         METRIC,      10,       1.5,   1,      6g,    EXTERNAL
            m12x1.75-6g,            METRIC,      12,       1.75,  1,      6g,    EXTERNAL
            M12 x 1.75 - 6g,        METRIC,      12,       1.75,  1,      6g,    EXTERNAL
            M12*1.75 6G,            METRIC,      12,       1.75,  1,      6G,    INTERNAL
            M20-6H,                 METRIC,      20,       2.5,   1,      6H,    INTERNAL
            M1.6-6g,                METRIC,      1.6,      0.35,  1,      6g,    EXTERNAL
            M20x1.5-5g6g,           METRIC,      20,       1.5,   1,      5g6g,  EXTERNAL
            M16xPh3P1.5-6H,         METRIC,      16,       1.5,   2,      6H,    INTERNAL
            Tr 40x7-7e,             TRAPEZOIDAL, 40,       7,     1,      7e,    EXTERNAL
            Tr40x7-7e,              TRAPEZOIDAL, 40,       7,     1,      7e,    EXTERNAL
            Tr 40×7-7e,             TRAPEZOIDAL, 40,       7,     1,      7e,    EXTERNAL
            TR 40 X 7—7e,           TRAPEZOIDAL, 40,       7,     1,      7e,    EXTERNAL
            Tr40×7-7H,              TRAPEZOIDAL, 40,       7,     1,      7H,    INTERNAL
            Tr 40x14 P7-7e,         TRAPEZOIDAL, 40,       7,     2,      7e,    EXTERNAL
            Tr 40 × 14 (P7) LH-7e,  TRAPEZOIDAL, 40,       7,     2,      7e,    EXTERNAL
            """)
    void metricDesignationsAreRead(
            String text, ThreadForm form, String diameter, String pitch, int starts, String name, ThreadSide side) {
        ThreadDesignation read = ThreadDesignation.read(text);
        assertEquals(
                new ScrewThread(form, Length.of(diameter, Unit.MILLIMETRE), Length.of(pitch, Unit.MILLIMETRE), starts),
                read.thread());
        assertEquals(name, read.threadClass().text());
        assertEquals(Optional.of(side), read.side());
        assertEquals(Optional.empty(), read.series());
    }

    /** ASME B1.1, B1.5 and B1.8 on designation; size number n is 0.060 + 0.013 n inch. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # designation,            form,      diameter, tpi,  class, series
            1/4-20 UNC-2A,            UNIFIED,   0.25,     20,   2A,    UNC
            0.250-20 UNC-2A,          UNIFIED,   0.25,     20,   2A,    UNC
            .250-20UNC-2A,            UNIFIED,   0.25,     20,   2A,    UNC
            #10-32 UNF-2B,            UNIFIED,   0.19,     32,   2B,    UNF
            No. 10-32 UNF-2B,         UNIFIED,   0.19,     32,   2B,    UNF
            10-32 UNF-2B,             UNIFIED,   0.19,     32,   2B,    UNF
            1-64 UNC-2A,              UNIFIED,   0.073,    64,   2A,    UNC
            1-8 UNC-2A,               UNIFIED,   1,        8,    2A,    UNC
            1 1/2-6 UNC-3A,           UNIFIED,   1.5,      6,    3A,    UNC
            1 1/4-12 UNF-2A,          UNIFIED,   1.25,     12,   2A,    UNF
            1-1/4-12 UNF-2A,          UNIFIED,   1.25,     12,   2A,    UNF
            1 - 1/4 - 12 unf - 2a,    UNIFIED,   1.25,     12,   2A,    UNF
            1.250-12 UNF-2A,          UNIFIED,   1.25,     12,   2A,    UNF
            1 5/16-12 UN-2A,          UNIFIED,   1.3125,   12,   2A,    UN
            1-5/16-12 UN-2A,          UNIFIED,   1.3125,   12,   2A,    UN
            no 10-32 UNF-2B,          UNIFIED,   0.19,     32,   2B,    UNF
            2-4 1/2 UNC-2A,           UNIFIED,   2,        4.5,  2A,    UNC
            2-4-1/2 UNC-2A,           UNIFIED,   2,        4.5,  2A,    UNC
            2-1/4-4-1/2 UNC-2A,       UNIFIED,   2.25,     4.5,  2A,    UNC
            2 1/4 - 4 1/2 UNC-2A,     UNIFIED,   2.25,     4.5,  2A,    UNC
            2-4.5 UNC-2A,             UNIFIED,   2,        4.5,  2A,    UNC
            2-4.5 UNC-2B-LH,          UNIFIED,   2,        4.5,  2B,    UNC
            1 1/16-12 UN-2A,          UNIFIED,   1.0625,   12,   2A,    UN
            9/16-24 UNEF-3A,          UNIFIED,   0.5625,   24,   3A,    UNEF
            1/4-20 UNRC-2A,           UNIFIED,   0.25,     20,   2A,    UNC
            0.4-27 UNS-2A,            UNIFIED,   0.4,      27,   2A,    UNS
            3/8-12 ACME-2G,           ACME,      0.375,    12,   2G,
            1 3/4-4 ACME-2G-LH,       ACME,      1.75,     4,    2G,
            1 1/2-8 STUB ACME-2G,     STUB_ACME, 1.5,      8,    2G,
            0.500-10-STUB ACME-2G,    STUB_ACME, 0.5,      10,   2G,
            """)
    void inchDesignationsAreRead(
            String text, ThreadForm form, String diameter, String tpi, String name, String series) {
        ThreadDesignation read = ThreadDesignation.read(text);
        assertEquals(
                new ScrewThread(form, Length.of(diameter, Unit.INCH), ScrewThread.pitchOf(new BigDecimal(tpi)), 1),
                read.thread());
        assertEquals(name, read.threadClass().text());
        assertEquals(Optional.ofNullable(series), read.series());
    }

    /** ASME B1.5: several starts are written by pitch and lead. */
    @Test
    void pitchAndLeadGiveTheStarts() {
        ScrewThread thread = ThreadDesignation.read("2.875-0.4P-0.8L-ACME-3G").thread();
        assertEquals(2, thread.starts());
        assertEquals(Length.of("0.4", Unit.INCH), thread.pitch());
    }

    @ParameterizedTest
    @CsvSource({
        "M10-6g-LH, true",
        "Tr 40x7LH-7e, true",
        "m10-6g-lh, true",
        "1/4-20 UNC-2A LH, true",
        "1/4-20 UNC-2A, false"
    })
    void theHandIsRead(String text, boolean leftHand) {
        assertEquals(leftHand, ThreadDesignation.read(text).leftHand());
    }

    @Test
    void screwAndNutOfAnAcmeThreadAreToldApartByTheSideAlone() {
        ThreadDesignation read = ThreadDesignation.read("3/8-12 ACME-2G");
        assertTrue(read.side().isEmpty());
        assertEquals(
                Optional.of(ThreadSide.INTERNAL), read.on(ThreadSide.INTERNAL).side());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            M10x1.5                | "M10x1.5" is not a thread designation with its class
            M10x1.5-6H/6g          | is not a thread designation with its class
            M37-6g                 | gives no pitch, and ISO 261 has no coarse pitch for 37 mm
            M10x1.5-2A             | class is "2A": metric threads have a grade and a letter
            M10x1.5-9H             | class is "9H": metric threads have a grade and a letter
            M2x1.9-6g              | "M2x1.9-6g" is not a thread that can be cut: Diameter 2 mm leaves no core
            M0x0-6g                | "M0x0-6g" is not a thread that can be cut: Pitch 0 mm must be more than zero
            1/4-20 UNC-6g          | class is "6G": unified threads have 1A 2A 3A
            1/4-28 UNC-2A          | series is "UNC": a thread of 0.25 in and 28 threads per inch is in the series UNF: write UNF
            1 1/4-12 UN-2A         | series is "UN": a thread of 1.25 in and 12 threads per inch is in the series UNF: write UNF
            m12x1,75-6g            | "m12x1,75-6g" has a decimal comma: write "m12x1.75-6g"
            1,250-12 UNF-2A        | "1,250-12 UNF-2A" has a decimal comma: write "1.250-12 UNF-2A"
            Tr 40x7-7E             | class is "7E": trapezoidal threads have 7e 8e 8c 9c
            2-4 1/0 UNC-2A         | has a fraction with zero below the line
            2-1/2 UNC-2A           | is not a thread designation with its class, such as M10x1.5-6g, 1/4-20 UNC-2A
            1/4-21 UNC-2A          | series is "UNC": a thread of 0.25 in and 21 threads per inch is in no series but a special one, UNS
            #13-32 UNF-2A          | begins with "#13"
            1/0-20 UNC-2A          | has a fraction with zero below the line
            1/4-0 UNC-2A           | has a pitch of zero
            Tr 40x13 P7-7e         | has a lead that is not a whole multiple of its pitch
            Tr 40x7-6e             | class is "6e": trapezoidal threads have 7e 8e 8c 9c
            3/8-12 ACME-5G         | class is "5G": general purpose Acme threads have 2G 3G 4G
            G1/2                   | is not a thread designation with its class
            """)
    void whatCannotBeReadIsRefusedInASentence(String text, String part) {
        String message = assertThrows(IllegalArgumentException.class, () -> ThreadDesignation.read(text))
                .getMessage();
        assertTrue(message.contains(part), message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2A", "6g", "7e"})
    void aClassOfOneSideIsRefusedOnTheOther(String name) {
        String text = name.equals("2A") ? "1/4-20 UNC-2A" : name.equals("6g") ? "M10-6g" : "Tr 40x7-7e";
        ThreadDesignation screw = ThreadDesignation.read(text);
        String message = assertThrows(IllegalArgumentException.class, () -> screw.on(ThreadSide.INTERNAL))
                .getMessage();
        assertEquals(
                "class is \"%s\": that is a class of external threads, and the side is internal".formatted(name),
                message);
    }

    @Test
    void aLongTextIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> ThreadDesignation.read("M".repeat(10_000)));
    }

    /** ASME B1.1 for the first four, ISO 261, ISO 2904 and ASME B1.5 for the others. */
    @ParameterizedTest
    @CsvSource({"1/4-20 UNC-2A", "1 1/16-16 UN-2A", "1-14 UNS-2A", "M11-6g", "M300x8-6g", "Tr 300x44-7e", "5-2 ACME-2G"
    })
    void sizesOfTheStandardsAreListed(String text) {
        assertTrue(ThreadSeries.lists(ThreadDesignation.read(text).thread()));
    }

    @ParameterizedTest
    @CsvSource({"0.26-20 UNS-2A", "M10.5x1.5-6g", "Tr 16x3-7e", "1-8 ACME-2G", "1 1/2-8 STUB ACME-2G"})
    void otherSizesAreNot(String text) {
        assertFalse(ThreadSeries.lists(ThreadDesignation.read(text).thread()));
    }
}
