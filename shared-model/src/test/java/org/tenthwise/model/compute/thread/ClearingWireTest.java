package org.tenthwise.model.compute.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;

class ClearingWireTest {

    private static final Length TENTH = Length.of("0.0001", Unit.INCH);

    private static Length inches(String figure) {
        return Length.of(figure, Unit.INCH);
    }

    private static Length millimetres(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static Length room(ScrewThread thread, Length pitchDiameter, Length root, Length wire) {
        return RootClearance.of(new MeasurementOverWires(thread, wire).overWires(pitchDiameter), wire, root);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # pitch diameter, root; inches, 1 1/2-8 stub Acme
        1.4347, 1.4030
        1.4347, 1.4050
        1.4527, 1.4180
        """)
    void itClearsAndATenthLessRestsOnTheRoot(String pitchDiameter, String root) {
        ScrewThread thread = LeadAngleTest.inches(ThreadForm.STUB_ACME, "1.5", "8", 1);
        Length wire = ClearingWire.of(thread, inches(pitchDiameter), inches(root), Unit.INCH)
                .orElseThrow();
        assertTrue(room(thread, inches(pitchDiameter), inches(root), wire).signum() > 0);
        assertTrue(room(thread, inches(pitchDiameter), inches(root), wire.minus(TENTH))
                        .signum()
                <= 0);
    }

    @Test
    void whereTheLeastWireClearsThatIsIt() {
        ScrewThread thread = LeadAngleTest.inches(ThreadForm.ACME, "1", "5", 1);
        Length least = WireSizes.of(thread).least();
        Length wire = ClearingWire.of(thread, inches("0.8920"), inches("0.7000"), Unit.INCH)
                .orElseThrow();
        assertTrue(!wire.isBelow(least) && wire.minus(least).isBelow(TENTH));
    }

    /**
     * On Tr 40×7 a wire of 4.587 still lies on the flanks at the basic pitch diameter, and one of 4.588 on the crests.
     */
    @ParameterizedTest
    @CsvSource({"4.5865, 4.587", "4.5871, "})
    void aWireThatIsRoundedUpMustStillLieOnTheFlanks(String clearing, String wire) {
        ScrewThread thread = new ScrewThread(ThreadForm.TRAPEZOIDAL, millimetres("40"), millimetres("7"), 1);
        Length clears = millimetres(clearing);
        Length root = new MeasurementOverWires(thread, clears)
                .overWires(thread.basicPitchDiameter())
                .minus(clears.plus(clears));
        assertEquals(
                Optional.ofNullable(wire).map(ClearingWireTest::millimetres),
                ClearingWire.of(thread, thread.basicPitchDiameter(), root, Unit.MILLIMETRE));
    }

    @Test
    void aRootAboveTheFlanksIsClearedByNone() {
        ScrewThread thread = LeadAngleTest.inches(ThreadForm.STUB_ACME, "1.5", "8", 1);
        assertEquals(Optional.empty(), ClearingWire.of(thread, inches("1.4347"), inches("1.4900"), Unit.INCH));
    }
}
