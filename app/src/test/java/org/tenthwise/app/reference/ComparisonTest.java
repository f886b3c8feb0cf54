package org.tenthwise.app.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.OutputValues;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.model.quantity.Unit;

class ComparisonTest {

    /** Hands back the figure and the word it is given, and a list of tables with the figure in its second place. */
    private static final class Echo implements Sum {

        private static final Input<BigDecimal> FIGURE = Input.figure("figure");
        private static final Input<String> WORD = Input.name("word");
        private static final Output<BigDecimal> TO = Output.exact("to");
        private static final Output<List<OutputValues>> STEPS = Output.tables("steps", TO);

        @Override
        public SumDescription description() {
            return SumDescription.named("echo").takes(FIGURE, WORD).on("common practice");
        }

        @Override
        public SumResult of(SumInput given) {
            BigDecimal figure = given.get(FIGURE);
            return description()
                    .in(Unit.MILLIMETRE)
                    .put(Output.exact("figure"), figure)
                    .put(Output.word("word"), given.get(WORD))
                    .put(STEPS, List.of(new OutputValues(), new OutputValues().put(TO, figure)))
                    .done();
        }
    }

    private static List<ComparedFigure> rows(String figure, String more) {
        String line = "{\"source\":\"By "
                + "hand\",\"standing\":\"constructed\",\"case\":\"c\",\"calc\":\"echo\","
                + "\"given\":{\"figure\":\""
                + figure + "\",\"word\":\"Pass\"}," + more + "}";
        return new Comparison(new Sums(List.of(new Echo()))).of(CaseLine.published(line));
    }

