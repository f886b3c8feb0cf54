package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.words.Words;

/**
 * What the hand is told about work that runs out, word for word. Figures by hand: half the difference of opposite
 * readings.
 */
class TruingAdviceTest {

    /** cos 3t is 1, 0, −1, 0 at the four places, as cos t is. */
    private static final String THREE_LOBES = "Four readings cannot tell three lobes from work off centre.";

    private static final Words WORDS = Words.of(Locale.ENGLISH);
    /** 0.016 towards jaw 1 and 0.008 towards jaw 2. */
    private static final String[] TOWARDS_ONE_AND_TWO = {"0.032", "0.024", "0.000", "0.008"};

    private static final String[] TOWARDS_ONE = {"0.032", "0.016", "0.000", "0.016"};
    private static final String[] INSIDE = {"0.012", "0.006", "0.000", "0.006"};

    private static String told(RunOutAtHand atHand) {
        return new Advice(WORDS).next(atHand.line());
    }

    @Test
    void fourJawsOneAxisAfterTheOther() {
        assertEquals(
                "Drive off and unable to start. One jaw at a time. If the needle is in a bore, make "
                        + "every move the other way. Ease jaw 3, tighten jaw 1 until the needle over "
                        + "it has dropped 0.016. Ease jaw 4, tighten jaw 2 until the needle over it "
                        + "has dropped 0.008. Check that all jaws are tight. Sweep again.",
                told(RunOutAtHand.one(Holding.FOUR_JAW).near(TOWARDS_ONE_AND_TWO)));
    }

