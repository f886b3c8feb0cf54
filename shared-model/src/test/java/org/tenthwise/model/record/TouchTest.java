package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.with;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Contact.ReadTo;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * The root of an invented Tr 40×7, at most 32.500, and a hole drilled Ø8 118°. A reading of 32.688 across opposite
 * grooves is √(32.688² − 3.5²) = 32.500082, one of 32.6875 is 32.499579; the point is 4 / tan 59° = 2.403442 long. By
 * hand.
 */
class TouchTest {

    private static final Contact TR_40 = new Contact.InGrooves(length("7"), 1);
    private static final Event OPPOSITE = new StepEvent.Answered(1, Question.GROOVES_TOUCHED, Answer.OPPOSITE_GROOVES);
    private static final Event SQUARE = new StepEvent.Answered(1, Question.GROOVES_TOUCHED, Answer.SQUARE_ACROSS);

    private static SizeCheck size(Feature feature, String lower, String upper, int places, Contact contact) {
        return new SizeCheck(
                feature,
                Limits.between(mm(lower), mm(upper)),
                places(places),
                1,
                Combine.EACH,
                true,
                mm("0"),
                with(GaugeKind.MICROMETER),
                Cutting.UNSAID,
                Optional.empty(),
                contact);
    }

    private static Bench root(int places) {
        return new Bench().step(size(Feature.DIAMETER, "31.500", "32.500", places, TR_40));
    }

    private static SizeFinding found(Bench bench) {
        return (SizeFinding) bench.finding(1);
    }

    @Test
    void isOpenUntilSomebodySaysHowItTouched() {
        SizeFinding unsaid = found(root(1).read(1, "32.000"));
        assertEquals(VerdictKind.OPEN, unsaid.verdict().standing());
        assertEquals(1, unsaid.missing());
        assertEquals(
                Optional.of(VerdictKind.OPEN),
                unsaid.alone(unsaid.measured().get(0)).map(verdict -> verdict.standing()));
        assertEquals(Optional.of(length("32")), unsaid.value());
        assertEquals(Optional.empty(), unsaid.measured().get(0).forContact());
    }

    @Test
    void isOpenHoweverFarOutItReads() {
        assertEquals(
                VerdictKind.OPEN, found(root(1).read(1, "33.000")).verdict().standing());
        assertEquals(
                VerdictKind.CUT_AGAIN,
                found(root(1).read(1, "33.000").did(SQUARE)).verdict().standing());
    }

    @Test
    void pointsInOppositeGroovesReadTooBig() {
        SizeFinding found = found(root(2).read(1, "32.6875", "32.000").did(OPPOSITE));
        assertEquals(VerdictKind.PASS, found.verdict().standing());
        Measured worst = found.deciding().orElseThrow();
        assertEquals(length("32.6875"), worst.raw());
        assertEquals(length("32.499579"), worst.value());
        assertEquals(Optional.of(length("-0.187921")), worst.forContact());
        assertEquals(length("-0.187921"), worst.correction());
        assertEquals(Optional.empty(), worst.forTemperature());
        assertEquals(
                VerdictKind.CUT_AGAIN,
                found(root(1).read(1, "32.688").did(OPPOSITE)).verdict().standing());
    }

    @Test
    void squareAcrossTheReadingIsTheSize() {
        SizeFinding found = found(root(1).read(1, "32.688").did(SQUARE));
        assertEquals(VerdictKind.CUT_AGAIN, found.verdict().standing());
        assertEquals(Optional.of(length("32.688")), found.value());
        assertEquals(Optional.of(length("0")), found.measured().get(0).forContact());
    }

    @Test
    void nobodyIsAskedWhereTheGroovesFaceEachOther() {
        Check two = size(Feature.DIAMETER, "31.500", "32.500", 1, new Contact.InGrooves(length("7"), 2));
        assertEquals(List.of(), two.questions());
        assertEquals(
                VerdictKind.PASS,
                new Bench().step(two).read(1, "32.500").finding(1).verdict().standing());
        assertEquals(
                List.of(Question.GROOVES_TOUCHED),
                size(Feature.DIAMETER, "31.5", "32.5", 1, new Contact.InGrooves(length("7"), 3))
                        .questions());
    }

    /** A reading struck out and read anew, perhaps with another gauge: what was said before does not speak for it. */
    @Test
    void isAskedAgainOnceSomethingIsReadAfterTheAnswer() {
        Bench bench =
                root(2).read(1, "32.6875", "32.000").did(OPPOSITE).did(new Event.StruckOut(2, "dirt in the groove"));
        bench.did(new StepEvent.ReadingTaken(1, "1.1", mm("32.400")));
        assertEquals(VerdictKind.OPEN, bench.finding(1).verdict().standing());
        assertEquals(1, bench.finding(1).missing());
        assertEquals(VerdictKind.PASS, bench.did(SQUARE).finding(1).verdict().standing());
    }

    @Test
    void anAnswerThatIsStruckOutLeavesItOpen() {
        assertEquals(
                VerdictKind.OPEN,
                root(1).read(1, "32.000")
                        .did(SQUARE)
                        .did(new Event.StruckOut(3, "wrong key"))
                        .finding(1)
                        .verdict()
                        .standing());
    }

