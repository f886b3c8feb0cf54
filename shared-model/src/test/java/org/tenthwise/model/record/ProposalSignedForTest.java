package org.tenthwise.model.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.ProposedCuts.bore;
import static org.tenthwise.model.record.ProposedCuts.cut;
import static org.tenthwise.model.record.ProposedCuts.refused;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.SizeModifier;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.verdict.VerdictKind;

/** A cut on part of the readings, signed for. By hand from 30.000 to 30.021. */
class ProposalSignedForTest {

    private static final StepEvent.CutOnThese SIGNED =
            new StepEvent.CutOnThese(1, "floor is behind a shoulder until it is cut");

    @Test
    void onWhatIsReadSoFarACutIsProposedOnceSomeoneSignedForIt() {
        Bench bench = new Bench()
                .step(bore(3, Combine.EACH, Optional.empty()))
                .read(1, "29.900", "29.906")
                .did(SIGNED);
        Proposal proposal = bench.finding(1).proposal().orElseThrow();
        assertEquals(new EvenCut.Offered(length("30.0105"), length("0.107")), proposal.cut());
        assertEquals(
                List.of("place 3"),
                proposal.unread().stream().map(slot -> slot.place().name()).toList());
        bench.did(new StepEvent.ReadingTaken(1, "3.1", mm("29.990")));
        assertEquals(refused(EvenCut.Reason.UNEVEN, "0.031"), cut(bench));
        assertEquals(List.of(), bench.finding(1).proposal().orElseThrow().unread());
    }

    @Test
    void aMeanIsProposedFromWhatIsReadOnceSomeoneSignedForIt() {
        Bench bench = new Bench()
                .step(bore(3, Combine.MEAN, Optional.of(SizeModifier.SA)))
                .read(1, "29.900", "29.910");
        assertEquals(Optional.empty(), bench.finding(1).proposal());
        assertEquals(new EvenCut.Offered(length("30.0105"), length("0.105")), cut(bench.did(SIGNED)));
        assertEquals(VerdictKind.OPEN, bench.finding(1).verdict().standing());
    }

    @ParameterizedTest
    @EnumSource(Unsigning.class)
    void whatIsSignedForLapsesWithAnyChangeOfTheStep(Unsigning change) {
        Bench bench = new Bench()
                .step(bore(3, Combine.EACH, Optional.empty()))
                .read(1, "29.900", "29.906")
                .did(SIGNED);
        bench.did(change.event);
        assertEquals(change.lapses, bench.finding(1).proposal().isEmpty());
        assertEquals(change.lapses, bench.sheet().line(1).pass().onThese().isEmpty());
    }

    /** Entry 2 is the first reading, entry 4 the signature. */
    private enum Unsigning {
        READ_ANEW(new StepEvent.ReadingTaken(1, "1.1", mm("29.901")), true),
        STRUCK(new Event.StruckOut(2, "slipped"), true),
        GAUGE(new StepEvent.GaugeChosen(1, "MC-2", Optional.empty()), true),
        SETTING(
                new StepEvent.GaugeSet(
                        1, Setting.direct(new Gauge("MC-2", GaugeKind.INSIDE_MICROMETER, Optional.empty()))),
                true),
        DISPOSED(new StepEvent.DispositionSigned(1, Disposition.SCRAP, "thin", "Inspector 1"), true),
        NOTE(new StepEvent.NoteMade(1, "cool"), false),
        ELSEWHERE(new StepEvent.ReadingTaken(2, "1.1", mm("29.901")), false),
        GAUGE_ELSEWHERE(new StepEvent.GaugeChosen(2, "MC-2", Optional.empty()), false),
        DISPOSED_ELSEWHERE(new StepEvent.DispositionSigned(2, Disposition.SCRAP, "thin", "Inspector 1"), false);

        private final Event event;
        private final boolean lapses;

        Unsigning(Event event, boolean lapses) {
            this.event = event;
            this.lapses = lapses;
        }
    }

    @Test
    void whatIsSignedForOnePassIsNotSignedForTheNext() {
        Bench bench = new Bench()
                .step(bore(2, Combine.EACH, Optional.empty()))
                .read(1, "29.900")
                .did(SIGNED)
                .did(new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT))
                .read(1, "29.990");
        assertEquals(Optional.empty(), bench.finding(1).proposal());
        assertEquals(
                Optional.of(length("0.110")),
                bench.sheet().line(1).earlier().get(0).proposal().flatMap(Proposal::change));
    }
}
