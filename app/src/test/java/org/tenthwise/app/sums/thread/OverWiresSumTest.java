package org.tenthwise.app.sums.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.sums.Asking.at;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.quantity.Unit;

/** What is asked and how it is answered; the figures of the sources are run with the published cases. */
class OverWiresSumTest {

    private static final String ACME = "form=acme; tpi=5; ";

    private final Asking sums = new Asking();

    private static double number(SumResult answer, String key) {
        return Double.parseDouble(at(answer, key));
    }

    /** By hand for 29°, 5 threads to the inch, W 0.10329 in: M = 0.9 − 0.386671 + 0.515823, and 0.000967 more. */
    @Test
    void thePitchDiameterGivesTheMeasurementByThreeFormulas() {
        SumResult answer = sums.answer(Unit.INCH, "over-wires", ACME + "diameter=1; wire=0.10329; pitch_diameter=0.9");
        assertEquals(1.029152, number(answer, "simple"), 0.000001);
        assertEquals(1.030119, number(answer, "corrected"), 0.000001);
        // at 4° of lead the corrected formula is good to 0.0002 pitch
        assertEquals(number(answer, "corrected"), number(answer, "over_wires"), 0.00004);
        assertEquals("0.90000000", at(answer, "pitch_diameter"));
        // arctan(0.2 / 0.9 π)
        assertEquals(
                "4.0461",
                new BigDecimal(at(answer, "lead_angle"))
                        .setScale(4, RoundingMode.HALF_EVEN)
                        .toPlainString());
        assertEquals(8, new BigDecimal(at(answer, "lead_angle")).precision());
        assertTrue(
                answer.notes()
                        .get(0)
                        .toString()
                        .startsWith("The lead angle matters: it raises the reading by 0.000967 in"),
                answer.notes()::toString);
    }

    @Test
    void theMeasurementGivesThePitchDiameterBack() {
        String over = at(
                sums.answer(Unit.INCH, "over-wires", ACME + "diameter=1; wire=0.10329; pitch_diameter=0.9"),
                "over_wires");
        SumResult back = sums.answer(Unit.INCH, "over-wires", ACME + "diameter=1; wire=0.10329; over_wires=" + over);
        assertEquals(0.9, number(back, "pitch_diameter"), 0.00000004);
        assertEquals(0.000967, number(back, "simple") - number(back, "corrected"), 0.000001);
    }

