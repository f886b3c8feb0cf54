package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.compute.roughness.AcceptanceRule;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.ScaleCheck;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

class ScaleKindTest {

    private static ScaleCheck scale(String keys) {
        return assertInstanceOf(
                ScaleCheck.class,
                PlanText.check(
                        """
                        kind = "scale"
                        places = ["there"]
                        %s
                        """
                                .formatted(keys)));
    }

    @Test
    void aScaleIsReadInTheUnitTheDrawingHasWhateverThatOfThePlan() {
        ScaleCheck hardness = scale(
                """
                unit = "HRC"
                lower = 38
                upper = 44.0
                readings_each = 3
                combine = "mean"
                guard_band = 0.5
                gauge_kind = "hardness-tester"
                gauge = "HT-1"
                """);
        Unit hrc = Unit.named("HRC");
        assertEquals(Limits.between(new Written("38", hrc), new Written("44.0", hrc)), hardness.limits());
        assertEquals(Combine.MEAN, hardness.combine());
        assertEquals(3, hardness.slots().size());
        assertEquals(new Written("0.5", hrc), hardness.guardBand());
        assertEquals("hardness-tester", hardness.with().kind().key());
        assertEquals(Optional.of("mean"), hardness.judgedBy());
    }

    @ParameterizedTest
    @CsvSource({"µm,µm", "um,µm", "\u03bcm,µm", "µin,µin", "uin,µin", "N·m,N·m", "lbf·ft,lbf·ft", "ml/min,ml/min", "%,%"
    })
    void theUnitIsAnyWord(String written, Unit unit) {
        ScaleCheck check = scale("unit = \"%s\"\nupper = 0\ngauge_kind = \"other-instrument\"".formatted(written));
        assertEquals(unit, check.limits().unit());
        assertEquals(new Written("0", unit), check.guardBand());
    }

    @Test
    void theSixteenPercentRuleHasRoomForTwelveValues() {
        ScaleCheck rough = scale(
                """
                unit = "µm"
                upper = 1.6
                rule = "16-percent"
                gauge_kind = "roughness-tester"
                """);
        assertEquals(Optional.of(AcceptanceRule.SIXTEEN_PERCENT), rough.rule());
        assertEquals(12, rough.slots().size());
        assertEquals(Optional.of("16-percent"), rough.judgedBy());
    }

    @Test
    void byTheMaximumRuleThePlanSaysHowManyAreMeasured() {
        ScaleCheck rough = scale(
                """
                unit = "µin"
                upper = 63
                rule = "max"
                readings_each = 5
                gauge_kind = "roughness-tester"
                """);
        assertEquals(Optional.of(AcceptanceRule.MAX), rough.rule());
        assertEquals(5, rough.slots().size());
        assertEquals(Combine.EACH, rough.combine());
    }

    @Test
    void anUncertaintyOfTheScaleMakesItsGuardBand() {
        ScaleCheck hardness = assertInstanceOf(
                ScaleCheck.class,
                PlanText.plan(
                                """
                                kind = "scale"
                                unit = "HRC"
                                lower = 38
                                upper = 44
                                places = ["there"]
                                gauge_kind = "hardness-tester"
                                uncertainty = "tester"
                                guard_band = "uncertainty"

                                [[uncertainty]]
                                name = "tester"
                                unit = "HRC"
                                expanded = 1.5
                                """)
                        .step(5)
                        .check());
        assertEquals(new Written("1.5", Unit.named("HRC")), hardness.guardBand());
    }
}
