package org.tenthwise.model.compute.thread.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadSide;

class ThreadLimitsTest {

    /**
     * ASME B1.1, tables of limits of the standard series. The greatest minor diameter of the screws is the reference
     * one.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # thread,          major,           pitch,           minor
            '#0-80 UNF-2A',      0.0595, 0.0563,  0.0514, 0.0496,  0.0446,
            '#0-80 UNF-3B',      ,       0.0600,  0.0536, 0.0519,  0.0514, 0.0465
            '#2-64 UNF-2B',      ,       0.0860,  0.0786, 0.0759,  0.0753, 0.0691
            '#6-32 UNC-2B',      ,       0.1380,  0.1214, 0.1177,  0.1140, 0.1040
            '#10-24 UNC-2B',     ,       0.1900,  0.1672, 0.1629,  0.1560, 0.1450
            1/4-20 UNC-2B,     ,       0.2500,  0.2224, 0.2175,  0.2070, 0.1960
            1 3/4-5 UNC-2B,    ,       1.7500,  1.6317, 1.6201,  1.5680, 1.5340
            3 3/4-4 UNC-2B,    ,       3.7500,  3.6021, 3.5876,  3.5170, 3.4790
            """)
    void unifiedThreadsHaveTheLimitsOfTheirTables(
            String thread,
            BigDecimal majorMax,
            BigDecimal majorMin,
            BigDecimal pitchMax,
            BigDecimal pitchMin,
            BigDecimal minorMax,
            BigDecimal minorMin) {
        assertLimits(Unit.INCH, limits(thread), majorMax, majorMin, pitchMax, pitchMin, minorMax, minorMin);
    }

    /** ASME B1.1, Table 3A, from memory: the four sizes that tell apart how T2 was rounded before it was multiplied. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            '#5-44 UNF-2A',     0.0007
            5/8-11 UNC-2A,    0.0016
            1 1/4-12 UNF-2A,  0.0018
            2-4.5 UNC-2A,     0.0029
            """)
    void theAllowanceIsTakenFromTheToleranceToFivePlaces(String thread, String allowance) {
        assertEquals(inches(allowance), limits(thread).allowance());
    }

    /** ASME B1.1, limits of 5/8-11 UNC-2A, from memory; ASME B1.2 makes go and not-go rings of them. */
    @Test
    void aRingGoesOverTheGreatestAndNotOverTheLeast() {
        ThreadLimits limits = limits("5/8-11 UNC-2A");
        assertEquals(inches("0.5644"), limits.pitchMax());
        assertEquals(inches("0.5589"), limits.pitchMin());
    }

    /**
     * ASME B1.13M, external limits of 6g and 4g6g, Scribd, document 604040407, read November 2026; the nuts ISO 965-2,
     * from memory.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # thread,          major,           pitch,           minor
            M1.6x0.35-6g,      1.581,  1.496,   1.354,  1.291,   1.202,  1.075
            M1.6x0.35-4g6g,    1.581,  1.496,   1.354,  1.314,   1.202,  1.098
            M3.5-6g,           3.479,  3.354,   3.089,  3.004,   2.829,  2.635
            M5-4g6g,           4.976,  4.826,   4.456,  4.396,   4.110,  3.904
            M10x0.75-6g,       9.978,  9.838,   9.491,  9.391,   9.166,  8.929
            M10-6g,            9.968,  9.732,   8.994,  8.862,   8.344,  7.938
            M10-6H,            ,       10,      9.206,  9.026,   8.676,  8.376
            M20-6H,            ,       20,      18.600, 18.376,  17.744, 17.294
            """)
    void metricThreadsHaveTheLimitsOfTheirTables(
            String thread,
            BigDecimal majorMax,
            BigDecimal majorMin,
            BigDecimal pitchMax,
            BigDecimal pitchMin,
            BigDecimal minorMax,
            BigDecimal minorMin) {
        assertLimits(Unit.MILLIMETRE, limits(thread), majorMax, majorMin, pitchMax, pitchMin, minorMax, minorMin);
        assertEquals(LimitsBasis.TABLE, limits(thread).standing());
    }

    /**
     * ISO 965-1, table of fundamental deviations, from memory: EI of G at a pitch of 1.5 is 32 micrometres, and major,
     * pitch and minor move alike.
     */
    @Test
    void aNutOfLetterGStandsOffByTheDeviation() {
        ThreadLimits g = limits("M10-6G");
        ThreadLimits h = limits("M10-6H");
        Length off = Length.of("0.032", Unit.MILLIMETRE);
        assertEquals(off, g.allowance());
        assertEquals(h.pitchMin().plus(off), g.pitchMin());
        assertEquals(h.pitchMax().plus(off), g.pitchMax());
        assertEquals(h.minorMin().map(off::plus), g.minorMin());
        assertEquals(h.majorMin().map(off::plus), g.majorMin());
    }

