package org.tenthwise.app.ui.keys;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.words.Message;

class OfferTest {

    private static final Offer BETWEEN = new Offer("", Set.of("47", "48"), 3, Optional.empty());

    private static Offer behind(String read) {
        BigDecimal before = new BigDecimal(read);
        return new Offer(before.toBigInteger() + ".", Set.of("47", "48"), before.scale(), Optional.of(before));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # lower, upper,  whole units
            47.98,   48.00,  47 48
            47.980,  47.999, 47
            9.98,    10.02,  9 10
            0.4,     0.8,    0
            0.9,     1.1,    0 1
            103.5,   104.5,  103 104
            # 1 is the beginning of 10
            1.5,     10.5,   ''
            # a size may begin with any digit
            20,      40,     ''
            -0.1,    0.1,    ''
            """)
    void wholeUnitsAreThoseFromLimitToLimit(BigDecimal lower, BigDecimal upper, String wholes) {
        Set<String> expected = Arrays.stream(wholes.split(" "))
                .filter(whole -> !whole.isEmpty())
                .collect(Collectors.toSet());
        assertEquals(expected, Offer.wholes(lower, upper));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # coldest, warmest, keys, figure
            13,        28,      215,  21.5
            # 13 °C and 28 °C in °F
            55.4,      82.4,    707,  70.7
            # 1 is the beginning of 10
            1,         16,      125,  125
            -2,        13,      125,  125
            """)
    void thePointOfATemperatureComesBehindAnyOfTheDegrees(
            BigDecimal coldest, BigDecimal warmest, String keys, String figure) {
        assertEquals(figure, Offer.ofDegrees(coldest, warmest).figure(keys));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # keys,   figure
            4,        4
            47,       47
            479,      47.9
            47991,    47.991
            48151,    48.151
            # no whole units of a size inside the limits
            49151,    49151
            4991,     4991
            # with the point it means what it always meant
            47.991,   47.991
            479.,     479.
            479.91,   479.91
            -47991,   -47.991
            """)
    void thePointComesBehindWholeUnitsOfASizeInsideTheLimits(String keys, String figure) {
        assertEquals(figure, BETWEEN.figure(keys));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # keys,   figure
            9,        47.9
            991,      47.991
            47991,    47.47991
            # the point says that all of it was typed
            48.,      48.
            48.151,   48.151
            0.,       0.
            -,        -47.
            -991,     -47.991
            """)
    void whatIsOfferedInFrontStandsBeforeDigitsAlone(String keys, String figure) {
        assertEquals(figure, behind("47.991").figure(keys));
    }

    /** With the point typed, one digit twice is a size ten times as large; without, it is one near by. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # keys,   whether it is told how many decimals belong there
            47991,    false
            47.99,    false
            477.991,  false
            47,       false
            477991,   true
            4799,     true
            479911,   true
            """)
    void behindAPointThatWasNotTypedStandAsManyDecimalsAsTheGaugeShows(String keys, boolean told) {
        assertEquals(told ? Optional.of(Message.of("keypad.decimals", 3)) : Optional.empty(), BETWEEN.against(keys));
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            textBlock =
                    """
            # before, keys,   what is said,       of what
            47.991,   990,    -,                  -
            47.991,   800,    -,                  -
            47.991,   48.003, -,                  -
            47.991,   99,     keypad.decimals,    3
            47.991,   9911,   keypad.decimals,    3
            47.991,   47991,  keypad.decimals,    3
            # 48.003 with the whole units of the reading before
            47.991,   003,    keypad.far,         47.991
            48.003,   991,    keypad.far,         48.003
            48.003,   253,    -,                  -
            48.003,   254,    keypad.far,         48.003
            # typed in full, without decimals
            47.50,    47,     keypad.either,      47.47 47
            47.50,    48,     keypad.either,      47.48 48
            # typed in full, without the last zeros: 48.1 lies nearer
            47.700,   481,    -,                  -
            48.250,   481,    keypad.either,      48.481 48.1
            """)
    void whatCouldBeMeantOtherwiseIsNotTaken(String before, String keys, String key, String values) {
        Optional<Message> expected = Optional.ofNullable(key).map(said -> {
            Object[] of = said.equals("keypad.decimals") ? new Object[] {3} : values.split(" ");
            return Message.of(said, of);
        });
        assertEquals(expected, behind(before).against(keys));
    }

    @Test
    void aDialThatHasNoReadingBeforeTakesWhateverHasItsDecimals() {
        Offer dial = new Offer("0.", Set.of("0"), 3, Optional.empty());
        assertEquals("-0.143", dial.figure("-143"));
        assertEquals(Optional.empty(), dial.against("-143"));
        assertEquals(Optional.of(Message.of("keypad.decimals", 3)), dial.against("0011"));
        assertEquals(Optional.of(Message.of("keypad.decimals", 3)), dial.against("11"));
        assertEquals(Optional.empty(), dial.against("0.11"));
    }
}
