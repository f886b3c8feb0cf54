package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.checklists.rules.PlanText.HEAD;
import static org.tenthwise.checklists.rules.PlanText.check;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.SizeModifier;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/** What a plan says of the next cut and of the modifier of the drawing. */
class CuttingRulesTest {

    @Test
    void whatAPlanSaysOfTheNextCutHoldsUnlessTheStepSaysOtherwise() {
        String head = HEAD.replace("unit = \"in\"", "unit = \"in\"\naim = \"third\"")
                .replace("name = \"Turn\"", "name = \"Turn\"\nleast_cut = 0.002\noffset_step = 0.0001");
        String bore =
                """
                kind = "bore"
                lower = 1.3750
                upper = 1.3760
                places = ["front"]
                gauge_kind = "inside-micrometer"
                """;
        assertEquals(Cutting.UNSAID, cutting(head + bore));
        assertEquals(
                new Cutting(Optional.of(Aim.ByLimits.THIRD), inch("0.002"), inch("0.0001")),
                cutting(head + bore + "cut_again = \"too small\"\n"));
        assertEquals(
                new Cutting(Optional.of(new Aim.Size(inch("1.3754").orElseThrow())), inch("0.001"), inch("0.0002")),
                cutting(head + bore
                        + "cut_again = \"too small\"\naim = 1.3754\nleast_cut = 0.001\noffset_step = 0.0002\n"));
        assertEquals(
                new Cutting(Optional.of(Aim.ByLimits.MIDDLE), Optional.empty(), Optional.empty()),
                cutting(HEAD + bore + "cut_again = \"too small\"\naim = \"middle\"\n"));
    }

    /** Work brought to the only limit would be rejected by half of the readings of it. */
    @Test
    void theOnlyLimitIsNoAim() {
        String depth =
                """
                kind = "depth"
                lower = 0.500
                places = ["floor"]
                gauge_kind = "depth-micrometer"
                cut_again = "too small"
                """;
        assertEquals(
                Optional.of(new Aim.Size(inch("0.510").orElseThrow())),
                cutting(HEAD + depth + "aim = 0.510\n").aim());
        PlanReading.Bad refused =
                assertInstanceOf(PlanReading.Bad.class, new PlanReader().read(HEAD + depth + "aim = 0.500\n"));
        assertTrue(refused.problems().toString().contains("is the limit itself"), refused::toString);
    }

    private static Optional<Written> inch(String figure) {
        return Optional.of(new Written(figure, Unit.INCH));
    }

    private static Cutting cutting(String text) {
        return ((SizeCheck) assertInstanceOf(PlanReading.Good.class, new PlanReader().read(text))
                        .plan()
                        .steps()
                        .get(0)
                        .check())
                .cutting();
    }

    @Test
    void aThreadHasTheSameToSayOfItsCutAndItsModifier() {
        OverWiresCheck thread = (OverWiresCheck)
                check(
                        """
                kind = "thread-over-wires"
                designation = "1/4-20 UNC-2A"
                wire = 0.030
                places = ["a", "b"]
                drawing_says = "SA"
                cut_again = "too big"
                aim = "third"
                offset_step = 0.0002
                """);
        assertEquals(Combine.MEAN, thread.combine());
        assertEquals(Optional.of(SizeModifier.SA), thread.drawingSays());
        assertEquals(new Cutting(Optional.of(Aim.ByLimits.THIRD), Optional.empty(), inch("0.0002")), thread.cutting());
    }
}