    /** At the far one 0.046 towards jaw 1 and 0.040 towards jaw 2: 0.030 and 0.040 more, which is 0.050 at 53°. */
    @Test
    void twoSectionsTheJawsNearAndAMalletFarOut() {
        assertEquals(
                "Drive off and unable to start. One jaw at a time. If the needle is in a bore, make "
                        + "every move the other way. Near the jaws: Ease jaw 3, tighten jaw 1 until "
                        + "the needle over it has dropped 0.016. Check that all jaws are tight. Far out: Soft "
                        + "mallet on the high side, half-way from jaw 1 to jaw 2, until the needle over it has "
                        + "dropped 0.050. Back to near the jaws: sweep both again.",
                told(RunOutAtHand.twoByFour(Holding.FOUR_JAW)
                        .near(TOWARDS_ONE)
                        .far("0.046", "0.040", "-0.046", "-0.040")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        THREE_JAW   | Drive off and unable to start. If the needle is in a bore, make every move the other way. With the work supported: open, wipe jaws and work, clamp again. Still over: clamp it a third of a turn round, and read by angle again. If that shows the same: shim jaw 1 by 0.024. Or bore the soft jaws. Sweep again.
        POWER_CHUCK | Drive off and unable to start. If the needle is in a bore, make every move the other way. With the work supported: open, wipe jaws and work, clamp again. Still over: clamp it a third of a turn round, and read by angle again. Still over: bore the soft jaws, clamped as hard as on the work. Last resort, if it still shows the same: shim jaw 1 by 0.024. Sweep again.
        COLLET      | Drive off and unable to start. Take out work and collet, wipe both and the seat, clamp again. Still over: turn the work half round in the collet. Still over: take another collet, of the size of the work. Sweep again.
        CENTRES     | Drive off and unable to start. With the work supported: wipe centres and centre holes. Still over: turn the work half round against the driver, and read by angle again. High side goes with the work: dress its centre holes. It stays with the spindle: true the centre. Sweep again.
        FACE_PLATE  | Drive off and unable to start. If the needle is in a bore, make every move the other way. Ease the clamps a little, one at a time, the work supported so that it cannot slip. Soft mallet on the high side, at the mark, until the needle over it has dropped 0.016. Tighten the clamps. Sweep again.
        STEADY      | Drive off and unable to start. If the needle is in a bore, make every move the other way. Ease the pads a little, one at a time, the work supported. Soft mallet on the high side, at the mark, until the needle over it has dropped 0.016. Bring the pads up until they just touch: the needle must not move. Sweep again.
        UNSAID      | Drive off and unable to start. If the needle is in a bore, make every move the other way. Move the work away from its high side, at the mark, until the needle over it has dropped 0.016. Sweep again.
        """)
    void whatElseHoldsTheWorkHasItsOwnWay(Holding holding, String advice) {
        assertEquals(advice, told(RunOutAtHand.one(holding).near(TOWARDS_ONE)));
    }

    @Test
    void aLeaningFaceIsPacked() {
        assertEquals(
                "Drive off and unable to start. If the needle is in a bore, make every move the "
                        + "other way. Far out: With the work supported: take it off, wipe face plate and work. "
                        + "It is tilted by 0.022 from one section to the other: pack its face on the side it "
                        + "leans to, at the mark. Back to near the jaws: sweep both again.",
                told(RunOutAtHand.twoByFour(Holding.FACE_PLATE)
                        .near(TOWARDS_ONE)
                        .far("0.054", "0.016", "-0.022", "0.016")));
    }

    /** Of what the drawing asks nobody makes the needle look right by moving the part. */
    @Test
    void forADrawingTheDatumIsAskedForFirst() {
        assertEquals(
                "Sweep the datum first. If it runs true, it is the part: get a disposition. If not: "
                        + "Drive off and unable to start. One jaw at a time. If the needle is in a bore, make "
                        + "every move the other way. Ease jaw 3, tighten jaw 1 until the needle over "
                        + "it has dropped 0.016. Check that all jaws are tight. Sweep again.",
                told(RunOutAtHand.ofTheDrawing(Holding.FOUR_JAW).near(TOWARDS_ONE)));
    }

    @ParameterizedTest
    @EnumSource(Holding.class)
    void nothingIsToldWhereItPassed(Holding holding) {
        assertEquals("", told(RunOutAtHand.one(holding).near(INSIDE).nearSwept("0.012", "0.000")));
        assertEquals(
                "",
                told(RunOutAtHand.twoByFour(holding)
                        .near(INSIDE)
                        .nearSwept("0.012", "0")
                        .far(INSIDE)
                        .farSwept("0.012", "0")));
    }

    /** An oval of ± 0.0105. */
    @ParameterizedTest
    @EnumSource(Holding.class)
    void formIsSaidToBeFormAndNotMoved(Holding holding) {
        assertEquals(
                "Do not move it: 0.0210 mm of it is out-of-round, over the limit wherever the work "
                        + "sits. Look for a burr or a chip under the needle. Gripping a thin wall too hard does this.",
                told(RunOutAtHand.one(holding).near("0.0260", "-0.0105", "-0.0050", "-0.0105")));
    }

    /** An oval of ± 0.006 on 0.016 off centre; a sweep of 0.046, of which 2 · 0.016 is off centre, shows more of it. */
    @Test
    void howMuchStaysIsSaid() {
        assertEquals(
                List.of(
                        "Off centre by 0.016 mm, high at jaw 1.",
                        "Out of round 0.012 mm: truing up does not " + "remove it.",
                        THREE_LOBES),
                new Remarks(WORDS)
                        .of(RunOutAtHand.one(Holding.FOUR_JAW)
                                .near("0.022", "-0.006", "-0.010", "-0.006")
                                .finding()));
        assertEquals(
                List.of(
                        "Off centre by 0.016 mm, high at jaw 1.",
                        "Out of round 0.014 mm: truing up does not " + "remove it.",
                        THREE_LOBES),
                new Remarks(WORDS)
                        .of(RunOutAtHand.one(Holding.FOUR_JAW)
                                .near("0.022", "-0.006", "-0.010", "-0.006")
                                .nearSwept("0.036", "-0.010")
                                .finding()));
    }

    @Test
    void aSweepThatPointsContradictIsReadAgain() {
        assertEquals(
                "Points and full turn contradict each other: no point can read beyond "
                        + "the highest and lowest of the turn. Read both again.",
                told(RunOutAtHand.one(Holding.FOUR_JAW).near(TOWARDS_ONE).nearSwept("0.021", "0.000")));
    }

    /**
     * 0.009 between points and a turn read to 0.01 is no contradiction; nor do zeros left away make the points coarse.
     */
    @Test
    void aTurnReadOnACoarseIndicatorDoesNotContradictFinePoints() {
        assertEquals(
                "Drive off and unable to start. One jaw at a time. If the needle is in a bore, make "
                        + "every move the other way. Ease jaw 3, tighten jaw 1 until the needle over "
                        + "it has dropped 0.0145. Check that all jaws are tight. Sweep again.",
                told(RunOutAtHand.one(Holding.FOUR_JAW)
                        .near("0.029", "0.0145", "0", "0.0145")
                        .nearSwept("0.02", "0")));
    }

    @Test
    void nothingWorthMovingIsSaid() {
        assertEquals(
                "It is not off centre enough to move; 0.020 mm is out-of-round. Sweep again, with a "
                        + "finer indicator if there is one.",
                told(RunOutAtHand.one(Holding.FOUR_JAW).near("0.011", "-0.009", "0.009", "-0.011")));
    }

    /** Without a circle nobody knows which way: no jaw is named. */
    @Test
    void withoutACircleTheAnglesAreAskedFor() {
        assertEquals(
                "Next: read by angle. That shows which way to move it.",
                told(RunOutAtHand.one(Holding.FOUR_JAW).nearSwept("0.030", "0.000")));
        assertEquals(
                "Next: read the other places. They show which way to move it.",
                told(RunOutAtHand.one(Holding.FOUR_JAW).near("0.030", "0.000")));
        assertEquals(
                "Next: sweep a full turn, near the jaws.",
                told(RunOutAtHand.twoByFour(Holding.FOUR_JAW).near(INSIDE).farSwept("0.030", "0.000")));
        assertEquals(
                "Next: sweep a full turn, far out.",
                told(RunOutAtHand.twoByFour(Holding.FOUR_JAW)
                        .nearSwept("0.030", "0.000")
                        .far(TOWARDS_ONE)));
    }

    /** A thread that is cut and then moved until the collar runs true is no truer to the bore. */
    @Test
    void ofTheDrawingItIsThePartBeforeAnythingIsMoved() {
        assertEquals(
                "Sweep the datum first. If it runs true, it is the part: get a disposition. If not: "
                        + "Next: read by angle. That shows which way to move it.",
                told(RunOutAtHand.ofTheDrawing(Holding.UNSAID).nearSwept("0.024", "0.000")));
    }

    /** A jaw that is moved now leaves the near section read before the move and the far one after it. */
    @ParameterizedTest
    @EnumSource(Holding.class)
    void nothingIsMovedBeforeTheFarSectionIsReadToo(Holding holding) {
        assertEquals(
                "Next: read by angle, far out. That shows which way to move it.",
                told(RunOutAtHand.twoByFour(holding).near(TOWARDS_ONE)));
        assertEquals(
                "Next: read the other places, far out. They show which way to move it.",
                told(RunOutAtHand.twoByFour(holding).near(TOWARDS_ONE).far("0.046", "0.040", "-0.046")));
    }

    @Test
    void aTurnThatWasBegunIsSweptAtEverySectionFirst() {
        assertEquals(
                "Next: sweep a full turn, far out.",
                told(RunOutAtHand.twoByFour(Holding.FOUR_JAW).nearSwept("0.030", "0.000")));
        assertEquals(
                "Next: sweep a full turn, far out.",
                told(RunOutAtHand.twoByFour(Holding.FOUR_JAW)
                        .near(TOWARDS_ONE)
                        .far(TOWARDS_ONE)
                        .nearSwept("0.032", "0.000")));
    }

    @Test
    void noJawIsNamedOfWhatHasNone() {
        Stream.of(Holding.values())
                .filter(holding -> holding.jaws() == 0)
                .forEach(holding -> assertFalse(
                        told(RunOutAtHand.one(holding).near(TOWARDS_ONE)).contains("jaw"), holding::key));
    }

    /**
     * e at the near one (0.016, 0), at the far one (0.046, 0.040): 2 √(0.046² + 0.040²) = 0.1219; the lean is 3-4-5.
     */
    @Test
    void theAxisIsToldFromBothSections() {
        assertEquals(
                List.of(
                        "Off centre by 0.016 near the jaws, 0.061 far out.",
                        "Tilted by 0.050 over 130, high half-way from jaw 1 to jaw 2.",
                        "Coaxial error 0.122.",
                        "Out of round 0.000 mm: truing up does not remove it.",
                        THREE_LOBES),
                new Remarks(WORDS)
                        .of(RunOutAtHand.twoByFour(Holding.FOUR_JAW)
                                .near("0.032", "0.016", "0.000", "0.016")
                                .far("0.046", "0.040", "-0.046", "-0.040")
                                .finding()));
    }

    @Test
    void nothingStaysAfterAMoveWhereNothingIsMoved() {
        assertEquals(
                List.of("Off centre by 0.006 mm, high at jaw 1.", "Out of round 0.002 mm.", THREE_LOBES),
                new Remarks(WORDS)
                        .of(RunOutAtHand.one(Holding.FOUR_JAW)
                                .near("0.013", "0.005", "0.001", "0.005")
                                .nearSwept("0.013", "0.000")
                                .finding()));
    }
}
