package org.tenthwise.model.compute.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;

/** What holds for every form, pitch, number of starts and every wire between the least and the greatest. */
class MeasurementOverWiresPropertyTest {

    private static final Length NANOMETRE = Length.of("0.000001", Unit.MILLIMETRE);

    @Property
    void thereAndBackIsTheSameToANanometre(
            @ForAll ThreadForm form,
            @ForAll @BigRange(min = "0.4", max = "12") @Scale(4) BigDecimal pitch,
            @ForAll @BigRange(min = "8", max = "60") @Scale(3) BigDecimal pitchesAcross,
            @ForAll @IntRange(min = 1, max = 4) int starts,
            @ForAll @BigRange(min = "0", max = "1") @Scale(3) BigDecimal share,
            @ForAll @BigRange(min = "-0.2", max = "0.05") @Scale(6) BigDecimal off) {
        ScrewThread thread = thread(form, Unit.MILLIMETRE, pitch, pitchesAcross, starts);
        MeasurementOverWires wires = new MeasurementOverWires(
                Groove.of(thread), between(WireSizes.of(thread), share), thread.basicPitchDiameter());
        Length pitchDiameter = thread.basicPitchDiameter().plus(new Length(off));
        Length back = wires.pitchDiameter(wires.overWires(pitchDiameter));
        assertTrue(!back.minus(pitchDiameter).abs().isAbove(NANOMETRE), pitchDiameter + " and " + back);
    }

    @Property
    void theSameFiguresInInchesAndInMillimetresComeOutTheSame(
            @ForAll ThreadForm form,
            @ForAll @BigRange(min = "0.4", max = "2") @Scale(4) BigDecimal pitch,
            @ForAll @BigRange(min = "8", max = "60") @Scale(3) BigDecimal pitchesAcross,
            @ForAll @IntRange(min = 1, max = 4) int starts) {
        BigDecimal millimetres =
                overTheBestWire(thread(form, Unit.MILLIMETRE, pitch, pitchesAcross, starts), Unit.MILLIMETRE);
        BigDecimal inches = overTheBestWire(thread(form, Unit.INCH, pitch, pitchesAcross, starts), Unit.INCH);
        // each wire is rounded to a nanometre, and counts five times in the measurement
        assertEquals(millimetres.doubleValue(), inches.doubleValue(), 0.000005);
    }

    @Property
    void oneWireAndTheCrestSayTheSameAsThree(
            @ForAll @BigRange(min = "1", max = "500") @Scale(5) BigDecimal over,
            @ForAll @BigRange(min = "1", max = "500") @Scale(5) BigDecimal major) {
        Length overOne = new Length(over).plus(new Length(major)).half();
        assertEquals(new Length(over), OneWire.overWires(overOne, new Length(major)));
    }

    @Property
    void theTouchingWireTouchesAtThePitchDiameter(
            @ForAll ThreadForm form,
            @ForAll @BigRange(min = "0.4", max = "12") @Scale(4) BigDecimal pitch,
            @ForAll @BigRange(min = "8", max = "60") @Scale(3) BigDecimal pitchesAcross,
            @ForAll @IntRange(min = 1, max = 4) int starts) {
        ScrewThread thread = thread(form, Unit.MILLIMETRE, pitch, pitchesAcross, starts);
        Length pitchDiameter = thread.basicPitchDiameter();
        TouchingWire touching = TouchingWire.of(Groove.of(thread), pitchDiameter);
        MeasurementOverWires wires = new MeasurementOverWires(Groove.of(thread), touching.diameter(), pitchDiameter);
        // half a nanometre of the wire is two of the diameter on which it touches
        assertEquals(
                pitchDiameter.millimetres().doubleValue(),
                wires.contact(pitchDiameter).millimetres().doubleValue(),
                0.000005);
        assertEquals(
                touching.overLessPitchDiameter().millimetres().doubleValue(),
                wires.overWires(pitchDiameter)
                        .minus(pitchDiameter)
                        .millimetres()
                        .doubleValue(),
                0.000005);
        assertTrue(!touching.diameter().isAbove(WireSizes.of(thread).best()), "steeper is thinner");
    }

    private static BigDecimal overTheBestWire(ScrewThread thread, Unit unit) {
        return new MeasurementOverWires(thread, WireSizes.of(thread).best())
                .overWires(thread.basicPitchDiameter())
                .in(unit);
    }

    private static Length between(WireSizes sizes, BigDecimal share) {
        return sizes.least().plus(sizes.greatest().minus(sizes.least()).times(share));
    }

    private static ScrewThread thread(
            ThreadForm form, Unit unit, BigDecimal pitch, BigDecimal pitchesAcross, int starts) {
        return new ScrewThread(form, Length.of(pitch.multiply(pitchesAcross), unit), Length.of(pitch, unit), starts);
    }
}