    /** Wires 3.6 on Tr 40×7 that measure 39.900 lie on a root of 32.7 and clear one of 32.688 − 0.188. */
    @Test
    void theRootOfAThreadIsTheCorrectedOne() {
        OverWiresCheck wires = new OverWiresCheck(
                new ScrewThread(ThreadForm.TRAPEZOIDAL, length("40"), length("7"), 1),
                Limits.between(mm("36.020"), mm("36.375")),
                Optional.empty(),
                Optional.of(1),
                places(1),
                1,
                Combine.EACH,
                true,
                mm("0"),
                new Check.Means(GaugeKind.MICROMETER_OVER_WIRES, Optional.empty(), Optional.of(mm("3.6"))));
        Bench bench = root(1).step(wires).did(new StepEvent.GaugeSet(2, Bench.wires("3.6")));
        bench.read(1, "32.688");
        assertTrue(room(bench.read(2, "39.900")).isEmpty(), "nobody has said how the root was read");
        bench.did(OPPOSITE).read(2, "39.900");
        // (39.900 − 7.2 − 32.500082) / 2
        assertEquals(Optional.of(length("0.099959")), room(bench));
        bench.did(SQUARE).read(2, "39.900");
        assertEquals(Optional.of(length("0.006")), room(bench));
    }

    private static Optional<Length> room(Bench bench) {
        return ((OverWiresFinding) bench.finding(2)).rootClearance();
    }

    /**
     * Bronze, 16.2, at 25 °C under a micrometer at 20 °C: 32.688/1.000081 = 32.685352, and √(32.685352² − 3.5²) =
     * 32.497419. The other order gives 32.497450, by 0.03 µm another.
     */
    @Test
    void theReadingIsBroughtToTwentyDegreesFirst() {
        SizeCheck tight = size(Feature.DIAMETER, "32.480", "32.500", 1, TR_40);
        SizeFinding found = found(new Bench()
                .in(Bench.BRONZE)
                .step(tight)
                .at(1, "25", "20")
                .read(1, "32.688")
                .did(OPPOSITE));
        Measured measured = found.measured().get(0);
        assertEquals(Optional.of(length("-0.002648")), measured.forTemperature());
        assertEquals(length("32.497419"), measured.value());
        assertEquals(length("-0.190581"), measured.correction());
        assertEquals(measured.raw(), measured.uncorrected());
        assertEquals(VerdictKind.PASS, found.verdict().standing());
    }

    /** √(5² − 3.5²) = 3.570714: between half a pitch and a pitch it is a small root, and none that cannot be. */
    @Test
    void aReadingOfMoreThanHalfAPitchIsOfAThread() {
        assertEquals(
                length("3.570714"),
                found(root(1).read(1, "5").did(OPPOSITE)).measured().get(0).value());
        assertEquals(length("3.5"), Touch.most(TR_40));
    }

    /** Kept on purpose, though no thread has such a root: nothing is shown by it, and no sum falls over. */
    @Test
    void aReadingTooSmallForItsGroovesIsFarOff() {
        SizeFinding found = found(root(1).read(1, "3.5").did(OPPOSITE));
        assertEquals(length("0"), found.measured().get(0).value());
        assertEquals(1, found.farOff().size());
        assertEquals(VerdictKind.FAIL, found.verdict().standing());
    }

    private static Bench hole(ReadTo readTo, String lower, String upper) {
        return new Bench()
                .step(size(
                        Feature.DEPTH,
                        lower,
                        upper,
                        1,
                        new Contact.DrilledHole(mm("8"), BigDecimal.valueOf(118), readTo)));
    }

    @Test
    void theLengthOfTheDrillPointIsTakenOffWhereTheRodFindsThePoint() {
        SizeFinding found = found(hole(ReadTo.POINT, "24.5", "25.5").read(1, "27.3"));
        assertEquals(VerdictKind.PASS, found.verdict().standing());
        assertEquals(length("24.896558"), found.measured().get(0).value());
        assertEquals(Optional.of(length("-2.403442")), found.measured().get(0).forContact());
        assertEquals(
                VerdictKind.CUT_AGAIN,
                found(hole(ReadTo.POINT, "24.5", "25.5").read(1, "25.0"))
                        .verdict()
                        .standing());
    }

    @Test
    void nothingIsTakenOffAtTheEndOfTheFullDiameter() {
        SizeFinding found = found(hole(ReadTo.FULL_DIAMETER, "24.5", "25.5").read(1, "25.0"));
        assertEquals(VerdictKind.PASS, found.verdict().standing());
        assertEquals(Optional.empty(), found.measured().get(0).forContact());
    }

    /** The rod in a hole of 4 goes in 6.4: not far off, though more than a quarter deeper than the drawing. */
    @Test
    void theRodIsLookedForAtThePoint() {
        assertEquals(
                List.of(),
                hole(ReadTo.POINT, "3.9", "4.1").read(1, "6.4").finding(1).farOff());
        assertEquals(
                1,
                hole(ReadTo.FULL_DIAMETER, "3.9", "4.1")
                        .read(1, "6.4")
                        .finding(1)
                        .farOff()
                        .size());
    }
}
