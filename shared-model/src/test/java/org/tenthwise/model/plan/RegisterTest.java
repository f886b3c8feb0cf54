package org.tenthwise.model.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** A register in radii shows half of what the diameter changes by. */
class RegisterTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    @ParameterizedTest
    @CsvSource({"DIAMETER, -0.040, -0.040", "RADIUS, -0.040, -0.020"})
    void itCountsAChangeOfTheDiameterInItsOwnWayAndBack(Register register, String onDiameter, String counted) {
        assertEquals(mm(counted), register.counts(mm(onDiameter)));
        assertEquals(mm(onDiameter), register.onDiameter(mm(counted)));
    }

    @ParameterizedTest
    @CsvSource({"DIAMETER, 0.040", "RADIUS, 0.020", ", 0.040"})
    void whereNoRegisterIsKnownTheChangeOfTheSizeStands(Register register, String counted) {
        assertEquals(mm(counted), Register.counted(mm("0.040"), Optional.ofNullable(register)));
    }
}
