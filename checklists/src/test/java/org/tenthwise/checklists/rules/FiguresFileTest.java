package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

class FiguresFileTest {

    private static final String TEXT =
            """
            format = 1
            part = "T-1"
            revision = "A"
            issue = "1"
            name = "Trial"
            material = "bronze"
            drawing = "T-1"
            unit = "mm"

            [[operation]]
            number = 10
            name = "Turn"

            [[step]]
            number = 1
            operation = 10
            balloon = "3"
            kind = "look"
            name = "Faces"
            what = "No chatter."

            [[elsewhere]]
            number = 41
            balloon = "12"
            count = 2
            name = "Position"
            where = "coordinate machine"
            upper = 0.050

            [[elsewhere]]
            number = 42
            balloon = "13A"
            name = "Length"
            where = "coordinate machine"
            lower = 99.9
            upper = 100.1

            [[elsewhere]]
            number = 43
            balloon = "14"
            name = "Coating"
            where = "certificate"

            [[elsewhere]]
            number = 44
            balloon = "15"
            count = 2
            instance = 1
            name = "Flat 1"
            where = "coordinate machine"
            upper = 1

            [[elsewhere]]
            number = 45
            balloon = "15"
            count = 2
            instance = 2
            name = "Flat 2"
            where = "coordinate machine"
            upper = 1
            """;

    private static final Plan PLAN = planOf(TEXT);

    private static Plan planOf(String text) {
        return assertInstanceOf(PlanReading.Good.class, new PlanReader().read(text))
                .plan();
    }

    private static Map<Integer, List<Written>> read(String text) {
        return read(text, PLAN);
    }

    private static Map<Integer, List<Written>> read(String text, Plan plan) {
        return assertInstanceOf(FiguresFile.Reading.Good.class, FiguresFile.read(text, plan, Optional.of("001")))
                .figures();
    }

    private static List<String> problems(String text) {
        return assertInstanceOf(FiguresFile.Reading.Bad.class, FiguresFile.read(text, PLAN, Optional.of("001")))
                .problems()
                .stream()
                .map(PlanProblem::toString)
                .toList();
    }