    @Test
    void inchAndMillimetreAgree() {
        SumResult inches =
                sums.answer(Unit.INCH, "over-wires", ACME + "diameter=1; starts=2; wire=0.10329; over_wires=1.0325");
        SumResult millimetres = sums.answer(
                Unit.MILLIMETRE,
                "over-wires",
                "form=acme; pitch=5.08; diameter=25.4; starts=2; wire=2.623566; over_wires=26.2255");
        for (String key :
                new String[] {"pitch_diameter", "simple", "corrected", "best_wire", "wire_least", "wire_greatest"}) {
            assertEquals(number(millimetres, key), number(inches, key) * 25.4, 0.0000005, key);
        }
        assertEquals(at(millimetres, "lead_angle"), at(inches, "lead_angle"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        # least wire by hand 0.09745 in, basic root at 0.8: a wire of 0.09 stands at 0.963
        form=acme; tpi=5; diameter=1; wire=0.09; pitch_diameter=0.9 | The wire does not project above the crest
        # the same without a major diameter: the crest of the form is taken
        form=acme; tpi=5; wire=0.09; pitch_diameter=0.9 | The wire does not project above the crest
        # stub form at class 2G greatest sizes: 0.0023 in too deep by geometry
        form=stub-acme; diameter=1; tpi=5; wire=0.10329; pitch_diameter=0.932; minor_diameter=0.86 | The wire bottoms on the root
        # without the root measured: 0.8555 by geometry, under the basic root at 0.88
        form=stub-acme; diameter=1; tpi=5; wire=0.10329; pitch_diameter=0.932 | The wire reaches down to a diameter of 0.855
        # a thread not yet to size: the corners of the crest are passed
        form=acme; tpi=5; diameter=1; wire=0.129; pitch_diameter=0.92 | The wire would touch the flanks on a diameter of
        form=acme; tpi=5; diameter=1; starts=3; wire=0.10329; pitch_diameter=0.9 | Above a lead angle of 5°
        form=metric; pitch=1.5; diameter=10; wire=0.866; wires=2; pitch_diameter=9 | Two wires are half a pitch apart
        """)
    void whatIsAmissIsSaid(String given, String words) {
        SumResult answer = sums.answer(Unit.INCH, "over-wires", given);
        assertTrue(
                answer.notes().stream().anyMatch(note -> note.toString().startsWith(words)), answer.notes()::toString);
    }

    @Test
    void aWireThatFitsAFlatLeadIsAnsweredWithoutANote() {
        assertTrue(
                sums.answer(Unit.INCH, "over-wires", "form=unified; tpi=8; diameter=1; wire=0.0722; over_wires=1.0268")
                        .notes()
                        .isEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        form=acme; tpi=5; diameter=1; wire=0.14; over_wires=1.05 | wire | wire is 0.14: it rests on the crests
        form=acme; tpi=5; wire=0.14; pitch_diameter=0.9 | wire | wire is 0.14: it rests on the crests
        form=acme; tpi=5; diameter=1; wire=0.02; pitch_diameter=0.9 | wire | wire is 0.02
        form=acme; tpi=5; diameter=1; wire=-0.1; pitch_diameter=0.9 | wire | wire is -0.1
        form=acme; tpi=5; diameter=1; wire=0.1 | over_wires | over_wires is missing
        form=acme; tpi=5; diameter=1; wire=0.1; over_wires=1; pitch_diameter=0.9 | over_wires | over_wires is 1 and pitch_diameter is 0.9
        form=acme; tpi=5; wire=0.1; over_wires=1.02 | diameter | diameter is missing
        form=acme; tpi=5; diameter=0.1; wire=0.1; over_wires=1.02 | diameter | diameter is 0.1: it leaves no core in a thread with tpi 5
        form=acme; tpi=5; diameter=1; wire=0.1; over_wires=0.05 | over_wires | over_wires is 0.05
        form=acme; tpi=5; diameter=1; wire=0.1; over_wires=26.1 | diameter | the pitch diameter would be
        form=acme; pitch=1000; wire=500; pitch_diameter=0.001 | pitch_diameter | pitch_diameter is 0.001
        form=acme; diameter=1; wire=0.1; over_wires=1.02 | pitch | pitch is missing
        form=acme; tpi=5; pitch=0.2; diameter=1; wire=0.1; over_wires=1.02 | pitch | give one of them
        form=square; tpi=5; diameter=1; wire=0.1; over_wires=1.02 | form | form is "square"
        form=acme; tpi=5; half_angle=90; diameter=1; wire=0.1; over_wires=1.02 | half_angle | half_angle is 90
        form=acme; tpi=5; diameter=1; wire=0.1; pitch_diameter=0.9; minor_diameter=0.95 | minor_diameter | minor_diameter is 0.95
        form=acme; tpi=5; diameter=1; wire=0.1; pitch_diameter=0.9; starts=1.5 | starts | starts is 1.5
        """)
    void whatMakesNoSenseIsRefusedByItsKey(String given, String key, String words) {
        var problem = sums.problem(Unit.INCH, "over-wires", given);
        assertEquals(key, problem.key().orElseThrow(), problem.why().toString());
        assertTrue(problem.why().toString().contains(words), problem.why().toString());
    }

    /** By hand: cot 20° = 2.747477, 1 + csc 20° = 3.923804; M = 20 − 1.8 · 2.747477 + 1.9 · 3.923804. */
    @Test
    void aFormThatIsTypedGoesBeforeTheNamedOne() {
        SumResult answer = sums.answer(
                Unit.MILLIMETRE,
                "over-wires",
                "form=acme; pitch=4; half_angle=20; groove_width=1.8; wire=1.9; pitch_diameter=20");
        assertEquals(22.509769, number(answer, "simple"), 0.000002);
        assertEquals(1.915520, number(answer, "best_wire"), 0.000002);
    }

    /** By hand: 2 · 1.0151 − 1.0002 = 1.03 over wires. */
    @Test
    void oneWireIsReckonedOnTheCrestMeasured() {
        SumResult one = sums.answer(
                Unit.INCH, "one-wire", ACME + "diameter=1; wire=0.10329; over_one_wire=1.0151; major_diameter=1.0002");
        assertEquals("1.03000000", at(one, "over_wires"));
        SumResult three = sums.answer(Unit.INCH, "over-wires", ACME + "diameter=1; wire=0.10329; over_wires=1.03");
        assertEquals(at(three, "pitch_diameter"), at(one, "pitch_diameter"));
        assertTrue(one.notes().stream().anyMatch(note -> note.toString().contains("burr")), one.notes()::toString);
        for (String reading : new String[] {"-1", "0.3"}) {
            assertEquals(
                    "over_one_wire",
                    sums.problem(
                                    Unit.INCH,
                                    "one-wire",
                                    ACME + "wire=0.10329; over_one_wire=" + reading + "; major_diameter=1")
                            .key()
                            .orElseThrow());
        }
        var crest = sums.problem(
                Unit.INCH, "one-wire", ACME + "diameter=1; wire=0.10329; over_one_wire=1.0151; major_diameter=0.5");
        assertEquals("major_diameter", crest.key().orElseThrow());
        assertTrue(
                crest.why().toString().startsWith("major_diameter is 0.500000 in: the pitch diameter would be"),
                () -> crest.why().toString());
    }

    @Test
    void theSensitivityTakesAFormOrAHalfAngle() {
        String rest = "pitch=0.2; wire=0.10329; u_over_wires=0.00005774; u_wire=0.00001155; u_pitch=0";
        SumResult named = sums.answer(Unit.INCH, "wire-sensitivity", "form=acme; " + rest);
        SumResult typed = sums.answer(Unit.INCH, "wire-sensitivity", "half_angle=14.5; " + rest);
        assertEquals(named.written(), typed.written());
        assertEquals(
                "form is missing: give it, or half_angle",
                sums.problem(Unit.INCH, "wire-sensitivity", rest).why().toString());
        assertEquals(2, number(named, "expanded") / number(named, "standard"), 0.001);
        assertEquals(
                "form", sums.problem(Unit.INCH, "wire-sensitivity", rest).key().orElseThrow());
        assertEquals(
                "u_wire",
                sums.problem(Unit.INCH, "wire-sensitivity", "form=acme; " + rest.replace("0.00001155", "-1"))
                        .key()
                        .orElseThrow());
    }
}
