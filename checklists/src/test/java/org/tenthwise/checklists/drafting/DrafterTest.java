package org.tenthwise.checklists.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Words;

/** Lists are invented. */
class DrafterTest {

    private static final String HEAD =
            """
            format = 1
            part = "T-1"
            revision = "A"
            issue = "1"
            name = "Test piece"
            material = "steel"
            drawing = "T-1"
            unit = "mm"

            [[operation]]
            number = 10
            name = "Turn"
            """;

    private static Drafted drafted(Unit unit, String... rows) {
        return new Drafter(new CalloutReader(unit, Optional.empty()), Words.ENGLISH)
                .of(
                        PlanText.of(HEAD.replace("\"mm\"", '"' + unit.symbol() + '"'))
                                .orElseThrow(),
                        Arrays.stream(rows)
                                .map(row -> List.of(row.split("\\|", -1)))
                                .toList());
    }

    private static Drafted drafted(String... rows) {
        return drafted(Unit.MILLIMETRE, rows);
    }

    private static String why(Drafted drafted) {
        return drafted.lines().get(0).refused().orElseThrow().toString();
    }

    @Test
    void onlyNumberAndRequirementAreNeededInAnyOrderUnderAnyOfTheirNames() {
        Drafted drafted =
                drafted("List of 3 Dec||", "Anforderung|Zone|Char. No.", "Ø30 H7|C4|12A", "||", "R6 ±0.2||13");
        assertEquals(2, drafted.lines().size());
        assertEquals(List.of(), drafted.refused());
        assertEquals(
                List.of(3, 5),
                drafted.lines().stream().map(Drafted.CameOf::place).toList());
        List<TableText> steps = drafted.plan().list("step");
        assertEquals(Optional.of("12A"), steps.get(0).says("balloon"));
        assertEquals(Optional.of("Ø30 H7"), steps.get(0).says("requirement"));
        assertEquals(Optional.of("C4"), steps.get(0).says("drawing_zone"));
        assertEquals(Optional.of("2"), steps.get(1).value("number"));
    }

    @Test
    void whatTheListDoesNotSayIsOpenAndNothingIsMadeUp() {
        PlanInHand plan = new PlanInHand(
                drafted("No.|Requirement", "1|Ø30 H7", "2|Ø12 ±0.1").plan());
        assertEquals(List.of(0, 1), plan.openSteps());
        assertTrue(plan.missing(0).containsAll(List.of("operation", "method", "places")), plan.open()::toString);
        assertTrue(plan.missing(1).contains("kind"), "bore or shaft: " + plan.open());
        assertEquals(
                List.of("number", "balloon", "requirement"), plan.steps().get(0).keys());
    }

    /** What the words say alone would pass as a check: the figures beside them say otherwise, and the plan knows. */
    @Test
    void aRefusedLineStaysOpenInThePlan() {
        Drafted drafted = drafted("No.|Requirement|Upper", "1|30 ±0.1|30.2", "2|25 ±0.1|");
        PlanInHand plan = new PlanInHand(drafted.plan());
        assertEquals(2, plan.steps().size());
        assertEquals(Optional.of("30 ±0.1"), plan.steps().get(0).says("requirement"));
        assertTrue(plan.open().toString().contains("line 2 of the list"), plan.open()::toString);
        plan.changeStep(0, step -> step.without("refused"));
        assertEquals(-1, plan.open().toString().indexOf("of the list"), plan.open()::toString);
    }

    @Test
    void aLineBecomesAStepANoteAProcessOrAPlaceElsewhere() {
        Drafted drafted = drafted(
                "No.|Requirement|Where",
                "1|25 ±0.1|",
                "2|REMOVE ALL BURRS|",
                "3|PASSIVATE PER AMS 2700 METHOD 1|",
                "4|⌖ Ø0.1 A B|",
                "5|40 ±0.05|coordinate machine",
                "6|4X Ø6.6 ±0.1 THRU ⌴ Ø11 ±0.2 ↧ 6.4 ±0.2|",
                "7|⟂ 0.02 A|",
                "8|Ra 1.6|");
        assertEquals(List.of(), drafted.refused(), drafted.refused()::toString);
        assertEquals(
                List.of(
                        List.of("step"),
                        List.of("note"),
                        List.of("process"),
                        List.of("elsewhere"),
                        List.of("elsewhere"),
                        List.of("step", "step", "step"),
                        List.of("step"),
                        List.of("step")),
                drafted.lines().stream().map(Drafted.CameOf::tables).toList());
        assertEquals(
                List.of("6.1", "6.2", "6.3"),
                drafted.plan().list("step").stream()
                        .flatMap(step -> step.says("balloon").stream())
                        .filter(balloon -> balloon.startsWith("6."))
                        .toList());
        assertEquals(
                Optional.of("coordinate machine"),
                drafted.plan().list("elsewhere").get(1).says("where"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "1||30 ±0.1|29.8|;the words of the drawing come to 29.9 / 30.1, the figures of the list to 29.8 / -",
                "1|3|2X 30 ±0.1||;the drawing has 2 alike, the list 3",
                "1||(25)||;nothing to inspect by itself",
                "1||12.5-12.3||;12.5",
                "|||1|;no number there",
                "1||Ã˜30 H7||;is damaged",
                "1||1-Feb||;is a day",
                "1||30 ±0.1|x|;lower holds no figure",
                "1||30 ±0.1|30.1|29.9;is above the upper limit"
            })
    void whatIsDoubtfulIsRefusedWithItsReason(String row, String said) {
        Drafted drafted = drafted("No.|Qty|Requirement|Lower|Upper", row);
        assertTrue(why(drafted).contains(said), why(drafted));
        assertTrue(
                drafted.plan().list("step").get(0).says("refused").orElseThrow().contains(said));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "1|20|25|0.1|0.1||;come to 20, the figures of the list to 25",
                "1|40 ±0.1|30||||;come to 40, the figures of the list to 30",
                "1|20||||24.9|25.1;come to 20, the figures of the list to 24.9 / 25.1"
            })
    void figuresOfAnotherSizeThanTheOneDrawnAreNeverLimits(String row, String said) {
        Drafted drafted = drafted("No.|Requirement|Nominal|Plus|Minus|Lower|Upper", row);
        assertTrue(why(drafted).contains(said), why(drafted));
        assertTrue(
                drafted.plan().list("step").get(0).says("refused").orElseThrow().contains(said));
    }

