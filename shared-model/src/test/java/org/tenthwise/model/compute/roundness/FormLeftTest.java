package org.tenthwise.model.compute.roundness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class FormLeftTest {

    private static final List<BigDecimal> FOUR =
            List.of("0", "90", "180", "270").stream().map(BigDecimal::new).toList();

    /** By hand: four readings leave of the circle what Opposites tells, here zero or ± 0.002. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # readings             | over a turn | stays
        0.010;0;-0.010;0       |             | 0
        0.010;0;-0.010;0       | 0.020       | 0
        # a burr between the readings
        0.010;0;-0.010;0       | 0.050       | 0.030
        # an oval, and a sweep that shows less than twice the eccentricity
        0.012;-0.002;-0.008;-0.002 | 0.015   | 0.004
        0.012;-0.002;-0.008;-0.002 |         | 0.004
        """,
            delimiter = '|')
    void theGreaterOfWhatTheCircleLeavesAndWhatASweepShowsBeyondIt(String readings, String swept, String stays) {
        CircleFit fit = CircleFit.of(
                FOUR,
                Arrays.stream(readings.split(";"))
                        .map(figure -> Length.of(figure, Unit.MILLIMETRE))
                        .toList());
        assertEquals(
                Length.of(stays, Unit.MILLIMETRE),
                FormLeft.of(fit, Optional.ofNullable(swept).map(figure -> Length.of(figure, Unit.MILLIMETRE))));
    }
}
