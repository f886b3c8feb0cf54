package org.tenthwise.model.compute.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;

class MeasurementOverWiresTest {

    /** Pitch line below the sharp crest of a V thread on diameter, in pitches: cot 30° / 2, geometry. */
    private static final double V_FORM = 0.8660254;

    /** And below the crest of the US form, three quarters of that, geometry. */
    private static final double US_FORM = 0.6495191;

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    private static double inches(Length length) {
        return length.in(Unit.INCH).doubleValue();
    }

    /**
     * The handbook reckons US forms with 1.5155 pitch where geometry has 1.515544, and prints four places: some of its
     * rows are therefore 1 out in the last digit. No row may be more.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "over-wires-60.csv", useHeadersInDisplayName = true)
    void sixtyDegreeThreadsOverWiresComeOutAsListed(
            String form, String name, String tpi, String diameter, String wire, String over, String source) {
        ScrewThread thread = LeadAngleTest.inches(ThreadForm.UNIFIED, diameter, tpi, 1);
        MeasurementOverWires wires = new MeasurementOverWires(thread, Length.of(wire, Unit.INCH));
        double pitchDiameter =
                Double.parseDouble(diameter) - (form.equals("US") ? US_FORM : V_FORM) / Double.parseDouble(tpi);
        assertEquals(
                pitchDiameter,
                inches(wires.simplePitchDiameter(Length.of(over, Unit.INCH))),
                0.0001,
                name + ", " + source);
        // these single-start threads are listed without correction: the exact answer is a little less, by 0.0003 in at
        // most
        double exact = inches(wires.pitchDiameter(Length.of(over, Unit.INCH)));
        assertTrue(exact < pitchDiameter + 0.0001 && exact > pitchDiameter - 0.0003, name + ": " + exact);
    }

    /**
     * The handbook lists the wire that touches at the pitch line, to five places, and the constant of that wire,
     * unrounded.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "large-lead-29.csv", useHeadersInDisplayName = true)
    void largeLeadAnglesComeOutAsListed(int starts, double leadAngle, double bestWire, double overLessPitchDiameter) {
        double pitchDiameter = starts / (Math.PI * Math.tan(Math.toRadians(leadAngle)));
        ScrewThread thread = new ScrewThread(ThreadForm.ACME, Nanometres.round(pitchDiameter + 0.5), mm("1"), starts);
        double touching = wireThatTouchesAtThePitchLine(pitchDiameter, starts);
        assertEquals(bestWire, touching, 0.00003);
        Length over =
                new MeasurementOverWires(thread, Nanometres.round(touching)).overWires(Nanometres.round(pitchDiameter));
        assertEquals(overLessPitchDiameter, over.millimetres().doubleValue() - pitchDiameter, 0.00004);
        assertEquals(
                leadAngle,
                LeadAngle.degrees(thread, Nanometres.round(pitchDiameter)).doubleValue(),
                0.00001);
    }

    private static double wireThatTouchesAtThePitchLine(double pitchDiameter, int starts) {
        double thin = 0.45;
        double thick = 0.55;
        while (thick - thin > 1e-9) {
            double wire = (thin + thick) / 2;
            BallInGroove ball = new BallInGroove(Math.tan(Math.toRadians(14.5)), starts / (2 * Math.PI), 0.5, wire);
            if (ball.inPitchDiameter(pitchDiameter).orElseThrow().contact() < pitchDiameter / 2) {
                thin = wire;
            } else {
                thick = wire;
            }
        }
        return thin;
    }

    /**
     * Published: Machinery's Handbook, 31st ed., p. 2134, worked example, 5 threads to the inch and 4 starts: M 1.1498,
     * E 1.0250. Its constant belongs to a wire of 0.10020 in, not the 0.10024 in printed, hence 0.0003 either way.
     */
    @Test
    void fourStartWorkedExampleComesOut() {
        MeasurementOverWires wires = new MeasurementOverWires(
                LeadAngleTest.inches(ThreadForm.ACME, "1.125", "5", 4), Length.of("0.10024", Unit.INCH));
        assertEquals(1.0250, inches(wires.pitchDiameter(Length.of("1.1498", Unit.INCH))), 0.0003);
        assertEquals(1.1498, inches(wires.overWires(Length.of("1.0250", Unit.INCH))), 0.0003);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # constructed by hand from c = W/2 tan² B cos A cot A (Machinery's Handbook, 31st ed., p. 2127);
        # best wire, inches
        ACME,    1,    5,   0.00098
        ACME,    0.75, 6,   0.00104
        ACME,    0.25, 16,  0.00052
        ACME,    3,    2,   0.0016
        UNIFIED, 0.25, 20,  0.00012
        UNIFIED, 1,    8,   0.00010
        UNIFIED, 2,    4.5, 0.00014
        """)
    void theUsualCorrectionIsTakenOffTheSimpleFormula(ThreadForm form, String diameter, String tpi, double correction) {
        ScrewThread thread = LeadAngleTest.inches(form, diameter, tpi, 1);
        MeasurementOverWires wires =
                new MeasurementOverWires(thread, WireSizes.of(thread).best());
        Length over = wires.overWires(thread.basicPitchDiameter());
        assertEquals(
                correction,
                inches(wires.simplePitchDiameter(over)) - inches(wires.correctedPitchDiameter(over)),
                0.00005);
        // on these single-start threads the corrected formula is as good as exact
        assertEquals(inches(thread.basicPitchDiameter()), inches(wires.correctedPitchDiameter(over)), 0.00012);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # forms of every kind, millimetres, one start and several; made up
        METRIC,      10,  1.5, 1
        UNIFIED,     6.35, 1.27, 1
        ACME,        25.4, 5.08, 1
        ACME,        28,  5.08, 4
        STUB_ACME,   40,  6,   2
        TRAPEZOIDAL, 40,  7,   1
        TRAPEZOIDAL, 40,  7,   3
        METRIC,      300, 4,   1
        """)
    void thereAndBackIsTheSameToANanometre(ThreadForm form, String diameter, String pitch, int starts) {
        ScrewThread thread = new ScrewThread(form, mm(diameter), mm(pitch), starts);
        WireSizes sizes = WireSizes.of(thread);
        Length thick = Length.mean(List.of(sizes.best(), sizes.greatest()));
        for (Length wire : List.of(sizes.best(), sizes.least(), thick)) {
            MeasurementOverWires wires = new MeasurementOverWires(thread, wire);
            for (String off : List.of("0", "-0.1", "0.05", "-0.234567")) {
                Length pitchDiameter = thread.basicPitchDiameter().plus(mm(off));
                Length back = wires.pitchDiameter(wires.overWires(pitchDiameter));
                assertTrue(
                        back.minus(pitchDiameter).abs().compareTo(mm("0.000001")) <= 0, pitchDiameter + " and " + back);
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        30,   0.577350269
        30,   0.8
        14.5, 0.516450
        15,   0.517638
        """)
    void aLeadOfZeroGivesTheSimpleFormula(double halfAngle, double wire) {
        double a = Math.toRadians(halfAngle);
        BallInGroove ball = new BallInGroove(Math.tan(a), 0, 0.5, wire);
        BallInGroove.Rest rest = ball.inPitchDiameter(10).orElseThrow();
        assertEquals(10 - 0.5 / Math.tan(a) + wire * (1 + 1 / Math.sin(a)), 2 * rest.centre() + wire, 1e-9);
    }

    /** A pitch of 1 mm on a diameter of 2 m has a lead angle of 0.01°: no formula may differ by 1 nm there. */
    @Test
    void onAVeryLargeDiameterAllFormulasAgree() {
        ScrewThread thread = new ScrewThread(ThreadForm.ACME, mm("2000"), mm("1"), 1);
        MeasurementOverWires wires = new MeasurementOverWires(thread, mm("0.51645"));
        Length over = mm("2000.1");
        assertTrue(wires.simplePitchDiameter(over)
                        .minus(wires.pitchDiameter(over))
                        .abs()
                        .compareTo(mm("0.000001"))
                <= 0);
        assertTrue(wires.correctedPitchDiameter(over)
                        .minus(wires.pitchDiameter(over))
                        .abs()
                        .compareTo(mm("0.000001"))
                <= 0);
    }

    @Test
    void severalStartsKeepTheGrooveOfThePitch() {
        // the more starts, the higher the wire; a groove of half the lead would let it drop by 7.5 mm for each more.
        // Without a lead, by hand: 38 - 1.866025 x 4 + 4.863703 x 2.07 = 40.604
        Length before = mm("0");
        for (int starts = 1; starts <= 4; starts++) {
            ScrewThread thread = new ScrewThread(ThreadForm.TRAPEZOIDAL, mm("40"), mm("4"), starts);
            Length over = new MeasurementOverWires(thread, mm("2.07")).overWires(mm("38"));
            assertTrue(over.isAbove(before));
            assertEquals(40.604, over.millimetres().doubleValue(), 0.3);
            before = over;
        }
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # a wire in inches taken for millimetres and the other way round among them
        0,     must be more than zero
        -1,    must be more than zero
        0.114, is too small
        2.3,   is too small
        3.5,   is too large
        30,    is too large
        2000,  is too large
        """)
    void aWireThatCannotTouchTheFlanksIsRefused(String wire, String words) {
        ScrewThread thread = new ScrewThread(ThreadForm.ACME, mm("25.4"), mm("5.08"), 1);
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new MeasurementOverWires(thread, mm(wire)))
                .getMessage()
                .contains(words));
    }

