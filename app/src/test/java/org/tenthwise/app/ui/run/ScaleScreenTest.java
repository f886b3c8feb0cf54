package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.text.Advice;
import org.tenthwise.app.text.Remarks;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.verdict.VerdictKind;

/** A slot, a roughness by the 16 % rule and a hardness, invented. */
class ScaleScreenTest extends RunAtHand {

    static final String SLOT_ROUGHNESS_HARDNESS =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "width"
            name = "Slot 30"
            method = "One place."
            lower = 29.9
            upper = 30.1
            places = ["middle"]
            gauge_kind = "caliper"
            gauge = "CA-1"

            [[step]]
            number = 2
            operation = 10
            kind = "scale"
            name = "Ra 1.6 in the bore"
            drawing = "Ra 1.6"
            method = "Across the lay, cut-off 0.8 mm, evaluation length 4 mm."
            unit = "µm"
            upper = 1.6
            rule = "16-percent"
            places = ["where it looks worst"]
            gauge_kind = "roughness-tester"
            gauge = "RT-1"

            [[step]]
            number = 3
            operation = 10
            kind = "scale"
            name = "Hardness"
            drawing = "38 to 44 HRC"
            method = "On the ground flat, three readings."
            unit = "HRC"
            lower = 38
            upper = 44
            readings_each = 3
            combine = "mean"
            places = ["flat"]
            gauge_kind = "hardness-tester"
            gauge = "HT-1"
            """;

    @BeforeEach
    void withTheSlotRead() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(SLOT_ROUGHNESS_HARDNESS));
        run.enter("30.02");
    }

    private Finding finding() {
        return run.session.state().line().finding();
    }

    private String distance() {
        return new Sentences(words).distance(finding());
    }

    /** What a caliper sends must not be taken for a roughness. */
    @Test
    void aFigureTypedBehindALengthDoesNotBeginAScale() {
        assertFalse(run.session.state().figureBeginsNext());
    }

    @Test
    void itSaysHowManyValuesAreStillToGoAndAsksForNoMore() throws Exception {
        run.session.goTo(2);
        assertEquals("One more to go.", distance());
        run.enter("1.52");
        assertEquals("2 more to go.", distance());
        run.enter("1.71");
        assertEquals("4 more to go.", distance());
        run.enter("1.38", "1.41", "1.50", "1.47");
        assertEquals(VerdictKind.PASS, finding().verdict().standing());
        assertTrue(run.session.state().asked().isNothing());
        assertEquals("0.08 µm inside the upper limit.", distance());
        assertTrue(
                new Remarks(words).of(finding()).contains("16 % rule: 1 of 6 over the limit, about one in six may be."),
                () -> new Remarks(words).of(finding()).toString());
        assertTrue(
                new Remarks(words).of(finding()).contains("Highest 1.71 µm; 1.52 µm decides."),
                () -> new Remarks(words).of(finding()).toString());
    }

    @Test
    void theFirstValueMayBeEnough() throws Exception {
        run.session.goTo(2);
        run.enter("1.12");
        assertEquals(VerdictKind.PASS, finding().verdict().standing());
        assertTrue(run.session.state().asked().isNothing());
        assertTrue(new Remarks(words)
                .of(finding())
                .contains("16 % rule: the first value is no more than 70 % of the limit."));
    }

    @Test
    void beforeItsFirstReadingItHoldsEverywhere() throws Exception {
        run.session.goTo(2);
        assertEquals(
                "at most 1.6 µm",
                new Sentences(words).limits(run.session.state().inHand()));
        seen("run", "run-scale-open", this::screen);
    }

    @Test
    void whereMoreValuesAreWantedItHoldsEverywhere() throws Exception {
        run.session.goTo(2);
        run.enter("1.52", "1.71");
        seen("run", "run-scale-more", this::screen);
    }

    @Test
    void whereItPassesItHoldsEverywhere() throws Exception {
        run.session.goTo(2);
        run.enter("1.52", "1.71", "1.38", "1.41", "1.50", "1.47");
        seen("run", "run-scale-pass", this::screen);
    }

    @Test
    void whereItFailsItHoldsEverywhereAndNoCutIsNamed() throws Exception {
        run.session.goTo(3);
        run.enter("36.5", "37.0", "36.8");
        assertEquals(VerdictKind.FAIL, finding().verdict().standing());
        assertEquals(Optional.empty(), finding().proposal());
        assertEquals(
                "Measure again. If it stays out, it needs a disposition.",
                new Advice(words).next(run.session.state().line()));
        seen("run", "run-scale-fail", this::screen);
    }

    /** 63 µin is about 1.6 µm: typed so it is asked about. */
    @Test
    void aFigureOfAnotherScaleIsAskedAbout() throws Exception {
        run.session.goTo(2);
        run.enter("63");
        assertEquals(List.of(), finding().measured());
    }
}
