package org.tenthwise.app.sums.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

/** How an expression is asked for and answered; what it comes to is tested with the model. */
class CalculatedSumTest {

    private static SumReply ask(String json) throws NotJson {
        return Handbook.sums().ask("calculated", SumInput.written(WrittenObject.read(json)));
    }

    private static SumResult answer(String json) throws NotJson {
        SumReply reply = ask(json);
        return assertInstanceOf(SumResult.class, reply, reply::toString);
    }

    private static void assertNoted(SumResult answer, String words) {
        assertTrue(answer.notes().stream().anyMatch(note -> note.toString().contains(words)), answer.notes()::toString);
    }

    @Test
    void aWallHasItsLeastAndItsGreatestOverThePlaces() throws NotJson {
        // by hand: (50.00 − 40.02)/2 − 0.03, (50.02 − 40.02)/2 − 0.03; √(0.5² 0.004² + 0.5² 0.006²)
        SumResult wall = answer("{\"unit\":\"mm\",\"expression\":\"(od - id) / 2 - e\","
                + "\"names\":{\"od\":[\"50.00\",50.02],\"id\":40.02,\"e\":\"0.03\"},"
                + "\"uncertainties\":{\"od\":\"0.004\",\"id\":\"0.006\"}}");
        assertEquals("4.965000", Asking.at(wall, "value"));
        assertEquals("4.960000", Asking.at(wall, "least"));
        assertEquals("4.970000", Asking.at(wall, "greatest"));
        assertEquals("0.003606", Asking.at(wall, "expanded"));
        assertNoted(wall, "independent of one another");
        assertNoted(wall, "taken as exact: e");
        assertNoted(wall, "any size between");
    }

    @Test
    void aLengthHasThePlacesOfItsUnit() throws NotJson {
        SumResult point = answer(
                "{\"unit\":\"in\",\"expression\":\"d / 2 / tan(w / 2)\",\"names\":{\"d\":\".5\",\"w\":\"118\"}}");
        assertEquals("0.15021515", Asking.at(point, "value"));
        assertNoted(point, "is of it: w");
    }

    @Test
    void anAngleAndANumberAreCalledThat() throws NotJson {
        SumResult angle = answer("{\"unit\":\"mm\",\"expression\":\"asin(h / 100)\",\"names\":{\"h\":\"50\"}}");
        assertEquals("30.000000000000", Asking.at(angle, "value"));
        assertNoted(angle, "in degrees");
        SumResult number = answer(
                "{\"unit\":\"mm\",\"expression\":\"(d - e) / l\",\"names\":{\"d\":\"30\",\"e\":\"20\",\"l\":\"80\"}}");
        assertEquals("0.125000000000", Asking.at(number, "value"));
        assertNoted(number, "without unit");
    }

    @Test
    void whereThereIsNoSlopeTheUncertaintyIsLeftOutAndSaid() throws NotJson {
        SumResult centre =
                answer("{\"unit\":\"mm\",\"expression\":\"2*sqrt(x^2+y^2)\",\"names\":{\"x\":\"0\",\"y\":\"0\"},"
                        + "\"uncertainties\":{\"x\":\"0.01\",\"y\":\"0.01\"}}");
        assertTrue(Asking.found(centre, "expanded").isEmpty());
        assertNoted(centre, "no slope");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        "expression":"a + b","names":{"a":"1"}                      | expression    | the name b in it stands for nothing
        "expression":"a","names":{"a":"1","b":"2"}                  | expression    | the name b is not in it
        "expression":"a / (a - b)","names":{"a":"1","b":"1"}        | expression    | a − b can come to zero
        "expression":"a / (a - b)","names":{"a":["1","3"],"b":"2"}  | expression    | a − b can come to zero
        "expression":"sqrt(a*a - b*b)","names":{"a":"1","b":"2"}    | expression    | can be less than zero
        "expression":"a * b","names":{"a":"1","b":"1"}              | expression    | a length times a length
        "expression":"(a","names":{"a":"1"}                         | expression    | expression is "(a": the bracket at character 1 is not closed
        "expression":"","names":{"a":"1"}                           | expression    | blank
        "expression":"a","names":["1"]                              | names         | must be a table
        "expression":"a","names":{"a":[]}                           | names         | names, a, is an empty list
        "expression":"a","names":{"a":"wide"}                       | names         | names, a, is "wide"
        "expression":"a","names":{"a":{"b":"1"}}                    | names         | names, a, is a table
        "expression":"a","names":{"a":["1",["2"]]}                  | names         | names, a, is a list
        "expression":"a","names":{"a":"1"},"uncertainties":{"b":"1"}  | uncertainties | uncertainties has b
        "expression":"a","names":{"a":"1"},"uncertainties":{"a":"-1"} | uncertainties | one figure of zero or more
        "expression":"a","names":{"a":"1"},"uncertainties":{"a":["1","2"]} | uncertainties | one figure of zero or more
        """)
    void whatMakesNoSenseIsRefusedByItsKey(String given, String key, String words) throws NotJson {
        Problem problem = assertInstanceOf(Problem.class, ask("{\"unit\":\"mm\"," + given + "}"));
        assertEquals(key, problem.key().orElseThrow(), problem.why().toString());
        assertTrue(problem.why().toString().contains(words), problem.why().toString());
    }

    @Test
    void aUnitIsNeeded() throws NotJson {
        Problem problem = assertInstanceOf(Problem.class, ask("{\"expression\":\"a\",\"names\":{\"a\":\"1\"}}"));
        assertEquals("unit", problem.key().orElseThrow());
    }
}
