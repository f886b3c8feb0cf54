package org.tenthwise.model.callout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.GeneralTolerance;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Words;

/**
 * Ways of writing that are not in the file. Notation: ASME Y14.5-2018, ISO 129-1:2018, ISO 1101, from memory, and
 * common practice. Tolerance classes: ISO 286-2:2010; threads: ISO 965-1, ISO 2903, ASME B1.1 and B1.5, as the sums
 * give them.
 */
class CalloutReaderTest {

    private static String read(String text, Unit unit, Optional<GeneralTolerance> general) {
        return new CalloutReader(unit, general)
                .read(text.replace("\\n", "\n")).parts().stream()
                        .map(CalloutReaderTest::said)
                        .collect(Collectors.joining("; "));
    }

    /** Kind, size, limits, count; a dash for what is absent. */
    private static String said(CalloutPart part) {
        return String.join(
                " ",
                part.kind().key(),
                figure(part, part.nominal()),
                figure(part, part.lower()),
                figure(part, part.upper()),
                part.count().map(String::valueOf).orElse("-"));
    }

    private static String figure(CalloutPart part, Optional<BigDecimal> figure) {
        return figure.map(part::decimal).orElse("-");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            textBlock =
                    """
        12.5 +/- 0.1              ~ linear 12.5 12.4 12.6 1
        12.5+-0.1                 ~ linear 12.5 12.4 12.6 1
        Ø 12,5 ±0,1               ~ diameter 12.5 12.4 12.6 1
        Φ12 H7                    ~ diameter 12 12 12.018 1
        Ø500 H7                   ~ diameter 500 500 500.063 1
        25 js6                    ~ linear 25 24.9935 25.0065 1
        Ø25 H7 +0.021/0           ~ diameter 25 25 25.021 1
        4x ø6.6                   ~ diameter 6.6 - - 4
        4 PLACES Ø6.6 ±0.1        ~ diameter 6.6 6.5 6.7 4
        Ø6.6 ±0.1 4X              ~ diameter 6.6 6.5 6.7 4
        12.5 ±0.1 <KC> 4 PL       ~ linear 12.5 12.4 12.6 4
        12.5 ± 0.1 mm THRU ALL EQ SP ~ linear 12.5 12.4 12.6 1
        R2 TYP                    ~ radius 2 - - -
        2X (R5)                   ~ reference 5 - - 2
        12.5 REF                  ~ reference 12.5 - - 1
        R10 BASIC                 ~ basic 10 - - 1
        20 0/-0.05                ~ linear 20 19.95 20 1
        20 +0.05 0                ~ linear 20 20 20.05 1
        20 -0.05/0                ~ linear 20 19.95 20 1
        20 +0.1-0.2               ~ linear 20 19.8 20.1 1
        Ø50\\n+0.025\\n0          ~ diameter 50 50 50.025 1
        Ø40.00\\n39.98            ~ diameter - 39.98 40.00 1
        12.3 TO 12.5              ~ linear - 12.3 12.5 1
        12.3 - 12.5               ~ linear - 12.3 12.5 1
        40/39                     ~ linear - 39 40 1
        ≤ 12.5                    ~ linear - - 12.5 1
        MAX Ø12.5                 ~ diameter - - 12.5 1
        20 DIA ±0.05              ~ diameter 20 19.95 20.05 1
        30° X 2                   ~ chamfer-angle 30 - - 1; chamfer 2 - - 1
        4X 45°                    ~ angle 45 - - 4
        1.5X45°                   ~ chamfer 1.5 - - 1; chamfer-angle 45 - - 1
        2X 0.5 X 45°              ~ chamfer 0.5 - - 2; chamfer-angle 45 - - 2
        45°30' ±10'               ~ angle 45.5 45.333333 45.666667 1
        45° 30′ 15″ ±30″          ~ angle 45.504167 45.495833 45.5125 1
        45° +1°/-0°30′            ~ angle 45 44.5 46 1
        0° ±0°5′                  ~ angle 0 -0.083333 0.083333 1
        ∠ 30° ±1°                 ~ angle 30 29 31 1
        Ø8 +0.1/0 ↧12             ~ diameter 8 8 8.1 1; depth 12 - - 1
        Ø8 ±0.1 X 12 ±0.2 DEEP    ~ diameter 8 7.9 8.1 1; depth 12 11.8 12.2 1
        Ø8 THRU, C'BORE Ø12 X 5 DEEP ~ diameter 8 - - 1; counterbore 12 - - 1; depth 5 - - 1
        ⌵ 90° X Ø12 ±0.2          ~ countersink-angle 90 - - 1; countersink 12 11.8 12.2 1
        12 ±0.2 DEEP              ~ depth 12 11.8 12.2 1
        M6                        ~ thread - - - 1
        Tr 40x7                   ~ thread - - - 1
        m6x1 - 6h                 ~ thread 5.350 5.238 5.350 1
        M6x1-6H X 12 DEEP         ~ thread 5.350 5.350 5.500 1; depth 12 - - 1
        4xM6x1-6H                 ~ thread 5.350 5.350 5.500 4
        M6x1-6H 4 PL              ~ thread 5.350 5.350 5.500 4
        M10x1,5-6g                ~ thread 9.026 8.862 8.994 1
        Tr 40x7-7e                ~ thread 36.500 36.020 36.375 1
        Ra max 1.6                ~ roughness-Ra - - 1.6 1
        Ra 0.4 MIN                ~ roughness-Ra - 0.4 - 1
        U Ra 1.6 / L Ra 0.8       ~ roughness-Ra - 0.8 1.6 1
        58-62 HRC                 ~ hardness - 58 62 1
        58 HRC MIN                ~ hardness - 58 - 1
        60 ±2 HRC                 ~ hardness 60 58 62 1
        ∠ 0.05 A                  ~ angularity - 0 0.05 1
        2X // 0.02 A              ~ parallelism - 0 0.02 2
        ⌖ | Ø0.2 Ⓜ | A | B Ⓜ | C | ~ position - 0 0.2 1
        ⌖ Ø0 Ⓛ A-B                ~ position - 0 0 1
        ↗↗ 0.05 A                 ~ total-runout - 0 0.05 1
        ⌒ 0.1                     ~ profile-line - 0 0.1 1
        ⌒ 25 ±0.2                 ~ arc 25 24.8 25.2 1
        ALL EDGES 0.3 ±0.1        ~ edge 0.3 0.2 0.4 1
        BREAK EDGES               ~ note - - - 1
        SHOT PEEN PER AMS 2430    ~ process - - - 1
        """)
    void aDrawingInMillimetres(String text, String parts) {
        assertEquals(parts, read(text, Unit.MILLIMETRE, Optional.empty()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            textBlock =
                    """
        1 1/2 ±1/64               ~ linear 1.5 1.484375 1.515625 1
        1-1/2                     ~ linear 1.5 - - 1
        Ø5/8 MAX                  ~ diameter - - 0.625 1
        .25R ±.01                 ~ radius 0.25 0.24 0.26 1
        .500 DIA. +.000/-.005     ~ diameter 0.500 0.495 0.500 1
        1.5" ±.005"               ~ linear 1.5 1.495 1.505 1
        Ø25 mm H7                 ~ diameter 25 25 25.021 1
        1.000±.005 [25,4±0,13]    ~ linear 1.000 0.995 1.005 1
        '#10-32 UNF-2B'           ~ thread 0.1697 0.1697 0.1736 1
        1 1/4-12 UNF-2A           ~ thread 1.1959 1.1879 1.1941 1
        4X 1/4-20 UNC-2B ↧ .500   ~ thread 0.2175 0.2175 0.2224 4; depth 0.500 - - 4
        1/4-20 UNC                ~ thread - - - 1
        3/8-12 ACME-2G            ~ thread - - - 1
        3/8-12 ACME-2G INT        ~ thread 0.3333 0.3333 0.3456 1
        √63                       ~ roughness-Ra - - 63 1
        .03 X 45° ±1°             ~ chamfer 0.03 - - 1; chamfer-angle 45 44 46 1
        SF Ø.88 ±.02 X .03 DEEP   ~ spotface 0.88 0.86 0.90 1; depth 0.03 - - 1
        BREAK ALL SHARP EDGES .005 TO .015 ~ edge - 0.005 0.015 1
        """)
    void aDrawingInInches(String text, String parts) {
        assertEquals(parts, read(text, Unit.INCH, Optional.empty()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0.2×45° MAX",
                "0.5 X 30° MIN",
                "4 X Ø6.6 ±0.1",
                "4X6.6 ±0.1",
                "4X45°",
                "2X1",
                "12.5 ±0.1 REF",
                "25 ±0.1 BSC",
                "[25]",
                "012.5 ±0.1",
                "12.5 ±0",
                "20 -20.5",
                "8/5",
                "Ø25 H7 ±0.1",
                "Ø25 H7/g6",
                "Ø25 H 7",
                "R5 H7",
                "45° H7",
                "Ø600 H7",
                "12.3/12.5",
                "20 -0.05/-0.01",
                "12.5 +0.1/0.05",
                "1 X 45",
                "45° ±1",
                "44-46°",
                "30°60′ ±1°",
                "5′",
                "Ø8 ±0.1 X 20",
                "Ø8 ±0.1 X 45°",
                "CSK 12 X 90",
                "⌵ Ø12°",
                "M6x1-6H/6g",
                "M10 1.5",
                "M13x1-6g X",
                "Tr 40x14 P7-7e",
                "G1/2",
                "R1/2",
                "Ra 1.6/0.8",
                "√1.6",
                "Ra 1.6 ±0.2",
                "HRC 62-58",
                "⏥ 0.02 A",
                "⌖ Ø0.2",
                "⌖ Ø0 A",
                "↗ Ø0.02 A",
                "◎ 0.1 A",
                "⏤ 0.1/100",
                "⌒ 25",
                "⟂ 0.02 A B C D",
                "REMOVE BURRS 0.2 MAX",
                "HEAT TREAT TO HRC 32-36",
                "MAX",
                "THRU",
                "R",
                "Ø",
                "0.05 ±0.1",
                "12.5 ±12.5",
                "4X 12.5 4 PL",
                "12.5 ±0.1 OK",
                "1,250.5 ±1",
                ",5 ±0,1",
                "12. ±0.1",
                "-12.5 ±0.1",
                "1e1",
                "12O.5",
                "l2.5",
                "Ã˜12 ±0.1",
                "1:10",
                "99999999999",
                "(12.5",
                "12.5 (+0.1/0)",
                "25 mm ±.005 in",
                "½",
                "16 -0.1",
                "25 ±0.1 X 45",
                "90.5°30' ±1°",
                "30.5°15'",
                "45°30.5'15\" ±1°",
                "R2.329 DIA ±0.01",
                "Ø2.329R ±0.01"
            })
    void whatCouldBeMeantInTwoWaysIsRefusedWithWhatWouldBeRight(String text) {
        CalloutReader reader = new CalloutReader(Unit.MILLIMETRE, Optional.empty());
        Refused refused = assertThrows(Refused.class, () -> reader.read(text));
        assertFalse(Words.ENGLISH.say(refused.why()).isBlank());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"12,5", "1/3", "3/2", ".500 H7", "25.4 mm ±.005", "1/4-20 UNF-2B", "Ra 0.8 µm", ".5 ±.5", "5'"})
    void soItIsOnADrawingInInches(String text) {
        CalloutReader reader = new CalloutReader(Unit.INCH, Optional.empty());
        assertThrows(Refused.class, () -> reader.read(text));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            textBlock =
                    """
        12,50          ~ linear 12.50 12.30 12.70 1
        4X 12 X 45°    ~ chamfer 12 11.0 13.0 4; chamfer-angle 45 44.5 45.5 4
        ↧ 12           ~ depth 12 11.8 12.2 1
        ⌵ Ø12 X 90°    ~ countersink 12 11.8 12.2 1; countersink-angle 90 - - 1
        0.4            ~ linear 0.4 - - 1
        R0.4           ~ radius 0.4 - - 1
        45°            ~ angle 45 - - 1
        30 ±0.1        ~ linear 30 29.9 30.1 1
        12 MAX         ~ linear - - 12 1
        (30)           ~ reference 30 - - 1
        30 BSC         ~ basic 30 - - 1
        60° BSC        ~ basic-angle 60 - - 1
        FULL R         ~ radius - - - 1
        M6x1           ~ thread - - - 1
        1 in           ~ linear 1 - - 1
        """)
    void aGeneralToleranceGoesToSizesWithoutTheirOwnAndToNoOthers(String text, String parts) {
        Optional<GeneralTolerance> medium = Optional.of(GeneralTolerance.ofText("ISO 2768-m", Unit.MILLIMETRE));
        assertEquals(parts, read(text, Unit.MILLIMETRE, medium));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            textBlock =
                    """
        30°30'         ~ angle 30.5 29.5 31.5 1
        .03 X 45°      ~ chamfer 0.03 0.02 0.04 1; chamfer-angle 45 44 46 1
        2.2500         ~ linear 2.2500 - - 1
        2              ~ linear 2 - - 1
        1/2            ~ linear 0.5 - - 1
        25.4 mm        ~ linear 25.4 - - 1
        """)
    void aTitleBlockGoesByThePlaces(String text, String parts) {
        Optional<GeneralTolerance> block =
                Optional.of(GeneralTolerance.ofText(".X ±.1 .XX ±.01 .XXX ±.005 ANGLES ±1°", Unit.INCH));
        assertEquals(parts, read(text, Unit.INCH, block));
    }

    @Test
    void aLimitThatWasLookedUpSaysFromWhat() {
        CalloutReader reader =
                new CalloutReader(Unit.MILLIMETRE, Optional.of(GeneralTolerance.ofText("ISO 2768-m", Unit.MILLIMETRE)));
        assertEquals(
                List.of("Ø25 H7", "ISO 2768-m", "M6x1-6H", ""),
                List.of("Ø25 H7", "30", "M6x1-6H", "30 ±0.1").stream()
                        .map(text -> reader.read(text).parts().get(0).origin())
                        .map(origin -> origin.map(from -> from.designation()).orElse(""))
                        .toList());
    }

    /** Whatever is typed, it is read or refused in words, and limits are never the wrong way round. */
    @Test
    void nothingElseComesOfAnyText() {
        String[] pieces = {
            "4X ", "4 X ", "Ø", "R", "12.5", ".5", "0", "12", " ±0.1", " ±", "+0.1", "/", "-", "-0.2", " 0", "°", "′",
            "″", " H7", "h6", " MAX", "MIN ", "(", ")", " X ", "x", "45°", "↧", "⌴", "⌵", " THRU", "M6x1-6H", " A", "⌖",
            "⟂", "Ⓜ", "|", " REF", " BSC", "Ra ", "HRC ", "√", "EDGES ", "NOTE ", ",", "\\n", " mm", " in", "1/2", "#",
            "UNC-2B", "TYP", " 2 PL", "<", ">", "[", "]", "%", "E", "DEEP ", "C'BORE ", ";"
        };
        Random random = new Random(9102);
        for (int i = 0; i < 40_000; i++) {
            StringBuilder text = new StringBuilder();
            int length = 1 + random.nextInt(6);
            for (int piece = 0; piece < length; piece++) {
                text.append(pieces[random.nextInt(pieces.length)]);
            }
            Unit unit = random.nextBoolean() ? Unit.MILLIMETRE : Unit.INCH;
            try {
                new CalloutReader(unit, Optional.empty())
                        .read(text.toString())
                        .parts()
                        .forEach(part -> {
                            boolean round = part.lower()
                                    .flatMap(lower -> part.upper().map(upper -> upper.compareTo(lower) >= 0))
                                    .orElse(true);
                            assertTrue(round, text::toString);
                        });
            } catch (Refused e) {
                assertFalse(e.getMessage().isBlank());
            }
        }
    }
}
