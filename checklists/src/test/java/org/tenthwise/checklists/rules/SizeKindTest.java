package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Feature.Form;
import org.tenthwise.model.plan.Feature.Side;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.tolerance.Limit;

/** A size of any feature, as a plan names it. */
class SizeKindTest {

    private static final String PLAN =
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

            [[step]]
            number = 1
            operation = 10
            name = "It"
            method = "So."
            lower = 7.9
            upper = 8.1
            places = ["front", "back"]
            """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        slot                                              | caliper            | too small | LOWER
        thickness                                         | micrometer         | too big   | UPPER
        flats                                             | comparator         | too big   | UPPER
        hole                                              | pin-gauge          | too small | LOWER
        spigot                                            | micrometer         | too big   | UPPER
        length" ~ side = "outside                         | caliper            | too big   | UPPER
        length" ~ side = "inside                          | depth-gauge        | too small | LOWER
        oil groove" ~ shape = "faces" ~ side = "inside    | groove-micrometer  | too small | LOWER
        pilot" ~ shape = "turned" ~ side = "outside       | micrometer         | too big   | UPPER
        """)
    void onlyWhereMetalIsLeftItIsCutAgain(String feature, String gauge, String word, Limit beyond) {
        SizeCheck check = check(feature, gauge, "cut_again = \"%s\"\n".formatted(word));
        assertEquals(Optional.of(beyond), check.cutAgainBeyond());
        assertEquals("size", check.key());
    }

    @ParameterizedTest
    @ValueSource(strings = {"length", "step", "chamfer", "length\" ~ side = \"either"})
    void whereThePlanLeavesTheSideOpenItIsNever(String feature) {
        SizeCheck check = check(feature, "caliper", "");
        assertEquals(Optional.empty(), check.cutAgainBeyond());
        assertEquals(Optional.empty(), check.feature().side());
    }

    @Test
    void aWordOfThePlansOwnIsKept() {
        assertEquals(
                new Feature("oil groove", Form.FACES, Optional.of(Side.INSIDE)),
                check("oil groove\" ~ shape = \"faces\" ~ side = \"inside", "caliper", "")
                        .feature());
    }

    /** The short word and the long one come to the same check, to the last key. */
    @Test
    void aPlainKindIsShortForASizeOfItsFeature() {
        for (Feature plain : Feature.PLAIN) {
            assertEquals(
                    read("kind = \"%s\"\ngauge_kind = \"caliper\"\n".formatted(plain.key())),
                    check(plain.key(), "caliper", ""));
        }
        assertEquals(
                read("kind = \"diameter\"\ngauge_kind = \"caliper\"\ngrooves = { pitch = 2 }\n"),
                check("diameter", "caliper", "grooves = { pitch = 2 }\n"));
    }

    /** @param feature with what stands beside it, lines apart by ~ */
    private static SizeCheck check(String feature, String gauge, String more) {
        String master = gauge.equals("comparator") ? "master = 8\n" : "";
        return read("kind = \"size\"\nfeature = \"%s\"\ngauge_kind = \"%s\"\n%s%s"
                .formatted(feature.strip().replace(" ~ ", "\n"), gauge, master, more));
    }

    private static SizeCheck read(String keys) {
        PlanReading reading = new PlanReader().read(PLAN + keys);
        Plan plan = assertInstanceOf(PlanReading.Good.class, reading, reading::toString)
                .plan();
        return assertInstanceOf(SizeCheck.class, plan.step(1).check());
    }
}
