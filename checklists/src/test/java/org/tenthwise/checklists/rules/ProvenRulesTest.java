package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.ProofOf;
import org.tenthwise.model.plan.Specified;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.tolerance.Limits;

class ProvenRulesTest {

    private static final String PLAN =
            """
            format = 1
            part = "T-1"
            revision = "A"
            issue = "1"
            name = "Trial"
            drawing = "T-1"
            unit = "mm"

            [[operation]]
            number = 10
            name = "Turn"

            [[operation]]
            number = 20
            name = "Mill"

            [[step]]
            number = 1
            operation = 10
            kind = "look"
            name = "Faces"
            what = "No chatter."

            [[step]]
            number = 5
            operation = 20
            kind = "document"
            name = "Crack test"
            what = "Report of the crack test."
            where = "crack test, penetrant"
            lower = 1
            upper = 2

            [[note]]
            number = 3
            balloon = "N1"
            kind = "look"
            name = "Edges"
            what = "Break all edges 0.2 to 0.4."

            [[elsewhere]]
            number = 41
            balloon = "12"
            sheet = "2"
            drawing_zone = "C4"
            requirement = "4X Ø8 position Ø0.05 A B"
            designator = "key"
            count = 4
            name = "Position of the pattern"
            where = "coordinate machine"
            upper = 0.050

            [[material]]
            number = 51
            name = "nickel alloy 718, aged"
            specification = "AMS 5662"
            form = "bar"
            code = "M12"
            supplier = "Customer furnished"

            [[process]]
            number = 52
            name = "Ageing"
            specification = "AMS 5664"

            [[test]]
            number = 53
            name = "Pressure test"
            """;

    private static Plan plan(String text) {
        return assertInstanceOf(PlanReading.Good.class, new PlanReader().read(text))
                .plan();
    }

    private static List<String> problems(String text) {
        return assertInstanceOf(PlanReading.Bad.class, new PlanReader().read(text)).problems().stream()
                .map(PlanProblem::toString)
                .toList();
    }

    @Test
    void notesStandAtTheirNumberAndWhatIsProvenElsewhereBehindTheOrderOfWork() {
        Plan plan = plan(PLAN);
        assertEquals(
                List.of(1, 3, 5, 41, 51, 52, 53),
                plan.steps().stream().map(Step::number).toList());
        assertEquals(10, plan.step(3).operation(), "of the step before it");
        assertInstanceOf(AskedCheck.VisualCheck.class, plan.step(3).check());
        assertEquals(
                List.of(true, true, true, false, false, false, false),
                plan.steps().stream().map(step -> step.check().isInOrder()).toList());
        assertFalse(plan.steps().stream().anyMatch(step -> step.stepClass() != StepClass.DRAWING));
    }

    @Test
    void whatTheDrawingSaysOfItIsKept() {
        Step step = plan(PLAN).step(41);
        assertEquals(Optional.of(new BalloonNumber("12")), step.drawing().balloon());
        assertEquals(4, step.drawing().instances().count());
        assertEquals(
                new DocumentCheck(
                        ProofOf.ELSEWHERE,
                        "",
                        "coordinate machine",
                        Optional.of(Limits.atMost(new Written("0.050", Unit.MILLIMETRE))),
                        Specified.NOTHING),
                step.check());
    }

    @Test
    void aMaterialInATableIsTheMaterialOfThePart() {
        Plan plan = plan(PLAN);
        assertEquals("nickel alloy 718, aged", plan.material());
        assertEquals(
                new Specified("AMS 5662", "bar", "M12", "Customer furnished"),
                plan.step(51).check().asDocument().orElseThrow().specified());
        assertEquals(
                "bronze",
                plan(PLAN.replace("drawing = \"T-1\"", "drawing = \"T-1\"\nmaterial = \"bronze\"")
                                .replaceAll("(?s)\\[\\[material]].*?\\n\\n", ""))
                        .material());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            textBlock =
                    """
            number = 53           | number = 5        | check 5: the number is used twice in the plan, first in line 24
            balloon = "12"        | balloon = "N1"    | check 41: balloon N1
            form = "bar"          | where = "bar"     | check 51: unknown key "where"
            where = "coordinate machine" | what = "x" | check 41: "where" is missing
            upper = 0.050         | operation = 10    | check 41: unknown key "operation"
            kind = "look"#CR#name = "Edges" | kind = "bore"#CR#name = "Edges" | check 3: "kind" cannot be "bore"
            name = "Pressure test" | hold = [1]       | check 53: "name" is missing
            """)
    void whatIsWrongIsNamed(String as, String wrong, String problem) {
        String text = PLAN.replace(as.replace("#CR#", "\n"), wrong.replace("#CR#", "\n"));
        List<String> problems = problems(text);
        assertEquals(
                1, problems.stream().filter(said -> said.contains(problem)).count(), () -> problem + " in " + problems);
    }