    @Test
    void theOutsideDiameterOfAThreadIsNoOtherSizeThanItsPitchDiameter() {
        assertEquals(
                List.of(), drafted("No.|Requirement|Nominal", "1|M24x2-6H|24").refused());
    }

    @Test
    void aNumberTwiceIsRefusedTheSecondTime() {
        Drafted drafted = drafted("No.|Requirement", "12a|5 ±0.1", "12A|6 ±0.1");
        assertEquals(
                List.of(3),
                drafted.refused().stream().map(Drafted.CameOf::place).toList());
    }

    @Test
    void figuresOfTheListAreLimitsWhereTheWordsHaveNone() {
        Drafted drafted = drafted(
                Unit.INCH, "No.|Requirement|Nominal|Plus|Minus", "1|.500|.500|.002|.001", "2|.250|.250|+.003|+.001");
        assertEquals(List.of(), drafted.refused(), drafted.refused()::toString);
        TableText first = drafted.plan().list("step").get(0);
        assertEquals(Optional.of("0.499"), first.value("lower"));
        assertEquals(Optional.of("0.502"), first.value("upper"));
        assertEquals(Optional.of("0.251"), drafted.plan().list("step").get(1).value("lower"), "a sign counts");
    }

    @Test
    void aListWithoutTheColumnsNeededIsNoList() {
        assertThrows(Refused.class, () -> drafted("Size|Tolerance", "1|2"));
        assertThrows(Refused.class, () -> drafted());
    }

    /** Whatever stands in it, every line with something on it is told of, once. */
    @Test
    void asManyLinesComeOutAsGoIn() {
        String[] texts = {"30 H7", "", "Ø", "4x45°", "M6x1-6H", "⌖", "±", "R6 ±0.2", "2 MAX", "\"", "= 1", "#REF!"};
        List<String> rows = new ArrayList<>(List.of("Balloon|Requirement|Lower"));
        for (int line = 0; line < 200; line++) {
            rows.add(
                    line % 7 == 3
                            ? "||"
                            : "%d|%s|%s".formatted(line, texts[line % texts.length], line % 5 == 0 ? "1" : ""));
        }
        Drafted drafted = drafted(rows.toArray(String[]::new));
        long filled = rows.stream().skip(1).filter(row -> !row.equals("||")).count();
        assertEquals(filled, drafted.lines().size());
        assertTrue(drafted.lines().stream()
                .allMatch(line -> line.refused().isPresent() == line.tables().isEmpty()));
    }

    @Test
    void everyPartOfACalloutHasItsOwnLimits() {
        PlanText plan = drafted("No.|Requirement", "6|4X Ø6.6 ±0.1 THRU ⌴ Ø11 ±0.2 ↧ 6.4 ±0.2")
                .plan();
        assertEquals(
                List.of("6.5 6.7", "10.8 11.2", "6.2 6.6"),
                plan.list("step").stream()
                        .map(step -> step.value("lower").orElseThrow()
                                + " "
                                + step.value("upper").orElseThrow())
                        .toList());
        assertEquals(
                List.of(Optional.empty(), Optional.of("size"), Optional.of("depth")),
                plan.list("step").stream().map(step -> step.says("kind")).toList());
        assertTrue(new PlanInHand(plan).missing(0).contains("kind"), "bore or shaft");
    }

    @Test
    void anAngleKeepsItsMarks() {
        PlanText plan = drafted("No.|Requirement", "7|1 ±0.1 X 30°30′ ±0°15′").plan();
        assertEquals(Optional.of("30°15′"), plan.list("step").get(1).says("lower"));
    }

    @Test
    void whatNoKeyTakesStandsAboveItsTable() {
        String text = drafted(
                        "No.|Requirement|Gauge|Note|Where",
                        "1|30 ±0.1|MIC 25-50|see sheet 2|",
                        "2|40 ±0.1|CMM||supplier")
                .plan()
                .text();
        assertTrue(text.contains("# gauge: MIC 25-50\n# note: see sheet 2\n[[step]]"), text);
        assertTrue(text.contains("# gauge: CMM\n[[elsewhere]]"), text);
    }
}
