package org.tenthwise.app.sums.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Asking;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumReply;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.app.sums.written.NotJson;
import org.tenthwise.app.sums.written.WrittenObject;
import org.tenthwise.model.quantity.Unit;

/** What is asked and how it is answered; the figures of the sources are run with the published cases. */
class DecisionSumsTest {

    private final Asking asking = new Asking();

    private static SumReply uncertainty(String components) throws NotJson {
        return Handbook.sums()
                .ask(
                        "uncertainty",
                        new SumInput(
                                Optional.empty(),
                                WrittenObject.read("{\"components\":%s}".formatted(components.replace('\'', '"')))));
    }

    private static String words(SumReply reply) {
        return assertInstanceOf(Problem.class, reply).why().toString();
    }

    private static boolean notes(SumResult answer, String part) {
        return answer.notes().stream().anyMatch(note -> note.toString().contains(part));
    }

    /** The rule of ISO 14253-1, and on a limit a pass under no guard band. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        lower=29.980; upper=30.001; value=30.001,                    pass,     0.000000
        lower=29.980; upper=30.001; value=29.980,                    pass,     0.000000
        lower=29.980; upper=30.001; value=30.0010001,                fail,     0.0000001
        lower=29.980; upper=30.001; value=29.979,                    fail,     0.001000
        upper=30.001; value=29.9,                                    pass,     0.101000
        upper=30.001; value=30.0; guard_band=0.001,                  pass,     0.001000
        upper=30.001; value=30.0005; guard_band=0.001,               unproven, 0.000500
        upper=30.001; value=30.0015; guard_band=0.001,               unproven, 0.000500
        upper=30.001; value=30.0021; guard_band=0.001,               fail,     0.001100
        lower=1e1; upper=10.02; value=10.01; guard_band=0.01,        pass,     0.010000
        """)
    void aSizeIsJudged(String given, String verdict, String distance) {
        SumResult answer = asking.answer(Unit.MILLIMETRE, "judge", given);
        assertEquals(verdict, Asking.at(answer, "verdict"));
        assertEquals(distance, Asking.at(answer, "distance"));
    }

    /** A distance of zero beside a fail would be a lie: as many places as were typed, and eight at least. */
    @ParameterizedTest
    @CsvSource({
        "1.00100001, fail, 0.00000001",
        "1.0010000000001, fail, 0.0000000000001",
        "1.00000000000000000001, pass, 0.00000000000000000001",
        "0.99999999999999999999, fail, 0.00000000000000000001",
        "1.0010, pass, 0.00000000"
    })
    void aDistanceInInchesHasThePlacesThatWereTyped(String value, String verdict, String distance) {
        SumResult answer = asking.answer(Unit.INCH, "judge", "lower=1.0000; upper=1.0010; value=" + value);
        assertEquals(verdict, Asking.at(answer, "verdict"));
        assertEquals(distance, Asking.at(answer, "distance"));
    }