    @Test
    void aWireFlushWithTheCrestIsTaken() {
        ScrewThread thread = new ScrewThread(ThreadForm.STUB_ACME, mm("100"), mm("2"), 1);
        WireSizes sizes = WireSizes.of(thread);
        assertTrue(new MeasurementOverWires(thread, sizes.least())
                .overWires(thread.basicPitchDiameter())
                .minus(mm("100"))
                .abs()
                .isBelow(mm("0.001")));
        assertThrows(
                IllegalArgumentException.class,
                () -> new MeasurementOverWires(thread, sizes.greatest().plus(mm("0.001"))));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
        0
        -20
        5.2
        1.1
        """)
    void aMeasurementNoThreadCanHaveIsRefused(String over) {
        MeasurementOverWires wires =
                new MeasurementOverWires(new ScrewThread(ThreadForm.ACME, mm("25.4"), mm("5.08"), 1), mm("2.62"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> wires.pitchDiameter(mm(over)))
                .getMessage()
                .contains("leaves no room for a thread"));
        assertThrows(IllegalArgumentException.class, () -> wires.overWires(mm("-1")));
    }

    @Test
    void wiresAreGivenInWhateverUnit() {
        ScrewThread thread = LeadAngleTest.inches(ThreadForm.ACME, "1", "5", 1);
        assertEquals(
                new MeasurementOverWires(thread, Length.of("0.10329", Unit.INCH))
                        .pitchDiameter(Length.of("1.02", Unit.INCH)),
                new MeasurementOverWires(thread, Length.of(new BigDecimal("2.623566"), Unit.MILLIMETRE))
                        .pitchDiameter(mm("25.908")));
    }
}
