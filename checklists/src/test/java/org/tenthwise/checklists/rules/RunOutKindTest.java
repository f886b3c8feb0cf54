package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.tenthwise.checklists.rules.PlanText.HEAD;
import static org.tenthwise.checklists.rules.PlanText.check;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.Section;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/** What a plan says of a run-out: its angles, what holds the work, and its sections. */
class RunOutKindTest {

    @Test
    void runOutIsReadAtEightAnglesWithNothingToMoveUnlessThePlanSaysOtherwise() {
        RunOutCheck runOut =
                (RunOutCheck) check("kind = \"run-out\"\nlimit = 0.0010\ngauge_kind = \"lever-indicator\"\n");
        assertEquals(
                Stream.of("0", "45", "90", "135", "180", "225", "270", "315")
                        .map(BigDecimal::new)
                        .toList(),
                runOut.angles());
        assertEquals(Holding.UNSAID, runOut.holding());
        assertEquals(BigDecimal.ZERO, runOut.firstJaw());
        assertEquals(List.of(), runOut.sections());
    }

    @ParameterizedTest
    @CsvSource({"four-jaw, 4", "three-jaw, 3", "power-chuck, 3", "collet, 0", "centres, 0", "face-plate, 0", "steady, 0"
    })
    void whatHoldsTheWorkSaysHowManyJawsThereAre(String holding, int jaws) {
        String text = "kind = \"run-out\"\nlimit = 0.02\ngauge_kind = \"dial-indicator\"\nholding = \"%s\"\n"
                .formatted(holding);
        assertEquals(jaws, ((RunOutCheck) check(text)).jaws());
        assertEquals(check(text), check(text + "jaws = " + jaws + "\n"), "a plan may give both");
    }

    @ParameterizedTest
    @CsvSource({"4, FOUR_JAW", "3, THREE_JAW", "0, UNSAID"})
    void aPlanKeptWithItsRunMayGiveTheJawsAlone(int jaws, Holding holding) {
        String text =
                HEAD + "kind = \"run-out\"\nlimit = 0.02\ngauge_kind = \"dial-indicator\"\njaws = %d\n".formatted(jaws);
        assertInstanceOf(PlanReading.Bad.class, new PlanReader().read(text));
        Plan kept = assertInstanceOf(PlanReading.Good.class, new PlanReader().readKept(text))
                .plan();
        assertEquals(holding, ((RunOutCheck) kept.step(5).check()).holding());
    }

    @Test
    void runOutIsReadAtOneSectionOrAtTwo() {
        String text =
                "kind = \"run-out\"\nlimit = 0.02\ngauge_kind = \"dial-indicator\"\nsections = [{ name = \"near the "
                        + "jaws\", at = 0 }%s]\n";
        Section near = new Section("near the jaws", new Written("0", Unit.INCH));
        assertEquals(List.of(near), ((RunOutCheck) check(text.formatted(""))).sections());
        assertEquals(
                List.of(near, new Section("far out", new Written("5.50", Unit.INCH))),
                ((RunOutCheck) check(text.formatted(", { name = \"far out\", at = 5.50 }"))).sections());
    }
}
