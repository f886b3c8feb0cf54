package org.tenthwise.model.record;

import static org.tenthwise.model.record.Bench.length;
import static org.tenthwise.model.record.Bench.mm;
import static org.tenthwise.model.record.Bench.places;
import static org.tenthwise.model.record.Bench.with;

import java.util.Optional;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.plan.SizeCheck;
import org.tenthwise.model.plan.SizeModifier;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.ShopEvent;
import org.tenthwise.model.tolerance.Limits;

/** Sizes a cut is proposed for, and what is proposed. */
final class ProposedCuts {

    static EvenCut cut(Bench bench) {
        return bench.finding(1).proposal().orElseThrow().cut();
    }

    static EvenCut refused(EvenCut.Reason reason, String safe) {
        return new EvenCut.NoCut(reason, Optional.of(length(safe)));
    }

    static Event known(Register register, Aim.ByLimits usual) {
        return new ShopEvent.MachineKnown("", register, usual);
    }

    static SizeCheck bore(int places, Combine combine, Optional<SizeModifier> says) {
        return new SizeCheck(
                Feature.BORE,
                Limits.between(mm("30.000"), mm("30.021")),
                places(places),
                1,
                combine,
                true,
                mm("0"),
                with(GaugeKind.INSIDE_MICROMETER),
                Cutting.UNSAID,
                says,
                Contact.SQUARE);
    }

    static SizeCheck bore(Cutting cutting) {
        return new SizeCheck(
                Feature.BORE,
                Limits.between(mm("30.000"), mm("30.021")),
                places(1),
                1,
                Combine.EACH,
                true,
                mm("0"),
                with(GaugeKind.INSIDE_MICROMETER),
                cutting,
                Optional.empty(),
                Contact.SQUARE);
    }

    static SizeCheck size(Feature feature, String lower, String upper, String guard, int places, Combine combine) {
        return new SizeCheck(
                feature,
                Limits.between(mm(lower), mm(upper)),
                places(places),
                1,
                combine,
                true,
                mm(guard),
                with(GaugeKind.INSIDE_MICROMETER));
    }

    private ProposedCuts() {}
}