    @Test
    void aReadingsFileAnswersThemBeforeAndAfterTheRunIsClosed() {
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
                number = 5
                document = [
                  { number = "PT-1", dated = "2026-11-20", says = "conforms", by = "Crack test", struck = "Other part" },
                  { number = "PT-2", dated = "2026-11-21", figures = ["1.5"], by = "Crack test" },
                ]

                [[document]]
                step = 52
                dated = "2026-11-21"
                says = "not yet"
                by = "Heat treatment"

                [close]
                by = "Setter 1"
                meaning = "machined and measured"

                [[document]]
                step = 41
                number = "CM-118"
                dated = "2026-11-22"
                figures = ["0.021", { reading = "0.0008", unit = "in" }, "0.030", "0.012"]
                by = "Measuring room"
                """;
        ReadingsFile file = assertInstanceOf(SampleReading.Good.class, new SampleReader().read(readings, plan(PLAN)))
                .sample();
        assertEquals(
                List.of(
                        given(5, "PT-1", "2026-11-20", Document.Says.CONFORMS, "Crack test"),
                        new Event.StruckOut(2, "Other part"),
                        given(5, "PT-2", "2026-11-21", Document.Says.FIGURES, "Crack test", mm("1.5")),
                        given(52, "", "2026-11-21", Document.Says.NOT_YET, "Heat treatment")),
                file.events().subList(0, 4));
        assertInstanceOf(Event.Closed.class, file.events().get(4));
        assertEquals(
                given(
                        41,
                        "CM-118",
                        "2026-11-22",
                        Document.Says.FIGURES,
                        "Measuring room",
                        mm("0.021"),
                        new Written("0.0008", Unit.INCH),
                        mm("0.030"),
                        mm("0.012")),
                file.events().get(5));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            textBlock =
                    """
            step = 1                    | no check with this number that a document proves
            dated = "20.11.2026"        | "20.11.2026" is no date
            dated = "2026-02-30"        | "2026-02-30" is no date
            says = "figures"            | "says" cannot be "figures"
            number = ""                 | "number" is blank
            figures = ["0,02"]          | "0,02" is not a plain decimal number
            """)
    void whatIsWrongWithADocumentIsNamed(String wrong, String problem) {
        String key = wrong.substring(0, wrong.indexOf(' '));
        String sound =
                """
                step = 41
                dated = "2026-11-22"
                says = "conforms"
                number = "CM-118"
                figures = ["0.021"]
                by = "Measuring room"
                """;
        String readings =
                """
                format = 1
                part = "T-1"
                revision = "A"
                serial = "001"
                lot = "L-1"
                machine = "Lathe 4"
                by = "Setter 1"

                [[document]]
                """
                        + sound.replaceAll("(?m)^" + key + " = .*$", wrong);
        List<PlanProblem> problems = assertInstanceOf(
                        SampleReading.Bad.class, new SampleReader().read(readings, plan(PLAN)))
                .problems();
        assertEquals(
                1,
                problems.stream()
                        .filter(said -> said.toString().contains(problem))
                        .count(),
                () -> problem + " in " + problems);
    }

    private static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }

    private static StepEvent.DocumentGiven given(
            int step, String number, String dated, Document.Says says, String by, Written... figures) {
        return new StepEvent.DocumentGiven(
                step, new Document(number, LocalDate.parse(dated), says, by, List.of(figures)));
    }
}
