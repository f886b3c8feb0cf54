package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;

/** What is said of the last cut before the next. Every figure by hand from the limits and the sizes beside it. */
class LastCutAdviceTest extends WorkBeingCut {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        # register | before | after  | what is said: asked 0.156 for 29.854, and then 30.0105 less what is there
        DIAMETER | 29.854 | 29.997 | Asked 0.156, came off 0.143. Change the X offset by +0.013 mm on diameter.
        RADIUS   | 29.854 | 29.994 | Asked 0.078, came off 0.070. Change the X offset by +0.008 mm on radius.
        DIAMETER | 29.854 | 29.854 | Asked 0.156, came off 0.000. Find out why before the next cut. If that change is in the control already, do not change it again: it would come off twice. If it is not: Change the X offset by +0.156 mm on diameter.
        DIAMETER | 29.854 | 29.857 | Asked 0.156, came off 0.003. Find out why before the next cut. If that change is in the control already, do not change it again: it would come off twice. If it is not: Change the X offset by +0.153 mm on diameter.
        RADIUS   | 29.854 | 29.932 | Asked 0.078, came off 0.039. Half of it: if all of it was typed in, the X offset is on diameter. Change the X offset by +0.039 mm on radius.
        """)
    void fromTheSecondCutOnItIsSaidWhatCameOffAndWhatIsTakenForGranted(
            Register register, String before, String after, String said) {
        counts(register);
        read(before);
        events.add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT));
        read(after);
        assertEquals(said + HOLDS, advice(BORE, 1));
    }

    /** From 29.950, 0.071 at most. */
    @Test
    void whereNothingCameOffOfTheMostThatMightThatIsAskedAboutBeforeItIsToldAgain() {
        counts(Register.DIAMETER);
        read("29.800 29.950");
        events.add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT));
        read("29.800 29.950");
        assertEquals(
                "Asked at most 0.071, came off 0.000. Find out why before the next cut. Uneven by 0.150 mm: no even "
                        + "cut brings every place in."
                        + " If that change is in the control already, do not change it again: it would come off "
                        + "twice. If it is not:"
                        + " All along, change the X offset by +0.071 mm on diameter at most: more scraps a place.",
                advice(BORE, 2));
    }

    /**
     * Asked on diameter from 29.990 to a third into the limits, 30.100: 0.110. What is typed into a register of radii
     * takes off 0.220.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        DIAMETER | 29.990 | 30.210 | Asked 0.110, came off 0.220. Twice as much: if no more was typed in, the X offset is on radius. Correct the machine setting before the next cut.
        DIAMETER | 29.990 | 30.188 | Asked 0.110, came off 0.198. Twice as much: if no more was typed in, the X offset is on radius. Correct the machine setting before the next cut.
        DIAMETER | 29.990 | 30.187 | ''
        DIAMETER | 29.990 | 30.100 | ''
        RADIUS   | 29.990 | 30.210 | ''
        """)
    void whereTwiceAsMuchCameOffTheRegisterCountsRadiiAndThatIsSaidOfWorkInSizeToo(
            Register register, String before, String after, String said) {
        events.add(new ShopEvent.MachineKnown("Lathe 4", register, Aim.ByLimits.THIRD));
        read(before);
        events.add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT));
        read(after);
        assertEquals(said, advice("BORE 30.0 30.3 0", 1));
    }

    /** 29.854 and 0.156 would be 30.010; it took 0.312. Of 0.040 nothing is told: from 29.970 to 30.010. */
    @ParameterizedTest
    @CsvSource({"29.854, 30.166, true", "29.970, 30.050, false"})
    void whereTwiceAsMuchScrappedTheWorkThatIsSaidBesideWhoSigns(String before, String after, boolean said) {
        counts(Register.DIAMETER);
        read(before);
        events.add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT));
        read(after);
        assertTrue(advice(BORE, 1).startsWith(WORDS.say("next.fail.drawing")));
        assertEquals(said, advice(BORE, 1).contains("Twice as much"));
    }

    /** Half of the 0.021 is 0.0105: 0.011 less than before the cut is a wrong reading, 0.010 can still be the gauge. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        BORE 30.000 30.021 0     | 29.960 | 29.949 | 0.011
        BORE 30.000 30.021 0.003 | 30.002 | 29.949 | 0.053
        DIAMETER 47.980 48.000 0 | 48.027 | 48.110 | 0.083
        """)
    void afterACutThatLeftMoreMetalNoAmountIsTold(String size, String before, String after, String more) {
        counts(Register.DIAMETER);
        read(before);
        events.add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT));
        read(after);
        assertEquals(
                "By the readings the cut left " + more
                        + " mm more metal than there was: one of them is wrong. Read again before any cut;"
                        + " if it stays so, strike out the readings from before the cut.",
                advice(size, 1));
    }

    @Test
    void aLittleMoreMetalIsTheGaugeAndIsTold() {
        counts(Register.DIAMETER);
        read("29.990");
        events.add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT));
        read("29.980");
        assertEquals(
                "Asked 0.020, came off −0.010. Find out why before the next cut. If that change is in the control"
                        + " already, do not change it again: it would come off twice. If it is not: Change the X offset"
                        + " by +0.030 mm on diameter." + HOLDS,
                advice(BORE, 1));
    }

    /** Three places took off 0.143, 0.143 and 0.144: 0.14333 in the mean, in the places that were read. */
    @Test
    void aMeanIsToldInThePlacesThatWereRead() {
        counts(Register.DIAMETER);
        read("29.854 29.854 29.854");
        events.add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT));
        read("29.997 29.997 29.998");
        assertEquals(
                "Asked 0.156, came off 0.143. Change the X offset by +0.013 mm on diameter." + HOLDS, advice(BORE, 3));
    }

    @Test
    void ofSeveralCutsTheLastIsTold() {
        counts(Register.DIAMETER);
        read("29.700");
        events.add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT));
        read("29.900");
        events.add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT));
        read("29.990");
        assertEquals(
                "Asked 0.110, came off 0.090. Change the X offset by +0.020 mm on diameter." + HOLDS, advice(BORE, 1));
    }
}
