package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.AngleCheck;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

class AngleKindTest {

    private static AngleCheck angle(String keys) {
        return assertInstanceOf(
                AngleCheck.class,
                PlanText.check(
                        """
                        kind = "angle"
                        %s
                        places = ["front", "back"]
                        gauge_kind = "bevel-protractor"
                        """
                                .formatted(keys)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            textBlock =
                    """
            # as the plan has it; lower; upper; unit: sums by hand
            lower = 29.50; upper = 30.5                        | 29.50     | 30.5      | °
            lower = "29°30'"; upper = "30°30'"                 | 29°30′    | 30°30′    | ° ′
            lower = "29°30'"; upper = 31                       | 29°30′    | 31°00′    | ° ′
            lower = "29.50°"; upper = "30°0'30"                | 29°30′00″ | 30°0′30″  | ° ′ ″
            nominal = 30; plus_minus = 0.5                     | 29.5      | 30.5      | °
            nominal = 30.00; plus_minus = 0.50                 | 29.50     | 30.50     | °
            nominal = "30°"; plus_minus = "0°30'"              | 29°30′    | 30°30′    | ° ′
            nominal = "90°"; plus_minus = "0°00'20"            | 89°59′40″ | 90°00′20″ | ° ′ ″
            nominal = 1.5; plus_minus = "0°10'"                | 1°20′     | 1°40′     | ° ′
            """)
    void limitsAreWrittenInOneUnitAndNothingIsRounded(String keys, String lower, String upper, Unit unit) {
        AngleCheck angle = angle(keys.replace("; ", "\n"));
        assertEquals(Optional.of(new Written(lower, unit)), angle.limits().lower());
        assertEquals(Optional.of(new Written(upper, unit)), angle.limits().upper());
        assertEquals(Written.of(BigDecimal.ZERO, unit), angle.guardBand());
    }

    @Test
    void aGuardBandIsInTheUnitOfTheLimits() {
        AngleCheck angle = angle("upper = \"30°30'\"\nguard_band = 0.05");
        assertEquals(new Written("0°03′", Unit.MINUTE_OF_ARC), angle.guardBand());
        assertEquals(
                new Written("30°30′00″", Unit.SECOND_OF_ARC),
                angle("upper = \"30°30'\"\nguard_band = \"0°00'30\"")
                        .limits()
                        .upper()
                        .orElseThrow());
        assertEquals(GaugeKind.BEVEL_PROTRACTOR, angle.with().kind());
    }
}
