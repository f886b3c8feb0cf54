package org.tenthwise.app.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/** How the figures of an answer read. Each rounded by hand. */
class AnswerFormatTest {

    private static final Words WORDS = Words.ENGLISH;

    private static AnswerFormat shown(Unit unit) {
        return new AnswerFormat(WORDS, unit, false);
    }

    @ParameterizedTest
    @CsvSource({
        "0.011,     0.011",
        "0.00523,   ≈0.0052",
        "0.00525,   ≈0.0053",
        "30.0105,   30.0105",
        "0.02,      0.020",
        "0.00004,   0.00004",
        "-0.000044, ≈−0.00004",
        "-0.02165,  ≈−0.0217"
    })
    void aMillimetreHasFourPlacesAndWhatIsLeftOutIsMarked(String exact, String read) {
        assertEquals(read, shown(Unit.MILLIMETRE).length(Length.of(exact, Unit.MILLIMETRE)));
    }

    @Test
    void anInchHasFivePlaces() {
        assertEquals("≈1.18169", shown(Unit.INCH).length(Length.of("30.015", Unit.MILLIMETRE)));
        assertEquals("1.0000", shown(Unit.INCH).length(Length.of("25.4", Unit.MILLIMETRE)));
    }

    /** A size made to the figure shown lies within the limit worked out. */
    @Test
    void aLimitIsRoundedIntoItsTolerance() {
        Random random = new Random(286);
        for (int i = 0; i < 2000; i++) {
            BigDecimal exact = BigDecimal.valueOf(random.nextInt(), 1 + random.nextInt(9));
            for (Unit unit : List.of(Unit.MILLIMETRE, Unit.INCH)) {
                Length limit = Length.of(exact, unit);
                assertFalse(read(shown(unit).greatest(limit).figures(), unit).isAbove(limit), limit::toString);
                assertFalse(read(shown(unit).least(limit).figures(), unit).isBelow(limit), limit::toString);
            }
        }
    }

    private static Length read(String figures, Unit unit) {
        return Length.of(figures.replace("≈", "").replace('−', '-'), unit);
    }

    @Test
    void aHighSpotIsAWholeDegreeAndAFullTurnIsNone() {
        AnswerFormat format = shown(Unit.MILLIMETRE);
        assertEquals("≈261", format.angle(new BigDecimal("260.722"), Optional.of(0)));
        assertEquals("≈0", format.angle(new BigDecimal("359.6"), Optional.of(0)));
        assertEquals("90", format.angle(new BigDecimal("90.000"), Optional.of(0)));
        assertEquals("≈2.94", format.angle(new BigDecimal("2.935"), Optional.empty()));
        assertEquals("2.935", format.whole().angle(new BigDecimal("2.935"), Optional.empty()));
    }

    @Test
    void aSignStandsBeforeItsFigureAndBehindTheMark() {
        assertEquals(
                "≈+0.0052", shown(Unit.MILLIMETRE).signed(Length.of("0.00523", Unit.MILLIMETRE), RoundingMode.HALF_UP));
    }
}