    private static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }

    @Test
    void figuresAreKeptAsTheyStandThere() {
        assertEquals(
                Map.of(41, List.of(mm("0.0210"), mm("0.03")), 42, List.of(new Written("3.937", Unit.INCH))),
                read(
                        """
                        balloon,value,instance,unit
                        12,0.03,2,
                        13A,3.937,,in
                        12,0.0210,1,mm
                        """));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Value;Balloon;Remark\n0.01;12;a\n0.02;12;b\n",
                "\uFEFF\"balloon\",\"value\"\r\n\"12\",\"0.01\"\r\n\r\n\"12\",\"0.02\"\r\n",
                "number\tvalue\n41\t0.01\n41\t0.02"
            })
    void columnsAndSeparatorsMayBeAny(String text) {
        assertEquals(Map.of(41, List.of(mm("0.01"), mm("0.02"))), read(text));
    }

    /** Of two columns either finds the check where the other is empty. */
    @Test
    void aNumberAndABalloonMeanOneCheck() {
        assertEquals(
                Map.of(41, List.of(mm("0.01"), mm("0.02")), 42, List.of(mm("100.0"))),
                read("number,balloon,value\n41,12,0.01\n41,,0.02\n,13A,100.0\n"));
    }

    /** As on the record: where the plan names no balloon, the number of the check is its balloon. */
    @Test
    void inAPlanWithoutBalloonsTheNumberOfTheCheckIsItsBalloon() {
        Plan plan = planOf(TEXT.replaceAll("balloon = .*\n", ""));
        Map<Integer, List<Written>> length = Map.of(42, List.of(mm("100.0")));
        assertEquals(length, read("balloon,value\n42,100.0\n", plan));
        assertEquals(length, read("number,balloon,value\n42,42,100.0\n", plan));
    }

    @Test
    void ofABalloonWithACheckForEachInstanceTheInstanceSaysWhich() {
        assertEquals(
                Map.of(44, List.of(mm("0.4")), 45, List.of(mm("0.5"))),
                read("balloon,value,instance\n15,0.5,2\n15,0.4,1\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            textBlock =
                    """
            balloon,value;99,0.01                  | 2:1: the plan has no check "99"
            balloon,value;3,0.01                   | 2:1: "3" is not one check with limits that a document proves
            balloon,value;14,0.01                  | 2:1: "14" is not one check with limits that a document proves
            balloon,value;12,0.01                  | 1:1: check 41 has 1 figure, and 2 are needed
            balloon,value;12,0.01;12,0.02;12,0.03  | 1:1: check 41 has 3 figures, and 2 are needed
            balloon,value,instance;12,0.01,1;12,0.02,1 | 3:1: check 41 has a figure for instance 1 already
            balloon,value,instance;12,0.01,1;12,0.02,3 | 1:1: check 41 has 2 figures, and 2 are needed
            balloon,value,instance;12,0.01,0       | 2:1: "0" is not an instance; count from 1
            balloon,value,unit;13A,100.0,furlong   | 2:1: unit "furlong" does not fit the limits in mm
            balloon,value,unit;13A,100.0,°         | 2:1: unit "°" does not fit the limits in mm
            balloon,value;13A,1e2                  | 2:1: "1e2" is not a plain decimal number; write it with a point
            balloon,value;13A,                     | 2:1: "" is not a plain decimal number; write it with a point
            balloon,value;13A,100,0                | 2:1: 3 cells, and the first line names 2
            balloon,figure;13A,100.0               | 1:1: the first line must name the columns
            value;100.0                            | 1:1: the first line must name the columns
            number,balloon,value;42,12,100.0       | 2:1: check 42 has balloon "13A", the line has "12"; one of the two is wrong
            serial,balloon,value;002,13A,100.0     | 2:1: the line is of serial "002", the part is "001"
            balloon,value                          | 1:1: there is no figure in it
            """)
    void whatCannotBeTakenIsToldWithItsLineAndNothingIsTaken(String text, String problem) {
        List<String> problems = problems(text.replace(";", "\n"));
        assertEquals(1, problems.size(), problems::toString);
        assertEquals(
                problem,
                problems.get(0)
                        .substring(0, Math.min(problem.length(), problems.get(0).length())));
    }

    /** A report may hold the parts of a whole lot: figures of another part prove nothing of this one. */
    @Test
    void aSerialInTheTableIsThatOfThePart() {
        assertEquals(Map.of(42, List.of(mm("100.0"))), read("Serial,balloon,value\n001,13A,100.0\n"));
        assertEquals(Map.of(42, List.of(mm("100.0"))), read("serial,balloon,value\n,13A,100.0\n"));
        assertEquals(
                1,
                problems("serial,balloon,value\n001,13A,100.0\n002,13A,100.0\n").size());
    }

    @Test
    void nothingAtAllIsNoTable() {
        assertEquals(1, problems("").size());
    }

    @Test
    void aReadingsFileHasThemInATableOfItsOwn() {
        String readings =
                """
                format = 1
                part = "T-1"
                revision = "A"
                serial = "001"
                lot = "L-1"
                machine = "Lathe 4"
                by = "Setter 1"

                [[step]]
                number = 1
                answers = ["yes"]

                [close]
                by = "Setter 1"
                meaning = "machined and measured"

                [[figures]]
                number = "CM-118"
                dated = "2026-11-22"
                by = "Measuring room"
                csv = \"\"\"
                balloon,value
                12,0.021
                12,0.034
                \"\"\"
                """;
        SampleReading reading = new SampleReader().read(readings, PLAN);
        List<Event> events = assertInstanceOf(SampleReading.Good.class, reading, reading::toString)
                .sample()
                .events();
        assertEquals(
                List.of(mm("0.021"), mm("0.034")),
                events.get(2)
                        .as(StepEvent.DocumentGiven.class)
                        .orElseThrow()
                        .document()
                        .figures());
        assertInstanceOf(
                SampleReading.Bad.class,
                new SampleReader()
                        .read(
                                readings.replace("serial = \"001\"", "serial = \"002\"")
                                        .replace("balloon,value", "serial,balloon,value")
                                        .replace("12,0.0", "001,12,0.0"),
                                PLAN));
        SampleReading.Bad bad = assertInstanceOf(
                SampleReading.Bad.class, new SampleReader().read(readings.replace("12,0.034", "12,0,034"), PLAN));
        assertEquals(
                "21:1: figures: line 3 of the table: 3 cells, and the first line names 2",
                bad.problems().get(0).toString());
    }
}
