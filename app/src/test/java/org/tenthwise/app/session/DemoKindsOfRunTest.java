package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tenthwise.app.store.Occasions;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.AskedSteps;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Purpose;

/** What the demo parts that are made in lots are asked, piece by piece. */
class DemoKindsOfRunTest {

    private static final Plan PIN = ExamplePart.GATE_ROLLER_PIN.plan();

    private static List<String> leftOut(Plan plan, Occasion occasion) {
        Set<Integer> asked = AskedSteps.of(plan, occasion);
        return plan.steps().stream()
                .filter(step -> !asked.contains(step.number()))
                .map(Step::name)
                .toList();
    }

    private static List<Plan> plans() {
        return Stream.concat(
                        Arrays.stream(DemoPart.values()).map(DemoPart::plan),
                        Arrays.stream(ExamplePart.values()).map(ExamplePart::plan))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("plans")
    void aFirstArticleAndARunOfWhichNobodySaysAnythingAskEverything(Plan plan) {
        assertEquals(List.of(), leftOut(plan, Occasions.fullFirstArticle("new part")));
        assertEquals(List.of(), leftOut(plan, Occasion.NOT_STATED));
        assertEquals(List.of(), leftOut(plan, Occasion.of(Purpose.FIRST_PIECE)));
    }

    @Test
    void ofAPieceOnTheWayThePinIsNotAskedWhatMarksItOrComesOfTheMelt() {
        List<String> ofTheFirst = List.of(
                "End chamfer, leg",
                "End chamfer, angle",
                "Lead at Ø40, angle",
                "Hardness",
                "Weight",
                "Journals, cylindricity",
                "Nickel alloy 718, solution treated and aged");
        assertEquals(ofTheFirst, leftOut(PIN, Occasions.inProcess(5)));
        List<String> second = leftOut(PIN, Occasions.inProcess(2));
        assertEquals(12, second.size(), second::toString);
        assertTrue(second.containsAll(ofTheFirst) && second.contains("Journals, Ra"), second::toString);
        assertTrue(leftOut(PIN, Occasion.of(Purpose.LAST_PIECE)).stream().noneMatch("Journals, cylindricity"::equals));
    }

    /** What wears with the tool, and what crack detection finds, is looked at on every piece. */
    @ParameterizedTest
    @EnumSource(names = {"GATE_ROLLER_PIN", "HOIST_SCREW_BUSH"})
    void sizesOfFitsThreadsAndThePenetrantInspectionAreAskedOfEveryPiece(ExamplePart part) {
        List<String> second = leftOut(part.plan(), Occasions.inProcess(2));
        assertTrue(
                second.stream()
                        .noneMatch(name -> name.contains("g6")
                                || name.contains("h7")
                                || name.startsWith("Bore Ø")
                                || name.startsWith("Thread") && name.contains("over wires")
                                || name.equals("Penetrant inspection")),
                second::toString);
    }

    @Test
    void ofAPieceOnTheWayTheBarrelEndIsNotAskedWhatItsFixtureAndItsFormToolGive() {
        Plan barrel = DemoPart.WINCH_BARREL_END.plan();
        assertEquals(
                List.of("Pocket length", "Pocket from the face", "Length over all 6", "Chamfer 30°, barrel end"),
                leftOut(barrel, Occasions.inProcess(2)));
        assertEquals(
                List.of("Length over all 6", "Chamfer 30°, barrel end"),
                leftOut(barrel, Occasion.of(Purpose.LAST_PIECE)));
    }
}