    @Test
    void whereTheSizeIsAndWhatIsNotProvenIsSaid() {
        SumResult answer = asking.answer(
                Unit.INCH, "judge", "lower=1.0000; upper=1.0010; value=1.0008; expanded_uncertainty=0.0003");
        assertTrue(notes(answer, "The size is 0.0002 in inside the upper limit."));
        assertTrue(notes(answer, "The limit is nearer than the expanded uncertainty"));
        assertTrue(notes(answer, "4 : 1 is not met"));
        SumResult single = asking.answer(Unit.MILLIMETRE, "judge", "upper=1; value=1; expanded_uncertainty=0.1");
        assertEquals("0.50000000", Asking.at(single, "conformance_probability"));
        assertTrue(Asking.found(single, "test_uncertainty_ratio").isEmpty());
        assertTrue(notes(single, "The size is on the upper limit."));
        assertTrue(notes(
                asking.answer(Unit.MILLIMETRE, "judge", "lower=2; value=2.5; coverage_factor=2"), "was not used"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        judge           | value=3                                          | lower and upper are missing: a verdict needs at least one limit
        judge           | lower=3; upper=2; value=3                        | lower is 3 and upper is 2: the lower limit is above the upper one
        judge           | lower=2; upper=3                                 | value is missing
        judge           | lower=2; upper=3; value=2.5; guard_band=0.51     | guard_band is 0.51: it is more than half the tolerance, and no size would pass
        judge           | lower=2; upper=3; value=2.5; guard_band=-0.1     | guard_band is -0.1: it must not be less than zero
        judge           | lower=2; value=2.5; expanded_uncertainty=0       | expanded_uncertainty is 0: it must be more than zero
        judge           | lower=2.12345678901; value=2                     | lower is 2.12345678901: a limit has at most ten digits before the point and ten after it
        risk            | lower=2; upper=2; process_mean=2; process_sd=1; standard_uncertainty=1; guard_band=0 | lower is 2 and upper is 2: the upper limit must be above the lower one
        risk            | lower=2; upper=3; process_mean=2; process_sd=0; standard_uncertainty=1; guard_band=0 | process_sd is 0: it must be more than zero
        risk            | lower=2; upper=3; process_mean=2; process_sd=1; standard_uncertainty=1; guard_band=1 | guard_band is 1: it is more than half the tolerance, and no size would pass
        judge           | upper=2; value=1; expanded_uncertainty=0.001; coverage_factor=1e20 | coverage_factor is 100000000000000000000: it leaves nothing of the expanded_uncertainty
        guard-band      | expanded_uncertainty=1; probability=1            | probability is 1: A probability of 1 gives no guard band: it must be 0.5 or more and less than 1
        rounding-method | value=3                                          | lower and upper are missing: a verdict needs at least one limit
        rounding-method | value=3; lower=5; upper=4                        | lower is 5 and upper is 4: the lower limit is above the upper one
        resolution      | lower=5; upper=5; division=0.1                   | lower is 5 and upper is 5: the upper limit must be above the lower one
        uncertainty     | components=3                                     | components must be a list
        """)
    void whatMakesNoSenseIsRefusedWithKeyAndValue(String sum, String given, String words) {
        assertEquals(words, asking.problem(Unit.MILLIMETRE, sum, given).why().toString());
    }

    @Test
    void componentsAreAskedForWhatBelongsToThem() throws NotJson {
        assertEquals(
                "components, item 1: k 2 does not go with kind repeat: k belongs to normal, n to repeat",
                words(uncertainty("[{'kind':'repeat','value':1,'k':2}]")));
        assertEquals(
                "components, item 1: n 3 does not go with kind resolution: k belongs to normal, n to repeat",
                words(uncertainty("[{'kind':'resolution','value':1,'n':3}]")));
        assertEquals(
                "components, item 1: value is -1: it must not be less than zero",
                words(uncertainty("[{'kind':'triangular','value':-1}]")));
        assertEquals(
                "components, item 1: kind is \"guess\": it is one of normal, rectangular, repeat, resolution, "
                        + "triangular",
                words(uncertainty("[{'kind':'guess','value':1}]")));
        assertEquals(
                "components, item 2: kind is missing", words(uncertainty("[{'kind':'normal','value':1},{'value':1}]")));
    }

    /** Student's factor for three degrees of freedom, 3.31: JCGM 100:2008, table G.2, from memory. */
    @Test
    void theChoiceOfTheFactorIsSaid() throws NotJson {
        SumResult few = assertInstanceOf(
                SumResult.class,
                uncertainty("[{'kind':'repeat','value':2,'n':4},{'kind':'resolution','value':0.1,'sensitivity':-1}]"));
        assertTrue(notes(few, "Coverage factor 3.31"));
        assertTrue(notes(few, "Effective degrees of freedom: 3.0."));
        assertTrue(notes(few, "use the larger of the two"));
        SumResult one = assertInstanceOf(SumResult.class, uncertainty("[{'kind':'rectangular','value':1}]"));
        assertTrue(notes(one, "Coverage factor 1.65 for 95 %: one rectangular source dominates"));
        SumResult two = assertInstanceOf(
                SumResult.class, uncertainty("[{'kind':'rectangular','value':1},{'kind':'resolution','value':1}]"));
        assertTrue(notes(two, "two rectangular sources together"));
        SumResult usual = assertInstanceOf(
                SumResult.class, uncertainty("[{'kind':'normal','value':1},{'kind':'resolution','value':1}]"));
        assertTrue(notes(usual, "Coverage factor 2"));
        assertTrue(notes(usual, "without k is taken as a standard uncertainty"));
    }

    @Test
    void oneSourceAloneIsNotCalledSeveral() throws NotJson {
        SumResult one = assertInstanceOf(SumResult.class, uncertainty("[{'kind':'triangular','value':1}]"));
        assertTrue(notes(one, "one source dominates, and it is not rectangular"));
        SumResult two = assertInstanceOf(
                SumResult.class, uncertainty("[{'kind':'normal','value':1,'k':2},{'kind':'normal','value':1,'k':2}]"));
        assertTrue(notes(two, "no rectangular source dominates, and none rests on too few readings"));
    }

    /** Scatter 2 of five readings: 2 / √5 = 0.894, on four degrees of freedom; JCGM 100:2008, 4.2.3. */
    @Test
    void whatTheNumberOfRepeatsDoesIsSaid() throws NotJson {
        SumResult five = assertInstanceOf(SumResult.class, uncertainty("[{'kind':'repeat','value':2,'n':5}]"));
        assertTrue(Asking.at(five, "standard").startsWith("0.89442"));
        assertTrue(notes(five, "5 of them averaged: divided by √5, with 4 degrees of freedom"));
        SumResult one = assertInstanceOf(
                SumResult.class, uncertainty("[{'kind':'repeat','value':2},{'kind':'repeat','value':3,'n':1}]"));
        assertEquals(
                1,
                one.notes().stream()
                        .filter(note -> note.toString().startsWith("A repeat with n = 1 is the scatter of one reading"))
                        .count());
    }

    @Test
    void aFactorThatIsAgreedIsTaken() throws NotJson {
        SumResult answer = assertInstanceOf(
                SumResult.class,
                Handbook.sums()
                        .ask(
                                "uncertainty",
                                new SumInput(
                                        Optional.empty(),
                                        WrittenObject.read(
                                                "{\"components\":[{\"kind\":\"repeat\",\"value\":2,\"n\":4}],"
                                                        + "\"coverage_factor\":3}"))));
        // by hand: 2 / root 4 is 1, three times that is 3
        assertEquals("3.00000000", Asking.at(answer, "expanded"));
        assertTrue(notes(answer, "The coverage factor is the one given, 3;"));
    }

    @Test
    void theRoundingMethodIsNamedWhereItTurnsTheVerdict() {
        SumResult turned = asking.answer(Unit.MILLIMETRE, "rounding-method", "value=20.0214; upper=20.021");
        assertEquals("fail", Asking.at(turned, "verdict_absolute"));
        assertEquals("pass", Asking.at(turned, "verdict_rounded"));
        assertEquals("20.021", Asking.at(turned, "rounded"));
        assertTrue(notes(turned, "the order must say which applies"));
        assertEquals(
                List.of(),
                asking.answer(Unit.MILLIMETRE, "rounding-method", "value=20.022; upper=20.021")
                        .notes());
    }

    @Test
    void aDivisionOfMoreThanATenthIsTooCoarse() {
        SumResult answer = asking.answer(Unit.MILLIMETRE, "resolution", "lower=20; upper=20.05; division=0.01");
        assertEquals("0.2", Asking.at(answer, "share"));
        assertEquals("0.005000", Asking.at(answer, "tenth"));
        assertEquals("too-coarse", Asking.at(answer, "verdict"));
        assertTrue(notes(answer, "use a finer gauge"));
    }

    /** JCGM 106:2012, table 1, from memory: 1.64 for 95 %, the probability taken if none is given. */
    @Test
    void aGuardBandIsForNinetyFiveInAHundredUnlessSaid() {
        assertTrue(Asking.at(asking.answer(Unit.MILLIMETRE, "guard-band", "expanded_uncertainty=0.002"), "guard_band")
                .startsWith("0.00164"));
        assertTrue(Asking.at(
                        asking.answer(Unit.MILLIMETRE, "guard-band", "expanded_uncertainty=0.003; coverage_factor=3"),
                        "guard_band")
                .startsWith("0.00164"));
    }
}
