package org.tenthwise.app.sums.temperature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumReply;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

/** What is asked and how it is answered; the figures of the sources are run with the published cases. */
class TemperatureSumsTest {

    private final Sums sums = Handbook.sums();

    private SumReply ask(Unit unit, String sum, String given) {
        Map<String, String> keys = new LinkedHashMap<>();
        Arrays.stream(given.split("; ")).map(pair -> pair.split("=")).forEach(pair -> keys.put(pair[0], pair[1]));
        return sums.ask(sum, Asking.given(unit, keys));
    }

    private SumResult answer(Unit unit, String sum, String given) {
        return assertInstanceOf(SumResult.class, ask(unit, sum, given));
    }

    private static String at(SumResult answer, String key) {
        return Asking.at(answer, key);
    }

    /** 50·(1 + 69e-6)/(1 + 141.6e-6) = 49.9963705 by hand; in inches the same, of 1.9685 in. */
    @Test
    void aWarmPartComesOutInTheUnitItWasReadIn() {
        String warm = "part_temp=26; part_alpha=23.6; gauge_temp=26; gauge_alpha=11.5";
        SumResult millimetres = answer(Unit.MILLIMETRE, "at-20c", "reading=50; " + warm);
        assertEquals("49.996371", at(millimetres, "size"));
        assertEquals("-0.003629", at(millimetres, "correction"));
        SumResult inches = answer(Unit.INCH, "at-20c", "reading=1.96850394; " + warm);
        assertEquals("1.96836", at(inches, "size").substring(0, 7));
        assertTrue(Asking.found(millimetres, "u").isEmpty());
    }

    /** 100·11.5e-6·0.5 by hand: the expansion is taken as known where nothing is said of it. */
    @Test
    void anUncertaintyIsGivenWhereOneOfTheTwoIs() {
        SumResult answer = answer(
                Unit.MILLIMETRE,
                "at-20c",
                "reading=100; part_temp=20; part_alpha=11.5; gauge_temp=20; gauge_alpha=11.5; u_temp=0.5");
        assertEquals("0.000575000", at(answer, "u"));
        assertEquals(2, answer.notes().size());
    }

    /** 30.021·(9·16.2e-6 + 3·11.5e-6) ≈ 0.0054 to first order, a quarter of 0.021. */
    @Test
    void aShopOfTwelveDegreesMattersToABore() {
        SumResult answer = answer(
                Unit.MILLIMETRE,
                "temperature-matters",
                "size=30.021; tolerance=0.021; part_alpha=16.2; gauge_alpha=11.5; part_least=17; part_greatest=29");
        assertEquals("0.0054", at(answer, "worst").substring(0, 6));
        assertEquals("0.25", at(answer, "share").substring(0, 4));
        assertEquals("yes", at(answer, "matters"));
    }

    @Test
    void aRangeThatWasTakenForTheGaugeIsSaid() {
        String part = "size=100; tolerance=0.05; part_alpha=11.5; gauge_alpha=11.5; part_least=18; part_greatest=22";
        List<Message> taken =
                answer(Unit.MILLIMETRE, "temperature-matters", part).notes();
        assertTrue(taken.contains(Message.of("sum.temperature-matters.no-gauge")), taken::toString);
        assertEquals(
                1,
                answer(Unit.MILLIMETRE, "temperature-matters", part + "; gauge_least=18; gauge_greatest=22")
                        .notes()
                        .size());
    }

    @Test
    void aGaugeKeptInARoomOfItsOwnHasARangeOfItsOwn() {
        String part = "size=100; tolerance=0.05; part_alpha=11.5; gauge_alpha=11.5; part_least=20; part_greatest=20; ";
        assertEquals(
                "0.000000",
                at(
                        answer(Unit.MILLIMETRE, "temperature-matters", part + "gauge_least=20; gauge_greatest=20"),
                        "worst"));
        assertEquals(
                "0.002300",
                at(
                        answer(Unit.MILLIMETRE, "temperature-matters", part + "gauge_least=18; gauge_greatest=22"),
                        "worst"));
    }

    @Test
    void anExpansionIsGivenWithItsConditionItsTenthAndItsSource() {
        SumResult answer =
                answer(Unit.MILLIMETRE, "expansion", "material=stainless steel S17400; condition=condition H1150");
        assertEquals("11.9", at(answer, "alpha"));
        assertEquals("condition H1150", at(answer, "condition"));
        assertEquals("10.71", at(answer, "least"));
        assertEquals("13.09", at(answer, "greatest"));
        assertTrue(answer.basis().toString().contains("from memory"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        at-20c              | reading=50; part_temp=26; part_alpha=0.0000236; gauge_temp=26; gauge_alpha=11.5 | part_alpha | part_alpha is 0.0000236: Expansion 0.0000236 is too small to be in 1e-6 per °C: steel is 11.5
        at-20c              | reading=50; part_temp=2600; part_alpha=23.6; gauge_temp=26; gauge_alpha=11.5 | part_temp | part_temp is 2600: 2600 °C is not a temperature at which a size is measured
        at-20c              | reading=50; part_temp=26; part_alpha=23.6; gauge_temp=26 | gauge_alpha | gauge_alpha is missing
        at-20c              | reading=50; part_temp=26; part_alpha=23.6; gauge_temp=26; gauge_alpha=11.5; u_temp=-1 | u_temp | u_temp is -1: it must not be less than zero
        temperature-matters | size=50; tolerance=0; part_alpha=23.6; gauge_alpha=11.5; part_least=18; part_greatest=22 | tolerance | tolerance is 0: it must be more than zero
        temperature-matters | size=50; tolerance=0.02; part_alpha=23.6; gauge_alpha=11.5; part_least=22; part_greatest=18 | part_greatest | part_greatest is 18 °C: that is below part_least, 22 °C
        temperature-matters | size=50; tolerance=0.02; part_alpha=23.6; gauge_alpha=11.5; part_least=18; part_greatest=22; gauge_least=19 | gauge_least | gauge_least is given alone: give gauge_least and gauge_greatest, or neither
        expansion           | material=stainless steel S17400 | condition | condition is missing: the table has "stainless steel S17400" in more than one, as "condition A, annealed", "condition H900", "condition H1150"
        expansion           | material=steel 1045; condition=hardened | condition | condition is "hardened": the table has "steel 1045" as "annealed"
        """)
    void whatMakesNoSenseIsRefusedInAPersonsWords(String sum, String given, String key, String words) {
        Problem problem = assertInstanceOf(Problem.class, ask(Unit.MILLIMETRE, sum, given));
        assertEquals(key, problem.key().orElse(""));
        assertEquals(words, problem.why().toString());
    }

    @Test
    void aMaterialNobodyKnowsIsAnsweredWithThoseThatAreKnown() {
        Problem problem = assertInstanceOf(Problem.class, ask(Unit.MILLIMETRE, "expansion", "material=unobtainium"));
        assertTrue(
                problem.why()
                        .toString()
                        .startsWith("material is \"unobtainium\": the table has \"steel 1020\", \"steel 1040\""),
                problem.why().toString());
    }
}
