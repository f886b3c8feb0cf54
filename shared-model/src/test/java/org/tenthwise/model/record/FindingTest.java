package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.size;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.verdict.VerdictKind;

/** Figures by hand from the limits beside them. */
class FindingTest {

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # combine, first,  second, verdict,   value    bore 30.000 to 30.021; too small can be cut again
        EACH,      30.010, 30.012, PASS,      30.012
        EACH,      30.000, 30.012, PASS,      30.000
        EACH,      29.990, 30.012, CUT_AGAIN, 29.990
        EACH,      29.980, 30.022, FAIL,      30.022
        MEAN,      30.010, 30.012, PASS,      30.011
        MEAN,      29.980, 30.010, CUT_AGAIN, 29.995
        MEAN,      29.900, 30.050, FAIL,      29.975
        MEAN,      29.900, 30.021, CUT_AGAIN, 29.9605
        LARGEST,   29.980, 30.010, PASS,      30.010
        SMALLEST,  29.980, 30.010, CUT_AGAIN, 29.980
        SMALLEST,  29.980, 30.022, FAIL,      29.980
        """)
    void twoReadingsBecomeTheSizeThatIsJudged(
            Combine combine, String first, String second, VerdictKind standing, String value) {
        SizeFinding found = (SizeFinding) new Bench()
                .step(size(Feature.BORE, "30.000", "30.021", combine, 2))
                .read(1, first, second)
                .finding(1);
        assertEquals(standing, found.verdict().standing());
        assertEquals(Optional.of(length(value)), found.value());
    }

    @Test
    void aRangeIsLargestLessSmallest() {
        SizeFinding found = (SizeFinding) new Bench()
                .step(size(Feature.WIDTH, "0", "0.010", Combine.RANGE, 3))
                .read(1, "12.010", "12.021", "12.015")
                .finding(1);
        assertEquals(Optional.of(length("0.011")), found.value());
        assertEquals(VerdictKind.FAIL, found.verdict().standing());
    }

    @Test
    void whereEachMustBeInsideOneThatIsOutSettlesIt() {
        Bench bench = new Bench()
                .step(size(Feature.BORE, "30.000", "30.021", Combine.EACH, 4))
                .read(1, "30.022");
        assertEquals(VerdictKind.FAIL, bench.finding(1).verdict().standing());
        assertEquals(3, bench.finding(1).missing());
    }

    @Test
    void otherwiseACheckIsOpenUntilItsLastReading() {
        for (Combine combine : List.of(Combine.MEAN, Combine.LARGEST, Combine.SMALLEST, Combine.EACH)) {
            Bench bench = new Bench()
                    .step(size(Feature.BORE, "30.000", "30.021", combine, 2))
                    .read(1, "30.010");
            assertEquals(VerdictKind.OPEN, bench.finding(1).verdict().standing(), combine.toString());
        }
    }

    @Test
    void yesIsTheGoodAnswerAtBothEndsOfALimitGauge() {
        Check check = new AskedCheck.GoNotGo("goes", "does not", Optional.empty());
        assertEquals(VerdictKind.OPEN, answered(check, Answer.YES).verdict().standing());
        assertEquals(VerdictKind.FAIL, answered(check, Answer.NO).verdict().standing());
        assertEquals(
                VerdictKind.PASS,
                answered(check, Answer.YES, Answer.YES).verdict().standing());
        assertEquals(
                VerdictKind.FAIL,
                answered(check, Answer.YES, Answer.NO).verdict().standing());
    }

    @Test
    void whatAnOlderRunAnsweredOfTheNotGoEndKeepsItsMeaning() {
        assertEquals(VerdictKind.PASS, before(Answer.NO).finding(1).verdict().standing());
        assertEquals(VerdictKind.FAIL, before(Answer.YES).finding(1).verdict().standing());
        assertEquals(
                Answer.YES,
                ((AskedFinding) before(Answer.NO).finding(1)).answers().get(Question.NOT_GO_STAYS_OUT));
        assertEquals(0, before(Answer.NO).finding(1).missing());
    }

    @Test
    void anOlderAnswerOfTheNotGoEndThatWasReplacedOrStruckOutCountsNoMore() {
        assertEquals(
                VerdictKind.FAIL,
                before(Answer.NO)
                        .did(new StepEvent.Answered(1, Question.NOT_GO_STAYS_OUT, Answer.NO))
                        .finding(1)
                        .verdict()
                        .standing());
        assertEquals(
                VerdictKind.PASS,
                before(Answer.YES)
                        .did(new StepEvent.Answered(1, Question.NOT_GO_STAYS_OUT, Answer.YES))
                        .finding(1)
                        .verdict()
                        .standing());
        Bench struck = before(Answer.YES).did(new Event.StruckOut(3, "wrong key"));
        assertEquals(VerdictKind.OPEN, struck.finding(1).verdict().standing());
        assertEquals(
                VerdictKind.PASS,
                struck.did(new StepEvent.Answered(1, Question.NOT_GO_STAYS_OUT, Answer.YES))
                        .finding(1)
                        .verdict()
                        .standing());
    }

    /** A run from before yes was the good answer of the not-go end. */
    private static Bench before(Answer notGoEnters) {
        return new Bench()
                .step(new AskedCheck.GoNotGo("goes", "does not", Optional.empty()))
                .did(new StepEvent.Answered(1, Question.GO_ENTERS, Answer.YES))
                .did(new StepEvent.Answered(1, Question.NOT_GO_ENTERS, notGoEnters));
    }

    private static Finding answered(Check check, Answer... answers) {
        Bench bench = new Bench().step(check);
        for (int i = 0; i < answers.length; i++) {
            bench.did(new StepEvent.Answered(1, check.questions().get(i), answers[i]));
        }
        return bench.finding(1);
    }

    @Test
    void aStruckOutReadingDoesNotCountAndAnEarlierPassIsKept() {
        Bench bench = new Bench()
                .step(size(Feature.DIAMETER, "47.980", "48.000", Combine.EACH, 1))
                .read(1, "48.032");
        bench.did(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT)).read(1, "47.99");
        bench.did(new Event.StruckOut(4, "wrong gauge"));
        Line line = bench.sheet().line(1);
        assertEquals(VerdictKind.OPEN, line.finding().verdict().standing());
        assertEquals(VerdictKind.CUT_AGAIN, line.earlier().get(0).verdict().standing());
        assertEquals(1, line.passes().get(1).readings().size());
    }

    @Test
    void aPassInWhichNothingWasTakenCameToNothingAndCountsTheCutBeforeIt() {
        Event cut = new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT);
        Bench bench = new Bench()
                .step(size(Feature.DIAMETER, "47.980", "48.000", Combine.EACH, 1))
                .read(1, "48.032")
                .did(cut)
                .did(cut)
                .read(1, "48.010")
                .did(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.MEASURED_AGAIN))
                .read(1, "47.99");
        Line line = bench.sheet().line(1);
        assertEquals(
                List.of(
                        Optional.of(line.earlier().get(0)),
                        Optional.empty(),
                        Optional.of(line.earlier().get(1)),
                        Optional.of(line.finding())),
                line.passes().stream().map(line::found).toList());
        assertEquals(
                List.of(0, 1, 2, 2),
                line.passes().stream().map(line::cutsBefore).toList());
    }

    @Test
    void nothingAfterAHoldPointIsOpenBeforeItPassesOrIsCarriedOn() {
        Bench bench = new Bench()
                .step(new AskedCheck.Confirm("a"))
                .step(new AskedCheck.Confirm("b"), 1, 2)
                .step(new AskedCheck.Confirm("c"));
        assertEquals(List.of(1, 2), bench.sheet().line(3).waitingFor());
        bench.did(new StepEvent.Answered(1, Question.CONFIRMED, Answer.YES));
        bench.did(new StepEvent.Answered(2, Question.CONFIRMED, Answer.NO));
        assertEquals(List.of(2), bench.sheet().line(3).waitingFor());
        bench.did(new StepEvent.DispositionSigned(2, Disposition.CARRY_ON, "will do", "Foreman 1"));
        assertFalse(bench.sheet().line(3).held());
        bench.did(new StepEvent.PassBegun(2, StepEvent.PassBegun.Why.MEASURED_AGAIN));
        assertTrue(bench.sheet().line(3).held());
    }
}
