package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Clamping;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.SizeModifier;
import org.tenthwise.model.plan.StepBuilder;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;

/** What is said of the next cut. Every figure by hand from the limits and the sizes beside it. */
class CutAdviceTest extends WorkBeingCut {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        # feature, lower, upper, guard band, least cut | register | sizes          | what is said
        BORE 30.000 30.021 0         | DIAMETER | 29.900 29.910 | Change the X offset by +0.105 mm on diameter.
        BORE 30.000 30.021 0         | RADIUS   | 29.900 29.910 | Change the X offset by +0.052 mm on radius.
        BORE 30.000 30.021 0         |          | 29.900 29.910 | 0.105 mm still to come off the diameter.
        DIAMETER 47.980 48.000 0     | DIAMETER | 48.032 48.032 | Change the X offset by −0.042 mm on diameter.
        WIDTH 12.000 12.043 0        | DIAMETER | 11.980 11.982 | 0.040 mm still to come off the width.
        DEPTH 46.00 46.10 0          | RADIUS   | 45.90 45.90   | Go 0.15 mm deeper.
        SLOT 12.000 12.043 0         | DIAMETER | 11.980 11.982 | 0.040 mm still to come off the width.
        THICKNESS 7.98 8.00 0        | DIAMETER | 8.04 8.04     | 0.05 mm still to come off in all.
        FLATS 16.95 17.00 0          |          | 17.105 17.105 | 0.130 mm still to come off in all.
        HOLE 6.000 6.012 0           | DIAMETER | 5.996 5.996   | 0.010 mm still to come off the diameter.
        SPIGOT 47.980 48.000 0       | DIAMETER | 48.032 48.032 | Change the X offset by −0.042 mm on diameter.
        COUNTERBORE 30.000 30.021 0  | RADIUS   | 29.900 29.910 | Change the X offset by +0.052 mm on radius.
        # a thickness of 8.04 has passed nothing; one of 7.97 is gone
        THICKNESS 7.98 8.00 0        | DIAMETER | 8.04 7.97     | Stop cutting here and measure again. If it stays out, it needs a disposition.
        # uneven: the mouth needs 0.146, the floor has 0.031; as a register of radii counts it 0.030 is 0.015
        BORE 30.000 30.021 0         |          | 29.854 29.990 | Uneven by 0.136 mm: no even cut brings every place in. Find out why before any cut. All along, at most 0.031 mm may come off: more scraps a place.
        BORE 30.000 30.021 0         | DIAMETER | 29.854 29.990 | Uneven by 0.136 mm: no even cut brings every place in. Find out why before any cut. All along, change the X offset by +0.031 mm on diameter at most: more scraps a place.
        BORE 30.000 30.021 0         | RADIUS   | 29.854 29.990 | Uneven by 0.136 mm: no even cut brings every place in. Find out why before any cut. All along, change the X offset by +0.015 mm on radius at most: more scraps a place.
        DIAMETER 47.980 48.000 0.003 | DIAMETER | 48.004 47.986 | Uneven by 0.018 mm: no even cut brings every place in. Find out why before any cut. All along, change the X offset by −0.003 mm on diameter at most: more scraps a place.
        BORE 30.000 30.021 0         | DIAMETER | 29.900 30.021 | Uneven by 0.121 mm: no even cut brings every place in. Nothing more may come off: it needs a disposition.
        # the floor has 0.031, 0.0155 deep: less than 0.030, and no number
        BORE 30.000 30.021 0 0.030   | DIAMETER | 29.854 29.990 | Uneven by 0.136 mm: no even cut brings every place in. All along, less may come off than this tool or a spring pass takes: find out why it is uneven, or get a disposition.
        DEPTH 46.00 46.10 0 0.05     | DIAMETER | 45.90 46.05   | Uneven by 0.15 mm: no even cut brings every place in. Find out why before any cut. All along, at most 0.05 mm may come off: more scraps a place.
        # 0.0115 on diameter is 0.006 deep; a spring pass takes less than 0.020, and there is 0.022, or only 0.017 with a guard band
        BORE 30.000 30.021 0 0.010   | DIAMETER | 29.999 29.999 | Too little for this tool to cut: take a spring pass at the same offset, hone it where the shop allows that, put in a sharper insert and touch it off first, or leave it as it is and get a disposition.
        DIAMETER 47.980 48.000 0 0.005 | DIAMETER | 48.001 47.992 | Too little for this tool to cut: take a spring pass at the same offset, put in a sharper insert and touch it off first, or leave it as it is and get a disposition.
        # within the guard band where metal is left: 30.0105 less 30.001
        BORE 30.000 30.021 0.003     | DIAMETER | 30.001 30.001 | Too near the limit to be proven; metal is left for a light cut. Change the X offset by +0.009 mm on diameter. Or measure again with a better gauge, or get a disposition.
        BORE 30.000 30.021 0.003     | DIAMETER | 30.020 30.020 | Too near the limit to be proven. Measure again with a better gauge, or get a disposition.
        BORE 30.000 30.021 0.003 0.1 | DIAMETER | 30.001 30.001 | Too near the limit to be proven. Too little for this tool to cut, or for a spring pass: hone it where the shop allows that, put in a sharper insert and touch it off first, or leave it as it is and get a disposition. Or measure again with a better gauge.
        # within the guard band at both ends of the zone: 30.003 to 30.018 is all that a cut may use, less than 0.016
        BORE 30.000 30.021 0.003     | DIAMETER | 30.001 30.017 | Too near the limit to be proven. Uneven by 0.016 mm: no even cut brings every place in. Find out why before any cut. All along, change the X offset by +0.001 mm on diameter at most: more scraps a place. Or measure again with a better gauge, or get a disposition.
        BORE 30.000 30.021 0         | DIAMETER | 29.900 30.022 | Stop cutting here and measure again. If it stays out, it needs a disposition.
        """)
    void oneFigureAsTheRegisterCountsItOrWhyThereIsNone(String size, Register register, String sizes, String said) {
        counts(register);
        read(sizes);
        assertEquals(said, advice(size, 2));
    }

    /**
     * A fourth place of 61.93 beside three of 62.02 is likelier misread than cut so: 0.09 is more than half of 0.10,
     * 0.05 is not. Read again and still so, it is the shoulder.
     */
    @Test
    void beforeAnEvenCutOverPlacesFarApartTheyAreReadAgain() {
        String shoulder = "DEPTH 61.95 62.05 0";
        read("62.02 62.01 62.02 61.93");
        assertEquals("Uneven by 0.09 mm: read again before the cut. Go 0.025 mm deeper.", advice(shoulder, 4));
        events.add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.MEASURED_AGAIN));
        read("62.02 62.01 62.02 61.93");
        assertEquals("Go 0.025 mm deeper.", advice(shoulder, 4));
        events.add(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT));
        read("61.98 61.97 61.98 61.93");
        assertTrue(advice(shoulder, 4).contains("Go 0.045 mm deeper."), advice(shoulder, 4));
        assertFalse(advice(shoulder, 4).contains("Uneven"));
    }

    /** Their mean, 29.990, needs 0.013 to 0.016; steps of 0.003 in radii are 0.006, 0.012, 0.018 on diameter. */
    @Test
    void whereTheDrawingMakesOneSizeItIsNotCalledUneven() {
        counts(Register.RADIUS);
        read("29.980 30.000");
        SizeCheck each = check("BORE 30.003 30.006 0", 2);
        SizeCheck mean = new SizeCheck(
                each.feature(),
                each.limits(),
                each.places(),
                1,
                Combine.MEAN,
                true,
                each.guardBand(),
                each.with(),
                new Cutting(Optional.empty(), Optional.empty(), Optional.of(mm("0.003"))),
                Optional.of(SizeModifier.SA),
                Contact.SQUARE);
        assertEquals(
                "No step of the X offset ends inside the limits. All along, change the X offset by +0.006 mm on radius"
                        + " at most: more scraps a place.",
                new Advice(WORDS).next(line(mean, Optional.empty())));
    }

    /**
     * √(32.3² − 3.5²) is 32.109812: 0.109 may come off before 32.0, and 0.11 would be past it. A third in from 30.2
     * less 29.8 is 0.266.
     */
    @Test
    void noAmountIsRoundedUpToFewerPlacesThanItHas() {
        read("32.6 32.3");
        events.add(new StepEvent.Answered(1, Question.GROOVES_TOUCHED, Answer.OPPOSITE_GROOVES));
        SizeCheck each = check("DIAMETER 32.0 32.2 0", 2);
        SizeCheck root = new SizeCheck(
                each.feature(),
                each.limits(),
                each.places(),
                1,
                Combine.EACH,
                true,
                each.guardBand(),
                each.with(),
                Cutting.UNSAID,
                Optional.empty(),
                new Contact.InGrooves(mm("7").length(), 1));
        assertTrue(new Advice(WORDS)
                .next(line(root, Optional.empty()))
                .endsWith("All along, at most 0.109 mm may come off: more scraps a place."));
        events.clear();
        events.add(new ShopEvent.MachineKnown("Lathe 4", Register.DIAMETER, Aim.ByLimits.THIRD));
        read("29.8");
        assertEquals("Change the X offset by +0.266 mm on diameter.", advice("BORE 30.0 30.2 0", 1));
    }

    /** A figure that ends on the only limit is none to give; a size that the plan names is aimed at. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        # feature | least | most | aim | read | what is said
        DEPTH    | 12.0 |      |      | 11.9 | Go deeper than the least by more than the reading can be out: the plan names no aim.
        DEPTH    | 12.0 |      | 12.3 | 11.9 | Go 0.4 mm deeper.
        BORE     | 30.0 |      |      | 29.9 | Go past the limit, not to it, by more than the reading can be out: the plan names no aim.
        DIAMETER |      | 30.0 |      | 30.2 | Go past the limit, not to it, by more than the reading can be out: the plan names no aim.
        DIAMETER |      | 30.0 | 29.8 | 30.2 | Change the X offset by −0.4 mm on diameter.
        DEPTH    |      | 12.0 |      | 12.1 | Stop cutting here and measure again. If it stays out, it needs a disposition.
        """)
    void ofOneLimitAnAimIsTakenFromThePlanAlone(
            String feature, String least, String most, String aim, String read, String said) {
        counts(Register.DIAMETER);
        read(read);
        SizeCheck each = check(feature + " 1 2 0", 1);
        SizeCheck check = new SizeCheck(
                each.feature(),
                new Limits(
                        Optional.ofNullable(least).map(WorkBeingCut::mm),
                        Optional.ofNullable(most).map(WorkBeingCut::mm)),
                each.places(),
                1,
                Combine.EACH,
                true,
                each.guardBand(),
                each.with(),
                new Cutting(
                        Optional.ofNullable(aim).map(size -> new Aim.Size(mm(size))),
                        Optional.empty(),
                        Optional.empty()),
                Optional.empty(),
                Contact.SQUARE);
        assertEquals(said, new Advice(WORDS).next(line(check, Optional.empty())));
    }

    /** The root of a thread, 17.2 at the most: the tool takes the flanks down with it, and nobody has read them. */
    @Test
    void pastTheOnlyLimitOfARootTheFlanksAreMinded() {
        read("17.4");
        SizeCheck each = check("DIAMETER 17.1 17.2 0", 1);
        SizeCheck root = new SizeCheck(
                each.feature(),
                Limits.atMost(mm("17.2")),
                each.places(),
                1,
                Combine.EACH,
                true,
                each.guardBand(),
                each.with());
        OverWiresCheck wires = new OverWiresCheck(
                new ScrewThread(ThreadForm.METRIC, mm("20").length(), mm("2.5").length(), 1),
                Limits.between(mm("18.2"), mm("18.3")),
                Optional.empty(),
                Optional.of(1),
                each.places(),
                1,
                Combine.EACH,
                true,
                each.guardBand(),
                new Check.Means(GaugeKind.MICROMETER_OVER_WIRES, Optional.empty(), Optional.empty()));
        assertEquals(
                "Go past the limit, not to it, by more than the reading can be out: the plan names no aim."
                        + " The pitch diameter comes down with it, and it is not known yet: cut in steps, and"
                        + " measure check 2 between them.",
                new Advice(WORDS)
                        .next(line(root, Optional.empty(), new StepBuilder(2, 10, "Over wires", wires).build())));
    }

    @Test
    void noAmountWhilePlacesAreUnread() {
        counts(Register.DIAMETER);
        read("29.854");
        assertEquals("3 places are still to be read before a cut is worked out.", advice(BORE, 4));
        read("29.854 29.855 29.854");
        assertEquals("One place is still to be read before a cut is worked out.", advice(BORE, 4));
    }

    /** 30.0105 less 29.854, and the two places that nobody read by their names. */
    @Test
    void onReadingsThatSomeoneSignedForThePlacesUnreadAreNamed() {
        counts(Register.DIAMETER);
        read("29.854");
        events.add(new StepEvent.CutOnThese(1, "cannot be reached before the shoulder is cut"));
        assertEquals(
                "Change the X offset by +0.156 mm on diameter. Not read, and signed for: place 2, place 3.",
                advice(BORE, 3));
    }

    /**
     * A size made of all places stays open without them, and so does one near its limit: what was signed for is said
     * all the same.
     */
    @Test
    void onReadingsThatSomeoneSignedForTheCutIsSaidWhereTheVerdictIsOpenToo() {
        counts(Register.DIAMETER);
        read("30.001");
        events.add(new StepEvent.CutOnThese(1, "cannot be reached before the shoulder is cut"));
        assertEquals(
                "Change the X offset by +0.009 mm on diameter. Not read, and signed for: place 2.",
                advice("BORE 30.000 30.021 0.003", 2));
    }

    /** Light or not: work that was let go to be read stands in the chuck anew. */
    @Test
    void aLightCutOfWorkReadReleasedIsTruedUpBeforeIt() {
        counts(Register.DIAMETER);
        read("30.001");
        String said = "It was read unclamped: clamp it and true it up before any cut.";
        assertEquals(
                said,
                new Remarks(WORDS)
                        .of(line("BORE 30.000 30.021 0.003", 1, Optional.of(Clamping.RELEASED))
                                .finding())
                        .get(0));
        assertEquals(
                "Guard band 0.003 mm inside each limit.",
                new Remarks(WORDS)
                        .of(line("BORE 30.000 30.021 0.003", 1, Optional.of(Clamping.CLAMPED))
                                .finding())
                        .get(0));
    }
}
