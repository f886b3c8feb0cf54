package org.tenthwise.model.record;

import static org.tenthwise.model.record.Bench.length;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadForm;

/** Sizes that were cut, and what is told of the cuts: a bore of 30.000 to 30.021, and a thread. */
final class CutsMade {

    static final Event CUT = new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.CUT);
    static final Event AGAIN = new StepEvent.PassBegun(1, StepEvent.PassBegun.Why.MEASURED_AGAIN);
    static final ScrewThread VEE = new ScrewThread(ThreadForm.METRIC, length("20"), length("2.5"), 1);

    static Bench bore(int places) {
        return new Bench().step(Bench.size(Feature.BORE, "30.000", "30.021", Combine.EACH, places));
    }

    static Bench thread(Optional<String> root) {
        return new Bench()
                .step(Bench.wires(VEE, "18.164", "18.334", root, 1))
                .did(new StepEvent.GaugeSet(1, Bench.wires("1.443")));
    }

    static String over(String pitchDiameter) {
        return new MeasurementOverWires(VEE, length("1.443"))
                .overWires(length(pitchDiameter))
                .millimetres()
                .toPlainString();
    }

    static List<CutSoFar> cuts(Bench bench) {
        return CutSoFar.of(bench.sheet().line(1));
    }

    private CutsMade() {}
}
