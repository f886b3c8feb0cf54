package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.size;
import static org.tenthwise.model.record.Bench.with;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.plan.PlugFeel;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * A plug was tried in the bore as it was, a wire lay on the root as it was: neither says anything of the one cut since.
 */
class RestsOnTest {

    private static final int BORE = 1;
    private static final int PLUG = 2;

    private final Bench bench = new Bench();

    @BeforeEach
    void aPlugThatFits() {
        bench.step(size(Feature.BORE, "20.000", "20.030", Combine.EACH, 1))
                .step(new PlugFitCheck(
                        BORE,
                        Limits.between(mm("0.000"), mm("0.030")),
                        places(1),
                        PlugFeel.WITH_DRAG,
                        with(GaugeKind.MICROMETER)))
                .read(BORE, "20.002")
                .read(PLUG, "19.998")
                .did(new StepEvent.Answered(PLUG, Question.PLUG_FEELS, Answer.WITH_DRAG));
        assertEquals(VerdictKind.PASS, standing());
    }

    @Test
    void aBoreCutAgainAsksForThePlugAnew() {
        bench.did(new StepEvent.PassBegun(BORE, Why.CUT));
        assertAskedAnew();
        bench.read(BORE, "20.028");
        assertAskedAnew();
        assertEquals(2, line().passes().size(), "one cut and its reading begin one pass");

        bench.read(PLUG, "19.998").did(new StepEvent.Answered(PLUG, Question.PLUG_FEELS, Answer.FREELY));
        assertEquals(VerdictKind.FAIL, standing());
    }

    @Test
    void whatWasFoundBeforeStaysInTheRecordAsItWasFound() {
        bench.did(new StepEvent.PassBegun(BORE, Why.CUT)).read(BORE, "20.028");
        PlugFitFinding before = (PlugFitFinding) line().earlier().get(0);
        assertEquals(length("0.004"), before.clearance().orElseThrow().least());
        assertEquals(VerdictKind.PASS, before.verdict().standing());

        Pass.Ended ended = line().passes().get(0).ended().orElseThrow();
        assertEquals(Why.RESTED_ON_CHANGED, ended.why());
        assertEquals(BORE, ended.step());
        assertEquals(Optional.of(Why.RESTED_ON_CHANGED), line().pass().why());
    }

    @Test
    void aBoreReadingStruckOutOrTakenAgainAsksForThePlugAnew() {
        bench.did(new Event.StruckOut(2, "chip under the gauge"));
        assertAskedAnew();
        bench.read(BORE, "20.028");
        assertAskedAnew();
    }

    @Test
    void aSettingOfTheBoreGaugeThatIsStruckOutAsksForThePlugAnew() {
        Setting direct = Setting.direct(new Gauge("M-1", GaugeKind.MICROMETER, Optional.empty()));
        Bench set = new Bench()
                .step(size(Feature.BORE, "20.000", "20.030", Combine.EACH, 1))
                .step(new PlugFitCheck(
                        BORE, Limits.atMost(mm("0.030")), places(1), PlugFeel.FREELY, with(GaugeKind.MICROMETER)))
                .did(new StepEvent.GaugeSet(BORE, direct))
                .read(BORE, "20.002")
                .read(PLUG, "19.998");
        set.did(new Event.StruckOut(2, "wrong gauge"));
        assertTrue(set.sheet().line(PLUG).pass().isEmpty());
    }

    @Test
    void aPlugFeltBeforeTheBoreWasReadIsFeltAgain() {
        Bench early = new Bench()
                .step(size(Feature.BORE, "20.000", "20.030", Combine.EACH, 1))
                .step(new PlugFitCheck(
                        BORE, Limits.atMost(mm("0.030")), places(1), PlugFeel.FREELY, with(GaugeKind.MICROMETER)))
                .read(PLUG, "19.998")
                .did(new StepEvent.Answered(PLUG, Question.PLUG_FEELS, Answer.FREELY))
                .read(BORE, "20.002");
        assertEquals(VerdictKind.OPEN, early.finding(PLUG).verdict().standing());
        assertTrue(early.sheet().line(PLUG).pass().isEmpty());
        assertEquals(
                VerdictKind.OPEN,
                early.sheet().line(PLUG).earlier().get(0).verdict().standing());
    }

    @Test
    void aGaugeSetANoteADoubtAndAnotherStepLeaveThePlugAlone() {
        bench.step(size(Feature.BORE, "20.000", "20.030", Combine.EACH, 1))
                .read(3, "20.010")
                .did(new StepEvent.NoteMade(BORE, "looks well"))
                .did(new StepEvent.DoubtFlagged(BORE, "a score?"))
                .did(new StepEvent.GaugeSet(
                        BORE, Setting.direct(new Gauge("M-2", GaugeKind.MICROMETER, Optional.empty()))));
        assertEquals(VerdictKind.PASS, standing());
        assertEquals(1, line().passes().size());
    }

    @Test
    void anAnswerOfAnEarlierPassDoesNotCountInTheNext() {
        bench.did(new StepEvent.PassBegun(PLUG, Why.MEASURED_AGAIN)).read(PLUG, "19.998");
        assertEquals(VerdictKind.OPEN, standing());
        assertEquals(Optional.empty(), ((PlugFitFinding) bench.finding(PLUG)).feel());
        assertEquals(
                Optional.of(Answer.WITH_DRAG),
                ((PlugFitFinding) line().earlier().get(0)).feel());
    }

    @Test
    void aThreadWhoseRootIsMeasuredAnewIsMeasuredAnew() {
        ScrewThread thread = new ScrewThread(ThreadForm.TRAPEZOIDAL, length("40"), length("7"), 1);
        Bench threaded = new Bench()
                .step(size(Feature.DIAMETER, "20", "40", Combine.EACH, 1))
                .step(new OverWiresCheck(
                        thread,
                        Limits.between(mm("36.0"), mm("36.5")),
                        Optional.empty(),
                        Optional.of(1),
                        places(1),
                        1,
                        Combine.EACH,
                        true,
                        mm("0"),
                        with(GaugeKind.MICROMETER_OVER_WIRES)))
                .read(1, "31.5")
                .did(new StepEvent.GaugeSet(2, Bench.wires("3.626")))
                .read(2, "41.0");
        assertFalse(threaded.sheet().line(2).pass().isEmpty());
        threaded.did(new StepEvent.PassBegun(1, Why.CUT)).read(1, "31.4");
        assertTrue(threaded.sheet().line(2).pass().isEmpty());
        assertEquals(
                List.of(VerdictKind.OPEN), List.of(threaded.finding(2).verdict().standing()));
    }

    private void assertAskedAnew() {
        assertEquals(VerdictKind.OPEN, standing());
        assertTrue(line().pass().isEmpty());
        assertEquals(2, bench.finding(PLUG).missing(), "size and feel");
    }

    private VerdictKind standing() {
        return bench.finding(PLUG).verdict().standing();
    }

    private Line line() {
        return bench.sheet().line(PLUG);
    }
}
