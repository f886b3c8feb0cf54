package org.tenthwise.model.compute.roundness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class OppositesTest {

    private static Optional<Opposites> of(String angles, String readings, Unit unit) {
        List<BigDecimal> degrees =
                Arrays.stream(angles.split(";")).map(BigDecimal::new).toList();
        return Opposites.of(
                degrees,
                Arrays.stream(readings.split(";"))
                        .map(reading -> Length.of(reading, unit))
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # published: US Bureau of Reclamation, alignment of vertical shafts, Figure 16, pinacia.com, read November
        # 2026; inches, N, E, S, W
        INCH,       0;90;180;270,   0.3510;0.3480;0.3550;0.3585, 0.0005, -0.00025
        INCH,       0;90;180;270,   0.3470;0.3540;0.3590;0.3525, 0.0005, -0.00025
        # constructed: (r0 + r180 - r90 - r270)/2 by hand; an oval bar, and one that only runs out
        MILLIMETRE, 0;90;180;270,   0.05;-0.03;0.03;-0.05,       0.16,   0.08
        MILLIMETRE, 0;90;180;270,   0.12;0.02;-0.1;0,            0,      0
        # the same oval bar with its readings in another order and on another turn
        MILLIMETRE, 270;360;-180;90, -0.05;0.05;0.03;-0.03,      0.16,   0.08
        """)
    void sumsOfOppositeReadingsAreSetAgainstEachOther(
            Unit unit, String angles, String readings, String differ, String ovality) {
        assertEquals(
                Optional.of(new Opposites(Length.of(differ, unit), Length.of(ovality, unit))),
                of(angles, readings, unit));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0;120;240", "0;90;180;271", "0;90;90;270", "0;80;180;260", "0;90;180;270;45"})
    void otherReadingsHaveNoOpposites(String angles) {
        assertEquals(
                Optional.empty(),
                of(angles, "1;2;3;4;5".substring(0, 2 * angles.split(";").length - 1), Unit.MILLIMETRE));
    }
}
