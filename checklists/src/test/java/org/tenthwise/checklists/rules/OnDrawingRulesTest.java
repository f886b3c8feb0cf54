package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.DrawingFile;
import org.tenthwise.model.plan.DrawingInForce;
import org.tenthwise.model.plan.Instances;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.PageSpot;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.words.Message;

class OnDrawingRulesTest {

    private static final String ANOTHER =
            """

            [[step]]
            number = 6
            operation = 10
            name = "Other"
            kind = "look"
            what = "So."
            """;

    @Test
    void whatStandsOnTheDrawingIsRead() {
        Plan plan = PlanText.plan(PlanText.DEPTH
                + """
                balloon = "12A"
                sheet = 2
                drawing_zone = "C4"
                requirement = ".1245±.0005"
                designator = "key"
                on_page = [2, 0, 1000]
                """
                + ANOTHER);
        assertEquals(
                new OnDrawing(
                        Optional.of(new BalloonNumber("12A")),
                        Optional.of("2"),
                        Optional.of("C4"),
                        ".1245±.0005",
                        Optional.of("key"),
                        Instances.ONE,
                        Optional.of(new PageSpot(2, 0, 1000))),
                plan.step(5).drawing());
        assertTrue(plan.isBallooned());
        assertEquals(Optional.of(new BalloonNumber("12A")), plan.balloon(plan.step(5)));
        assertEquals(Optional.empty(), plan.balloon(plan.step(6)));
    }

    @Test
    void withoutBalloonsTheNumberOfACheckIsItsBalloon() {
        Plan plan = PlanText.plan(PlanText.DEPTH + "drawing = \"as drawn\"\n" + ANOTHER);
        assertFalse(plan.isBallooned());
        assertEquals(OnDrawing.words("as drawn"), plan.step(5).drawing());
        assertEquals(Optional.of(new BalloonNumber("5")), plan.balloon(plan.step(5)));
        assertEquals(Optional.of(new BalloonNumber("6")), plan.balloon(plan.step(6)));
    }

    @Test
    void ofSeveralAlikeEachIsReadWhereThePlanSaysNothingElse() {
        Plan plan = PlanText.plan(
                PlanText.DEPTH.replace("places = [\"floor\"]", "count = 4\nreport = \"least-and-greatest\""));
        assertEquals(
                new Instances(4, Optional.empty(), Instances.Report.LEAST_AND_GREATEST),
                plan.step(5).drawing().instances());
        assertEquals(
                List.of("1", "2", "3", "4"),
                ((SizeCheck) plan.step(5).check())
                        .places().stream().map(Place::name).toList());
    }

    @Test
    void oneOfSeveralHasPlacesOfItsOwn() {
        Plan plan = PlanText.plan(PlanText.DEPTH + "class = \"in-process\"\nballoon = 3\ncount = 4\ninstance = 2\n");
        assertEquals(
                new Instances(4, Optional.of(2), Instances.Report.EACH),
                plan.step(5).drawing().instances());
        assertEquals(1, plan.step(5).check().slots().size());
    }

    @Test
    void aCheckOnTheWayMayNameTheBalloonOfAnother() {
        Plan plan = PlanText.plan(PlanText.DEPTH + "balloon = 3\nclass = \"in-process\"\n" + ANOTHER + "balloon = 3\n");
        assertEquals(plan.balloon(plan.step(5)), plan.balloon(plan.step(6)));
    }

    @Test
    void theHeadTellsTheDrawingApartFromThePart() {
        String head = PlanText.HEAD.replace(
                "drawing = \"T-1 sheet 2\"",
                """
                drawing_number = "D-77"
                drawing_revision = "C"
                sheets = 3
                drawing_file = "D-77 sheet 2.PDF"
                changes = ["change 12", "change 14"]
                route = "R-1 issue 2"
                """);
        Plan plan = assertInstanceOf(PlanReading.Good.class, new PlanReader().read(head + PlanText.DEPTH))
                .plan();
        assertEquals(
                new DrawingInForce(
                        "D-77",
                        Optional.of("D-77"),
                        Optional.of("C"),
                        Optional.of(3),
                        List.of("change 12", "change 14"),
                        Optional.of(DrawingFile.named("D-77 sheet 2.PDF"))),
                plan.drawing());
        assertEquals(Optional.of("R-1 issue 2"), plan.route());
        assertEquals("A", plan.part().revision());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../T-1.pdf",
                "C:T-1.pdf",
                "a/T-1.pdf",
                "a\\T-1.pdf",
                "/T-1.pdf",
                "..pdf",
                ".pdf",
                "T-1",
                "T-1.svg",
                "T-1.pdf.exe",
                "T?.png"
            })
    void aFileElsewhereOrOfAnotherFormIsNoFileOfADrawing(String name) {
        String head = PlanText.HEAD.replace("unit", "drawing_file = '" + name + "'\nunit");
        PlanReading.Bad bad = assertInstanceOf(PlanReading.Bad.class, new PlanReader().read(head + PlanText.DEPTH));
        assertEquals(
                List.of("plan.drawing-file"),
                bad.problems().stream().map(problem -> problem.what().key()).toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[1, 2]|plan.on-page.written",
                "[1, 2, 3, 4]|plan.on-page.written",
                "[1, 2.5, 3]|plan.on-page.written",
                "[1, 2, 3, \"4\"]|plan.on-page.written",
                "1|plan.on-page.written",
                "[0, 2, 3]|plan.on-page.page",
                "[201, 2, 3]|plan.on-page.page",
                "[1, -1, 3]|plan.on-page.outside",
                "[1, 2, 1001]|plan.on-page.outside"
            })
    void aPlaceOnNoPageIsNamed(String written, String problem) {
        PlanReading.Bad bad = assertInstanceOf(
                PlanReading.Bad.class,
                new PlanReader().read(PlanText.HEAD + PlanText.DEPTH + "on_page = " + written + "\n"));
        assertEquals(
                List.of("plan.about: " + problem),
                bad.problems().stream()
                        .map(found -> found.what().key() + ": "
                                + ((Message) found.what().values().get("1")).key())
                        .toList());
    }

    @Test
    void anOlderPlanHasATitleAlone() {
        Plan plan = PlanText.plan(PlanText.DEPTH);
        assertEquals(DrawingInForce.titled("T-1 sheet 2"), plan.drawing());
        assertEquals(Optional.empty(), plan.route());
    }

    @Test
    void theHashOfTheFileIsSixtyFourDigitsAndIsKept() {
        String hash = "0123456789abcdef".repeat(4);
        String named = "drawing_file = 'T-1.pdf'\ndrawing_file_sha256 = '";
        assertEquals(
                Optional.of(new DrawingFile("T-1.pdf", Optional.of(hash))),
                assertInstanceOf(
                                PlanReading.Good.class,
                                new PlanReader()
                                        .read(PlanText.HEAD.replace("unit", named + hash + "'\nunit") + PlanText.DEPTH))
                        .plan()
                        .drawing()
                        .file());
        for (String wrong : List.of("", "0", hash.toUpperCase(Locale.ROOT), hash + "0")) {
            String head = PlanText.HEAD.replace("unit", named + wrong + "'\nunit");
            assertInstanceOf(PlanReading.Bad.class, new PlanReader().read(head + PlanText.DEPTH), wrong);
        }
    }
}
