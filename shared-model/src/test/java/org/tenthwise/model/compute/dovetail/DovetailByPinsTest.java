package org.tenthwise.model.compute.dovetail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** The published figures are run with the published cases. */
class DovetailByPinsTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static DovetailByPins of(String angle, String pin, DovetailSide side) {
        return new DovetailByPins(new BigDecimal(angle), mm(pin), side);
    }

    @Property
    void theReadingGivesTheWidthBack(@ForAll @IntRange(min = 30, max = 89) int angle, @ForAll DovetailSide side) {
        DovetailByPins dovetail = of(Integer.toString(angle), "8", side);
        assertEquals(mm("60"), dovetail.width(dovetail.measured(mm("60"))));
    }

    /** By hand: 60°, pins of 10: they touch 5 · 1.5 above the corner; 60 + 2 · 9.5 cot 60°. */
    @Test
    void aPinOverTheFlankIsRefused() {
        DovetailByPins dovetail = of("60", "10", DovetailSide.MALE);
        assertEquals(mm("7.5"), dovetail.contactHeight());
        assertEquals(mm("70.969655"), dovetail.otherWidth(mm("60"), mm("9.5")));
        assertThrows(IllegalArgumentException.class, () -> dovetail.otherWidth(mm("60"), mm("7.5")));
    }

    /** By hand: 60 − 2 · 10 cot 60°. */
    @Test
    void aFemaleOneIsNarrowerAtItsMouthUntilItCloses() {
        DovetailByPins dovetail = of("60", "8", DovetailSide.FEMALE);
        assertEquals(mm("48.452995"), dovetail.otherWidth(mm("60"), mm("10")));
        assertThrows(IllegalArgumentException.class, () -> dovetail.otherWidth(mm("10"), mm("10")));
    }

    @Test
    void pinsWithoutRoomAndWidthsOfNothingAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> of("60", "10", DovetailSide.FEMALE)
                .measured(mm("27.3")));
        assertThrows(IllegalArgumentException.class, () -> of("60", "10", DovetailSide.MALE)
                .width(mm("27.3")));
    }

    @ParameterizedTest
    @CsvSource({"0, 8", "90, 8", "-60, 8", "60, 0"})
    void aDovetailThatIsNoneIsRefused(String angle, String pin) {
        assertThrows(IllegalArgumentException.class, () -> of(angle, pin, DovetailSide.MALE));
    }

    /** By hand, derivative −p / (2 sin²(a/2)): a degree less of 60 on pins of 10 reads 0.35 more over, less between. */
    @ParameterizedTest
    @EnumSource(DovetailSide.class)
    void aDegreeOfAngleIsAThirdOfAMillimetreOverPinsOfTen(DovetailSide side) {
        double moved = of("59.5", "10", side)
                .measured(mm("60"))
                .minus(of("60.5", "10", side).measured(mm("60")))
                .millimetres()
                .doubleValue();
        assertEquals(side == DovetailSide.MALE ? 0.349 : -0.349, moved, 0.001);
    }
}
