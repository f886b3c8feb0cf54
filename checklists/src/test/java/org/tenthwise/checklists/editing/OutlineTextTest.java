package org.tenthwise.checklists.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.editing.OutlineText.Side;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class OutlineTextTest {

    private static ProfileElement element(String diameter, String length, String end) {
        return new ProfileElement(new BigDecimal(diameter), new BigDecimal(length), new BigDecimal(end));
    }

    private static ProfileElement element(String diameter, String length) {
        return element(diameter, length, diameter);
    }

    private static PlanText plan(String outline) {
        return PlanText.of("format = 1\nunit = \"mm\"\n\n[outline]\n" + outline).orElseThrow();
    }

    @Test
    void aProfileIsItsElementsFromTheLeft() {
        OutlineText text = OutlineText.of(plan("outside = [[0, 40], [90, 40], [90, 70], [104, 70], [120.5, 48]]\n"));
        assertEquals(
                List.of(element("40", "90"), element("70", "14"), element("70", "16.5", "48")), text.of(Side.OUTSIDE));
        assertEquals(List.of(), text.of(Side.INSIDE));
        assertEquals(new BigDecimal("120.5"), OutlineText.length(text.outside()));
    }

    @Test
    void anInsideThatBeginsWithinThePartHasASolidElementBefore() {
        PlanText plan = plan("outside = [[0, 40], [90, 40]]\ninside = [[50, 0], [55, 12], [90, 12]]\n");
        OutlineText text = OutlineText.of(plan);
        assertEquals(List.of(element("0", "50"), element("0", "5", "12"), element("12", "35")), text.of(Side.INSIDE));
        PlanText longer = text.with(
                        Side.INSIDE, List.of(element("0", "60"), element("0", "5", "12"), element("12", "25")))
                .into(plan);
        assertTrue(longer.text().contains("inside = [[60, 0], [65, 12], [90, 12]]"), longer.text());
        assertTrue(longer.text().contains("outside = [[0, 40], [90, 40]]"));
    }

    @Test
    void whatIsSolidAtTheEndIsNoPartOfTheInside() {
        PlanText plan = plan("outside = [[0, 40], [90, 40]]\n");
        PlanText blind = OutlineText.of(plan)
                .with(Side.INSIDE, List.of(element("12", "30"), element("0", "60")))
                .into(plan);
        assertTrue(blind.text().contains("inside = [[0, 12], [30, 12]]"), blind.text());
        PlanText solid = OutlineText.of(blind).with(Side.INSIDE, List.of()).into(blind);
        assertFalse(solid.text().contains("inside"));
    }

    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void theElementsOfADemoPartComeToTheOutlineItHas(DemoPart part) {
        PlanInHand plan = new PlanInHand(PlanText.of(part.planText()).orElseThrow());
        OutlineText text = OutlineText.of(plan.text());
        plan.plan().orElseThrow().outline().ifPresent(outline -> {
            Unit unit =
                    Unit.ofSymbol(plan.text().head().says("unit").orElseThrow()).orElseThrow();
            assertEquals(
                    outline.outside(),
                    text.outline(unit, Optional.empty()).orElseThrow().outside());
            assertEquals(outline, text.outline(unit, Optional.of(outline)).orElseThrow());
            assertEquals(Optional.empty(), text.wrong(unit));
            PlanText written = text.with(Side.OUTSIDE, List.of()).into(plan.text());
            PlanText again = text.into(written);
            assertEquals(text, OutlineText.of(again));
            assertEquals(plan.text().text(), text.into(plan.text()).text());
        });
    }

    @Test
    void whatNoPartCanBeIsSaid() {
        OutlineText tube =
                new OutlineText(List.of(element("40", "50"), element("30", "10", "20")), List.of(element("10", "60")));
        assertEquals(Optional.empty(), tube.wrong(Unit.MILLIMETRE));
        assertEquals(
                "plan.outline.inside-longer",
                tube.with(Side.INSIDE, List.of(element("10", "60.01")))
                        .wrong(Unit.MILLIMETRE)
                        .orElseThrow()
                        .key());
        for (List<ProfileElement> inside : List.of(
                List.of(element("20", "60")),
                List.of(element("40", "1")),
                List.of(element("0", "50"), element("30", "1")),
                List.of(element("10", "55"), element("10", "5", "24.9")))) {
            assertEquals(
                    "plan.outline.no-wall",
                    tube.with(Side.INSIDE, inside)
                            .wrong(Unit.MILLIMETRE)
                            .orElseThrow()
                            .key(),
                    inside.toString());
        }
        assertEquals(
                Optional.empty(),
                tube.with(Side.INSIDE, List.of(element("10", "55"), element("10", "5", "19.9")))
                        .wrong(Unit.MILLIMETRE));
    }

    @Test
    void theMiddleOfAnElementIsOnItsSurface() {
        OutlineText text = new OutlineText(List.of(element("40", "50"), element("30", "10", "20")), List.of());
        assertEquals(
                new Mark(Length.of("55", Unit.MILLIMETRE), Length.of("25", Unit.MILLIMETRE)),
                text.middle(Side.OUTSIDE, 1, Unit.MILLIMETRE));
    }

    @Test
    void aProfileThatGoesBackOrHasAPointThatIsNoneHasNoElement() {
        for (String wrong : List.of("[[0, 40], [90, 40], [80, 40]]", "[[0, 40], [90]]", "[[0, 40], [9, -1]]", "7")) {
            assertEquals(
                    List.of(), OutlineText.of(plan("outside = " + wrong + "\n")).outside(), wrong);
        }
    }

    @Test
    void anElementHasALengthAndNoDiameterBelowNothing() {
        assertThrows(IllegalArgumentException.class, () -> element("40", "0"));
        assertThrows(IllegalArgumentException.class, () -> element("-1", "1", "1"));
        assertThrows(IllegalArgumentException.class, () -> element("1", "1", "-1"));
        assertTrue(element("0", "1").isSolid());
        assertFalse(element("40", "1", "40.0").isTaper());
    }

    @Test
    void aMarkIsReadAsItIsPut() {
        TableText step =
                MarkText.put(TableText.ofList("step"), List.of(), new BigDecimal("104.50"), new BigDecimal("48"));
        assertEquals(Optional.of("[104.50, 48]"), step.value("at"));
        assertEquals(
                Optional.of(new Mark(Length.of("104.50", Unit.INCH), Length.of("48", Unit.INCH))),
                MarkText.of(step, Unit.INCH));
        for (String wrong : List.of("[104]", "[104, -1]", "7", "[1, 2, 3]", "[\"x\", 1]")) {
            assertEquals(Optional.empty(), MarkText.of(TableText.ofList("step").with("at", wrong), Unit.INCH), wrong);
        }
    }
}
