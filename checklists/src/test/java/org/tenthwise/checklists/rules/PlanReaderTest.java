package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.tenthwise.checklists.rules.PlanText.HEAD;
import static org.tenthwise.checklists.rules.PlanText.check;
import static org.tenthwise.checklists.rules.PlanText.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.SizeModifier;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

class PlanReaderTest {

    @Test
    void theHeadIsKeptAsWritten() {
        Plan plan = plan("kind = \"look\"\nwhat = \"Seen.\"\n");
        assertEquals(new PartId("T-1", "A"), plan.part());
        assertEquals(
                List.of("1", "Test piece", "steel", "T-1 sheet 2", ""),
                List.of(
                        plan.issue(),
                        plan.name(),
                        plan.material(),
                        plan.drawing().title(),
                        plan.remark()));
        assertEquals(Unit.INCH, plan.unit());
        assertEquals(Optional.empty(), plan.outline());
        assertEquals("Turn", plan.operation(10).name());
    }

    /** SHA-256 of the bytes, from the coreutils program sha256sum. */
    @Test
    void thePlanCarriesItsTextAndTheHashOfItsBytes() {
        String text =
                """
                format = 1
                part = "Ø-1"
                revision = "A"
                issue = "1"
                name = "n"
                material = "m"
                drawing = "d"
                unit = "mm"
                operation = [{ number = 1, name = "o" }]
                step = [{ number = 1, operation = 1, kind = "look", name = "s", what = "w" }]
                """;
        Plan plan = assertInstanceOf(PlanReading.Good.class, new PlanReader().read(text))
                .plan();
        assertEquals(text, plan.source().text());
        assertEquals(
                "e01ab153ce487681b40fd270f546b10c193158d78f0a769cc41f39eedde70a60",
                plan.source().sha256());
    }

    @Test
    void aSizeLeftToItselfTakesOneReadingAPlaceAndIsNotCutAgain() {
        SizeCheck size = (SizeCheck)
                check(
                        """
                kind = "depth"
                upper = 0.1250
                places = ["floor", { name = "wall", depth = 0.50, angle = 22.5 }]
                gauge_kind = "depth-gauge"
                """);
        assertEquals(
                new SizeCheck(
                        Feature.DEPTH,
                        Limits.atMost(new Written("0.1250", Unit.INCH)),
                        List.of(
                                Place.named("floor"),
                                new Place(
                                        "wall",
                                        Optional.of(new Written("0.50", Unit.INCH)),
                                        Optional.of(new BigDecimal("22.5")))),
                        1,
                        Combine.EACH,
                        false,
                        new Written("0", Unit.INCH),
                        new Check.Means(GaugeKind.DEPTH_GAUGE, Optional.empty(), Optional.empty())),
                size);
    }

    @Test
    void theMasterOfABoreGaugeKeepsItsPlaces() {
        SizeCheck bore = (SizeCheck)
                check(
                        """
                kind = "bore"
                lower = 1.3750
                upper = 1.3760
                places = ["front"]
                readings_each = 3
                drawing_says = "SX"
                cut_again = "too small"
                guard_band = 0.00010
                gauge_kind = "bore-gauge"
                gauge = "BG-5"
                master = 1.3750
                """);
        assertEquals(
                new Check.Means(
                        GaugeKind.BORE_GAUGE, Optional.of("BG-5"), Optional.of(new Written("1.3750", Unit.INCH))),
                bore.with());
        assertEquals(
                List.of("1.1", "1.2", "1.3"),
                bore.slots().stream().map(slot -> slot.key()).toList());
        assertEquals(new Written("0.00010", Unit.INCH), bore.guardBand());
        assertEquals(true, bore.cutAgain());
        assertEquals(Combine.LARGEST, bore.combine());
        assertEquals(Optional.of(SizeModifier.SX), bore.drawingSays());
    }

    @Test
    void aWayOfMeasuringHasItsUncertaintyAndTheGuardBandCanBeTheSame() {
        String named =
                """
                [[uncertainty]]
                name = "depth gauge"
                expanded = 0.0004

                [[step]]""";
        Plan plan = assertInstanceOf(
                        PlanReading.Good.class,
                        new PlanReader()
                                .read(
                                        HEAD.replace("[[step]]", named)
                                                + """
                kind = "depth"
                upper = 0.1250
                places = ["floor"]
                gauge_kind = "depth-gauge"
                uncertainty = "depth gauge"
                guard_band = "uncertainty"
                """))
                .plan();
        SizeCheck size = (SizeCheck) plan.step(5).check();
        assertEquals(
                Optional.of(new Uncertainty("depth gauge", new Written("0.0004", Unit.INCH), new BigDecimal(2))),
                size.with().uncertainty());
        assertEquals(new Written("0.0004", Unit.INCH), size.guardBand());
    }

    /** √(0.0005²/12 + 0.0002²) = 0.00024664 in; twice that, rounded up to two figures, is 0.00050 in. By hand. */
    @Test
    void anUncertaintyCanBePutTogetherFromItsSources() {
        String named =
                """
                [[uncertainty]]
                name = "depth gauge"
                components = [{ kind = "resolution", value = 0.0005 }, { kind = "normal", value = 0.0004, k = 2 }]

                [[step]]""";
        Plan plan = assertInstanceOf(
                        PlanReading.Good.class,
                        new PlanReader()
                                .read(
                                        HEAD.replace("[[step]]", named)
                                                + """
                kind = "depth"
                upper = 0.1250
                places = ["floor"]
                gauge_kind = "depth-gauge"
                uncertainty = "depth gauge"
                """))
                .plan();
        assertEquals(
                Optional.of(new Uncertainty("depth gauge", new Written("0.00050", Unit.INCH), new BigDecimal("2.00"))),
                ((SizeCheck) plan.step(5).check()).with().uncertainty());
    }

    @Test
    void anOutlineIsReadInTheUnitOfThePlan() {
        PlanReading.Good good = assertInstanceOf(
                PlanReading.Good.class,
                new PlanReader()
                        .read(HEAD
                                + "at = [0.5, 1.0]\nkind = \"look\"\nwhat = \"Seen.\"\n\n[outline]\noutside "
                                + "= [[0, 1], [2, 1]]\n"));
        assertEquals(
                Length.of("50.8", Unit.MILLIMETRE),
                good.plan().outline().orElseThrow().length());
        assertEquals(
                Optional.of(new Mark(Length.of("12.7", Unit.MILLIMETRE), Length.of("25.4", Unit.MILLIMETRE))),
                good.plan().step(5).mark());
    }

    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void aPlanWithLinesMissingOrMixedUpIsReadOrRefusedButNeverBringsTheReaderDown(DemoPart part) {
        Random random = new Random(7);
        List<String> lines = part.planText().lines().toList();
        for (int i = 0; i < 15; i++) {
            List<String> spoiled = new ArrayList<>(lines);
            spoiled.remove(random.nextInt(spoiled.size()));
            spoiled.set(random.nextInt(spoiled.size()), lines.get(random.nextInt(lines.size())));
            assertNotNull(new PlanReader().read(String.join("\n", spoiled)));
        }
    }
}