    /** Ties go to the even digit. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # worked, printed, agreement, shown
            0.21484,  0.2148,  AGREES,    0.2148
            0.21485,  0.2148,  AGREES,    0.2148
            0.21485,  0.2149,  DISAGREES, 0.2148
            0.214851, 0.2149,  AGREES,    0.2149
            2,        2.000,   AGREES,    2.000
            2.4,      2,       AGREES,    2
            -0.0004,  0.000,   AGREES,    0.000
            0.02,     2.0E-2,  AGREES,    0.020
            """)
    void aFigureAgreesWhereItRoundsToTheOnePrinted(String worked, String printed, Agreement agreement, String shown) {
        ComparedFigure row = rows(worked, "\"published\":{\"figure\":\"%s\"}".formatted(printed))
                .get(0);
        assertEquals(agreement, row.agreement());
        assertEquals(shown, row.computed().toString());
        assertEquals(printed, row.published());
    }

    @Test
    void wordsAgreeWhereTheyAreTheSameWord() {
        List<ComparedFigure> rows = rows("1", "\"published\":{\"word\":\"Pass\",\"figure\":\"one\"}");
        assertEquals(
                List.of(Agreement.AGREES, Agreement.DISAGREES),
                rows.stream().map(ComparedFigure::agreement).toList());
    }

    @Test
    void aFigureIsFoundInListsAndTables() {
        List<ComparedFigure> rows = rows(
                "1.5",
                "\"published\":{\"steps.0.to\":\"first\",\"steps.1.to\":\"1.5\",\"steps.2.to\":\"1.5\","
                        + "\"steps\":\"1.5\"}");
        assertEquals(
                List.of("no steps.0.to", "1.5", "no steps.2.to", "no steps"),
                rows.stream().map(row -> row.computed().toString()).toList());
        assertEquals(
                List.of(Agreement.DISAGREES, Agreement.AGREES, Agreement.DISAGREES, Agreement.DISAGREES),
                rows.stream().map(ComparedFigure::agreement).toList());
    }

    @ParameterizedTest
    @CsvSource({"1.005, AGREES", "0.995, AGREES", "1.0051, DISAGREES", "0.9949, DISAGREES"})
    void whatTheSourceAllowsIsAllowedToTheLimit(String worked, Agreement agreement) {
        ComparedFigure row = rows(
                        worked,
                        "\"published\":{\"figure\":\"1.00\"},\"within\":{\"figure\":\"0.005\"},\"why\":\"read from "
                                + "a curve\"")
                .get(0);
        assertEquals(agreement, row.agreement());
        assertEquals(
                "within 0.005: read from a curve", row.because().orElseThrow().toString());
        assertTrue(!row.toTheLastDigit());
    }

    @Test
    void whatIsSetAsideMustDisagree() {
        String aside = "\"published\":{\"figure\":\"1.0\"},\"aside\":{\"figure\":\"misprint\"}";
        assertEquals(
                "misprint", rows("1.1", aside).get(0).because().orElseThrow().toString());
        assertEquals(Agreement.ASIDE, rows("1.1", aside).get(0).agreement());
        assertEquals(Agreement.DISAGREES, rows("1.0", aside).get(0).agreement());
    }

    @ParameterizedTest
    @CsvSource({"1.0024, 1.002", "1.00041, 1.0004", "-1.0024, -1.00", "1.0100, 1.01"})
    void whatDoesNotAgreeIsShownToThePlaceWhereItDiffers(String worked, String shown) {
        String allowed = "\"published\":{\"figure\":\"1.00\"},\"within\":{\"figure\":\"0.0001\"},\"why\":\"exact\"";
        assertEquals(shown, rows(worked, allowed).get(0).computed().toString());
        ComparedFigure aside =
                rows(worked, allowed + ",\"aside\":{\"figure\":\"misprint\"}").get(0);
        assertEquals(Agreement.ASIDE, aside.agreement());
        assertEquals(shown, aside.computed().toString());
    }

    @Test
    void aRefusalIsSaidInEveryRow() {
        List<ComparedFigure> rows =
                rows("one", "\"published\":{\"figure\":\"1\",\"word\":\"Pass\"},\"aside\":{\"figure\":\"misprint\"}");
        assertEquals(2, rows.size());
        rows.forEach(row -> {
            assertEquals(Agreement.DISAGREES, row.agreement());
            assertEquals(
                    "refused: figure is \"one\": it is not a decimal number",
                    row.computed().toString());
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            textBlock =
                    """
            {"source":"s"}                                                                                                   | x.jsonl line 2: standing is missing
            {"source":"s","standing":"heard","case":"c","calc":"k","published":{"a":"1"}}                                    | x.jsonl line 2: standing is "heard"
            {"source":"s","standing":"published","case":"c","calc":"k"}                                                      | x.jsonl line 2: Nothing is published
            {"source":"s","standing":"published","case":"c","calc":"k","published":{"a":"1"},"also":{}}                      | x.jsonl line 2: unknown key also
            {"source":"s","standing":"published","case":"c","calc":"k","published":{"a":"1"},"aside":{"b":"w"}}              | x.jsonl line 2: aside names b, which is not published
            {"source":"s","standing":"published","case":"c","calc":"k","published":{"a":"1"},"within":{"a":"1"}}             | x.jsonl line 2: within and why go together
            {"source":"s","standing":"published","case":"c","calc":"k","published":{"a":["1"]}}                              | x.jsonl line 2: published.a is no text
            {"source":"s","standing":"published","case":"c","calc":"k","published":{"a":"1","a":"2"}}                        | x.jsonl line 2: a is given twice: give it once
            {"source":"s","standing":"published","case":"c","calc":"k","published":{"a":"1"}}                                | x.jsonl line 2: it stands twice
            nothing                                                                                                          | x.jsonl line 2: The line is not JSON: something is wrong at character 7, near "nothing"
            """)
    void aCaseThatIsNotAsItShouldBeIsNamedByFileAndLine(String line, String problem) {
        String good = "{\"source\":\"s\",\"standing\":\"published\",\"case\":\"c\",\"calc\":\"k\","
                + "\"published\":{\"a\":\"1\"}}\n";
        Exception e = assertThrows(
                IllegalStateException.class, () -> PublishedCases.read("x.jsonl", good + line, CaseLine::published));
        assertEquals(problem, e.getMessage());
    }
}
