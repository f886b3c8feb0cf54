package org.tenthwise.model.compute.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ThreadForm;

class GrooveTest {

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    @Test
    void aFormHasAGrooveOfHalfAPitch() {
        Groove groove = Groove.of(LeadAngleTest.inches(ThreadForm.ACME, "1", "5", 3));
        assertEquals(Length.of("0.1", Unit.INCH), groove.width());
        assertEquals(Length.of("0.6", Unit.INCH), groove.lead());
        assertEquals(new BigDecimal("14.5"), groove.halfAngle());
    }

    /**
     * By hand for 20° and a groove of 1.8 mm: 1.8 · cot 20° = 4.945459; least and best wire of a 29° crest 1.0 mm up.
     */
    @Test
    void aGrooveOfItsOwnGivesItsOwnWires() {
        Groove groove = new Groove(new BigDecimal("20"), mm("4"), mm("1.8"), 1);
        assertEquals(mm("4.945459"), groove.pitchConstant());
        WireSizes sizes = WireSizes.of(ThreadForm.ACME, groove);
        // 1.8 / cos 20°, (2 + 4.945459) / 3.923804, (1.8 + 2 · tan 20°) / cos 20°
        assertEquals(1.915520, sizes.best().millimetres().doubleValue(), 0.000002);
        assertEquals(1.770083, sizes.least().millimetres().doubleValue(), 0.000002);
        assertEquals(2.690180, sizes.greatest().millimetres().doubleValue(), 0.000002);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        0,  4, 2, 1, is not between 0° and 90°
        90, 4, 2, 1, is not between 0° and 90°
        15, 0, 2, 1, Pitch 0 mm must be more than zero
        15, 4, 0, 1, Groove width 0 mm must be more than zero
        15, 4, 4, 1, leaves nothing of the thread at a pitch of 4 mm
        15, 4, 2, 0, 'one start or more, not 0'
        """)
    void aGrooveThatCannotBeIsRefused(BigDecimal halfAngle, String pitch, String width, int starts, String words) {
        assertTrue(
                assertThrows(IllegalArgumentException.class, () -> new Groove(halfAngle, mm(pitch), mm(width), starts))
                        .getMessage()
                        .contains(words));
    }
}