    /**
     * ASME B1.5: pitch and minor of 3/8-12 and 3/4-6 from Dependable Acme Threaded Products, Internal and external
     * thread dimensions, dependableacme.com, read November 2026; the others from memory. ASME B1.8 for 3/8-12 stub,
     * from memory: no floor under the crest tolerance, and one pitch tolerance on the minor diameter.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # thread,              side,     major,           pitch,           minor
            3/8-12 ACME-2G,        EXTERNAL, 0.3750, 0.3700,  0.3284, 0.3161,  0.2817, 0.2632
            3/4-6 ACME-2G,         EXTERNAL, 0.7500, 0.7417,  0.6598, 0.6424,  0.5633, 0.5371
            1/4-16 ACME-2G,        EXTERNAL, 0.2500, 0.2450,  0.2148, 0.2043,  0.1775, 0.1618
            1/4-16 ACME-2G,        INTERNAL, 0.2700, 0.2600,  0.2293, 0.2188,  0.1925, 0.1875
            1 1/2-4 ACME-2G,       INTERNAL, 1.5400, 1.5200,  1.3973, 1.3750,  1.2625, 1.2500
            3/8-12 STUB ACME-2G,   EXTERNAL, 0.3750, 0.3708,  0.3451, 0.3328,  0.3150, 0.3027
            3/8-12 STUB ACME-2G,   INTERNAL, 0.3973, 0.3850,  0.3623, 0.3500,  0.3292, 0.3250
            """)
    void acmeThreadsHaveTheLimitsOfTheirTables(
            String thread,
            ThreadSide side,
            BigDecimal majorMax,
            BigDecimal majorMin,
            BigDecimal pitchMax,
            BigDecimal pitchMin,
            BigDecimal minorMax,
            BigDecimal minorMin) {
        ThreadLimits limits = ThreadLimits.of(ThreadDesignation.read(thread).on(side));
        assertLimits(Unit.INCH, limits, majorMax, majorMin, pitchMax, pitchMin, minorMax, minorMin);
        assertEquals(LimitsBasis.FORMULA, limits.standing());
    }

    /**
     * Minor diameters of 3B nuts. ASME B1.1, Table 3A, from memory, as far as 2-12. 2-13 by hand: least 2 -
     * 1.0825318/13 = 1.9167, tolerance by diameter 0.05 ∛(1/13)² + 0.03/26 - 0.002 = 0.0082, by pitch with 13 threads
     * and more 0.23/13 - 1.5/169 = 0.0088, the larger.
     */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            '#4-40 UNC-3B',   0.0939, 0.0849
            '#10-32 UNF-3B',  0.1641, 0.1560
            1/4-20 UNC-3B,  0.2067, 0.196
            1/4-28 UNF-3B,  0.2190, 0.211
            1/2-13 UNC-3B,  0.4284, 0.417
            1/2-20 UNF-3B,  0.4537, 0.446
            1-8 UNC-3B,     0.8797, 0.865
            2-12 UN-3B,     1.9198, 1.910
            2-13 UNS-3B,    1.9255, 1.917
            """)
    void boresOfCloseNutsGoByDiameterAndPitch(String thread, String greatest, String least) {
        assertEquals(Optional.of(inches(greatest)), limits(thread).minorMax());
        assertEquals(Optional.of(inches(least)), limits(thread).minorMin());
    }

    /** By hand: 0.15/3 with three threads to the inch, from 4 - 1.0825318/3 = 3.6392: 3.639 and 3.689. */
    @Test
    void aCoarseNutTakesAFixedShareOfThePitch() {
        assertEquals(Optional.of(inches("3.689")), limits("4-3 UNS-2B").minorMax());
        assertEquals(Optional.of(inches("3.639")), limits("4-3 UNS-2B").minorMin());
    }

    /**
     * Ten threads to the inch still have the wide clearance: Dependable Acme Threaded Products, Internal and external
     * thread dimensions, dependableacme.com, read November 2026, 1/2-10.
     */
    @Test
    void tenThreadsToTheInchHaveTheWideClearance() {
        assertEquals(Optional.of(inches("0.3800")), screw("1/2-10 ACME-2G").minorMax());
        assertEquals(Optional.of(inches("0.3594")), screw("1/2-10 ACME-2G").minorMin());
    }

    /**
     * ASME B1.5, by hand for 1/4-16: 0.0028 · 0.5 + 0.014 · 0.25 = 0.0049 of 3G, 0.002 · 0.5 + 0.010 · 0.25 = 0.0035 of
     * 4G.
     */
    @ParameterizedTest
    @CsvSource({"1/4-16 ACME-3G, 0.0049", "1/4-16 ACME-4G, 0.0035", "1/4-16 ACME-2G, 0.0105"})
    void closerAcmeClassesHaveSmallerTolerances(String thread, String tolerance) {
        assertEquals(
                inches(tolerance), screw(thread).pitchMax().minus(screw(thread).pitchMin()));
    }

    /** ASME B1.8 lists class 2G alone. */
    @Test
    void onlyTheCloserClassesOfStubAcmeAreNotListed() {
        assertFalse(screw("3/8-12 STUB ACME-2G").remarks().contains(LimitsRemark.CLASS_NOT_LISTED));
        assertTrue(screw("3/8-12 STUB ACME-3G").remarks().contains(LimitsRemark.CLASS_NOT_LISTED));
    }

    /** Machinery's Handbook, 27th ed., table 10, p. 1841. The upper end of a range belongs to it. */
    @ParameterizedTest
    @CsvSource({
        "1/4-16, 0.0040, 0.0030, 0.0020",
        "5/16-14, 0.0040, 0.0030, 0.0020",
        "7/16-12, 0.0049, 0.0037, 0.0024",
        "1 3/4-4, 0.0105, 0.0079, 0.0052",
        "4 1/2-2, 0.0170, 0.0127, 0.0085"
    })
    void acmeAllowancesGoByRanges(String size, String second, String third, String fourth) {
        assertEquals(inches(second), screw(size + " ACME-2G").allowance());
        assertEquals(inches(third), screw(size + " ACME-3G").allowance());
        assertEquals(inches(fourth), screw(size + " ACME-4G").allowance());
        assertEquals(inches(second), screw(size + " STUB ACME-2G").allowance());
    }

    /** ISO 2903, class 7e, Engineers Edge, ISO metric trapezoidal threads, read November 2026; the nut from memory. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # thread,      major,            pitch,            minor
            Tr8x1.5-7e,    8.000,  7.850,    7.183,  7.013,    6.200,  5.921
            Tr10x2-7e,     10.000, 9.820,    8.929,  8.739,    7.500,  7.191
            Tr18x2-7e,     18.000, 17.820,   16.929, 16.729,   15.500, 15.179
            Tr40x7-7e,     40.000, 39.575,   36.375, 36.020,   32.000, 31.431
            Tr40x7-7H,     ,       41.000,   36.975, 36.500,   33.560, 33.000
            """)
    void trapezoidalThreadsHaveTheLimitsOfTheirTables(
            String thread,
            BigDecimal majorMax,
            BigDecimal majorMin,
            BigDecimal pitchMax,
            BigDecimal pitchMin,
            BigDecimal minorMax,
            BigDecimal minorMin) {
        assertLimits(Unit.MILLIMETRE, limits(thread), majorMax, majorMin, pitchMax, pitchMin, minorMax, minorMin);
    }

    /** ISO 2903, from memory: 1.12 for two starts, 1.6 for five and more. 355 becomes 397.6 and 568 micrometres. */
    @ParameterizedTest
    @CsvSource({"Tr 40x14 P7-7e, 0.398", "Tr 40x35 P7-7e, 0.568", "Tr 40x42 P7-7e, 0.568"})
    void severalStartsWidenTheTrapezoidalPitchTolerance(String thread, String tolerance) {
        ThreadLimits limits = limits(thread);
        assertEquals(Length.of(tolerance, Unit.MILLIMETRE), limits.pitchTolerance());
        assertEquals(limits("Tr 40x7-7e").minorMin(), limits.minorMin());
        assertTrue(limits.remarks().contains(LimitsRemark.WIDENED_FOR_STARTS));
    }

    @ParameterizedTest
    @CsvSource({
        "1-8 ACME-2G, NOT_IN_SERIES",
        "1 1/2-8 STUB ACME-2G, NOT_IN_SERIES",
        "3/8-12 STUB ACME-3G, CLASS_NOT_LISTED",
        "0.26-20 UNS-2A, NOT_IN_SERIES",
        "#10-24 UNC-1A, CLASS_NOT_LISTED",
        "M10.5x1.5-6g, NOT_IN_SERIES",
        "M16xPh3P1.5-6g, AS_FOR_ONE_START",
        "Tr16x3-7e, NOT_IN_SERIES",
        "2.875-0.4P-0.8L-ACME-3G, AS_FOR_ONE_START"
    })
    void whatTheStandardDoesNotListIsAProposal(String thread, LimitsRemark remark) {
        ThreadLimits limits = screw(thread);
        assertEquals(LimitsBasis.PROPOSAL, limits.standing());
        assertTrue(limits.remarks().contains(remark), () -> limits.remarks().toString());
    }

    /** ASME B1.1: one diameter for UNC, UNF and 4-, 6-, 8-UN, nine pitches for the others. */
    @ParameterizedTest
    @CsvSource({
        "1/4-20 UNC-2A, ENGAGED_ONE_DIAMETER",
        "2-8 UN-2A, ENGAGED_ONE_DIAMETER",
        "2-12 UN-2A, ENGAGED_NINE_PITCHES",
        "9/16-24 UNEF-2A, ENGAGED_NINE_PITCHES",
        "1-14 UNS-2A, ENGAGED_NINE_PITCHES"
    })
    void theLengthOfEngagementGoesByTheSeries(String thread, LimitsRemark remark) {
        assertTrue(limits(thread).remarks().contains(remark));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            3/8-12 ACME-2G    | side is missing: class 2G is used for external and internal threads
            M10x0.5-6g        | ISO 965-1 has no tolerance of grade 6 of the pitch diameter for diameter 10 mm and pitch 0.5 mm
            M10-5g            | ISO 965-1 has no tolerance of grade 5 of the major diameter
            M1x0.25-6e        | ISO 965-1 has no deviation of letter e
            M400x6-6g         | ISO 965-1 has no tolerance of grade 6 of the pitch diameter
            Tr 30x4-7e        | ISO 2903 has no tolerance of grade 7 of the pitch diameter
            0.0146-80 UNS-2A  | leaves no core
            """)
    void whatNoTableReachesIsRefusedInASentence(String thread, String part) {
        ThreadDesignation read = ThreadDesignation.read(thread);
        String message = assertThrows(IllegalArgumentException.class, () -> ThreadLimits.of(read))
                .getMessage();
        assertTrue(message.contains(part), message);
    }

    private static ThreadLimits limits(String thread) {
        return ThreadLimits.of(ThreadDesignation.read(thread));
    }

    private static ThreadLimits screw(String thread) {
        return ThreadLimits.of(ThreadDesignation.read(thread).on(ThreadSide.EXTERNAL));
    }

    private static Length inches(String figure) {
        return Length.of(figure, Unit.INCH);
    }

    private static void assertLimits(
            Unit unit,
            ThreadLimits limits,
            BigDecimal majorMax,
            BigDecimal majorMin,
            BigDecimal pitchMax,
            BigDecimal pitchMin,
            BigDecimal minorMax,
            BigDecimal minorMin) {
        assertEquals(Optional.ofNullable(majorMax).map(figure -> Length.of(figure, unit)), limits.majorMax());
        assertEquals(Optional.ofNullable(majorMin).map(figure -> Length.of(figure, unit)), limits.majorMin());
        assertEquals(Length.of(pitchMax, unit), limits.pitchMax());
        assertEquals(Length.of(pitchMin, unit), limits.pitchMin());
        assertEquals(Optional.ofNullable(minorMax).map(figure -> Length.of(figure, unit)), limits.minorMax());
        assertEquals(Optional.ofNullable(minorMin).map(figure -> Length.of(figure, unit)), limits.minorMin());
    }
}
