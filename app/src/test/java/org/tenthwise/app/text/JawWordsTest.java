package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.Section;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Words;

class JawWordsTest {

    private final JawWords words = new JawWords(Words.of(Locale.ENGLISH));

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        FOUR_JAW    | 0   | 0     | jaw 1 under the needle       | jaw 1
        FOUR_JAW    | 0   | 45    | half-way from jaw 1 to jaw 2 | jaws 1–2
        FOUR_JAW    | 0   | 90    | jaw 2 under the needle       | jaw 2
        FOUR_JAW    | 0   | 120   | 30° past jaw 2               | jaw 2 + 30°
        FOUR_JAW    | 0   | 315.0 | half-way from jaw 4 to jaw 1 | jaws 4–1
        FOUR_JAW    | 45  | 45.00 | jaw 1 under the needle       | jaw 1
        FOUR_JAW    | 45  | 0     | half-way from jaw 4 to jaw 1 | jaws 4–1
        FOUR_JAW    | 45  | 44.5  | 89.5° past jaw 4             | jaw 4 + 89.5°
        FOUR_JAW    | 350 | 80    | jaw 2 under the needle       | jaw 2
        FOUR_JAW    | 350 | 0     | 10° past jaw 1               | jaw 1 + 10°
        THREE_JAW   | 0   | 60    | half-way from jaw 1 to jaw 2 | jaws 1–2
        POWER_CHUCK | 0   | 240   | jaw 3 under the needle       | jaw 3
        COLLET      | 0   | 0     | the mark under the needle    | mark
        UNSAID      | 0   | 45    | 45° on from the mark         | mark + 45°
        """)
    void aPlaceIsToldByTheJawOrByTheMark(Holding holding, String firstJaw, String angle, String under, String brief) {
        RunOutCheck check = check(holding, firstJaw);
        assertEquals(under, words.under(check, new BigDecimal(angle)));
        assertEquals(brief, words.brief(check, new BigDecimal(angle)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        FOUR_JAW  | 0   | 22.4      | at jaw 1
        FOUR_JAW  | 0   | 22.5      | half-way from jaw 1 to jaw 2
        FOUR_JAW  | 0   | 53.130102 | half-way from jaw 1 to jaw 2
        FOUR_JAW  | 0   | 337.6     | at jaw 1
        FOUR_JAW  | 90  | 0         | at jaw 4
        FOUR_JAW  | 350 | 33        | half-way from jaw 1 to jaw 2
        THREE_JAW | 0   | 300       | half-way from jaw 3 to jaw 1
        THREE_JAW | 30  | 140       | at jaw 2
        COLLET    | 0   | 359.6     | at the mark
        COLLET    | 0   | 53.130102 | 53° on from the mark
        """)
    void theHighSideIsLookedForAtTheNearestJawOrHalfWay(
            Holding holding, String firstJaw, String direction, String side) {
        assertEquals(side, words.side(check(holding, firstJaw), new BigDecimal(direction)));
    }

    @Test
    void theSectionIsSaidWhereThereAreTwo() {
        RunOutCheck one = check(Holding.FOUR_JAW, "0", section("near the jaws", "30"));
        assertEquals(
                List.of(
                        "highest over a slow turn",
                        "lowest over a slow turn",
                        "jaw 1 under the needle",
                        "half-way from jaw 1 to jaw 2"),
                one.everySlot().stream().map(slot -> words.place(one, slot)).toList());
        RunOutCheck two = check(Holding.FOUR_JAW, "0", section("near the jaws", "30"), section("far out", "140"));
        assertEquals(
                List.of(
                        "highest over a slow turn, far out",
                        "lowest over a slow turn, far out",
                        "jaw 1 under the needle, far out",
                        "half-way from jaw 1 to jaw 2, far out"),
                two.bySection()
                        .get(1)
                        .slots()
                        .map(slot -> words.place(two, slot))
                        .toList());
        assertEquals(
                "jaw 1 under the needle, near the jaws",
                words.place(two, two.slots().get(0)));
    }

    @Test
    void theWayOfTurningIsSaidByJawsWhereThereAreJaws() {
        assertEquals(
                "Turn by hand so that jaw 2 comes to the needle after jaw 1.",
                words.turning(check(Holding.THREE_JAW, "0")));
        assertEquals(
                "Make a mark on the work. Turn by hand, always the same way.",
                words.turning(check(Holding.CENTRES, "0")));
    }

    private static Section section(String name, String at) {
        return new Section(name, new Written(at, Unit.MILLIMETRE));
    }

    private static RunOutCheck check(Holding holding, String firstJaw, Section... sections) {
        return new RunOutCheck(
                new Written("0.02", Unit.MILLIMETRE),
                List.of(BigDecimal.ZERO, new BigDecimal("45")),
                holding,
                new BigDecimal(firstJaw),
                List.of(sections),
                new Check.Means(GaugeKind.DIAL_INDICATOR, Optional.empty(), Optional.empty()));
    }
}
